"""What each kind of chart says: curves with labels, conditions and data, captions, axes.

A chart here has no looks yet; `design.py` gives it some. Numbers are canonical (A.h, V, A, s, %).
"""
import numpy as np

CHARGE_SPELLINGS = [
    "Charge: CC-CV {rate:g}C (max) {volt:.2f}V, {end:g}mA cut-off at 25°C",
    "Charge: {rate:g}C CC/CV to {volt:.2f} V, end current {end:g} mA, 25 °C",
    "Charging: CC-CV, {rate:g}C, {volt:.2f}V",
]
RATE_LABELS = ["{r:g}C", "{r:g} C", "{r:g}C ({ma:.0f}mA)", "{a:.3g}A", "{a:.3g} A", "{ma:.0f} mA", "{r:g}C ({a:.3g}A)"]
WARMTH_LABELS = ["{t:g}°C", "{t:g} °C", "{t:+g}°C"]
# Share of the capacity and drop in volts by temperature: invented, of the size cells show.
WARMTH = {60: (1.005, -0.015), 45: (1.0, -0.008), 40: (0.998, -0.005), 25: (0.985, 0.0), 10: (0.95, 0.05),
          0: (0.9, 0.1), -10: (0.81, 0.18), -20: (0.68, 0.29)}


def thinned(x, y, most):
    """At most so many of the points, the first and last among them."""
    if len(x) <= most:
        return np.asarray(x, float), np.asarray(y, float)
    keep = np.unique(np.round(np.linspace(0, len(x) - 1, most)).astype(int))
    # The steep start and end of a discharge need their points, whatever the step.
    keep = np.unique(np.concatenate([keep, np.arange(0, len(x), max(1, len(x) // (most * 4)))[: most // 8],
                                     len(x) - 1 - np.arange(0, len(x), max(1, len(x) // (most * 4)))[: most // 8]]))
    return np.asarray(x, float)[keep], np.asarray(y, float)[keep]


def _labels(rng, spelling, rate, amps):
    label = spelling.format(r=rate, a=amps, ma=amps * 1000)
    conditions = {}
    if "{r" in spelling:
        conditions["dischargeRate"] = rate
    if "{a" in spelling:
        conditions["dischargeCurrent"] = float(f"{amps:.3g}")
    if "{ma" in spelling:
        conditions["dischargeCurrent"] = round(amps, 3)
    return label, conditions


def _charge(rng, family, common):
    rate = rng.choice([0.3, 0.5, 1])
    volt = 4.2
    end = round(family.nominal * 1000 * rng.choice([0.02, 0.025, 0.05]))
    text = rng.choice(CHARGE_SPELLINGS).format(rate=rate, volt=volt, end=end)
    common["chargeRate"], common["chargeVoltage"] = rate, volt
    return text


def by_rate(rng, family, count, most):
    """Discharge curves of one cell at several rates."""
    low, high = family.rates[0], family.rates[-1]
    pool = [r for r in (0.1, 0.2, 0.3, 0.5, 0.7, 1, 1.5, 2, 2.5, 3) if low <= r <= high]
    measured = [r for r in family.rates]
    rates = sorted(set(measured if count >= len(measured) else rng.sample(measured, count)))
    others = [r for r in pool if r not in rates]
    while len(rates) < count and others:
        rates.append(others.pop(rng.randrange(len(others))))
    rates.sort()
    spelling = rng.choice(RATE_LABELS)
    common, captions = {"temperature": 25, "cutoffVoltage": family.cutoff}, []
    captions.append(_charge(rng, family, common))
    captions.append(rng.choice([
        "Discharge: CC, {v:.2f}V cut-off at 25°C", "Discharge: constant current to {v:.1f} V, 25 °C",
    ]).format(v=family.cutoff))
    curves = []
    for rate in rates:
        (q, v), real = family.at(rate)
        inside = v >= family.cutoff - 0.02
        q, v = thinned(q[inside], v[inside], most)
        label, own = _labels(rng, spelling, rate, rate * family.nominal)
        curves.append({"label": label, "own": own, "x": q, "y": v, "origin": "measured" if real else "interpolated"})
    return {
        "kind": "discharge", "what": "rate", "common": common, "captions": captions, "curves": curves,
        "title": rng.choice(["Discharge characteristics (by rate of discharge)", "Discharge rate characteristics",
                             "Rate discharge curves", "Discharge Characteristics"]),
        "x": {"quantity": "capacity"}, "y": {"quantity": "voltage"}, "nominal": family.nominal, "source": family.name,
    }


def by_temperature(rng, family, count, most):
    """One measured curve, shifted to look like several temperatures."""
    rate = rng.choice([0.2, 0.5, 1]) if family.name != "nissan_leaf_ornl" else 1
    (q, v), _ = family.at(rate)
    warmths = sorted(rng.sample([60, 45, 25, 10, 0, -10, -20], count), reverse=rng.random() < 0.5)
    spelling, minus = rng.choice(WARMTH_LABELS), rng.choice(["-", "-", "−"])
    common, captions = {"cutoffVoltage": family.cutoff, "dischargeRate": rate}, []
    captions.append(_charge(rng, family, common))
    captions.append(rng.choice([
        "Discharge: CC {r:g}C, {v:.2f}V cut-off at each temperature", "Discharge: {r:g}C to {v:.1f} V",
    ]).format(r=rate, v=family.cutoff))
    curves = []
    for t in warmths:
        share, drop = WARMTH[t]
        shifted = v - drop * (1 - 0.35 * q / q[-1]) + 0.12 * max(0, drop) * np.exp(-20 * q / q[-1]) * -1
        inside = shifted >= family.cutoff - 0.005
        x, y = thinned((q * share)[inside], shifted[inside], most)
        curves.append({"label": spelling.format(t=t).replace("-", minus), "own": {"temperature": t},
                       "x": x, "y": y, "origin": "measured curve, shifted"})
    return {
        "kind": "discharge", "what": "temperature", "common": common, "captions": captions, "curves": curves,
        "title": rng.choice(["Discharge characteristics (by temperature)", "Temperature characteristics",
                             "Discharge Temperature Characteristics"]),
        "x": {"quantity": "capacity"}, "y": {"quantity": "voltage"}, "nominal": family.nominal, "source": family.name,
    }


def charge(rng, data):
    """A measured charge over time: voltage on the left, current or capacity on the right."""
    t, v, i, q = data
    right = rng.choice(["current", "capacity"])
    other = i if right == "current" else q
    keep = slice(None)
    curves = [
        {"label": rng.choice(["Voltage", "Cell voltage", "VOLTAGE"]), "own": {}, "x": t[keep], "y": v[keep],
         "origin": "measured", "quantity": "voltage"},
        {"label": {"current": rng.choice(["Current", "Charge current", "CURRENT"]), "capacity": rng.choice(["Capacity", "Charged capacity"])}[right],
         "own": {}, "x": t[keep], "y": other[keep], "origin": "measured", "quantity": right, "right": True},
    ]
    common = {"chargeRate": 0.5, "chargeVoltage": 4.2, "temperature": 25}
    return {
        "kind": "charge", "what": "charge", "common": common, "captions": ["Charge: CC-CV 0.5C, 4.20V at 25°C"],
        "curves": curves, "title": rng.choice(["Charge characteristics", "Charging characteristics"]),
        "x": {"quantity": "time"}, "y": {"quantity": "voltage"}, "y2": {"quantity": right}, "nominal": 30.6, "source": "nissan_leaf_ornl",
    }


def cycle_life(rng, count, most):
    """Fade of the capacity over cycles; invented."""
    cycles = rng.choice([300, 500, 800, 1000])
    nominal = rng.choice([2.6, 2.9, 3.2, 5.0])
    n = np.linspace(0, cycles, most)
    by = rng.choice(["rate", "temperature"])
    keys = [0.5, 1, 2, 3] if by == "rate" else [25, 45, 10, 0]
    curves = []
    for k in range(count):
        end = 0.9 - 0.075 * k - rng.uniform(0, 0.03)
        share = 1 - (1 - end) * (0.25 * np.sqrt(n / cycles) + 0.75 * (n / cycles) ** rng.uniform(0.95, 1.4))
        wave = rng.uniform(0, 6)
        share = share + 0.0012 * np.sin(n / cycles * 40 + wave) * (n > 0)
        if by == "rate":
            label, own = f"{keys[k]:g}C", {"dischargeRate": keys[k]}
        else:
            label, own = f"{keys[k]}°C", {"temperature": keys[k]}
        curves.append({"label": label, "own": own, "x": n, "y": nominal * share, "origin": "invented"})
    common = {"chargeRate": 0.5, "chargeVoltage": 4.2, "cutoffVoltage": 2.5}
    if by == "rate":
        common["temperature"] = 25
        captions = ["Charge: CC-CV 0.5C, 4.20V, 50mA cut-off at 25°C", "Discharge: CC, 2.50V cut-off at 25°C"]
    else:
        common["dischargeRate"] = 1
        captions = ["Charge: CC-CV 0.5C, 4.20V, 50mA cut-off", "Discharge: CC 1C, 2.50V cut-off"]
    if count == 1:
        curves[0]["label"] = None
        common.update(curves[0]["own"])
        curves[0]["own"] = {}
        captions[1] = "Discharge: CC 0.5C, 2.50V cut-off at 25°C"
        common.update({"dischargeRate": 0.5, "temperature": 25})
    return {
        "kind": "cycle-life", "what": "cycles", "common": common, "captions": captions, "curves": curves,
        "title": rng.choice(["Cycle life characteristics", "Cycle life"]),
        "x": {"quantity": "cycles"}, "y": {"quantity": "capacity"}, "nominal": nominal, "source": "invented",
    }


def over_temperature(rng, most):
    """Capacity over temperature at one to three rates; invented."""
    nominal = rng.choice([2.6, 2.9, 3.2])
    t = np.arange(-20, 61, 5.0)
    curves = []
    for k, rate in enumerate([0.2, 0.5, 1][: rng.choice([1, 2, 3])]):
        y = nominal * (0.99 - 0.02 * k - (0.25 + 0.08 * k) * (np.clip(30 - t, 0, None) / 50) ** 1.6)
        curves.append({"label": f"{rate:g}C", "own": {"dischargeRate": rate}, "x": t, "y": y, "origin": "invented"})
    common = {"chargeRate": 0.5, "chargeVoltage": 4.2, "cutoffVoltage": 2.75}
    captions = ["Charge: CC-CV 0.5C, 4.20V at 25°C", "Discharge: CC, 2.75V cut-off"]
    if len(curves) == 1:
        curves[0].update(label=None, own={})
        common["dischargeRate"] = 0.2
        captions[1] = "Discharge: CC 0.2C, 2.75V cut-off"
    return {
        "kind": "capacity-over-temperature", "what": "warmth", "common": common, "captions": captions,
        "curves": curves, "title": "Capacity over temperature",
        "x": {"quantity": "temperature"}, "y": {"quantity": "capacity"}, "nominal": nominal, "source": "invented",
    }
