"""Gives every chart its looks and its page, by a seed, and writes what the renderers draw and the truths.

usage: design.py MEASUREMENTS OUT VECTORS BITMAPS
"""
import json
import math
import os
import random
import sys

import numpy as np

import families_of_charts as charts
import measurements
from labels import DASHES, place_labels

RENDERERS = ["gnuplot", "matplotlib", "r", "office", "jfree"]
PALETTES = [
    ["#1f77b4", "#d62728", "#2ca02c", "#9467bd", "#ff7f0e", "#8c564b", "#17becf", "#e377c2"],
    ["#0000ff", "#ff0000", "#008000", "#ff00ff", "#000000", "#00a0a0", "#a06000", "#800080"],
    ["#16558f", "#b03a2e", "#2e7d32", "#6a1b9a", "#ef6c00", "#00838f", "#5d4037", "#c2185b"],
    ["#e41a1c", "#377eb8", "#4daf4a", "#984ea3", "#ff7f00", "#666666", "#a65628", "#f781bf"],
]
MARKERS = ["circle", "square", "triangle", "diamond", "cross", "opencircle", "opensquare", "plus"]
# Factor from the canonical unit to the one on the axis, its spellings, whether the axis names it.
UNITS = {
    "capacity": [("mAh", 1000, "A.h"), ("Ah", 1, "A.h"), ("%", None, "%")],
    "voltage": [("V", 1, "V")],
    "current": [("A", 1, "A"), ("mA", 1000, "A")],
    "time": [("min", 1 / 60, "s"), ("h", 1 / 3600, "s"), ("s", 1, "s")],
    "cycles": [("", 1, "1")],
    "temperature": [("°C", 1, "Cel")],
}
NAMES = {
    "capacity": ["Discharge capacity", "Capacity", "Discharge Capacity", "Discharged capacity"],
    "voltage": ["Voltage", "Cell voltage", "Terminal voltage"],
    "current": ["Current", "Charge current"],
    "time": ["Time", "Charge time", "Charging time"],
    "cycles": ["Cycle number", "Number of cycles", "Cycles"],
    "temperature": ["Temperature", "Ambient temperature"],
}
MAKERS = ["Wrenholt", "Gannetby", "Osierfield", "Tarnmere", "Plovermoor", "Sedgewick Mere", "Kittiwell"]


def nice_step(span, wanted):
    raw = span / wanted
    size = 10 ** math.floor(math.log10(raw))
    return min((m * size for m in (1, 2, 2.5, 5, 10)), key=lambda s: abs(math.log(s / raw)))


def axis(rng, quantity, values, nominal, canonical_low=None, percent=False, start_at_zero=True):
    """An axis as printed: its title, range and step, and how it maps to the canonical unit."""
    if quantity == "capacity":
        unit, factor, canonical = UNITS["capacity"][2] if percent else rng.choice(UNITS["capacity"][:2])
        if nominal > 20:
            unit, factor, canonical = UNITS["capacity"][2] if percent else UNITS["capacity"][1]
        if percent:
            factor = 100 / nominal
    else:
        unit, factor, canonical = rng.choice(UNITS[quantity])
    if quantity == "current" and nominal > 20:
        unit, factor, canonical = UNITS["current"][0]
    shown = np.concatenate([np.asarray(v) for v in values]) * factor
    high, low = float(shown.max()), float(shown.min())
    if start_at_zero and low >= 0:
        low = 0
    step = nice_step(high - low, rng.choice([5, 6, 8]))
    if quantity == "voltage":
        step = rng.choice([0.2, 0.5, 0.25])
        low = math.floor((float(shown.min()) - rng.choice([0, 0.1, 0.3])) / step + 1e-9) * step
        high = math.ceil((float(shown.max()) + 0.02) / step - 1e-9) * step
        if high - shown.max() < 0.03:
            high += step
    else:
        low = math.floor(low / step + 1e-9) * step
        high = math.ceil(high * 1.02 / step - 1e-9) * step
    digits = max(0, -math.floor(math.log10(step) + 1e-9))
    if step == 0.25 or round(step / 10 ** math.floor(math.log10(step)), 3) == 2.5:
        digits = max(digits, 1 - math.floor(math.log10(step)))
    if quantity == "voltage":
        digits = max(digits, 1)
    name = rng.choice(NAMES[quantity])
    form = rng.choice(["{n} ({u})", "{n} [{u}]", "{n} / {u}", "{n}, {u}", "{n} ({u})", "{n} ({u})"]) if unit else "{n}"
    return {
        "title": form.format(n=name, u=unit), "low": round(low, 9), "high": round(high, 9), "step": round(step, 9),
        "digits": digits, "factor": factor, "minor": rng.choice([0, 0, 2, 5]),
        "quantity": quantity, "canonical": canonical, "percent_of": nominal if canonical == "%" else None,
    }


