"""Places labels inside a plot, near their curves or with leader lines, as an engineer would."""
import numpy as np

DASHES = [None, [6, 3], [1.5, 2], [6, 2, 1.5, 2], [10, 3], [3, 3], [10, 3, 1.5, 3, 1.5, 3], [1.5, 4]]


class Frame:
    """The plot in points: where a value stands, how near anything else is."""

    def __init__(self, spec):
        self.left, self.bottom, self.right, self.top = spec["plot"]
        self.x, self.y = spec["axes"]["x"], spec["axes"]["y"]
        self.lines = []
        for c in spec["curves"]:
            px = self.left + (np.array(c["x"]) - self.x["low"]) / (self.x["high"] - self.x["low"]) * (self.right - self.left)
            py = self.bottom + (np.array(c["y"]) - self.y["low"]) / (self.y["high"] - self.y["low"]) * (self.top - self.bottom)
            dense = np.linspace(0, len(px) - 1, max(800, len(px)))
            k = np.arange(len(px))
            self.lines.append(np.column_stack([np.interp(dense, k, px), np.interp(dense, k, py)]))

    def values(self, px, py):
        x = self.x["low"] + (px - self.left) / (self.right - self.left) * (self.x["high"] - self.x["low"])
        y = self.y["low"] + (py - self.bottom) / (self.top - self.bottom) * (self.y["high"] - self.y["low"])
        return float(x), float(y)


def _gap(line, box):
    """Distance from a box to the nearest point of a line."""
    dx = np.maximum(np.maximum(box[0] - line[:, 0], line[:, 0] - box[2]), 0)
    dy = np.maximum(np.maximum(box[1] - line[:, 1], line[:, 1] - box[3]), 0)
    return float(np.hypot(dx, dy).min())


def _overlaps(a, b, air):
    return a[0] < b[2] + air and b[0] < a[2] + air and a[1] < b[3] + air and b[1] < a[3] + air


def _near(rng, frame, spec):
    size, boxes, texts = spec["size"], [], []
    for k, c in enumerate(spec["curves"]):
        wide, line = 0.58 * size * len(c["label"]), frame.lines[k]
        best = None
        for at in rng.sample(range(40, len(line) - 4, 9), len(range(40, len(line) - 4, 9))):
            for side in ("above", "below", "right"):
                px, py = line[at]
                if side == "right":
                    box = [px + 3, py - size * 0.4, px + 3 + wide, py + size * 0.4]
                else:
                    # Clear of the curve over the whole width of the label, however it slopes.
                    under = line[np.abs(line[:, 0] - px) <= wide / 2, 1]
                    foot = under.max() + 2 if side == "above" else under.min() - 2 - 0.75 * size
                    box = [px - wide / 2, foot, px + wide / 2, foot + 0.75 * size]
                if box[0] < frame.left + 2 or box[2] > frame.right - 2 or box[1] < frame.bottom + 2 or box[3] > frame.top - 2:
                    continue
                own = _gap(line, box)
                others = min(_gap(o, box) for j, o in enumerate(frame.lines) if j != k) if len(frame.lines) > 1 else 99
                if own < 1.2 or others < 1.3 * max(own, 2) or any(_overlaps(box, b, 2) for b in boxes):
                    continue
                score = others - own
                if best is None or score > best[0]:
                    best = (score, box, side)
        if best is None:
            return None
        boxes.append(best[1])
        texts.append(best[1])
    return texts


