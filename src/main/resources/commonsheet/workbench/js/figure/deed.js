// The work at a chart as one request.

const changed = (curve, before) =>
  !before || curve.drawn || JSON.stringify([curve.label, curve.kind, curve.x, curve.y, curve.typed])
    !== JSON.stringify([before.label, before.kind, before.x, before.y, before.typed]);

const sameAxis = (axis, before) =>
  before && JSON.stringify([axis.quantity, axis.unit, axis.scale, axis.ticks])
    === JSON.stringify([before.quantity, before.unit, before.scale, before.ticks]);

/** What `/api/figure/change` is asked to do: the changed curves and those of changed axes. */
export function deedOf(chart, saved) {
  const before = new Map(saved.curves.map((curve) => [curve.key, curve]));
  const moved = new Set(
    chart.axes.filter((axis) => !sameAxis(axis, saved.axes.find((each) => each.key === axis.key))).map((axis) => axis.key),
  );
  const curves = chart.curves.filter(
    (curve) => changed(curve, before.get(curve.key)) || moved.has(curve.x) || moved.has(curve.y),
  );
  const used = new Set(curves.flatMap((curve) => [curve.x, curve.y]));
  return {
    page: chart.page,
    box: chart.box,
    axes: chart.axes
      .filter((axis) => used.has(axis.key))
      .map(({ key, along, quantity, unit, scale, ticks }) => ({
        key, along, quantity, unit, scale,
        ticks: ticks.map(({ at, value, text, across }) => ({ at, value, text, across })),
      })),
    curves: curves.map((curve) => ({
      id: curve.id ?? undefined,
      kind: curve.kind,
      label: curve.label,
      conditions: curve.typed,
      x: curve.x,
      y: curve.y,
      ...(curve.drawn
        ? {
            places: curve.places.flatMap(([x, y]) => [x, y]),
            placed: curve.hand,
            removed: curve.removed,
            traced: curve.traced ?? undefined,
          }
        : {}),
    })),
  };
}

/** Why the work cannot be saved yet, or null. */
export function obstacle(work) {
  const { chart } = work;
  for (const curve of chart.curves) {
    if (curve.places.length < 2 && curve.drawn) {
      return `${nameOf(curve)} needs two points at least.`;
    }
    if (curve.places.length > 0) {
      for (const key of [curve.x, curve.y]) {
        const { fault } = work.scale(key);
        if (fault) {
          return `${work.axis(key).along} axis: ${fault}`;
        }
      }
    }
  }
  return chart.curves.length ? null : 'The chart has no curve yet; trace one or place its points.';
}

export const nameOf = (curve) => curve.label || curve.id || 'New curve';