def looks(rng, renderer, chart, mono):
    width = rng.choice([240, 270, 300, 340, 400, 460])
    height = round(width * rng.choice([0.58, 0.66, 0.75]))
    size = rng.choice([6.5, 7, 8, 9]) if width < 300 else rng.choice([7, 8, 9, 10])
    palette = rng.choice(PALETTES)
    style = "colour" if not mono else rng.choice(["dash", "marker", "dash", "plain"])
    weight = rng.choice([0.6, 0.8, 1.0, 1.2, 1.6])
    named = [c for c in chart["curves"] if c["label"]]
    places = ["inside", "inside", "right", "below", "near", "leader", "near", "leader"]
    if renderer == "office":
        places = ["right", "below", "inside"]
    place = rng.choice(places) if named else "none"
    if style == "plain":
        place = rng.choice(["near", "leader"]) if renderer != "office" and named else place
        style = "dash" if renderer == "office" else style
    if chart["kind"] == "charge" and place in ("near", "leader"):
        place = "inside"
    if chart["kind"] == "charge" and (renderer == "jfree" or place == "right"):
        place = "below"
    if style == "plain" and place not in ("near", "leader", "none"):
        style = "dash"
    styles = []
    for k in range(len(chart["curves"])):
        styles.append({
            "colour": palette[k] if style == "colour" else rng.choice(["#000000"]),
            "width": weight,
            "dash": DASHES[k] if style == "dash" else None,
            "marker": MARKERS[k] if style == "marker" else None,
        })
    if style == "colour" and rng.random() < 0.12:
        for k, s in enumerate(styles):
            s["dash"] = DASHES[k]
    if style == "colour" and rng.random() < 0.1:
        for k, s in enumerate(styles):
            s["marker"] = MARKERS[k]
    grid = rng.choice(["none", "both", "both", "y"])
    return {
        "width": width, "height": height, "size": size, "font": rng.choice(["sans", "sans", "serif"]),
        "legend": place, "styles": styles, "style": style,
        "grid": grid, "gridDash": rng.choice([None, None, [2, 2], [0.6, 1.8]]),
        "gridGrey": rng.choice([0.75, 0.8, 0.6, 0.88]), "gridWidth": rng.choice([0.3, 0.5]),
        "frame": rng.choice(["box", "box", "axes"]), "ticks": rng.choice(["out", "in"]),
        "legendFrame": rng.random() < 0.5, "titled": rng.random() < 0.35,
    }


