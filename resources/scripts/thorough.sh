# Used by ./check --all: what takes longer than the tests.
# shellcheck shell=bash

our_code() { git ls-files '*.cpp' '*.h'; }

check_format() { our_code | xargs -r clang-format --dry-run --Werror; }

check_scripts() { shellcheck --external-sources start check .ci/run tests/app/by_hand.sh tests/package/bare_system.sh; }

check_tidy() { python3 resources/scripts/tidy.py build/asan; }

# targets_of FOLDER PREFIX: the programs of a build folder whose names begin so.
targets_of() {
    ninja -C "$1" -t targets all | sed -nE "s/^($2[a-z_]*): phony$/\1/p"
}

# build PRESET [TARGET...]: goes on after an error, so that one run shows all of them.
build() {
    local preset=$1
    shift
    cmake --build --preset "$preset" --parallel "$jobs" ${1:+--target "$@"} -- -k 0
}

# Under the sanitizers all runs but accuracy and trials: they do many times over what the other tests do once.
in_bulk='^accuracy|Trial'

sanitize_address() {
    required "Build asan" build asan
    tests "Tests under asan" build/asan --exclude-regex "NOT_BUILT|$in_bulk"
}

# What runs in several threads is libimaging.
sanitize_threads() {
    export TSAN_OPTIONS="suppressions=$PWD/resources/tsan.supp"
    required "Configure tsan" cmake --preset tsan
    # shellcheck disable=SC2046 # target names are words
    required "Build tsan" build tsan $(targets_of build/tsan 'test_(scan|strip|boundary)')
    tests "Tests under tsan" build/tsan --exclude-regex "NOT_BUILT|$in_bulk"
}

# fuzz_one TARGET LOGS: a minute, from its committed corpus and what earlier runs added to it. The seed is the same each time, so that
# a commit is not judged by luck; others are for who looks for faults (PITHWARD_FUZZ_SEED, 0 for one that changes). Of a find only
# what matters is shown.
fuzz_one() {
    local grown=build/asan/corpus/$1 log=$2/$1.log
    mkdir -p "$grown"
    "build/asan/bin/$1" -seed="${PITHWARD_FUZZ_SEED:-1}" -max_total_time=60 -timeout=25 -rss_limit_mb=2048 \
        -artifact_prefix="build/asan/$1-" "$grown" "tests/fuzz/corpus/${1#fuzz_}" >"$log" 2>&1 && return
    echo "$1 failed; all of it is in $log"
    sed -nE '/^broken: |ERROR: |runtime error: /,$p' "$log" | grep -v '# Uses:' | tail -n 50
    return 1
}

fuzz_each() {
    export -f fuzz_one
    targets_of build/asan fuzz_ | xargs -P "$jobs" -I{} bash -c "fuzz_one {} '$logs'"
}

fuzz() {
    check "A minute of each fuzz target" fuzz_each
}

# The real program under a window manager, driven by mouse and keys.
by_hand() {
    check "By hand under a window manager" tests/app/by_hand.sh build/release/bin/pithward
}

compare_with_r() {
    local script scripts
    mapfile -t scripts < <(git ls-files 'tests/outside/*.R')
    [[ ${#scripts[@]} -gt 0 ]] || echo "No check needs R yet."
    for script in "${scripts[@]}"; do
        check "$script" Rscript --vanilla "$script"
    done
}
