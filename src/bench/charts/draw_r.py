"""Writes one R script for all charts meant for R, and runs it.

usage: draw_r.py OUT
"""
import json
import os
import subprocess
import sys

MARKS = {"circle": 19, "square": 15, "triangle": 17, "diamond": 18, "cross": 4, "opencircle": 1, "opensquare": 0, "plus": 3}
CORNERS = {"bottom left": "bottomleft", "top right": "topright", "bottom right": "bottomright", "top left": "topleft"}


def string(text):
    return json.dumps(text, ensure_ascii=False)


def vector(values):
    return "c(" + ",".join(repr(v) for v in values) + ")"


def dashes(dash, width):
    """R's own spelling of dashes: hexadecimal lengths in line widths."""
    if dash is None:
        return '"solid"'
    return '"' + "".join(f"{min(15, max(1, round(d / max(width, 0.75)))):x}" for d in dash) + '"'


def ticks(a):
    n = round((a["high"] - a["low"]) / a["step"])
    return [round(a["low"] + k * a["step"], 9) for k in range(n + 1)]


def axis(side, a, spec):
    at = ticks(a)
    labels = ",".join(string(f"{v:.{a['digits']}f}") for v in at)
    length = -0.4 if spec["ticks"] == "out" else 0.4
    out = [f"axis({side}, at={vector(at)}, labels=c({labels}), tcl={length}, las=1, lwd=0.7, mgp=c(2, 0.5, 0))"]
    if a["minor"]:
        minor = [round(at[0] + k * a["step"] / a["minor"], 9) for k in range((len(at) - 1) * a["minor"] + 1)]
        out.append(f"axis({side}, at={vector(minor)}, labels=FALSE, tcl={length / 2}, lwd=0, lwd.ticks=0.5)")
    return out


