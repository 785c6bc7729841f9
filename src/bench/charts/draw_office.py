"""Writes a text document with one chart for each chart meant for LibreOffice, and converts all to PDF.

usage: draw_office.py OUT
"""
import glob
import json
import os
import subprocess
import sys
import tempfile
import zipfile
from xml.sax.saxutils import escape, quoteattr

SPACES = " ".join(f'xmlns:{k}="{v}"' for k, v in {
    "office": "urn:oasis:names:tc:opendocument:xmlns:office:1.0", "style": "urn:oasis:names:tc:opendocument:xmlns:style:1.0",
    "text": "urn:oasis:names:tc:opendocument:xmlns:text:1.0", "table": "urn:oasis:names:tc:opendocument:xmlns:table:1.0",
    "draw": "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0", "chart": "urn:oasis:names:tc:opendocument:xmlns:chart:1.0",
    "fo": "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0", "svg": "urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0",
    "xlink": "http://www.w3.org/1999/xlink", "number": "urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0",
    "chartooo": "http://openoffice.org/2010/chart",
}.items())
SYMBOLS = {"circle": "circle", "square": "square", "triangle": "arrow-up", "diamond": "diamond", "cross": "x",
           "opencircle": "hourglass", "opensquare": "bow-tie", "plus": "plus"}
PLACES = {"right": "end", "below": "bottom"}


def text_style(spec, scale=1.0, bold=False):
    family = "Liberation Sans" if spec["font"] == "sans" else "Liberation Serif"
    weight = ' fo:font-weight="bold"' if bold else ""
    return f'<style:text-properties fo:font-family="{family}" fo:font-size="{spec["size"] * scale}pt"{weight}/>'


def styles(spec):
    out = [f'<style:style style:name="chart" style:family="chart"><style:graphic-properties draw:stroke="none" draw:fill="solid" draw:fill-color="#ffffff"/></style:style>']
    out.append(f'<style:style style:name="legend" style:family="chart"><style:graphic-properties draw:stroke="{"solid" if spec["legendFrame"] else "none"}" draw:fill="none"/>{text_style(spec)}</style:style>')
    out.append(f'<style:style style:name="title" style:family="chart">{text_style(spec, 1.15, True)}</style:style>')
    out.append(f'<style:style style:name="axistitle" style:family="chart">{text_style(spec)}</style:style>')
    out.append(f'<style:style style:name="axistitley" style:family="chart"><style:chart-properties style:rotation-angle="90"/>{text_style(spec)}</style:style>')
    frame = "solid" if spec["frame"] == "box" else "none"
    out.append(f'<style:style style:name="wall" style:family="chart"><style:graphic-properties draw:stroke="{frame}" svg:stroke-width="0.02cm" svg:stroke-color="#000000" draw:fill="none"/></style:style>')
    out.append('<style:style style:name="plot" style:family="chart"><style:chart-properties chart:treat-empty-cells="leave-gap"/></style:style>')
    grey = f"{round(spec['gridGrey'] * 255):02x}" * 3
    dash = "dash" if spec["gridDash"] else "solid"
    out.append(f'<style:style style:name="grid" style:family="chart"><style:graphic-properties draw:stroke="{dash}" draw:stroke-dash="griddash" svg:stroke-width="{spec["gridWidth"]}pt" svg:stroke-color="#{grey}"/></style:style>')
    for k, a in spec["axes"].items():
        out.append(f'<number:number-style style:name="n{k}"><number:number number:decimal-places="{a["digits"]}" number:min-decimal-places="{a["digits"]}" number:min-integer-digits="1"/></number:number-style>')
        ticks = 'chart:tick-marks-major-inner="{}" chart:tick-marks-major-outer="{}"'.format(*(("true", "false") if spec["ticks"] == "in" else ("false", "true")))
        minor = f' chart:interval-minor-divisor="{a["minor"]}" chart:tick-marks-minor-outer="true"' if a["minor"] else ""
        place = "end" if k == "y2" else "start"
        out.append(f'<style:style style:name="{k}" style:family="chart" style:data-style-name="n{k}"><style:chart-properties chart:display-label="true" {ticks}{minor} '
                   f'chart:minimum="{a["low"]}" chart:maximum="{a["high"]}" chart:interval-major="{a["step"]}" chart:axis-position="{place}" chart:axis-label-position="outside-{place}" chart:link-data-style-to-source="false"/>'
                   f'<style:graphic-properties svg:stroke-color="#000000" svg:stroke-width="0.02cm"/>{text_style(spec)}</style:style>')
    for n, c in enumerate(spec["curves"]):
        symbol = f'chart:symbol-type="named-symbol" chart:symbol-name="{SYMBOLS[c["marker"]]}" chart:symbol-width="{spec["size"] * 0.55}pt" chart:symbol-height="{spec["size"] * 0.55}pt"' if c["marker"] else 'chart:symbol-type="none"'
        stroke = f'draw:stroke="dash" draw:stroke-dash="dash{n}"' if c["dash"] else 'draw:stroke="solid"'
        out.append(f'<style:style style:name="s{n}" style:family="chart"><style:chart-properties {symbol}/><style:graphic-properties {stroke} svg:stroke-width="{c["width"]}pt" svg:stroke-color="{c["colour"]}" draw:fill-color="{c["colour"]}"/></style:style>')
    return "".join(out)


