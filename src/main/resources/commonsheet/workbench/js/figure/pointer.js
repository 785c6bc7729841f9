// Mouse and fingers over the figure.

import { movePoint, addPoint } from './points.js';
import { handlePlace, moveMark } from './marks.js';

/** Pixels that a hand trembles when it clicks. */
const STILL = 4;

/** What the figure does with pointers. */
export function pointerOf(app) {
  const fingers = new Map();
  let start = null;
  let taken = null;

  const stage = () => document.getElementById('figure');
  const place = (event) => app.view.place(event, stage());

  function take(event, what) {
    if (event.button !== 0) {
      return;
    }
    event.stopPropagation();
    event.preventDefault();
    event.currentTarget.focus({ preventScroll: true });
    stage().setPointerCapture(event.pointerId);
    // Held where it was caught, a handle does not jump under the finger.
    const [x, y] = place(event);
    taken = { ...what, from: [what.at[0] - x, what.at[1] - y], moved: false };
  }

  function drag(event) {
    const [x, y] = place(event);
    const to = [x + taken.from[0], y + taken.from[1]];
    taken.moved = true;
    if (taken.axis) {
      moveMark(app, taken.axis, taken.index, to);
      const axis = app.work.axis(taken.axis);
      app.hold({ axis: taken.axis, index: taken.index }, handlePlace(app.work.chart, axis, axis.ticks[taken.index]));
    } else {
      movePoint(app, taken.index, to);
      app.holdPoint(taken.index, to);
    }
  }

  function pinch(event) {
    const before = [...fingers.values()];
    fingers.set(event.pointerId, [event.clientX, event.clientY]);
    const after = [...fingers.values()];
    const apart = ([a, b]) => Math.hypot(a[0] - b[0], a[1] - b[1]);
    const middle = ([a, b]) => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
    const [mx, my] = middle(after);
    app.view.zoom(apart(after) / Math.max(1, apart(before)), app.view.place({ clientX: mx, clientY: my }, stage()));
    app.view.pan(mx - middle(before)[0], my - middle(before)[1]);
    start = null;
  }

  return {
    takeMark(event, axisKey, index) {
      const axis = app.work.axis(axisKey);
      take(event, { axis: axisKey, index, at: handlePlace(app.work.chart, axis, axis.ticks[index]) });
    },

    takePoint(event, index) {
      app.point = index;
      take(event, { index, at: app.work.curve(app.chosen).places[index] });
    },

    down(event) {
      fingers.set(event.pointerId, [event.clientX, event.clientY]);
      if (event.button > 1) {
        return;
      }
      stage().setPointerCapture(event.pointerId);
      start = { at: [event.clientX, event.clientY], last: [event.clientX, event.clientY], place: place(event), moved: false };
      app.cross = null;
    },

    move(event) {
      if (fingers.size > 1 && fingers.has(event.pointerId)) {
        pinch(event);
        return;
      }
      app.hover = place(event);
      app.focus = app.hover;
      if (taken) {
        drag(event);
      } else if (start) {
        const far = Math.hypot(event.clientX - start.at[0], event.clientY - start.at[1]);
        start.moved ||= far > STILL;
        if (start.moved && app.tool === 'box') {
          app.drawing = boxOf(start.place, app.hover);
        } else if (start.moved) {
          app.view.pan(event.clientX - start.last[0], event.clientY - start.last[1]);
        }
        start.last = [event.clientX, event.clientY];
      }
      app.draw();
    },

    up(event) {
      fingers.delete(event.pointerId);
      if (taken) {
        app.work.end();
      } else if (start && !start.moved) {
        act(app, start.place);
      } else if (start && app.drawing) {
        app.boxDrawn(app.drawing);
      }
      taken = null;
      start = null;
      app.draw();
    },

    cancel(event) {
      fingers.delete(event.pointerId);
      taken = null;
      start = null;
      app.drawing = null;
      app.draw();
    },

    leave() {
      if (!taken && !start) {
        app.hover = null;
        app.focus = app.cross;
        app.draw();
      }
    },

    wheel(event) {
      event.preventDefault();
      app.view.zoom(Math.exp(-event.deltaY * (event.deltaMode === 1 ? 0.05 : 0.0016)), place(event));
    },
  };
}

/** What a click, or Enter at the cross, does with the tool in hand. */
export function act(app, place) {
  if (app.tool === 'trace') {
    app.trace(place);
  } else if (app.tool === 'axes') {
    app.markAt(place);
  } else if (app.tool === 'points') {
    if (app.work.curve(app.chosen)) {
      addPoint(app, place);
      app.draw();
    } else {
      app.newCurve();
      addPoint(app, place);
    }
  } else if (app.tool === 'look') {
    app.chooseAt(place);
  }
}

const boxOf = ([ax, ay], [bx, by]) =>
  [Math.min(ax, bx), Math.min(ay, by), Math.abs(ax - bx), Math.abs(ay - by)].map((each) => Math.round(each * 10) / 10);
