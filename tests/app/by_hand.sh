#!/usr/bin/env bash
# A person's hand: the real program under a window manager, driven by mouse and keys: tests/app/by_hand.sh PROGRAM. Opens a
# demo core, looks about, deletes a boundary and takes that back, confirms, settles the findings, exports, and holds what
# was written against the truth. Needs Xvfb, openbox, xdotool and python3.
set -euo pipefail

program=$(realpath "${1:?name the program: tests/app/by_hand.sh build/release/bin/pithward}")
demo=$(cd "$(dirname "${BASH_SOURCE[0]}")/../../demo-scans" && pwd)
core=HW01A
work=$(mktemp -d)
started=()

stop_all() {
    for process in "${started[@]}"; do kill "$process" 2>/dev/null || true; done
    rm -rf "$work"
}
trap stop_all EXIT

give_up() {
    echo "by_hand: $1" >&2
    [[ -z ${KEEP_PICTURE:-} ]] || import -window root "$KEEP_PICTURE" || true
    exit 1
}

# wait_for SECONDS WHAT COMMAND...: until the command succeeds.
wait_for() {
    local left=$(($1 * 5)) what=$2
    shift 2
    until "$@" >/dev/null 2>&1; do
        left=$((left - 1))
        ((left > 0)) || give_up "waited in vain for $what"
        sleep 0.2
    done
}

press() {
    xdotool key --clearmodifiers "$@"
    sleep 0.5
}

cp "$demo/$core.jpg" "$demo/field-sheet.csv" "$work"
exec 3>"$work/display"
Xvfb -displayfd 3 -screen 0 1500x950x24 2>/dev/null &
started+=($!)
wait_for 10 "the display" test -s "$work/display"
DISPLAY=:$(<"$work/display")
export DISPLAY XDG_CONFIG_HOME=$work/config XDG_RUNTIME_DIR=$work QT_QPA_PLATFORM=xcb LC_ALL=C.UTF-8
openbox 2>/dev/null &
started+=($!)

"$program" "$work/$core.jpg" &
started+=($!)
wait_for 60 "the window" xdotool search --onlyvisible --name "$core.jpg"
xdotool search --onlyvisible --name "$core.jpg" windowactivate windowsize 1400 860 windowmove 0 0
exported() { # press the keys of the export; the dialog comes when there is a core
    xdotool key --clearmodifiers ctrl+j
    sleep 0.5
    xdotool search --onlyvisible --name '^Export$'
}
wait_for 60 "the core to be read" exported
press Escape

# Closer, about, and back: the wheel at the cursor, a drag, the key for the whole.
xdotool mousemove 700 250 click --repeat 4 --delay 150 4
xdotool mousedown 1 mousemove --sync 500 250 mousemove --sync 400 250 mouseup 1
press 0
# The third boundary goes and comes back; then what is sure is confirmed and each finding kept.
press Home
press period period period
press Delete
press ctrl+z
press shift+c
for _ in 1 2 3 4 5 6; do
    press n
    press k
done

wait_for 20 "the export" exported
press alt+t
press ctrl+a
xdotool type --delay 5 "$work/by-hand.json"
press Return
wait_for 20 "the file" test -s "$work/by-hand.json"
sleep 0.5
press ctrl+q
wait_for 10 "the program to end" bash -c "! kill -0 ${started[-1]}"

python3 - "$work/by-hand.json" "$demo/$core.truth.json" <<'PYTHON'
import json, sys
reading = json.load(open(sys.argv[1]))["readings"][0]
truth = {ring["year"]: ring["radial_mm"] for ring in json.load(open(sys.argv[2]))["widths"]}
widths = {ring["year"]: ring["width_mm"] for ring in reading["rings"]}
known = [year for year in widths if year in truth]
near = [year for year in known if abs(widths[year] - truth[year]) <= 0.02]
print(f"{len(widths)} rings, {len(near)} of {len(known)} widths within 0.02 mm of the truth")
if len(known) < 100 or len(near) < 0.95 * len(known):
    sys.exit("by_hand: what was exported is not the core")
PYTHON
