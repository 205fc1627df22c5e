# Shared by ./start and ./check: what must be installed, and how the program is built.
# shellcheck shell=bash

packages_file=resources/packages.txt
jobs=$(nproc)

say() { printf '\n%s\n' "$*"; }

# packages_of GROUP...: the packages of these groups, one a line.
packages_of() {
    local group
    for group in "$@"; do
        awk -v group="$group" '$1 == group { print $2 }' "$packages_file"
    done
}

on_debian_12() {
    [[ -r /etc/os-release ]] && (. /etc/os-release && [[ ${ID:-} == debian && ${VERSION_ID:-} == 12 ]])
}

# Elsewhere packages have other names, so nothing is installed there.
explain_other_systems() {
    cat >&2 <<EOF
This script installs packages on Debian 12 only. On another system install what these are there:

$(grep -E '^(build|test) ' "$packages_file" | awk '{ $1 = ""; print "   " $0 }')

then build with CMake 3.25 or newer and a C++20 compiler, and run the tests:

    cmake --preset release
    cmake --build --preset release
    ctest --preset release

The program is then build/release/bin/pithward.
EOF
}

is_installed() {
    [[ $(dpkg-query --show --showformat='${db:Status-Status}' "$1" 2>/dev/null) == installed ]]
}

as_root() {
    if [[ $EUID -eq 0 ]]; then
        "$@"
    elif command -v sudo >/dev/null; then
        sudo "$@"
    else
        echo "Installing needs root, and sudo is not there. As root: $*" >&2
        return 2
    fi
}

# install_packages GROUP...: installs what is missing of these groups; says so first, and touches nothing if all is there.
install_packages() {
    local package missing=()
    on_debian_12 || { explain_other_systems; exit 2; }
    for package in $(packages_of "$@"); do
        is_installed "$package" || missing+=("$package")
    done
    if [[ ${#missing[@]} -eq 0 ]]; then
        echo "All packages of $packages_file that are needed ($*) are installed."
        return
    fi
    say "Installing ${#missing[@]} Debian packages: ${missing[*]}"
    as_root apt-get update
    as_root env DEBIAN_FRONTEND=noninteractive apt-get install --yes --no-install-recommends "${missing[@]}"
}

# Paths are kept out of the cache's keys, so that a fresh clone finds what another one has built.
use_compiler_cache() {
    command -v ccache >/dev/null || return 0
    export CMAKE_CXX_COMPILER_LAUNCHER=ccache CCACHE_BASEDIR=$PWD CCACHE_NOHASHDIR=1
}