def script(spec, path):
    w, h, size = spec["width"], spec["height"], spec["size"]
    family = "sans" if spec["font"] == "sans" else "serif"
    if spec["form"] == "vector":
        minus = any("−" in (c["label"] or "") for c in spec["curves"])
        use = "pdf" if len(spec["curves"]) % 2 == 0 and not minus else "cairo_pdf"
        plain = ", useDingbats=FALSE" if use == "pdf" else ""
        out = [f"{use}({string(path)}, width={w / 72}, height={h / 72}, pointsize={size}, family={string('Helvetica' if use == 'pdf' and family == 'sans' else 'Times' if use == 'pdf' else family)}{plain})"]
    else:
        dpi = spec["dpi"]
        out = [f"png({string(path)}, width={round(w * dpi / 72)}, height={round(h * dpi / 72)}, res={dpi}, pointsize={size}, type='cairo', family={string(family)})"]
    left, bottom, right, top = spec["plot"]
    x, y = spec["axes"]["x"], spec["axes"]["y"]
    out.append(f"par(plt=c({left / w},{right / w},{bottom / h},{top / h}), xaxs='i', yaxs='i', cex=1, bg='white')")
    out.append(f"plot(NA, xlim=c({x['low']},{x['high']}), ylim=c({y['low']},{y['high']}), axes=FALSE, xlab='', ylab='')")
    if spec["grid"] != "none":
        grey = f"gray({spec['gridGrey']})"
        lty = '"solid"' if spec["gridDash"] is None else '"dotted"'
        out.append(f"abline(h={vector(ticks(y)[1:-1])}, col={grey}, lwd={spec['gridWidth'] * 1.33}, lty={lty})")
        if spec["grid"] == "both":
            out.append(f"abline(v={vector(ticks(x)[1:-1])}, col={grey}, lwd={spec['gridWidth'] * 1.33}, lty={lty})")
    out += axis(1, x, spec) + axis(2, y, spec)
    out.append("box(lwd=0.7)" if spec["frame"] == "box" or "y2" in spec["axes"] else "box(bty='l', lwd=0.7)")
    out.append(f"mtext({string(x['title'])}, side=1, line=1.6)")
    out.append(f"mtext({string(y['title'])}, side=2, line=2.6)")
    if spec["heading"]:
        out.append(f"mtext({string(spec['heading'])}, side=3, line=0.6, font=2)")

    def curves(of):
        for c in of:
            n = len(c["x"])
            out.append(f"x <- {vector(c['x'])}; y <- {vector(c['y'])}")
            out.append(f"lines(x, y, col={string(c['colour'])}, lwd={c['width'] * 1.33:.2f}, lty={dashes(c['dash'], c['width'])})")
            if c["marker"]:
                out.append(f"i <- seq(1, {n}, by={max(1, n // 14)}); points(x[i], y[i], pch={MARKS[c['marker']]}, col={string(c['colour'])}, cex=0.7)")

    curves([c for c in spec["curves"] if not c["right"]])
    for t in spec["texts"]:
        adj = "c(0.5,0.5)" if t["align"] == "centre" else "c(1,0.5)"
        out.append(f"text({t['x']}, {t['y']}, {string(t['text'])}, adj={adj}, col={string(t['colour'])})")
    for x1, y1, x2, y2 in spec["leaders"]:
        draw = "arrows" if spec["arrows"] else "segments"
        more = ", length=0.05" if spec["arrows"] else ""
        out.append(f"{draw}({x1},{y1},{x2},{y2}, lwd=0.6{more})")
    named = [c for c in spec["curves"] if c["label"]]
    if spec["legend"] in ("inside", "right", "below") and named:
        labels = "c(" + ",".join(string(c["label"]) for c in named) + ")"
        cols = "c(" + ",".join(string(c["colour"]) for c in named) + ")"
        ltys = "c(" + ",".join(dashes(c["dash"], c["width"]) for c in named) + ")"
        pch = ", pch=c(" + ",".join(str(MARKS[c["marker"]]) for c in named) + "), pt.cex=0.7" if named[0]["marker"] else ""
        bty = "'o', box.lwd=0.5, bg='white'" if spec["legendFrame"] and spec["legend"] == "inside" else "'n'"
        wide = x["high"] - x["low"]
        if spec["legend"] == "inside":
            where = string(CORNERS[spec["corner"]])
        elif spec["legend"] == "right":
            where = f"{x['low'] + wide * (right - left + 2) / (right - left)}, {(y['low'] + y['high']) / 2}, yjust=0.5, xpd=NA"
        else:
            where = f"{x['low'] + wide * 0.5}, {y['low'] - (y['high'] - y['low']) * (bottom - 2.5 * size) / (top - bottom)}, xjust=0.5, yjust=0, xpd=NA, ncol={len(named) if len(named) < 5 else (len(named) + 1) // 2}"
            where = where.replace(f"{y['low'] - (y['high'] - y['low']) * (bottom - 2.5 * size) / (top - bottom)}",
                                  f"{y['low'] - (y['high'] - y['low']) * (bottom - 3) / (top - bottom)}")
        out.append(f"legend({where}, legend={labels}, col={cols}, lty={ltys}, lwd={named[0]['width'] * 1.33:.2f}{pch}, bty={bty}, cex=0.95, seg.len=2.4)")
    if "y2" in spec["axes"]:
        b = spec["axes"]["y2"]
        out.append(f"par(new=TRUE); plot(NA, xlim=c({x['low']},{x['high']}), ylim=c({b['low']},{b['high']}), axes=FALSE, xlab='', ylab='')")
        curves([c for c in spec["curves"] if c["right"]])
        out += axis(4, b, spec)
        out.append(f"mtext({string(b['title'])}, side=4, line=2.6)")
    out.append("invisible(dev.off())")
    return "\n".join(out)


def main():
    work = os.path.join(sys.argv[1], "work")
    with open(os.path.join(work, "specs.json")) as f:
        specs = [s for s in json.load(f) if s["renderer"] == "r"]
    text = "\n".join(script(s, os.path.join(work, s["name"] + (".pdf" if s["form"] == "vector" else ".png"))) for s in specs)
    path = os.path.join(work, "charts.R")
    with open(path, "w") as f:
        f.write(text + "\n")
    subprocess.run(["Rscript", "--vanilla", "--encoding=UTF-8", path], check=True, env={**os.environ, "LC_ALL": "C.UTF-8"})


if __name__ == "__main__":
    main()
