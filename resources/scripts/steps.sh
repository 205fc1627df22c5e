# Used by ./check: runs steps, times them and counts.
# shellcheck shell=bash

logs=build/check-logs
passed=0
failed=0
skipped=0

# step NAME COMMAND...: runs the command with its output in a log file; shows the end of it when it fails. Does not count.
step() {
    local name=$1 log="$logs/${1//[^a-zA-Z0-9]/-}.log" began=$SECONDS status=0
    shift
    printf '%-44s ' "$name"
    "$@" >"$log" 2>&1 || status=$?
    printf '%-6s %4d s\n' "$([[ $status -eq 0 ]] && echo ok || echo FAILED)" $((SECONDS - began))
    if [[ $status -ne 0 ]]; then
        tail -n 60 "$log"
        echo "All of it is in $log"
    fi
    return "$status"
}

# check NAME COMMAND...: a step that counts as one check.
check() {
    if step "$@"; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
    fi
}

# required NAME COMMAND...: a step without which the rest makes no sense.
required() {
    step "$@" && return
    failed=$((failed + 1))
    finish
}

# tests NAME FOLDER [CTEST-OPTION...]: runs the tests of a build folder and counts each.
tests() {
    local name=$1 folder=$2 log="$logs/${1//[^a-zA-Z0-9]/-}.log" ran bad left
    shift 2
    step "$name" ctest --test-dir "$folder" --output-on-failure --no-tests=error --parallel "$jobs" "$@" && bad=0 || bad=1
    read -r bad ran < <(sed -nE 's/^[0-9]+% tests passed, ([0-9]+) tests failed out of ([0-9]+)$/\1 \2/p' "$log"; echo "$bad" "$bad")
    left=$(grep -cE '^[[:space:]]+[0-9]+ - .*\(Skipped\)$' "$log") || true
    passed=$((passed + ran - bad - left))
    failed=$((failed + bad))
    skipped=$((skipped + left))
    echo "    $((ran - bad - left)) passed, $bad failed, $left skipped"
    sed -nE 's/^[[:space:]]+[0-9]+ - (.*) \(Skipped\)$/    skipped: \1/p' "$log"
}

# The closing line, and the end of the script.
finish() {
    printf '\nTook %d min %02d s\n' $((SECONDS / 60)) $((SECONDS % 60))
    printf '%d passed, %d failed%s\n' "$passed" "$failed" "$([[ $skipped -eq 0 ]] || echo ", $skipped skipped")"
    exit $((failed > 0))
}
