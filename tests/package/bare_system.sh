#!/usr/bin/env bash
# The package on a bare system: tests/package/bare_system.sh PACKAGE.deb. Makes a Debian of its own with nothing in it but the
# package and what that asks for, and does the main job there as a user without rights: a project from the installed demo
# site, measured, reported, and opened in the window. Needs root, mmdebstrap and the system's package sources; about three
# minutes and 1 GB in the folder that TMPDIR names.
set -euo pipefail

package=$(realpath "${1:?name the package: tests/package/bare_system.sh build/release/pithward_0.1.0_amd64.deb}")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
chmod 755 "$work" # the user without rights goes in

give_up() {
    echo "bare_system: $1" >&2
    exit 1
}

inside() { chroot --userspec=nobody:nogroup "$work/root" env -i PATH=/usr/bin:/bin HOME=/tmp/home LANG=C.UTF-8 "$@"; }

[[ $EUID -eq 0 ]] || give_up "run it as root"
command -v mmdebstrap >/dev/null || give_up "mmdebstrap is not installed"

mmdebstrap --quiet --variant=minbase --include=man-db,bash-completion,shared-mime-info,desktop-file-utils bookworm "$work/root"
cp "$package" "$work/root/tmp/pithward.deb"
cp /etc/resolv.conf "$work/root/etc/resolv.conf"
chroot "$work/root" bash -c 'apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends /tmp/pithward.deb' >"$work/install.log" 2>&1 ||
    give_up "the package can't be installed: $(tail -n 3 "$work/install.log")"
mkdir -m 777 "$work/root/tmp/home"

inside bash -c '
    set -euo pipefail
    cd /tmp/home
    cp -r /usr/share/pithward/demo-scans site
    pithward create site/hill.pithward --sheet site/field-sheet.csv --scans site --by Ida --quiet
    pithward measure site/hill.pithward --by Ida --quiet
    pithward report site/hill.pithward --out hill.pdf --out hill.html --quiet
    pithward export site/hill.pithward --decadal hill.rwl --quiet
    pithward show site/hill.pithward
' >"$work/show.txt" || give_up "the main job failed"
home=$work/root/tmp/home
[[ $(head -c 5 "$home/hill.pdf") == %PDF- && -s $home/hill.html && -s $home/hill.rwl ]] || give_up "the report or the series are missing"

# The window, without a display: it opens, and stays.
status=0
inside env QT_QPA_PLATFORM=offscreen XDG_RUNTIME_DIR=/tmp/home timeout 10 pithward /tmp/home/site/hill.pithward >"$work/window.log" 2>&1 || status=$?
[[ $status -eq 124 ]] || give_up "the window ended by itself ($status): $(tail -n 3 "$work/window.log")"

# shellcheck disable=SC2016 # the shell inside expands it
[[ $(inside bash -c 'source /usr/share/bash-completion/completions/pithward; COMP_WORDS=(pithward mea); COMP_CWORD=1; _pithward; echo "${COMPREPLY[*]}"') == measure ]] ||
    give_up "the shell does not complete commands"
chroot "$work/root" desktop-file-validate /usr/share/applications/pithward.desktop || give_up "the desktop entry is wrong"
grep -q "application/x-pithward:\*.pithward" "$work/root/usr/share/mime/globs" || give_up "the system does not know the project's type"
[[ -s $work/root/usr/share/icons/hicolor/scalable/apps/pithward.svg ]] || give_up "the icon is missing"
gzip -cd "$work/root/usr/share/man/man1/pithward.1.gz" | grep -q '^.SS measure' || give_up "the manual page is missing"

tail -n 3 "$work/show.txt"
echo "bare_system: installed, and the main job done"
