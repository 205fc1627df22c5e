#!/usr/bin/env python3
"""Runs clang-tidy over all files that a build folder compiles: tidy.py BUILD_FOLDER [PART_OF_A_PATH]

A build that compiles the files of a folder as one includes them in one source. clang-tidy looks less closely at what is included,
so here they are put end to end, and places are told as those of the files. Looking at each file alone takes several times as long.
"""
import bisect
import concurrent.futures
import json
import os
import pathlib
import re
import shlex
import subprocess
import sys

TOP = pathlib.Path(__file__).resolve().parents[2]
INCLUDED = re.compile(r'^#include "(/.*\.cpp)"$', re.MULTILINE)
# How many states clang's analyzer follows in a function, of the 225,000 that are its own limit. It looks less deep for it, and
# takes half of the time of 50,000 in libcore/formats; what runs is looked at by the sanitizers.
DEPTH = ["--extra-arg=-Xclang", "--extra-arg=-analyzer-config", "--extra-arg=-Xclang", "--extra-arg=max-nodes=10000"]
COUNT = re.compile(r"^\d+ (warnings?|errors?)\b.*(generated|treated as errors?)\.?$")  # of all, in headers of others too


def parts_of(source):
    """The files that a source is made of."""
    return INCLUDED.findall(source.read_text()) if source.suffix == ".cxx" else [str(source)]


def joined(source, parts):
    """Writes the parts end to end; answers with the file and the line before each part's first."""
    whole = source.with_name(source.stem + "_joined.cpp")
    texts = [pathlib.Path(part).read_text() for part in parts]
    begins = [0]
    for text in texts:
        begins.append(begins[-1] + text.count("\n"))
    whole.write_text("".join(texts))
    return whole, begins[:-1]


def in_the_parts(report, whole, begins, parts):
    """The report with places in the parts instead of in the whole."""
    def place(found):
        line = int(found[1])
        part = bisect.bisect_left(begins, line) - 1
        return f"{os.path.relpath(parts[part], TOP)}:{line - begins[part]}:"
    return re.sub(re.escape(str(whole)) + r":(\d+):", place, report)


def is_test(part):
    return (TOP / "tests") in pathlib.Path(part).parents


def fewer_checks(part):
    """Tests run under the sanitizers; what clang's analyzer looks for there takes most of the time of all."""
    return ["--checks=-clang-analyzer-*"] if is_test(part) else []


def work(entry):
    """Grows with the time that it takes to look at an entry."""
    parts = parts_of(pathlib.Path(entry["file"]))
    return not is_test(parts[0]), sum(map(os.path.getsize, parts))


def look_at(entry):
    source = pathlib.Path(entry["file"])
    parts = parts_of(source)
    whole, begins = joined(source, parts) if len(parts) > 1 else (pathlib.Path(parts[0]), [0])
    options = shlex.split(entry["command"])[1:]
    del options[options.index("-o"):]
    command = ["clang-tidy", "--quiet", f"--config-file={TOP / '.clang-tidy'}", *DEPTH, *fewer_checks(parts[0]), str(whole), "--",
               *options]
    run = subprocess.run(command, cwd=entry["directory"], capture_output=True, text=True, check=False)
    said = [line for line in run.stderr.splitlines(True) if not COUNT.match(line)]
    return run.returncode, in_the_parts(run.stdout + "".join(said), whole, begins, parts)


def once(entries):
    """The entries, less those whose files another program compiles too."""
    return {tuple(map(os.path.realpath, parts_of(pathlib.Path(e["file"])))): e for e in reversed(entries)}.values()


def main():
    folder, wanted = pathlib.Path(sys.argv[1]), (sys.argv[2:] or [""])[0]
    entries = json.loads((folder / "compile_commands.json").read_text())
    entries = once([e for e in entries if "_autogen/" not in e["file"] and wanted in e["file"]])
    entries = sorted(entries, key=work, reverse=True)
    worst = 0
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        for entry, (status, report) in zip(entries, pool.map(look_at, entries)):
            print(os.path.relpath(entry["file"], folder), "ok" if status == 0 else "FAILED", flush=True)
            print(report, end="", flush=True)
            worst = max(worst, status)
    sys.exit(worst)


if __name__ == "__main__":
    main()
