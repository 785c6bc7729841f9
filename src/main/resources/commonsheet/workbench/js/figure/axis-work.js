// What a person does with the axes of a chart.

import { isSecond } from './marks.js';
import { isTurned } from './scale.js';
import { newAxis } from './work.js';
import { toKept, toShown, typedNumber, unitOf, unitsOf } from './units.js';
import { tell } from '../told.js';

const round = (number) => Math.round(number * 100) / 100;
/** How far from a side of the plot a click still means that side, as a share of its smaller one. */
const BESIDE = 0.2;
/** Nearer than this to two sides alike, a click is at their corner. */
const SAME = 0.06;

/** The deeds at axes, for the page's own object. */
export function axisWork(app) {
  const change = (name, axisKey, act, goesOn) => {
    app.work.change(name, (chart) => act(chart.axes.find((axis) => axis.key === axisKey), chart), goesOn);
    app.draw();
  };

  const addTick = (axisKey, tick) => {
    change('setting a mark', axisKey, (axis) => axis.ticks.push(tick));
    const { ticks } = app.work.axis(axisKey);
    app.held = { axis: axisKey, index: ticks.length - 1 };
    app.afterDraw(() => document.getElementById(`value-${axisKey}-${ticks.length - 1}`)?.focus());
  };

  const tickAt = (at, value, across) => ({
    at: round(at), value, text: Number.isFinite(value) ? String(value) : '', ...(across === undefined ? {} : { across: round(across) }),
  });

  function turnedMark([x, y]) {
    app.work.change('setting a mark', (chart) => {
      chart.axes.find((axis) => axis.along === 'x').ticks.push(tickAt(x, NaN, y));
      chart.axes.find((axis) => axis.along === 'y').ticks.push(tickAt(y, NaN, x));
    });
    const axis = app.work.chart.axes.find((each) => each.along === 'x');
    app.held = { axis: axis.key, index: axis.ticks.length - 1 };
    app.draw();
    app.afterDraw(() => document.getElementById(`value-${axis.key}-${axis.ticks.length - 1}`)?.focus());
  }

  /** The axis whose side of the plot is nearest to a place. */
  function axisAt([px, py]) {
    const [x, y, width, height] = app.work.chart.box;
    const xAxis = app.work.chart.axes.find((axis) => axis.along === 'x');
    const extent = Math.min(width, height);
    const sides = [{ axis: xAxis, far: Math.abs(py - y - height) / extent }];
    for (const axis of app.work.chart.axes.filter((each) => each.along === 'y')) {
      const side = isSecond(app.work.chart, axis) ? x + width : x;
      sides.push({ axis, far: Math.abs(px - side) / extent });
    }
    // In a corner, the axis that has fewer marks is meant.
    const nearest = sides.sort((a, b) =>
      Math.abs(a.far - b.far) < SAME ? a.axis.ticks.length - b.axis.ticks.length : a.far - b.far,
    )[0];
    return nearest.far < BESIDE ? nearest.axis : null;
  }

  return {
    markAt(place) {
      if (app.turning || app.work.chart.axes.some((axis) => isTurned(axis.ticks))) {
        turnedMark(place);
        return;
      }
      const axis = axisAt(place);
      if (axis) {
        addTick(axis.key, tickAt(place[axis.along === 'x' ? 0 : 1], NaN));
      } else {
        tell('Click at the foot of the plot for the x axis, at its side for a y axis.', 'refused');
      }
    },

    addMark(axisKey) {
      const axis = app.work.axis(axisKey);
      const [x, y, width, height] = app.work.chart.box;
      if (app.turning || isTurned(axis.ticks)) {
        turnedMark([x + width / 2, y + height / 2]);
        return;
      }
      // Where no mark stands yet: at either end, then in the widest gap.
      const [from, to] = axis.along === 'x' ? [x, x + width] : [y, y + height];
      const stops = [from, ...axis.ticks.map((tick) => tick.at), to].sort((a, b) => a - b);
      const gaps = stops.slice(1).map((stop, i) => ({ at: (stop + stops[i]) / 2, wide: stop - stops[i] }));
      const at = axis.ticks.length === 0 ? from : axis.ticks.length === 1 ? to : gaps.sort((a, b) => b.wide - a.wide)[0].at;
      addTick(axisKey, tickAt(at, NaN));
    },

    removeMark(axisKey, index) {
      app.work.change('taking a mark away', (chart) => {
        for (const axis of chart.axes) {
          if (axis.key === axisKey || isTurned(axis.ticks)) {
            axis.ticks.splice(index, 1);
          }
        }
      });
      app.held = null;
      app.draw();
      app.afterDraw(() => document.getElementById(`add-${axisKey}`)?.focus());
    },

    markValue(axisKey, index, text) {
      const unit = unitOf(app.measures, app.work.axis(axisKey));
      const number = typedNumber(text);
      if (Number.isNaN(number)) {
        tell(`"${text}" is no number; type the value printed at the tick, such as 2.5.`, 'refused');
      }
      change('the value of a mark', axisKey, (axis) => {
        axis.ticks[index].value = Number.isNaN(number) ? NaN : Number(toKept(unit, number).toPrecision(12));
        axis.ticks[index].text = text.trim();
      });
    },

    measure(axisKey, quantity) {
      const unit = unitsOf(app.measures, quantity)[0];
      change('what an axis shows', axisKey, (axis) => rescale(axis, quantity, unit));
    },

    unit(axisKey, code) {
      const { quantity } = app.work.axis(axisKey);
      const unit = unitsOf(app.measures, quantity).find((each) => each.code === code);
      change('the unit of an axis', axisKey, (axis) => rescale(axis, quantity, unit));
    },

    scaleKind(axisKey, scale) {
      change('the scale of an axis', axisKey, (axis) => {
        axis.scale = scale;
      });
    },

    addAxis() {
      const axis = newAxis(app.work.chart);
      app.work.change('a second y axis', (chart) => chart.axes.push(axis));
      app.draw();
      app.afterDraw(() => document.getElementById(`quantity-${axis.key}`)?.focus());
    },

    removeAxis(axisKey) {
      app.work.change('taking an axis away', (chart) => {
        chart.axes = chart.axes.filter((axis) => axis.key !== axisKey);
      });
      app.draw();
    },

    turn() {
      const turned = app.turning || app.work.chart.axes.some((axis) => isTurned(axis.ticks));
      app.work.change(turned ? 'an upright chart' : 'a turned chart', (chart) => chart.axes.forEach((axis) => (axis.ticks = [])));
      app.turning = !turned;
      app.draw();
    },
  };

  /** The printed numbers stay as they are; what they mean is changed. */
  function rescale(axis, quantity, unit) {
    const before = unitOf(app.measures, axis);
    for (const tick of axis.ticks) {
      tick.value = Number(toKept(unit, toShown(before, tick.value)).toPrecision(12));
    }
    Object.assign(axis, { quantity, unit: unit.kept, shown: unit.code });
  }
}
