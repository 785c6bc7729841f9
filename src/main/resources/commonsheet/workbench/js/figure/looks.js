// What the charts' page says of curves and axes, and how it tells them apart.

import { unitOf } from './units.js';

const INKS = 8;

/** Words and looks, for the page's own object. */
export function looksOf(app) {
  const number = (key) => app.work.chart.curves.findIndex((curve) => curve.key === key);
  return {
    /** A curve as the record has it. */
    recorded: (curve) => app.record.record.curves.find((each) => each.id === curve.id),

    isChanged(curve) {
      const before = app.work.saved.curves.find((each) => each.key === curve.key);
      return curve.drawn || JSON.stringify(curve) !== JSON.stringify(before);
    },

    standing: (curve) => (!curve.id ? 'new' : curve.drawn ? 'corrected' : (app.recorded(curve)?.standing ?? 'read')),
    colour: (key) => (number(key) % INKS) + 1,
    inWords: (curve) => app.record.parts.find((part) => part.id === curve.id)?.conditions ?? '',
    kindName: (kind) => app.catalogue.curveKinds.find((each) => each.kind === kind)?.label ?? kind,

    axisName(axis) {
      const label = app.measures.find((each) => each.quantity === axis.quantity)?.label ?? axis.quantity;
      return `${label} ${unitOf(app.measures, axis).shown}`.trim();
    },

    /** The values under the pointer or the cross. */
    readout() {
      const { axes } = app.work.chart;
      const place = app.hover ?? app.focus;
      const first = (along) => axes.find((axis) => axis.along === along)?.key;
      const curve = app.work.curve(app.chosen) ?? { x: first('x'), y: first('y') };
      return place && curve.x && curve.y ? app.saidAt(curve, place) : '';
    },
  };
}
