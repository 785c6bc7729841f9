"""Writes one gnuplot script for all charts meant for gnuplot, and runs it.

usage: draw_gnuplot.py OUT
"""
import json
import os
import subprocess
import sys

POINTS = {"circle": 7, "square": 5, "triangle": 9, "diamond": 13, "cross": 2, "opencircle": 6, "opensquare": 4, "plus": 1}


def quoted(text):
    return "'" + text.replace("'", "''") + "'"


def scale(a, which):
    lines = [f"set {which}range [{a['low']}:{a['high']}]", f"set {which}tics {a['low']},{a['step']},{a['high']} format '%.{a['digits']}f'",
             f"set {which}label {quoted(a['title'])}"]
    if a["minor"]:
        lines.append(f"set m{which}tics {a['minor']}")
    return lines


def script(spec, path):
    w, h, size = spec["width"], spec["height"], spec["size"]
    font = "Liberation Sans" if spec["font"] == "sans" else "Liberation Serif"
    if spec["form"] == "vector":
        terminal = f"set terminal pdfcairo noenhanced size {w / 72}in,{h / 72}in font '{font},{size}' fontscale 0.75"
        thick, dots = 1.0, 1.0
    else:
        dots = spec["dpi"] / 72
        terminal = f"set terminal pngcairo noenhanced size {round(w * dots)},{round(h * dots)} font '{font},{size}' fontscale {dots * 0.75:.4f} linewidth {dots:.4f}"
        thick = 1.0
    out = ["reset", terminal, f"set output {quoted(path)}"]
    left, bottom, right, top = spec["plot"]
    out += [f"set lmargin at screen {left / w}", f"set rmargin at screen {right / w}",
            f"set bmargin at screen {bottom / h}", f"set tmargin at screen {top / h}"]
    out += scale(spec["axes"]["x"], "x") + scale(spec["axes"]["y"], "y")
    mirror = "nomirror" if spec["frame"] == "axes" or "y2" in spec["axes"] else "mirror"
    out.append(f"set xtics {mirror} {spec['ticks']}")
    out.append(f"set ytics {mirror} {spec['ticks']}")
    if "y2" in spec["axes"]:
        out += scale(spec["axes"]["y2"], "y2") + [f"set y2tics {spec['ticks']}"]
    out.append("set border 3" if spec["frame"] == "axes" and "y2" not in spec["axes"] else "set border 31")
    out.append(f"set border linewidth 0.7")
    if spec["grid"] != "none":
        grey = round(spec["gridGrey"] * 255)
        dash = "" if spec["gridDash"] is None else " dt (%s)" % ",".join(f"{max(1, round(d * 1.5))}" for d in spec["gridDash"])
        out.append(f"set grid {'xtics ' if spec['grid'] == 'both' else ''}ytics lw {spec['gridWidth']} lc rgb '#{grey:02x}{grey:02x}{grey:02x}'{dash} back")
    if spec["heading"]:
        out.append(f"set title {quoted(spec['heading'])}")
    place = spec["legend"]
    box = "box lw 0.5" if spec["legendFrame"] else "nobox"
    if place == "inside":
        out.append(f"set key inside {spec['corner']} Left reverse {box} samplen 3")
    elif place == "right":
        out.append(f"set key at screen {(right + 6) / w},{(top + bottom) / 2 / h + 0.04 * len(spec['curves'])} left top Left reverse nobox samplen 2.5")
    elif place == "below":
        out.append(f"set key at screen 0.5,{1.25 * size * (1.1 if len(spec['curves']) < 5 else 2.1) / h} center top horizontal Left reverse nobox samplen 2.5 maxcols 4")
    else:
        out.append("set key off")
    for n, t in enumerate(spec["texts"], 1):
        out.append(f"set label {n} {quoted(t['text'])} at {t['x']},{t['y']} {'center' if t['align'] == 'centre' else 'right'} front tc rgb '{t['colour']}'")
    for n, (x1, y1, x2, y2) in enumerate(spec["leaders"], 1):
        head = "size screen 0.012,20 head" if spec["arrows"] else "nohead"
        out.append(f"set arrow {n} from {x1},{y1} to {x2},{y2} {head} lw 0.5 lc rgb 'black' front")
    plots = []
    for n, c in enumerate(spec["curves"]):
        out.append(f"$c{n} << EOD")
        out += [f"{a} {b}" for a, b in zip(c["x"], c["y"])]
        out.append("EOD")
        dash = "1" if c["dash"] is None else "(%s)" % ",".join(f"{d * 2 / c['width']:.1f}" for d in c["dash"])
        if c["marker"]:
            kind = f"with linespoints pt {POINTS[c['marker']]} ps {size * 0.055:.2f} pi {max(1, len(c['x']) // 14)}"
        else:
            kind = "with lines"
        title = f"title {quoted(c['label'])}" if c["label"] else "notitle"
        axes = "axes x1y2 " if c["right"] else ""
        plots.append(f"$c{n} using 1:2 {axes}{kind} lw {c['width'] * 2 * thick if spec['form'] == 'vector' else c['width']:.2f} dt {dash} lc rgb '{c['colour']}' {title}")
    out.append("plot " + ", \\\n  ".join(plots))
    out.append("set output")
    return "\n".join(out)


def main():
    work = os.path.join(sys.argv[1], "work")
    with open(os.path.join(work, "specs.json")) as f:
        specs = [s for s in json.load(f) if s["renderer"] == "gnuplot"]
    text = "\n".join(script(s, os.path.join(work, s["name"] + (".pdf" if s["form"] == "vector" else ".png"))) for s in specs)
    path = os.path.join(work, "charts.gp")
    with open(path, "w") as f:
        f.write("set encoding utf8\n" + text + "\n")
    subprocess.run(["gnuplot", path], check=True)


if __name__ == "__main__":
    main()
