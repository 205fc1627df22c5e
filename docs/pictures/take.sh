#!/usr/bin/env bash
# Pictures of the window from the demo site, light and dark, at one and two pixels to the point: docs/pictures/take.sh PROGRAM [FOLDER]
# With --handbook before these, the small ones that the handbook shows, into docs/pictures/handbook.
# Needs Xvfb, openbox, xdotool and ImageMagick's import (packages xvfb, openbox, xdotool, imagemagick); PITHWARD_DISPLAY chooses the display.
set -euo pipefail

handbook=false
if [[ ${1:-} == --handbook ]]; then
    handbook=true
    shift
fi
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

for tool in Xvfb openbox xdotool import convert; do
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

# make_site: all of the demo site, measured, in $work/hill.pithward
make_site() {
    mkdir -p "$work/trays"
    cp "$top"/demo-scans/*.jpg "$work/trays"
    "$program" create "$work/hill.pithward" --sheet "$top/demo-scans/field-sheet.csv" --scans "$work/trays" --by Ida --quiet
    "$program" measure "$work/hill.pithward" --by Ida --quiet
}

# small NAME: what is shown, for a page of text: narrower, of few colours
small() {
    DISPLAY=$display import -window root -crop 1400x860+0+0 +repage "$work/whole.png"
    convert "$work/whole.png" -filter Lanczos -resize 1000x -dither None -colors 96 -strip -define png:compression-level=9 \
        "$out/handbook/$1.png"
}

# The pages of the handbook in their order, light, at one pixel to the point.
take_handbook() {
    scale=1
    mkdir -p "$out/handbook"
    make_site
    settle=6 open_window 1 1
    small start
    close_window
    settle=10 open_window 1 1 "$work/hill.pithward"
    small bench
    press n
    at 700 330
    small finding
    press ctrl+4
    sleep 12
    small progress
    press ctrl+3
    sleep 4
    small site
    press ctrl+1
    press k n k shift+c w ctrl+2
    sleep 5
    small review
    press ctrl+h
    sleep 4
    press Down Down
    DISPLAY=$display xdotool getactivewindow windowsize 1200 760 windowmove 60 40
    sleep 2
    small history
    press Escape
    press ctrl+shift+r
    sleep 2
    small report
    close_window
}

Xvfb "$display" -screen 0 2800x1720x24 >/dev/null 2>&1 &
started+=($!)
sleep 2
DISPLAY=$display openbox >/dev/null 2>&1 &
started+=($!)
sleep 1

if $handbook; then
    take_handbook
    exit 0
fi

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
        press ctrl+4
        sleep 6
        picture "progress-$name"
        press ctrl+2
        sleep 4
        press ctrl+h
        sleep 4
        press Down Down
        picture "history-$name"
        close_window
    done
done
