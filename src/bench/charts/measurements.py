"""The open measurements the charts are drawn from: families of discharge curves, one charge.

Each folder of the measurements holds its licence and source. Between two measured rates a curve can
be asked for as well: it is interpolated at equal shares of the capacity, linear in the logarithm of
the rate, so that charts with many curves keep measured shapes. Its truth says `interpolated`.
"""
import csv
import os

import numpy as np

# Time and voltage only; the current is the rate times the capacity of the parameter set (2.28 A.h).
ENERTECH_CAPACITY = 2.28


class Family:
    """Discharge curves of one cell by rate: rate -> (capacity in A.h, voltage in V)."""

    def __init__(self, name, nominal, cutoff, curves):
        self.name, self.nominal, self.cutoff, self.curves = name, nominal, cutoff, curves
        self.rates = sorted(curves)

    def at(self, rate):
        """The curve at a rate, and whether it was measured."""
        if rate in self.curves:
            return self.curves[rate], True
        low = max(r for r in self.rates if r < rate)
        high = min(r for r in self.rates if r > rate)
        share = np.log(rate / low) / np.log(high / low)
        s = np.linspace(0, 1, 600)
        ends, volts = [], []
        for r in (low, high):
            q, v = self.curves[r]
            ends.append(q[-1])
            volts.append(np.interp(s, q / q[-1], v))
        end = ends[0] * (1 - share) + ends[1] * share
        return (s * end, volts[0] * (1 - share) + volts[1] * share), False


def _enertech(folder):
    curves = {}
    for rate in (0.1, 0.5, 1, 2):
        t, v = np.loadtxt(os.path.join(folder, f"{rate:g}C_discharge_U.txt"), unpack=True)
        curves[rate] = (t / 3600 * rate * ENERTECH_CAPACITY, v)
    return Family("pybamm_enertech", ENERTECH_CAPACITY, 3.0, curves)


def _kokam(folder):
    curves = {}
    for rate in (0.2, 0.5, 1, 2, 3):
        name = f"Characterisation_{rate:g}C_CC_discharge.csv"
        q, v = np.loadtxt(os.path.join(folder, name), delimiter=",", unpack=True)
        curves[rate] = (q, v)
    return Family("slide_kokam", 2.6, 2.7, curves)


def _runs(path):
    """Stretches of one mode in a cycler's log: (mode, rows of time, current, voltage)."""
    runs, mode = [], None
    with open(path, newline="") as f:
        for row in csv.reader(f):
            if row[0] != "No":
                continue
            if row[13] != mode:
                mode = row[13]
                runs.append((mode, []))
            runs[-1][1].append([float(row[1]), float(row[8]), float(row[9])])
    return [(m, np.array(r)) for m, r in runs]


def _through(rows):
    """Capacity in A.h passed since the start of a run."""
    t, i = rows[:, 0], np.abs(rows[:, 1])
    return np.concatenate([[0], np.cumsum(np.diff(t) * (i[1:] + i[:-1]) / 2)]) / 3600


def _leaf(folder):
    curves = {}
    for rate in (1, 2, 3):
        runs = _runs(os.path.join(folder, f"{rate}C-Discharge-Bitrode-data.csv"))
        rows = next(r for m, r in runs if m == "DCHG")
        curves[rate] = (_through(rows), rows[:, 2])
    return Family("nissan_leaf_ornl", 30.6, 3.1, curves)


def leaf_charge(root):
    """Time in s, voltage in V, current in A, capacity in A.h of one measured CC-CV charge."""
    runs = _runs(os.path.join(root, "nissan_leaf_ornl", "1C-Discharge-Bitrode-data.csv"))
    rows = [r for m, r in runs if m == "CHRG" and len(r) > 50][1]
    return rows[:, 0] - rows[0, 0], rows[:, 2], np.abs(rows[:, 1]), _through(rows)


def families(root):
    return {
        "enertech": _enertech(os.path.join(root, "pybamm_enertech")),
        "kokam": _kokam(os.path.join(root, "slide_kokam")),
        "leaf": _leaf(os.path.join(root, "nissan_leaf_ornl")),
    }
