#!/usr/bin/env python3
"""fit_odds.py TABLE.csv: fit the weights of libimaging/boundary/odds.h to marks with their truth.

TABLE.csv is what signs_table prints over rendered cores (pithward-scan-maker varied). Logistic regression with a small
penalty on the weights, by Newton's method; cores are weighed alike. Prints the weights and how well probabilities hold
on cores that were left out (five parts)."""
import csv
import sys

import numpy as np

NAMES = ["constant", "log_fall", "log_relative_fall", "softness", "before", "after", "recovery", "lopsidedness",
         "support", "weaker_side"]
PENALTY = 0.5


def fit(x, y, w):
    b = np.zeros(x.shape[1])
    for _ in range(60):
        p = 1 / (1 + np.exp(-x @ b))
        reg = PENALTY * np.r_[0, np.ones(len(b) - 1)]
        g = x.T @ (w * (y - p)) - reg * b
        h = (x.T * (w * p * (1 - p))) @ x + np.diag(reg) + 1e-9 * np.eye(len(b))
        step = np.linalg.solve(h, g)
        b += step
        if np.abs(step).max() < 1e-8:
            break
    return b


def main():
    rows = list(csv.reader(open(sys.argv[1])))
    name = np.array([r[0] for r in rows])
    y = np.array([float(r[1]) for r in rows])
    x = np.array([[1.0] + [float(v) for v in r[2:1 + len(NAMES)]] for r in rows])
    cores = sorted(set(name))
    w = np.ones(len(y))
    print(f"{len(cores)} cores, {int(y.sum())} boundaries, {int((1 - y).sum())} other marks")
    b = fit(x, y, w)
    for n, v in zip(NAMES, b):
        print(f"    .{n} = {v:.2f},")
    part = np.array([cores.index(n) % 5 for n in name])
    p = np.zeros(len(y))
    for k in range(5):
        p[part == k] = 1 / (1 + np.exp(-x[part == k] @ fit(x[part != k], y[part != k], w[part != k])))
    wrong = (p > 0.5) != (y > 0.5)
    print(f"left out: {wrong.sum()} of {len(y)} on the wrong side of a half")
    for lo in np.arange(0, 1, 0.1):
        m = (p >= lo) & (p < lo + 0.1 + 1e-9)
        if m.any():
            print(f"  said {p[m].mean():.2f}  were {y[m].mean():.2f}  ({m.sum()})")


if __name__ == "__main__":
    main()
