"""Draws the charts meant for matplotlib.

usage: draw_matplotlib.py OUT
"""
import json
import os
import sys

import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt
from matplotlib.ticker import FormatStrFormatter, MultipleLocator, AutoMinorLocator

MARKERS = {"circle": "o", "square": "s", "triangle": "^", "diamond": "D", "cross": "x", "opencircle": "o",
           "opensquare": "s", "plus": "+"}
PLACES = {"bottom left": "lower left", "top right": "upper right", "bottom right": "lower right", "top left": "upper left"}


def scale(ax, axis, a, which):
    getattr(ax, f"set_{which}lim")(a["low"], a["high"])
    axis.set_major_locator(MultipleLocator(a["step"], ) if abs(a["low"] / a["step"] - round(a["low"] / a["step"])) < 1e-6
                           else matplotlib.ticker.FixedLocator([a["low"] + k * a["step"] for k in range(99) if a["low"] + k * a["step"] <= a["high"] + 1e-9]))
    axis.set_major_formatter(FormatStrFormatter(f"%.{a['digits']}f"))
    if a["minor"]:
        axis.set_minor_locator(AutoMinorLocator(a["minor"]))


def draw(spec, path):
    size, w, h = spec["size"], spec["width"], spec["height"]
    plt.rcParams.update({
        "font.size": size, "font.family": "DejaVu Sans" if spec["font"] == "sans" else "Liberation Serif",
        "xtick.direction": spec["ticks"], "ytick.direction": spec["ticks"], "pdf.fonttype": 42 if w > 300 else 3,
        "axes.unicode_minus": True, "axes.titlesize": size * 1.15, "axes.labelsize": size, "svg.hashsalt": "corpus",
    })
    fig = plt.figure(figsize=(w / 72, h / 72), facecolor="white")
    left, bottom, right, top = spec["plot"]
    ax = fig.add_axes([left / w, bottom / h, (right - left) / w, (top - bottom) / h])
    x, y = spec["axes"]["x"], spec["axes"]["y"]
    scale(ax, ax.xaxis, x, "x")
    scale(ax, ax.yaxis, y, "y")
    ax.set_xlabel(x["title"])
    ax.set_ylabel(y["title"])
    other = None
    if "y2" in spec["axes"]:
        other = ax.twinx()
        scale(other, other.yaxis, spec["axes"]["y2"], "y")
        other.set_ylabel(spec["axes"]["y2"]["title"])
    if spec["grid"] != "none":
        dash = spec["gridDash"]
        ax.grid(True, axis="both" if spec["grid"] == "both" else "y", color=str(spec["gridGrey"]), linewidth=spec["gridWidth"],
                linestyle="-" if dash is None else (0, [d / spec["gridWidth"] for d in dash]))
        ax.set_axisbelow(True)
    if spec["frame"] == "axes" and other is None:
        ax.spines["top"].set_visible(False)
        ax.spines["right"].set_visible(False)
    lines = []
    for c in spec["curves"]:
        target = other if c["right"] else ax
        style = "-" if c["dash"] is None else (0, [d / c["width"] for d in c["dash"]])
        marker = {}
        if c["marker"]:
            marker = {"marker": MARKERS[c["marker"]], "markersize": size * 0.55, "markevery": max(1, len(c["x"]) // 14),
                      "markeredgewidth": 0.7}
            if c["marker"].startswith("open"):
                marker["markerfacecolor"] = "white"
        lines += target.plot(c["x"], c["y"], color=c["colour"], linewidth=c["width"], linestyle=style, label=c["label"], **marker)
    place = spec["legend"]
    named = [l for l, c in zip(lines, spec["curves"]) if c["label"]]
    names = [c["label"] for c in spec["curves"] if c["label"]]
    common = {"frameon": spec["legendFrame"], "handlelength": 2.6 if spec["style"] == "dash" else 2.0, "fontsize": size * 0.95}
    if place == "inside":
        (other or ax).legend(named, names, loc=PLACES[spec["corner"]], **common)
    elif place == "right":
        ax.legend(named, names, loc="center left", bbox_to_anchor=(1.01, 0.5), **common)
    elif place == "below":
        fig.legend(named, names, loc="lower center", ncol=len(names) if len(names) < 5 else (len(names) + 1) // 2,
                   bbox_to_anchor=(0.5, 0.0), columnspacing=1.2, **common)
    for t in spec["texts"]:
        ax.text(t["x"], t["y"], t["text"], color=t["colour"], ha="center" if t["align"] == "centre" else "right",
                va="center", fontsize=size)
    for x1, y1, x2, y2 in spec["leaders"]:
        if spec["arrows"]:
            ax.annotate("", (x2, y2), (x1, y1), arrowprops={"arrowstyle": "->", "linewidth": 0.5, "shrinkA": 0, "shrinkB": 0})
        else:
            ax.plot([x1, x2], [y1, y2], color="black", linewidth=0.5)
    if spec["heading"]:
        ax.set_title(spec["heading"])
    kwargs = {"metadata": {"CreationDate": None}} if path.endswith("pdf") else {"dpi": spec["dpi"]}
    fig.savefig(path, **kwargs)
    plt.close(fig)


def main():
    work = os.path.join(sys.argv[1], "work")
    with open(os.path.join(work, "specs.json")) as f:
        specs = json.load(f)
    for spec in specs:
        if spec["renderer"] == "matplotlib":
            draw(spec, os.path.join(work, spec["name"] + (".pdf" if spec["form"] == "vector" else ".png")))


if __name__ == "__main__":
    main()
