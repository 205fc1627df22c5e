#!/usr/bin/env python3
"""Runs clang-tidy over all files that a build folder compiles: tidy.py BUILD_FOLDER [PART_OF_A_PATH]

Most of what a file costs is the headers that its neighbours use too. So the files below a top folder are put end to end and looked
at as one; places are told as those of the files. Looking at each file alone takes ten times as long.
"""
import bisect
import concurrent.futures
import itertools
import json
import os
import pathlib
import re
import shlex
import subprocess
import sys
import time

TOP = pathlib.Path(__file__).resolve().parents[2]
INCLUDED = re.compile(r'^#include "(/.*\.cpp)"$', re.MULTILINE)
MAIN = re.compile(r'^(int main|extern "C" int LLVMFuzzerTestOneInput)\(', re.MULTILINE)
ALONE = TOP / "libimaging/boundary/wood"  # wood models are alike by design, and so are the names in them
PAIRS = ("-isystem", "-include", "-I")  # options whose argument may stand apart
# How many states clang's analyzer follows in a function, of the 225,000 that are its own limit. It looks less deep for it, and
# takes half of the time of 50,000 in libcore/formats; what runs is looked at by the sanitizers.
DEPTH = ["--extra-arg=-Xclang", "--extra-arg=-analyzer-config", "--extra-arg=-Xclang", "--extra-arg=max-nodes=10000"]
COUNT = re.compile(r"^\d+ (warnings?|errors?)\b.*(generated|treated as errors?)\.?$")  # of all, in headers of others too


def parts_of(source):
    """The files that a source is made of: a build that compiles the files of a folder as one includes them in one source."""
    found = INCLUDED.findall(source.read_text()) if source.suffix == ".cxx" else [str(source)]
    return [pathlib.Path(os.path.realpath(part)) for part in found]


def options_of(entry):
    """The options of a compile command, each with its argument."""
    words = shlex.split(entry["command"])[1:]
    words = iter(words[:words.index("-o")])
    return [(word, next(words)) if word in PAIRS else (word,) for word in words]


def bundles(entries, wanted):
    """Files to look at as one, with all of their options: one bundle for each top folder."""
    found = {}
    for entry in entries:
        for part in parts_of(pathlib.Path(entry["file"])):
            place = part.relative_to(TOP)
            if wanted not in str(place) or place.parts[0] == "build":  # what the build makes is not ours to tidy
                continue
            name = str(place) if part.parent == ALONE else place.parts[0]
            parts, options = found.setdefault(name, ({}, {}))
            parts[part] = None
            for option in options_of(entry):
                options.setdefault(option[0].split("=")[0] if len(option) == 1 else option, option)
    return {name: (list(parts), list(itertools.chain(*options.values()))) for name, (parts, options) in found.items()}


def joined(whole, parts):
    """Writes the parts end to end; answers with the line before each part's first. Each program has a main of its own."""
    texts = [MAIN.sub(rf"\g<1>_{number}(", part.read_text()) for number, part in enumerate(parts)]
    whole.write_text("".join(texts))
    return [0, *itertools.accumulate(text.count("\n") for text in texts)][:-1]


def in_the_parts(report, whole, begins, parts):
    """The report with places in the parts instead of in the whole."""
    def place(found):
        line = int(found[1])
        part = bisect.bisect_left(begins, line) - 1
        return f"{parts[part].relative_to(TOP)}:{line - begins[part]}:"
    return re.sub(re.escape(str(whole)) + r":(\d+):", place, report)


def fewer_checks(part):
    """Tests run under the sanitizers; what clang's analyzer looks for there takes most of the time of all."""
    return ["--checks=-clang-analyzer-*"] if (TOP / "tests") in part.parents else []


def look_at(folder, name, parts, options):
    begun = time.monotonic()
    whole = folder / f"tidy_{name.replace('/', '_').removesuffix('.cpp')}.cpp"
    begins = joined(whole, parts)
    command = ["clang-tidy", "--quiet", f"--config-file={TOP / '.clang-tidy'}", *DEPTH, *fewer_checks(parts[0]), str(whole), "--",
               *options]
    run = subprocess.run(command, cwd=folder, capture_output=True, text=True, check=False)
    said = [line for line in run.stderr.splitlines(True) if not COUNT.match(line)]
    took = time.monotonic() - begun
    return run.returncode, in_the_parts(run.stdout + "".join(said), whole, begins, parts), took


def main():
    folder, wanted = pathlib.Path(sys.argv[1]).resolve(), (sys.argv[2:] or [""])[0]
    entries = json.loads((folder / "compile_commands.json").read_text())
    found = bundles([e for e in entries if "_autogen/" not in e["file"]], wanted)
    by_work = sorted(found.items(), key=lambda bundle: -sum(map(os.path.getsize, bundle[1][0])))
    worst = 0
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        looked_at = [(name, len(parts), pool.submit(look_at, folder, name, parts, options)) for name, (parts, options) in by_work]
        for name, count, answer in looked_at:
            status, report, took = answer.result()
            print(f"{name} ({count} files, {took:.0f} s)", "ok" if status == 0 else "FAILED", flush=True)
            print(report, end="", flush=True)
            worst = max(worst, status)
    sys.exit(worst)


if __name__ == "__main__":
    main()
