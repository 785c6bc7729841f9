// Values of an axis as its chart prints them: the record keeps A·h where the chart says mAh.

/** The units that an axis can be typed in: those that the record keeps in one and the same. */
export function unitsOf(measures, quantity) {
  return measures.find((each) => each.quantity === quantity)?.units ?? [];
}

/** The unit that an axis is shown in; one of its own where the list does not have it. */
export function unitOf(measures, axis) {
  return (
    unitsOf(measures, axis.quantity).find((unit) => unit.code === axis.shown) ?? {
      code: axis.unit,
      shown: axis.unit === '1' ? '' : axis.unit,
      kept: axis.unit,
      factor: 1,
      shift: 0,
    }
  );
}

/** The unit whose numbers are those printed at the marks; the one kept where none is. */
export function printedUnit(measures, axis) {
  const candidates = unitsOf(measures, axis.quantity).filter((unit) => unit.kept === axis.unit);
  const fits = (unit) =>
    axis.ticks.every((tick) => {
      const printed = Number.parseFloat(String(tick.text).replace(/[,\s]/g, '').replace('−', '-'));
      return Math.abs(printed * unit.factor + unit.shift - tick.value) <= 1e-6 * Math.max(1, Math.abs(tick.value));
    });
  return (candidates.find((unit) => axis.ticks.length && fits(unit)) ?? candidates[0])?.code ?? axis.unit;
}

export const toShown = (unit, value) => (value - unit.shift) / unit.factor;
export const toKept = (unit, number) => number * unit.factor + unit.shift;

/** A number with as many digits as a step is worth. */
export function digits(value, step) {
  if (!Number.isFinite(value)) {
    return '–';
  }
  const places = step > 0 ? Math.min(8, Math.max(0, Math.ceil(-Math.log10(step)))) : 4;
  // Minus nothing is nothing.
  return value.toFixed(places).replace(/^-(?=0(\.0*)?$)/, '').replace('-', '−');
}

/** A number as short as it can be. */
export const plain = (value) => String(Number(value.toPrecision(7))).replace('-', '−');

/** The value of a mark as it is printed, or as short as it can be. */
export function printed(unit, tick) {
  const value = toShown(unit, tick.value);
  return typedNumber(tick.text) === Number(value.toPrecision(7)) ? tick.text : plain(value);
}

/** What a person typed as a number, or NaN: `2.5`, `−20`, `2,5` but not `1,000`, which is two things. */
export function typedNumber(text) {
  const tidy = text.trim().replace('−', '-');
  if (!/^[+-]?(\d+([.,]\d+)?|[.,]\d+)(e[+-]?\d+)?$/i.test(tidy) || /^[+-]?\d+,\d{3}$/.test(tidy)) {
    return NaN;
  }
  return Number(tidy.replace(',', '.'));
}
