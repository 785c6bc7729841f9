// A magnifier in the corner, of what is under the pointer or in hand.

import { html, nothing, svg } from '/lit/lit-html.js';
import { lines, pictures } from './stage.js';

/** Times the figure is magnified. */
const TIMES = 5;
const SIDE = 168;

export function lens(app) {
  if (!app.focus || app.tool === 'look' || app.tool === 'box') {
    return nothing;
  }
  const [x, y] = app.focus;
  const side = SIDE / (app.view.k * TIMES);
  const left = (x - app.view.shown.x) * 2 < app.view.shown.w && (y - app.view.shown.y) * 2 < app.view.shown.h;
  return html`<svg
    class="lens ${left ? 'right' : ''}"
    aria-hidden="true"
    width=${SIDE}
    height=${SIDE}
    viewBox="${x - side / 2} ${y - side / 2} ${side} ${side}"
  >
    ${pictures(app.view)} ${lines(app, TIMES / 1.6)}
    ${svg`<path class="hair" stroke-width=${side / SIDE} d="M${x - side} ${y}H${x + side}M${x} ${y - side}V${y + side}" />`}
  </svg>`;
}
