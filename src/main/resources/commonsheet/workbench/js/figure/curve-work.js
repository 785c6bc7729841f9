// What a person does with the curves of a chart.

import { newCurve } from './work.js';
import { addPoint } from './points.js';
import { digits, toShown, unitOf } from './units.js';

const distance = (a, b) => Math.hypot(a[0] - b[0], a[1] - b[1]);
/** Pixels within which a click chooses a curve. */
const NEAR = 14;

/** The deeds at curves, for the page's own object. */
export function curveWork(app) {
  const change = (name, act) => {
    app.work.change(name, (chart) => act(chart.curves.find((curve) => curve.key === app.chosen), chart));
    app.draw();
  };

  return {
    choose(key) {
      app.chosen = key;
      app.point = 0;
      app.alone = app.alone && key ? key : null;
      app.draw();
    },

    chooseNext(step) {
      const { curves } = app.work.chart;
      if (curves.length) {
        const at = curves.findIndex((curve) => curve.key === app.chosen);
        app.choose(curves[(at + step + curves.length) % curves.length].key);
        app.afterDraw(() => document.getElementById(`pick-${app.chosen}`)?.scrollIntoView({ block: 'nearest' }));
      }
    },

    /** The curve whose line is nearest to a place; none far from all. */
    chooseAt(place) {
      let best = null;
      let least = NEAR / app.view.k;
      for (const curve of app.work.chart.curves) {
        for (let i = 1; i < curve.places.length; i++) {
          const [a, b] = [curve.places[i - 1], curve.places[i]];
          const square = distance(a, b) ** 2 || 1;
          const t = ((place[0] - a[0]) * (b[0] - a[0]) + (place[1] - a[1]) * (b[1] - a[1])) / square;
          const s = Math.max(0, Math.min(1, t));
          const far = distance(place, [a[0] + s * (b[0] - a[0]), a[1] + s * (b[1] - a[1])]);
          if (far < least) {
            least = far;
            best = curve.key;
          }
        }
      }
      if (best) {
        app.choose(best);
      }
    },

    showAlone(key) {
      app.alone = app.alone === key ? null : key;
      app.chosen = key;
      app.draw();
    },

    say(what, value) {
      change(`the ${what} of a curve`, (curve) => {
        curve[what] = value;
      });
    },

    /** @param {string|null} typed as typed; null where the chart does not say it */
    condition(name, typed) {
      if (!name) {
        return;
      }
      change('a condition of a curve', (curve) => {
        curve.typed[name] = typed;
      });
    },

    newCurve() {
      const curve = newCurve(app.work.chart);
      app.work.change('a new curve', (chart) => chart.curves.push(curve));
      app.chosen = curve.key;
      app.setTool('points');
    },

    forget() {
      app.work.change('taking a new curve away', (chart) => {
        chart.curves = chart.curves.filter((curve) => curve.key !== app.chosen);
      });
      app.chosen = null;
      app.draw();
    },

    /** Takes the proposed line for a curve, or for a new one. */
    take(target) {
      const { points, ink, errorX, errorY } = app.proposal;
      const curve = target ?? newCurve(app.work.chart);
      app.work.change('taking the traced line', (chart) => {
        if (!target) {
          chart.curves.push(curve);
        }
        Object.assign(chart.curves.find((each) => each.key === curve.key), {
          places: points.map((place) => [...place]),
          drawn: true,
          hand: 0,
          removed: 0,
          traced: { ink, errorX, errorY },
          errorX: Math.max(errorX, target?.errorX ?? 0),
          errorY: Math.max(errorY, target?.errorY ?? 0),
        });
      });
      app.chosen = curve.key;
      app.proposal = null;
      app.draw();
    },

    drop() {
      app.proposal = null;
      app.cross = null;
      app.drawing = null;
      app.draw();
    },

    goToPoint(index) {
      app.point = index;
      app.draw();
      app.afterDraw(() => document.getElementById(`point-${index}`)?.focus());
    },

    addPointAt: (place) => addPoint(app, place),

    /** A place in the values of a curve's axes. */
    saidAt(curve, place) {
      return [curve.x, curve.y]
        .map((key) => {
          const axis = app.work.axis(key);
          const scale = app.work.scale(key);
          const unit = unitOf(app.measures, axis);
          return scale.fault
            ? `${axis.along} –`
            : `${axis.along} ${digits(toShown(unit, scale.value(place)), (scale.perPoint(place) / Math.abs(unit.factor)) * 0.1)} ${unit.shown}`.trim();
        })
        .join(', ');
    },
  };
}
