// The points of the chosen curve as handles: by mouse, finger or keyboard.

import { nothing, svg } from '/lit/lit-html.js';
import { repeat } from '/lit/directives/repeat.js';

const STEP = 0.5;
const FINE = 0.05;

const round = (number) => Math.round(number * 100) / 100;

/** Changes the points of a curve by hand. */
function byHand(app, name, change, goesOn) {
  app.work.change(
    name,
    (chart) => {
      const curve = chart.curves.find((each) => each.key === app.chosen);
      curve.drawn = true;
      change(curve);
    },
    goesOn,
  );
}

/** How well a hand hits a place, in points of the page (chart.reference.AxisReference). */
const PLACING = 0.5;

function placed(curve) {
  curve.errorX = Math.max(curve.errorX, PLACING);
  curve.errorY = Math.max(curve.errorY, PLACING);
}

/** Moves a point; each counts once as placed by hand. */
export function movePoint(app, index, [x, y]) {
  byHand(
    app,
    'moving a point',
    (curve) => {
      const place = curve.places[index];
      curve.hand += place.hand ? 0 : 1;
      placed(curve);
      curve.places[index] = Object.assign([round(x), round(y)], { hand: true });
    },
    true,
  );
}

/** Adds a point where it makes the line least longer; gives its place in the row. */
export function addPoint(app, [x, y], at) {
  const { places } = app.work.curve(app.chosen);
  const index = at ?? bestPlace(places, [x, y]);
  byHand(app, 'adding a point', (curve) => {
    curve.places.splice(index, 0, Object.assign([round(x), round(y)], { hand: true }));
    curve.hand += 1;
    placed(curve);
  });
  app.point = index;
  return index;
}

/** Takes a point out. */
export function removePoint(app, index) {
  byHand(app, 'taking a point out', (curve) => {
    const [gone] = curve.places.splice(index, 1);
    if (gone.hand) {
      curve.hand -= 1;
    } else {
      curve.removed += 1;
    }
  });
  app.point = Math.max(0, Math.min(index, app.work.curve(app.chosen).places.length - 1));
}

const distance = (a, b) => Math.hypot(a[0] - b[0], a[1] - b[1]);

function bestPlace(places, place) {
  if (places.length < 2) {
    return places.length === 1 && place[0] < places[0][0] ? 0 : places.length;
  }
  let best = 0;
  let least = distance(place, places[0]);
  for (let i = 1; i < places.length; i++) {
    const longer = distance(places[i - 1], place) + distance(place, places[i]) - distance(places[i - 1], places[i]);
    if (longer < least) {
      least = longer;
      best = i;
    }
  }
  return distance(place, places.at(-1)) < least ? places.length : best;
}

export function points(app) {
  const curve = app.work.curve(app.chosen);
  if (!curve) {
    return nothing;
  }
  const { k } = app.view;
  const current = Math.min(app.point ?? 0, curve.places.length - 1);
  return svg`<g class="points" data-ink=${app.colour(curve.key)}>${repeat(
    curve.places,
    (place, index) => index,
    (place, index) => svg`<g class="point ${index === current ? 'current' : ''}" id="point-${index}"
        tabindex=${index === current ? 0 : -1} role="button" aria-roledescription="point"
        aria-label=${`Point ${index + 1} of ${curve.places.length}, ${app.saidAt(curve, place)}`}
        @focus=${() => app.holdPoint(index, place)}
        @pointerdown=${(event) => app.pointer.takePoint(event, index)}
        @keydown=${(event) => keys(app, event)}>
      <circle class="reach" cx=${place[0]} cy=${place[1]} r=${11 / k} />
      <circle class="dot" cx=${place[0]} cy=${place[1]} r=${(index === current ? 5 : 3) / k} stroke-width=${1.4 / k} />
    </g>`,
  )}</g>`;
}

/** Keys act on the point in hand, which may be ahead of the one that has the focus yet. */
function keys(app, event) {
  const { places } = app.work.curve(app.chosen);
  const index = Math.min(app.point, places.length - 1);
  const [x, y] = places[index];
  const step = event.shiftKey ? FINE : STEP;
  const way = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] }[event.key];
  const other = {
    PageDown: index + 1, n: index + 1, PageUp: index - 1, b: index - 1, Home: 0, End: places.length - 1,
  }[event.key];
  if (way) {
    movePoint(app, index, [x + way[0], y + way[1]]);
    app.holdPoint(index, app.work.curve(app.chosen).places[index]);
  } else if (other !== undefined) {
    app.goToPoint(Math.max(0, Math.min(places.length - 1, other)));
  } else if (event.key === 'a' || event.key === 'Insert') {
    const next = places[index + 1] ?? [x + 6, y];
    app.goToPoint(addPoint(app, [(x + next[0]) / 2, (y + next[1]) / 2], index + 1));
  } else if (event.key === 'Delete' || event.key === 'Backspace') {
    removePoint(app, index);
    app.goToPoint(app.point);
  } else {
    return;
  }
  event.preventDefault();
  event.stopPropagation();
}