def figure(rng, number, form, renderer, kind, measured, charged):
    mono = rng.random() < 0.3
    most = rng.choice([90, 160, 300, 800])
    if rng.random() < 0.08:
        most = 4000
    family = rng.choice(list(measured.values()))
    count = rng.choice([3, 3, 4, 4, 5, 5, 6, 7, 8])
    if kind == "rate":
        if family.name == "nissan_leaf_ornl":
            count = min(count, 4)
        chart = charts.by_rate(rng, family, count, most)
    elif kind == "temperature":
        chart = charts.by_temperature(rng, family, min(count, 6), most)
    elif kind == "charge":
        chart = charts.charge(rng, charged)
    elif kind == "cycles":
        chart = charts.cycle_life(rng, rng.choice([1, 1, 2, 3, 4]), rng.choice([20, 50, 100]))
    else:
        chart = charts.over_temperature(rng, most)
    look = looks(rng, renderer, chart, mono)
    if look["style"] == "marker" or any(s["marker"] for s in look["styles"]):
        for c in chart["curves"]:
            c["x"], c["y"] = charts.thinned(c["x"], c["y"], rng.choice([18, 24]) if renderer in ("office",) else 120)
    if look["legend"] == "near" and kind in ("rate", "temperature"):
        # Labels beside their curves need room: few curves, far apart, on a larger figure.
        keep = sorted({0, len(chart["curves"]) // 2, len(chart["curves"]) - 1})
        chart["curves"] = [chart["curves"][k] for k in keep]
        look["styles"] = [look["styles"][k] for k in keep]
        look["width"] = max(look["width"], 340)
        look["height"] = max(look["height"], round(look["width"] * 0.66))
    percent = kind in ("rate", "temperature", "cycles") and rng.random() < 0.15
    left = [c["y"] for c in chart["curves"] if not c.get("right")]
    x_percent = percent and kind in ("rate", "temperature")
    axes = {
        "x": axis(rng, chart["x"]["quantity"], [c["x"] for c in chart["curves"]], chart["nominal"], percent=x_percent),
        "y": axis(rng, chart["y"]["quantity"], left, chart["nominal"], percent=percent and kind == "cycles",
                  start_at_zero=kind == "cycles" and rng.random() < 0.5),
    }
    if kind == "warmth":
        axes["y"] = axis(rng, "capacity", left, chart["nominal"], start_at_zero=rng.random() < 0.5)
    if kind == "cycles" and axes["y"]["canonical"] == "A.h":
        axes["y"]["title"] = axes["y"]["title"].replace("Discharged c", "C")
    if chart.get("y2"):
        axes["y2"] = axis(rng, chart["y2"]["quantity"], [c["y"] for c in chart["curves"] if c.get("right")], chart["nominal"])
        axes["y2"]["title"] = axes["y2"]["title"].replace("Discharge ", "Charge ").replace("Discharged ", "Charged ")
    curves = []
    for c, s in zip(chart["curves"], look["styles"]):
        scale = axes["y2"] if c.get("right") else axes["y"]
        curves.append({**s, "label": c["label"], "right": bool(c.get("right")),
                       "x": [round(float(v), 7) for v in np.asarray(c["x"]) * axes["x"]["factor"]],
                       "y": [round(float(v), 7) for v in np.asarray(c["y"]) * scale["factor"]]})
    spec = {"renderer": renderer, "form": form, "axes": axes, "curves": curves, **{k: v for k, v in look.items() if k != "styles"}}
    spec["heading"] = chart["title"] if look["titled"] else None
    size = look["size"]
    below = (2.9 if look["legend"] != "below" else 4.6 if len(chart["curves"]) < 5 else 5.8) * size
    if renderer == "office" and look["legend"] == "below":
        below += 2.2 * size + (1.3 * size if len(chart["curves"]) > 4 else 0)
    beside = 0 if look["legend"] != "right" else 0.62 * size * max(len(c["label"]) for c in curves) + (30 if renderer != "office" else 52)
    spec["plot"] = [4.3 * size + 6, below + 6, look["width"] - beside - (8 if "y2" not in axes else 4.3 * size + 6) - 0.8 * size,
                    look["height"] - (8 if not spec["heading"] else 2.4 * size)]  # left, bottom, right, top in points
    place_labels(rng, spec)
    return spec, chart


def page_of(rng, spec, chart):
    """The page around the figure: heading, a little text, sometimes a table."""
    width, height = spec["width"], spec["height"]
    maker = rng.choice(MAKERS)
    size = rng.choice(["18650", "21700", "26650"]) if chart["nominal"] < 10 else "P290216"
    model = f"{maker[0]}{rng.choice('BCFHKM')}{size}-{round(chart['nominal'] * 10)}"
    page = {"size": [595, 842], "header": f"{maker} lithium-ion cells", "title": f"{model} rechargeable cell", "lines": [], "table": []}
    top = 96
    if rng.random() < 0.6:
        page["lines"].append("For survey boats, lamps, radios and instruments on the water.")
    if rng.random() < 0.5:
        page["table"] = [
            ["Nominal capacity", f"{chart['nominal'] * 1000:.0f} mAh"], ["Nominal voltage", "3.7 V"],
            ["Charging", "CC-CV 4.20 V"], ["Temperature, charge", "0 to +45 °C"], ["Temperature, discharge", "-20 to +60 °C"],
        ]
    if spec["axes"]["x"]["canonical"] == "%" or spec["axes"]["y"]["canonical"] == "%":
        page["table"] = page["table"] or [["Nominal capacity", f"{chart['nominal'] * 1000:.0f} mAh"]]
    y = top + 14 * len(page["lines"]) + 15 * len(page["table"]) + 24
    page["caption"] = {"title": None if spec["heading"] else chart["title"], "lines": chart["captions"],
                       "place": rng.choice(["above", "below"])}
    x = rng.choice([48, 60, 72]) if width > 320 or rng.random() < 0.6 else 590 - width - 40
    lines = len(chart["captions"]) + (0 if spec["heading"] else 1)
    if page["caption"]["place"] == "above":
        y += 12 * lines + 6
    page["figure"] = [x, y, width, height]
    return page


def truth_of(name, spec, chart, page):
    x = spec["axes"]["x"]
    curves = []
    for c, d in zip(chart["curves"], spec["curves"]):
        y = spec["axes"]["y2"] if d["right"] else spec["axes"]["y"]
        to = lambda a: 1 if a["canonical"] == "%" else 1 / a["factor"]
        shown = lambda a: {k: v for k, v in {
            "quantity": a["quantity"], "unit": a["canonical"], "low": a["low"] * to(a), "high": a["high"] * to(a),
            "percentOf": a["percent_of"]}.items() if v is not None}
        curves.append({
            "label": c["label"], "conditions": c["own"], "x": shown(x), "y": shown(y), "origin": c["origin"],
            "points": [[round(a * to(x), 7), round(b * to(y), 7)] for a, b in zip(d["x"], d["y"])],
        })
    return {
        "name": name, "source": chart["source"], "form": spec["form"], "renderer": spec["renderer"], "style": spec["style"],
        "dpi": spec.get("dpi"), "file": spec.get("file"), "quality": spec.get("quality"),
        "legend": spec["legend"], "grid": spec["grid"], "size": spec["size"],
        "charts": [{"page": 1, "box": page["figure"], "kind": chart["kind"], "what": chart["what"], "title": chart["title"],
                    "conditions": chart["common"], "curves": curves}],
    }


def main():
    root, out, vectors, bitmaps = sys.argv[1], sys.argv[2], int(sys.argv[3]), int(sys.argv[4])
    measured, charged = measurements.families(root), measurements.leaf_charge(root)
    kinds = ["rate", "temperature", "rate", "rate", "charge", "rate", "cycles", "temperature", "rate", "rate", "warmth"]
    specs = []
    for form, count in (("vector", vectors), ("bitmap", bitmaps)):
        os.makedirs(os.path.join(out, form), exist_ok=True)
        for n in range(count):
            rng = random.Random(f"{form}-{n}")
            renderer = RENDERERS[n % 5]
            kind = kinds[(n // 5) % len(kinds)]
            spec, chart = figure(rng, n, form, renderer, kind, measured, charged)
            name = f"{'v' if form == 'vector' else 'b'}{n:03d}-{renderer}-{kind}"
            if form == "bitmap":
                spec["dpi"] = [150, 100, 200, 75, 300, 150][(n // 5 + 2 * (n % 5)) % 6]
                spec["file"] = rng.choice(["png", "jpg"])
                if spec["file"] == "jpg":
                    spec["quality"] = rng.choice([60, 70, 75, 80, 85, 90])
                name += f"-{spec['dpi']}-{spec['file']}"
            spec["name"] = name
            page = page_of(rng, spec, chart)
            spec["page"] = page
            truth = truth_of(name, spec, chart, page)
            with open(os.path.join(out, form, name + ".truth.json"), "w") as f:
                json.dump(truth, f, ensure_ascii=False, separators=(",", ":"))
                f.write("\n")
            specs.append(spec)
    with open(os.path.join(out, "work", "specs.json"), "w") as f:
        json.dump(specs, f, ensure_ascii=False)


if __name__ == "__main__":
    main()
