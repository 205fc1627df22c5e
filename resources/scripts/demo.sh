# Shared by ./start: the demo site without a window.
# shellcheck shell=bash

demo_sheet=demo-scans/field-sheet.csv
demo_results=build/demo-results

# A line for each core of the sheet: scan, wood, outer wood and the year of the outermost complete ring, - where it is not known.
# No field before the notes holds a comma on this sheet. North of the equator an unfinished ring is that of the year of coring.
demo_cores() {
    awk -F, '
        NR == 1 { for (i = 1; i <= NF; i++) at[$i] = i; next }
        {
            outer = $at["outer"]; year = substr($at["date_cored"], 1, 4)
            last = outer == "complete" ? year : outer == "unfinished" ? year - 1 : "-"
            print $at["scan"], $at["wood"], outer, last
        }' "$demo_sheet"
}

# measure_demo_core PROGRAM SCAN WOOD OUTER LAST_YEAR
measure_demo_core() {
    local stem=${2%.*}
    local options=(--wood "$3" --outer "$4" --json "$demo_results/$stem.json" --csv "$demo_results/$stem.csv"
        --overlay "$demo_results/$stem.png" --force)
    [[ $5 == - ]] || options+=(--last-year "$5" --decadal "$demo_results/$stem.rwl")
    "$1" measure "demo-scans/$2" "${options[@]}"
}

# series_of CSV N: the name of its series N and the years (or, without years, the rings) that it has.
series_of() {
    awk -F, -v column="$(($2 + 1))" '
        NR == 1 { unit = $1; name = $column; next }
        $column != "" { if (first == "") first = $1; last = $1 }
        END { print name, unit "s " first " to " last }' "$1"
}

# show_demo_core SCAN WOOD: a line for each core that was found, or why there is none, from what measuring said.
show_demo_core() {
    local stem=${1%.*} wood=$2 line name series number=0
    while read -r line; do
        if [[ $line =~ :\ ([0-9]+)\ rings?,\ ([0-9]+)\ findings?$ ]]; then
            number=$((number + 1))
            read -r name series < <(series_of "$demo_results/$stem.csv" "$number")
            printf '%-8s %-15s %6s   %-20s %8s\n' "$name" "$wood" "${BASH_REMATCH[1]}" "$series" "${BASH_REMATCH[2]}"
        elif [[ $line == pithward:* ]]; then
            printf '%-8s %-15s %s\n' "$stem" "$wood" "$line"
        fi
    done
}

# measure_demo PROGRAM: the main job on every demo scan.
measure_demo() {
    local scan wood outer last_year said
    mkdir -p "$demo_results"
    printf '%-8s %-15s %6s   %-20s %8s\n' core wood rings series findings
    while read -r scan wood outer last_year; do
        said=$(measure_demo_core "$1" "$scan" "$wood" "$outer" "$last_year" 2>&1) || true
        show_demo_core "$scan" "$wood" <<<"$said"
    done < <(demo_cores)
    cat <<EOF

Findings are places that a person should look at. For each core there are, in $demo_results/:
    CORE.json  all that was found        CORE.csv  the ring widths in mm
    CORE.png   the scan, marked          CORE.rwl  the ring widths as a decadal file, where the last year is known
What is really on the scans is in demo-scans/CORE.truth.json.
EOF
}
