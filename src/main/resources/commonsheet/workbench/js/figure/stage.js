// The figure itself: the sheet's own ink, the curves over it, and what can be taken hold of.

import { html, nothing, svg } from '/lit/lit-html.js';
import { repeat } from '/lit/directives/repeat.js';
import { lens } from './lens.js';
import { marks } from './marks.js';
import { points } from './points.js';
import { nameOf } from './deed.js';

const path = (places) => places.map(([x, y]) => `${x.toFixed(2)},${y.toFixed(2)}`).join(' ');

/** The pictures, each where it belongs. */
export function pictures(view) {
  return view.pictures.map(
    ({ href, part }) => svg`<image href=${href} x=${part.x} y=${part.y} width=${part.w} height=${part.h}
      preserveAspectRatio="none" />`,
  );
}

/** The curves as lines over the ink: a halo first, so that the line stands out and the ink beside it shows. */
export function lines(app, thin = 1) {
  if (app.only === 'sheet') {
    return nothing;
  }
  const { k } = app.view;
  const shown = app.work.chart.curves.filter((curve) => !app.alone || curve.key === app.alone);
  return repeat(
    shown,
    (curve) => curve.key,
    (curve) => {
      const chosen = curve.key === app.chosen;
      return svg`<g class="curve ${chosen ? 'chosen' : ''}" data-ink=${app.colour(curve.key)} data-standing=${app.standing(curve)}>
        <polyline class="halo" points=${path(curve.places)} stroke-width=${(chosen ? 6 : 4.6) / k / thin} />
        <polyline class="line" points=${path(curve.places)} stroke-width=${(chosen ? 2.2 : 1.5) / k / thin}
          stroke-dasharray=${app.standing(curve) === 'unsure' ? `${7 / k} ${4 / k}` : 'none'} />
      </g>`;
    },
  );
}

/** The names of the curves at their ends. */
function names(app) {
  if (app.only === 'sheet') {
    return nothing;
  }
  const { k } = app.view;
  return app.work.chart.curves
    .filter((curve) => curve.places.length && (!app.alone || curve.key === app.alone))
    .map((curve, index, all) => {
      // One after the other along the curves, so that names of curves that run close stay apart.
      const share = 0.1 + (0.6 * index) / all.length;
      const [x, y] = curve.places[Math.floor((curve.places.length - 1) * share)];
      const unsure = app.standing(curve) === 'unsure' ? ' ?' : '';
      return svg`<text class="name" data-ink=${app.colour(curve.key)} x=${x} y=${y - 5 / k} font-size=${11.5 / k}
        stroke-width=${3.2 / k}>${curve.id ?? 'new'}${unsure}</text>`;
    });
}

function proposal(app) {
  const { k } = app.view;
  return app.proposal
    ? svg`<g class="proposal"><polyline class="halo" points=${path(app.proposal.points)} stroke-width=${6 / k} />
        <polyline class="line" points=${path(app.proposal.points)} stroke-width=${2.2 / k}
          stroke-dasharray="${6 / k} ${3 / k}" /></g>`
    : nothing;
}

function cross(app) {
  if (!app.cross) {
    return nothing;
  }
  const [x, y] = app.cross;
  const r = 14 / app.view.k;
  return svg`<g class="cross" stroke-width=${1.4 / app.view.k}>
    <path d="M${x - r} ${y}H${x - r / 4}M${x + r / 4} ${y}H${x + r}M${x} ${y - r}V${y - r / 4}M${x} ${y + r / 4}V${y + r}" /></g>`;
}

function drawnBox(app) {
  const box = app.drawing ?? app.work.chart.box;
  const { k } = app.view;
  return svg`<rect class=${app.drawing ? 'area drawing' : 'area'} x=${box[0]} y=${box[1]} width=${box[2]} height=${box[3]}
    stroke-width=${1 / k} stroke-dasharray="${3 / k} ${3 / k}" />`;
}

const SAYS = {
  look: 'Drag to move, wheel or + and − to come closer.',
  axes: 'Move the marks onto the ticks; a click at a side of the plot sets a new one.',
  points: 'Drag the points of the chosen curve. A click sets a new point.',
  trace: 'Point at the ink of a curve; the whole line is followed.',
  box: 'Draw a box around the plot area of a chart, from axis to axis.',
};

/** The figure, with everything over it. */
export function stage(app) {
  const { view } = app;
  return html`
    <div class="sheet" data-tool=${app.tool}>
      <svg
        id="figure"
        class="stage"
        viewBox=${view.box}
        tabindex="0"
        role="application"
        aria-label=${`Chart on page ${app.work.chart.page}. Arrow keys move a cross, Enter acts at it.`}
        aria-describedby="tool-says"
        @pointerdown=${app.pointer.down}
        @pointermove=${app.pointer.move}
        @pointerup=${app.pointer.up}
        @pointercancel=${app.pointer.cancel}
        @pointerleave=${app.pointer.leave}
        @wheel=${app.pointer.wheel}
        @keydown=${app.keys.stage}
      >
        <g class=${app.only === 'curves' ? 'ink pale' : 'ink'}>${pictures(view)}</g>
        ${drawnBox(app)} ${lines(app)} ${names(app)} ${proposal(app)}
        ${app.tool === 'axes' ? marks(app) : nothing} ${app.tool === 'points' ? points(app) : nothing} ${cross(app)}
      </svg>
      ${lens(app)}
      ${app.busy ? html`<p class="waiting" role="status">${app.busy}</p>` : nothing}
      ${app.proposal ? offer(app) : nothing}
    </div>
    <div class="foot">
      <p id="tool-says">${SAYS[app.tool]}</p>
      <output id="place">${app.readout()}</output>
    </div>
  `;
}

function offer(app) {
  const target = app.work.curve(app.chosen);
  return html`<div class="offer" role="group" aria-label="The traced line">
    <p>${app.proposal.sentence}</p>
    <div class="buttons">
      ${
        target
          ? html`<button type="button" class="button main" id="take" @click=${() => app.take(target)}>
              Put it in place of ${nameOf(target)}
            </button>`
          : nothing
      }
      <button type="button" class="button ${target ? '' : 'main'}" id="take-new" @click=${() => app.take(null)}>
        Add it as a new curve
      </button>
      <button type="button" class="button plain" @click=${app.drop}>Drop it <kbd>Esc</kbd></button>
    </div>
  </div>`;
}
