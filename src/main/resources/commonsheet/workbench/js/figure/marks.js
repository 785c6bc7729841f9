// The marks of the axes as handles: by mouse, finger or arrow keys.

import { svg } from '/lit/lit-html.js';
import { repeat } from '/lit/directives/repeat.js';
import { isTurned } from './scale.js';
import { digits, printed, unitOf } from './units.js';

/** Steps of the arrow keys in points of the page: half a line's width, and a tenth of that. */
const STEP = 0.25;
const FINE = 0.025;

/** From this many points on a mark is said to be off its scale: more than any tick is drawn off. */
export const OFF = 0.5;

/** Where the handle of a mark stands. */
export function handlePlace(chart, axis, tick) {
  const [x, y, width, height] = chart.box;
  if (axis.along === 'x') {
    return [tick.at, tick.across ?? y + height];
  }
  return [tick.across ?? (isSecond(chart, axis) ? x + width : x), tick.at];
}

/** Whether a y axis is the one on the right: voltage stands on the left where there are two. */
export function isSecond(chart, axis) {
  const ys = chart.axes.filter((each) => each.along === 'y');
  if (ys.length < 2 || axis.along === 'x') {
    return false;
  }
  const first = ys.find((each) => each.quantity === 'voltage' && !each.second) ?? ys[0];
  return axis !== first;
}

/** A mark's value with its unit, as printed. */
export function said(app, axis, tick) {
  const unit = unitOf(app.measures, axis);
  return Number.isFinite(tick.value) ? `${printed(unit, tick)} ${unit.shown}`.trim() : 'no value yet';
}

/** How far a mark lies from the scale of its axis, in the axis' unit; with what it means. */
export function residual(app, axis, tick) {
  const scale = app.work.scale(axis.key);
  if (scale.fault) {
    return { text: '', off: false };
  }
  const unit = unitOf(app.measures, axis);
  const left = scale.residual(tick) / unit.factor;
  const step = scale.perPoint(handlePlace(app.work.chart, axis, tick)) / unit.factor;
  const sign = left > 0 ? '+' : '';
  return { text: `${sign}${digits(left, Math.abs(step) / 20)}`, off: scale.off(tick) > OFF };
}

/** Moves a mark to a place; along its axis only, unless the chart is turned. */
export function moveMark(app, axisKey, index, [x, y]) {
  app.work.change(
    'moving a mark',
    (chart) => {
      const axis = chart.axes.find((each) => each.key === axisKey);
      const tick = axis.ticks[index];
      const turned = isTurned(axis.ticks);
      const round = (number) => Math.round(number * 100) / 100;
      const twin = turned ? twinOf(chart, axis, tick) : null;
      tick.at = round(axis.along === 'x' ? x : y);
      if (turned) {
        tick.across = round(axis.along === 'x' ? y : x);
      }
      if (twin) {
        twin.at = tick.across;
        twin.across = tick.at;
      }
    },
    true,
  );
}

/** On a turned chart one mark is known along both axes: the same mark among those of the other. */
function twinOf(chart, axis, tick) {
  return chart.axes
    .filter((each) => each.along !== axis.along)
    .flatMap((each) => each.ticks)
    .find((each) => each.at === tick.across && each.across === tick.at);
}

export function marks(app) {
  const { chart } = app.work;
  const all = chart.axes.flatMap((axis) =>
    isTurned(axis.ticks) && axis.along === 'y' ? [] : axis.ticks.map((tick, index) => ({ axis, tick, index })),
  );
  return repeat(
    all,
    ({ axis, index }) => `${axis.key} ${index}`,
    (each) => mark(app, each),
  );
}

function mark(app, { axis, tick, index }) {
  const { chart } = app.work;
  const { k } = app.view;
  const [x, y] = handlePlace(chart, axis, tick);
  const [bx, by, bw, bh] = chart.box;
  const { text, off } = residual(app, axis, tick);
  const along = axis.along === 'x';
  const right = isSecond(chart, axis);
  const turned = isTurned(axis.ticks);
  const guide = turned
    ? ''
    : along
      ? `M${x} ${by}V${by + bh}`
      : `M${bx} ${y}H${bx + bw}`;
  const label = [x + ((right ? -1 : 1) * (along ? 0 : 12)) / k, along ? y - 14 / k : y + 4 / k];
  const other = turned ? twinOf(chart, axis, tick) : null;
  const across = chart.axes.find((each) => each.along === 'y');
  const value = said(app, axis, tick) + (other ? ` · ${said(app, across, other)}` : '');
  const name = `${axis.along} axis, mark ${value}`;
  return svg`<g
      class="tickmark ${off ? 'off' : ''} ${app.held?.axis === axis.key && app.held.index === index ? 'held' : ''}"
      tabindex="0"
      role="slider"
      id="mark-${axis.key}-${index}"
      aria-label=${name}
      aria-orientation=${along ? 'horizontal' : 'vertical'}
      aria-valuenow=${tick.at}
      aria-valuemin=${along ? bx - bw : by - bh}
      aria-valuemax=${along ? bx + 2 * bw : by + 2 * bh}
      aria-valuetext=${`${value}, place ${tick.at.toFixed(2)}${text ? `, off by ${text}` : ''}`}
      @pointerdown=${(event) => app.pointer.takeMark(event, axis.key, index)}
      @focus=${() => app.hold({ axis: axis.key, index }, [x, y])}
      @keydown=${(event) => keys(app, event, axis.key, index)}>
    <path class="guide" d=${guide} stroke-width=${1 / k} />
    <circle class="reach" cx=${x} cy=${y} r=${17 / k} />
    <circle class="ring" cx=${x} cy=${y} r=${7 / k} stroke-width=${2 / k} />
    <path class="hair" d="M${x - 4 / k} ${y}H${x + 4 / k}M${x} ${y - 4 / k}V${y + 4 / k}" stroke-width=${1 / k} />
    <text x=${label[0]} y=${label[1]} font-size=${11.5 / k} stroke-width=${3.5 / k}
      text-anchor=${along ? 'middle' : right ? 'end' : 'start'}>${value}${off ? ` off ${text}` : ''}</text>
  </g>`;
}

/** Keys act on the mark as it is now, which may be ahead of what is drawn yet. */
function keys(app, event, axisKey, index) {
  const { chart } = app.work;
  const axis = app.work.axis(axisKey);
  const step = event.shiftKey ? FINE : STEP;
  const way = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] }[event.key];
  const tick = axis.ticks[index];
  if (way) {
    const [x, y] = handlePlace(chart, axis, tick);
    moveMark(app, axisKey, index, [x + way[0], y + way[1]]);
    const moved = app.work.axis(axisKey);
    app.hold({ axis: axisKey, index }, handlePlace(app.work.chart, moved, moved.ticks[index]));
  } else if (event.key === 'Delete' || event.key === 'Backspace') {
    app.removeMark(axisKey, index);
  } else if (event.key === 'Enter') {
    document.getElementById(`value-${axisKey}-${index}`)?.focus();
  } else {
    return;
  }
  event.preventDefault();
  event.stopPropagation();
}
