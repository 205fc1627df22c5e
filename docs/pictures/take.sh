#!/usr/bin/env bash
# Pictures of the window from the demo site, light and dark, at one and two pixels to the point: docs/pictures/take.sh PROGRAM [FOLDER]
# Needs Xvfb, openbox, xdotool and ImageMagick's import (packages xvfb, openbox, xdotool, imagemagick); PITHWARD_DISPLAY chooses the display.
set -euo pipefail

program=${1:?name the program: docs/pictures/take.sh build/release/bin/pithward}
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
out=${2:-$top/docs/pictures}
display=${PITHWARD_DISPLAY:-:77}
work=$(mktemp -d)
started=()

stop_all() {
    for process in "${started[@]}"; do kill "$process" 2>/dev/null || true; done
    rm -rf "$work"
}
trap stop_all EXIT

for tool in Xvfb openbox xdotool import; do
    command -v "$tool" >/dev/null || { echo "take.sh: $tool is not installed" >&2; exit 2; }
done

# open_window SCHEME SCALE FILES...: 1 is light, 2 is dark
open_window() {
    local scheme=$1 scale=$2
    shift 2
    mkdir -p "$work/config/pithward"
    printf '[window]\ncolours=%s\n' "$scheme" >"$work/config/pithward/pithward.conf"
    DISPLAY=$display XDG_CONFIG_HOME=$work/config QT_QPA_PLATFORM=xcb QT_SCALE_FACTOR=$scale "$program" "$@" &
    window=$!
    started+=("$window")
    sleep "${settle:-20}"
    DISPLAY=$display xdotool search --sync --onlyvisible --name Pithward windowactivate windowsize "$((1400 * scale))" "$((860 * scale))" windowmove 0 0
    sleep 2
}

picture() {
    DISPLAY=$display import -window root -crop "${crop}+0+0" +repage "$out/$1.png"
}

press() {
    DISPLAY=$display xdotool key "$@"
    sleep 2
}

at() { # at X Y in points
    DISPLAY=$display xdotool mousemove "$(($1 * scale))" "$(($2 * scale))"
    sleep 1
}

close_window() {
    kill "$window"
    wait "$window" 2>/dev/null || true
}

# make_project: four cores of the demo site, measured, in $work/hill.pithward
make_project() {
    mkdir -p "$work/trays"
    cp "$top"/demo-scans/{HW01A,HW01B,HW02A,HW05A}.jpg "$work/trays"
    grep -E '^site,|,(HW01A|HW01B|HW02A|HW05A),' "$top/demo-scans/field-sheet.csv" >"$work/field.csv"
    "$program" create "$work/hill.pithward" --sheet "$work/field.csv" --scans "$work/trays" --by Ida --quiet
    "$program" measure "$work/hill.pithward" --by Ida --quiet
}

Xvfb "$display" -screen 0 2800x1720x24 >/dev/null 2>&1 &
started+=($!)
sleep 2
DISPLAY=$display openbox >/dev/null 2>&1 &
started+=($!)
sleep 1

make_project
cp "$work/hill.pithward" "$work/measured"
for scale in 1 2; do
    crop=$((1400 * scale))x$((860 * scale))
    for scheme in 1 2; do
        name=$([[ $scheme == 1 ]] && echo light || echo dark)-${scale}x
        settle=4 open_window "$scheme" "$scale"
        picture "start-$name"
        press F1
        picture "keys-$name"
        close_window

        open_window "$scheme" "$scale" "$top/demo-scans/HW02B.jpg"
        picture "whole-$name"
        press n n
        at 700 330
        picture "finding-$name"
        press shift+d
        picture "scale-$name"
        press Escape
        press ctrl+d
        sleep 2
        picture "export-$name"
        close_window

        rm -f "$work"/hill.pithward* # a window that was killed leaves its log
        cp "$work/measured" "$work/hill.pithward"
        settle=8 open_window "$scheme" "$scale" "$work/hill.pithward"
        picture "project-$name"
        press n k shift+c w ctrl+n
        sleep 4
        press n k k shift+c w ctrl+2
        sleep 4
        picture "review-$name"
        press ctrl+3
        sleep 6
        picture "site-$name"
        press ctrl+2
        sleep 4
        press ctrl+h
        sleep 4
        press Down Down
        picture "history-$name"
        close_window
    done
done
