#!/usr/bin/env python3
"""Time and peak memory of `pithward measure` beside a process that only decodes the same scan.

Usage: measure_beside_decoding.py BIN_FOLDER SCANS_FOLDER [--runs 9] [--growth]

Each line is the median of interleaved runs: decode, measure, decode, measure, ... Scans are rendered once into
SCANS_FOLDER. With --growth the same for other lengths, resolutions and numbers of cores.
"""

import argparse
import os
import pathlib
import statistics
import subprocess
import sys
import time

MAIN_CASE = (300, 2400, 900, 1)  # length in mm, dpi, height of a core's part of the scan in px, cores
GROWTH = [(75, 2400, 900, 1), (150, 2400, 900, 1), (600, 2400, 900, 1), (300, 1200, 450, 1), (300, 4800, 1800, 1),
          (150, 1200, 450, 1), (150, 1200, 450, 2), (150, 1200, 450, 4), (150, 1200, 450, 8), (150, 1200, 450, 16)]


def run(command):
    """Seconds and peak memory in MB of one process; ends the program when it fails."""
    start = time.perf_counter()
    child = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE)
    said = child.stderr.read()
    _, status, usage = os.wait4(child.pid, 0)
    seconds = time.perf_counter() - start
    child.returncode = os.waitstatus_to_exitcode(status)
    if child.returncode != 0:
        sys.exit(f"{' '.join(map(str, command))}: {said.decode()}")
    return seconds, usage.ru_maxrss / 1024.0, usage.ru_utime + usage.ru_stime


def scan_of(programs, folder, case):
    length, dpi, height, cores = case
    file = folder / f"{cores} core {length} mm {dpi} dpi.tif"
    if not file.exists():
        subprocess.run([programs / "long_scan", file, str(length), str(dpi), str(height), str(cores)], check=True,
                       stdout=subprocess.DEVNULL)
    return file


def compare(programs, file, runs):
    decode = [programs / "decode_only", file]
    measure = [programs / "pithward", "measure", file, "--quiet", "--json", "-"]
    run(decode), run(measure)  # the file and the programs are in memory from here on
    results = [(run(decode), run(measure)) for _ in range(runs)]
    middle = lambda which, value: statistics.median(pair[which][value] for pair in results)
    return [middle(which, value) for which in (0, 1) for value in (0, 1, 2)]


def main():
    arguments = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    arguments.add_argument("programs", type=pathlib.Path)
    arguments.add_argument("scans", type=pathlib.Path)
    arguments.add_argument("--runs", type=int, default=9)
    arguments.add_argument("--growth", action="store_true")
    options = arguments.parse_args()
    options.scans.mkdir(parents=True, exist_ok=True)
    print("| scan | decode s | measure s | ratio | decode CPU s | measure CPU s | decode MB | measure MB | ratio |")
    print("| --- | --- | --- | --- | --- | --- | --- | --- | --- |")
    for case in [MAIN_CASE] + (GROWTH if options.growth else []):
        file = scan_of(options.programs, options.scans, case)
        d_time, d_peak, d_cpu, m_time, m_peak, m_cpu = compare(options.programs, file, options.runs)
        print(f"| {case[3]} of {case[0]} mm at {case[1]} dpi | {d_time:.2f} | {m_time:.2f} | {m_time / d_time:.2f} "
              f"| {d_cpu:.2f} | {m_cpu:.2f} | {d_peak:.0f} | {m_peak:.0f} | {m_peak / d_peak:.2f} |", flush=True)


if __name__ == "__main__":
    main()
