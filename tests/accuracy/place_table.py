#!/usr/bin/env python3
"""Whether dating brings what the finder really overlooked or doubled to its place on the scan.

    place_table.py BIN FOLDER...    BIN: the folder of pithward; each FOLDER: a site rendered by dating_site

Makes a project of each site in a temporary folder, measures and crossdates it against others.csv, and compares boundaries
and the first place of each slip with the truth. A mistake is a stretch between two boundaries that were rightly found,
with more or fewer boundaries in it than there are. It is brought to its place when the first place of a slip of its kind
is a boundary overlooked there, or one too many.
"""
import json
import math
import pathlib
import subprocess
import sys
import tempfile

REACH_MM = 0.15  # A boundary found so near to a true one is that one, or within two fifths of the way to its neighbour.


def run(binary, *arguments):
    subprocess.run([binary, *arguments, "--quiet", "--force"], check=True, stdout=subprocess.DEVNULL)


def along(truth):
    """Places on the path of the truth, from the bark, in mm: the cores are all but straight."""
    marks = [b for b in truth["boundaries"] if b.get("visible", True)]
    first, last = marks[0], marks[-1]
    length = math.hypot(last["x"] - first["x"], last["y"] - first["y"])
    direction = ((last["x"] - first["x"]) / length, (last["y"] - first["y"]) / length)
    px_per_mm = truth["dpi"] / 25.4
    return lambda p: ((p["x"] - first["x"]) * direction[0] + (p["y"] - first["y"]) * direction[1]) / px_per_mm, marks


def matched(true, found):
    """Indices of true boundaries and of found ones that are the same, in order."""
    pairs, after = [], 0
    for i, s in enumerate(true):
        gaps = [abs(s - true[k]) for k in (i - 1, i + 1) if 0 <= k < len(true)]
        reach = min(REACH_MM, 0.4 * min(gaps))
        near = [k for k in range(after, len(found)) if abs(found[k] - s) <= reach]
        if near:
            best = min(near, key=lambda k: abs(found[k] - s))
            pairs.append((i, best))
            after = best + 1
    return pairs


def mistakes_of(true, found):
    """(rings from the nearer end, kind, places, the stretch between the two that are right) of each."""
    pairs = matched(true, found)
    result = []
    for (i, a), (j, b) in zip(pairs, pairs[1:]):
        lacking, more = true[i + 1:j], found[a + 1:b]
        if len(lacking) != len(more):
            missing = len(lacking) > len(more)
            result.append((min(i, len(true) - 1 - i), "ring missing" if missing else "ring too many",
                           lacking if missing else more, (true[i], true[j])))
    return result


def dated(folder, binary, work):
    """What crossdate and export say of the site, by core."""
    project = str(work / "site.pithward")
    run(binary, "create", project, "--sheet", str(folder / "field-sheet.csv"), "--scans", str(folder),
        "--outside", str(folder))
    run(binary, "measure", project, "--outside", str(folder))
    run(binary, "crossdate", project, "--against", str(folder / "others.csv"), "--json", str(work / "dating.json"))
    run(binary, "export", project, "--json", str(work / "readings.json"))
    return work / "dating.json", work / "readings.json"


def score(folder, dating, readings):
    dating = {s["id"]: s for s in json.loads(dating.read_text())["series"]}
    readings = {r["core"]: r for r in json.loads(readings.read_text())["readings"]}
    rows = []
    for name, reading in readings.items():
        truth = json.loads((folder / (name + ".truth.json")).read_text())
        place, marks = along(truth)
        true = [place(b) for b in marks]
        found = sorted(place(b) for b in reading["boundaries"])
        slips = dating.get(name, {}).get("slips", [])
        r = dating.get(name, {}).get("r") or 0.0
        made = mistakes_of(true, found)
        for from_end, kind, places, gap in made:
            told = [s.get("places", []) for s in slips if s["kind"] == kind]
            first = [place(p) for s in told for p in s[:1]]
            all_three = [place(p) for s in told for p in s]
            near = lambda told_places: any(abs(p - q) < 0.1 for p in told_places for q in places)
            rows.append({"core": name, "from_end": from_end, "kind": kind, "r": r, "of": len(made),
                         "first": near(first), "any": near(all_three),
                         "ring": any(gap[0] - 0.1 < p < gap[1] + 0.1 for p in first)})
    return rows


def line(name, rows):
    if rows:
        share = lambda key: 100.0 * sum(r[key] for r in rows) / len(rows)
        print(f"| {name} | {len(rows)} | {share('first'):.0f} | {share('any'):.0f} | {share('ring'):.0f} |")


def main():
    binary = str(pathlib.Path(sys.argv[1]) / "pithward")
    rows = []
    for name in sys.argv[2:]:
        folder = pathlib.Path(name).resolve()
        with tempfile.TemporaryDirectory() as work:
            rows += score(folder, *dated(folder, binary, pathlib.Path(work)))
    print("| mistakes of the finder | n | at the first place % | among the three places % | in the right ring % |")
    print("| --- | --- | --- | --- | --- |")
    line("all", rows)
    for kind in ("ring missing", "ring too many"):
        line(kind, [r for r in rows if r["kind"] == kind])
    line("10 rings and more from both ends", [r for r in rows if r["from_end"] >= 10])
    line("on cores with one or two", [r for r in rows if r["of"] <= 2])
    line("on cores with three and more", [r for r in rows if r["of"] > 2])
    for row in rows:
        print(row, file=sys.stderr)


if __name__ == "__main__":
    main()