def _leaders(rng, frame, spec):
    """Labels stacked in the free space under the curves, each with a line up to its curve."""
    size, count = spec["size"], len(spec["curves"])
    wide = 0.58 * size * max(len(c["label"]) for c in spec["curves"])
    ends = [l[-1][0] for l in frame.lines]
    order = sorted(range(count), key=lambda k: -float(np.interp(0.4, np.linspace(0, 1, len(frame.lines[k])), frame.lines[k][:, 1])))
    left = frame.left + (frame.right - frame.left) * rng.uniform(0.06, 0.2)
    floor = frame.bottom + 4
    ceiling = min(float(l[(l[:, 0] > left) & (l[:, 0] < min(ends) * 0.9 + left * 0.1), 1].min()) for l in frame.lines) - 8
    if ceiling - floor < count * size * 1.15:
        return None
    step = min(size * 1.7, (ceiling - floor - size) / max(1, count - 1))
    top = ceiling - size * 0.5 - rng.uniform(0, max(0.0, ceiling - floor - size - step * (count - 1)))
    texts, leaders = [], []
    # The lowest label leads to the curve farthest right, so that no two lines cross.
    reach = min(ends) - (left + wide) - 20
    for rank, k in enumerate(order):
        py = top - rank * step
        box = [left, py - size * 0.4, left + wide, py + size * 0.4]
        target_x = left + wide + 14 + reach * 0.75 * (rank + 0.6) / count
        line = frame.lines[k]
        target_y = float(np.interp(target_x, line[:, 0], line[:, 1]))
        texts.append((k, box))
        leaders.append([left + wide + 2, py, target_x, target_y])
    boxes = [None] * count
    lines = [None] * count
    for (k, box), l in zip(texts, leaders):
        boxes[k], lines[k] = box, l
    return boxes, lines


def place_labels(rng, spec):
    """Adds `texts` and `leaders` in axis values; falls back to a legend where labels find no room."""
    spec["texts"], spec["leaders"] = [], []
    if spec["legend"] not in ("near", "leader"):
        if spec["legend"] == "inside":
            spec["corner"] = _free_corner(spec)
        return
    frame = Frame(spec)
    boxes = lines = None
    if spec["legend"] == "near":
        boxes = _near(rng, frame, spec)
    if boxes is None and spec["renderer"] != "office" and spec["axes"]["y"]["quantity"] == "voltage":
        found = _leaders(rng, frame, spec)
        if found:
            boxes, lines = found
            spec["legend"] = "leader"
    if boxes is None:
        spec["legend"] = "inside"
        spec["corner"] = _free_corner(spec)
        if spec["style"] == "plain":
            spec["style"] = "dash"
            for c, dash in zip(spec["curves"], DASHES):
                c["dash"] = dash
        return
    coloured = spec["style"] == "colour" and rng.random() < 0.4
    for k, (c, box) in enumerate(zip(spec["curves"], boxes)):
        x, y = frame.values((box[0] + box[2]) / 2 if lines is None else box[2], (box[1] + box[3]) / 2)
        spec["texts"].append({"text": c["label"], "x": x, "y": y, "align": "centre" if lines is None else "right",
                              "colour": c["colour"] if coloured else "#000000"})
        if lines is not None:
            a, b = frame.values(lines[k][0], lines[k][1]), frame.values(lines[k][2], lines[k][3])
            spec["leaders"].append([*a, *b])
    spec["arrows"] = rng.random() < 0.3


def _free_corner(spec):
    """The corner of the plot where a legend hides the least of the curves."""
    if spec.get("axes", {}).get("y2"):
        return "bottom right"
    frame = Frame(spec)
    size = spec["size"]
    wide = 0.62 * size * max((len(c["label"] or "") for c in spec["curves"]), default=1) + 34
    high = 1.35 * size * len(spec["curves"]) + 6
    best = None
    for corner in ("bottom left", "top right", "bottom right", "top left"):
        x0 = frame.left if "left" in corner else frame.right - wide
        y0 = frame.bottom if "bottom" in corner else frame.top - high
        hidden = sum(int(((l[:, 0] > x0) & (l[:, 0] < x0 + wide) & (l[:, 1] > y0) & (l[:, 1] < y0 + high)).sum()) for l in frame.lines)
        if best is None or hidden < best[0]:
            best = (hidden, corner)
    if best[0] > 0:
        # No corner is free: the legend goes below, and the plot makes room for it.
        spec["legend"] = "below"
        rows = (1.7 if len(spec["curves"]) < 5 else 2.9) + (2.5 if spec["renderer"] == "office" else 0)
        spec["plot"][1] += rows * size
    return best[1]