def dashes(spec):
    """Dash patterns live among the chart's own styles."""
    out = ['<draw:stroke-dash draw:name="griddash" draw:style="rect" draw:dots1="1" draw:dots1-length="2pt" draw:distance="2pt"/>']
    for n, c in enumerate(spec["curves"]):
        if c["dash"]:
            d = c["dash"]
            second = f' draw:dots2="1" draw:dots2-length="{d[2]}pt"' if len(d) > 2 else ""
            out.append(f'<draw:stroke-dash draw:name="dash{n}" draw:style="rect" draw:dots1="1" draw:dots1-length="{d[0]}pt"{second} draw:distance="{d[1]}pt"/>')
    return "".join(out)


def column(k):
    return chr(65 + k) if k < 26 else chr(64 + k // 26) + chr(65 + k % 26)


def chart(spec):
    rows = max(len(c["x"]) for c in spec["curves"])
    out = [f'<office:document-content {SPACES} office:version="1.3"><office:automatic-styles>{styles(spec)}</office:automatic-styles><office:body><office:chart>']
    out.append(f'<chart:chart svg:width="{spec["width"]}pt" svg:height="{spec["height"]}pt" chart:class="chart:scatter" chart:style-name="chart">')
    if spec["heading"]:
        out.append(f'<chart:title chart:style-name="title"><text:p>{escape(spec["heading"])}</text:p></chart:title>')
    place = spec["legend"]
    if place in PLACES:
        out.append(f'<chart:legend chart:legend-position="{PLACES[place]}" chart:style-name="legend"/>')
    elif place == "inside":
        left, bottom, right, top = spec["plot"]
        wide = 0.6 * spec["size"] * max(len(c["label"] or "") for c in spec["curves"]) + 34
        high = 1.3 * spec["size"] * len(spec["curves"]) + 4
        x = left + 8 if "left" in spec["corner"] else right - wide - 8
        y = spec["height"] - bottom - high - 12 if "bottom" in spec["corner"] else spec["height"] - top + 12
        out.append(f'<chart:legend svg:x="{x}pt" svg:y="{y}pt" chart:style-name="legend" chart:legend-position="end"/>')
    left, bottom, right, top = spec["plot"]
    region = f'svg:x="{left}pt" svg:y="{spec["height"] - top}pt" svg:width="{right - left}pt" svg:height="{top - bottom}pt"'
    out.append(f'<chart:plot-area chart:style-name="plot" chart:data-source-has-labels="both" {region}><chartooo:coordinate-region {region}/>')
    for k, a in spec["axes"].items():
        name = {"x": "primary-x", "y": "primary-y", "y2": "secondary-y"}[k]
        grid = ""
        if spec["grid"] == "both" and k != "y2" or spec["grid"] == "y" and k == "y":
            grid = '<chart:grid chart:style-name="grid" chart:class="major"/>'
        title = f'<chart:title chart:style-name="{"axistitle" if k == "x" else "axistitley"}"><text:p>{escape(a["title"])}</text:p></chart:title>'
        out.append(f'<chart:axis chart:dimension="{k[0]}" chart:name="{name}" chart:style-name="{k}">{title}{grid}</chart:axis>')
    for n, c in enumerate(spec["curves"]):
        x, y, last = column(2 * n + 1), column(2 * n + 2), len(c["x"]) + 1
        to = "secondary-y" if c["right"] else "primary-y"
        label = f' chart:label-cell-address="local-table.${y}$1"' if c["label"] else ""
        out.append(f'<chart:series chart:style-name="s{n}" chart:values-cell-range-address="local-table.${y}$2:.${y}${last}"{label} chart:class="chart:scatter" chart:attached-axis="{to}">'
                   f'<chart:domain table:cell-range-address="local-table.${x}$2:.${x}${last}"/></chart:series>')
    out.append('<chart:wall chart:style-name="wall"/></chart:plot-area><table:table table:name="local-table"><table:table-header-columns><table:table-column/></table:table-header-columns>'
               f'<table:table-columns><table:table-column table:number-columns-repeated="{2 * len(spec["curves"])}"/></table:table-columns>')
    out.append("<table:table-header-rows><table:table-row><table:table-cell/>")
    for c in spec["curves"]:
        out.append('<table:table-cell/><table:table-cell office:value-type="string"><text:p>%s</text:p></table:table-cell>' % escape(c["label"] or ""))
    out.append("</table:table-row></table:table-header-rows><table:table-rows>")
    for r in range(rows):
        out.append(f'<table:table-row><table:table-cell office:value-type="string"><text:p>{r + 1}</text:p></table:table-cell>')
        for c in spec["curves"]:
            for values in (c["x"], c["y"]):
                if r < len(values):
                    out.append(f'<table:table-cell office:value-type="float" office:value="{values[r]}"><text:p>{values[r]}</text:p></table:table-cell>')
                else:
                    out.append("<table:table-cell/>")
        out.append("</table:table-row>")
    out.append("</table:table-rows></table:table></chart:chart></office:chart></office:body></office:document-content>")
    return "".join(out)


def document(spec, path):
    w, h = spec["width"], spec["height"]
    styles_xml = (f'<office:document-styles {SPACES} office:version="1.3"><office:automatic-styles><style:page-layout style:name="p">'
                  f'<style:page-layout-properties fo:page-width="{w}pt" fo:page-height="{h}pt" fo:margin="0pt" style:print-orientation="landscape"/></style:page-layout></office:automatic-styles>'
                  '<office:master-styles><style:master-page style:name="Standard" style:page-layout-name="p"/></office:master-styles></office:document-styles>')
    content = (f'<office:document-content {SPACES} office:version="1.3"><office:automatic-styles><style:style style:name="f" style:family="graphic">'
               '<style:graphic-properties style:vertical-pos="top" style:vertical-rel="page" style:horizontal-pos="left" style:horizontal-rel="page" style:wrap="run-through" style:run-through="foreground"/></style:style></office:automatic-styles><office:body><office:text>'
               f'<text:p><draw:frame draw:style-name="f" draw:name="c" text:anchor-type="paragraph" svg:x="0pt" svg:y="0pt" svg:width="{w}pt" svg:height="{h}pt">'
               '<draw:object xlink:href="./Object 1" xlink:type="simple" xlink:show="embed" xlink:actuate="onLoad"/></draw:frame></text:p></office:text></office:body></office:document-content>')
    chart_styles = f'<office:document-styles {SPACES} office:version="1.3"><office:styles>{dashes(spec)}</office:styles></office:document-styles>'
    entry = '<manifest:file-entry manifest:full-path="{}" manifest:media-type="{}"/>'
    manifest = ('<manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" manifest:version="1.3">'
                + entry.format("/", "application/vnd.oasis.opendocument.text") + entry.format("content.xml", "text/xml") + entry.format("styles.xml", "text/xml")
                + entry.format("Object 1/", "application/vnd.oasis.opendocument.chart") + entry.format("Object 1/content.xml", "text/xml") + entry.format("Object 1/styles.xml", "text/xml")
                + "</manifest:manifest>")
    head = '<?xml version="1.0" encoding="UTF-8"?>'
    with zipfile.ZipFile(path, "w") as z:
        z.writestr("mimetype", "application/vnd.oasis.opendocument.text", zipfile.ZIP_STORED)
        for name, text in (("content.xml", content), ("styles.xml", styles_xml), ("Object 1/content.xml", chart(spec)),
                           ("Object 1/styles.xml", chart_styles), ("META-INF/manifest.xml", manifest)):
            z.writestr(name, head + text, zipfile.ZIP_DEFLATED)


def main():
    work = os.path.join(sys.argv[1], "work")
    with open(os.path.join(work, "specs.json")) as f:
        specs = [s for s in json.load(f) if s["renderer"] == "office"]
    with tempfile.TemporaryDirectory() as home:
        for s in specs:
            document(s, os.path.join(work, s["name"] + ".odt"))
        files = sorted(glob.glob(os.path.join(work, "*.odt")))
        for start in range(0, len(files), 40):
            subprocess.run(["soffice", "--headless", f"-env:UserInstallation=file://{home}", "--convert-to", "pdf", "--outdir", work,
                            *files[start:start + 40]], check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    for s in specs:
        if s["form"] == "bitmap":
            base = os.path.join(work, s["name"])
            subprocess.run(["pdftoppm", "-r", str(s["dpi"]), "-png", "-singlefile", base + ".pdf", base], check=True)


if __name__ == "__main__":
    main()
