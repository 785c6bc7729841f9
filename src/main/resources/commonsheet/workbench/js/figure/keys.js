// The keyboard of the page of charts.

import { act } from './pointer.js';

const TOOLS = { l: 'look', m: 'axes', p: 'points', t: 'trace' };
const STEP = 2;
const FINE = 0.2;

const isWriting = (element) =>
  element.closest?.('input, select, textarea, dialog') || document.querySelector('dialog[open]');

export function keysOf(app) {
  return {
    /** On the figure itself: the arrows move a cross, Enter acts there. */
    stage(event) {
      const step = event.shiftKey ? FINE : STEP;
      const way = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] }[event.key];
      if (way) {
        const [x, y] = app.cross ?? app.view.middle;
        app.cross = [x + way[0], y + way[1]];
        app.hover = app.cross;
        app.focus = app.cross;
        app.view.reveal(app.cross);
        app.draw();
      } else if (event.key === 'Enter' && app.cross && !app.proposal) {
        act(app, app.cross);
      } else if (event.key === 'Enter' && app.proposal) {
        app.take(app.work.curve(app.chosen) ?? null);
      } else {
        return;
      }
      event.preventDefault();
    },

    /** Anywhere on the page, but where somebody writes. */
    page(event) {
      const control = event.ctrlKey || event.metaKey;
      const key = event.key.toLowerCase();
      if (control && key === 's') {
        event.preventDefault();
        app.save();
        return;
      }
      if (isWriting(event.target) || event.altKey) {
        return;
      }
      if (control && (key === 'z' || key === 'y')) {
        event.preventDefault();
        (key === 'y' || event.shiftKey ? app.redo : app.undo)();
        return;
      }
      if (control) {
        return;
      }
      const done = plainKey(app, event.key);
      if (done) {
        event.preventDefault();
      }
    },
  };
}

function plainKey(app, key) {
  const lower = key.toLowerCase();
  if (TOOLS[lower]) {
    app.setTool(TOOLS[lower]);
  } else if (lower === 'h') {
    app.show(app.only === 'both' ? 'sheet' : 'both');
  } else if (key === '+' || key === '=') {
    app.view.zoom(1.5, app.focus ?? undefined);
  } else if (key === '-' || key === '−') {
    app.view.zoom(1 / 1.5, app.focus ?? undefined);
  } else if (key === '0') {
    app.view.fit();
  } else if (key === ']' || key === '[') {
    app.chooseNext(key === ']' ? 1 : -1);
  } else if (lower === 'c') {
    app.settle('confirm');
  } else if (key === 'Escape') {
    app.drop();
  } else {
    return false;
  }
  return true;
}
