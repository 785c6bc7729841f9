// The page's own object: what is shown, what is in hand, and what can be done.

import { render } from '/lit/lit-html.js';
import { get } from '../api.js';
import { axisWork } from './axis-work.js';
import { chartsOf } from './charts.js';
import { curveWork } from './curve-work.js';
import { keysOf } from './keys.js';
import { looksOf } from './looks.js';
import { pointerOf } from './pointer.js';
import { save, settle, trace, turnBack } from './saving.js';

/** Milliseconds after which the page asks whether somebody else has changed the record. */
const EVERY = 3000;

/**
 * @param {URLSearchParams} parameters of the address
 * @param {HTMLElement} element to draw in
 * @param {(app: object) => *} template the page
 */
export function appOf(parameters, element, template) {
  const app = {
    file: parameters.get('file'),
    asked: {
      curve: parameters.get('curve'), page: Number(parameters.get('page')), chart: Number(parameters.get('chart') ?? 1),
    },
    works: [],
    work: null,
    view: null,
    measures: [],
    tool: 'look',
    only: 'both',
    chosen: null,
    point: 0,
  };
  drawing(app, element, template);
  app.pointer = pointerOf(app);
  app.keys = keysOf(app);
  Object.assign(app, looksOf(app), chartsOf(app), axisWork(app), curveWork(app), {
    save: () => save(app),
    discard() {
      app.work.discard();
      app.chosen = app.work.curve(app.chosen) ? app.chosen : (app.work.chart.curves[0]?.key ?? null);
      app.draw();
    },
    settle: (how) => settle(app, how),
    trace: (place) => trace(app, place),
    undo: () => back(app, 'undo'),
    redo: () => back(app, 'redo'),
    setTool(tool) {
      Object.assign(app, { tool, cross: null, drawing: null, focus: null, held: null });
      app.draw();
    },
    show(only) {
      app.only = only;
      app.draw();
    },
    /** A mark in hand: lit in its table, magnified in the corner. */
    hold(held, place) {
      const other = app.held?.axis !== held.axis || app.held.index !== held.index;
      Object.assign(app, { held, focus: place, hover: null });
      app.draw();
      if (other) {
        app.afterDraw(() => document.getElementById(`value-${held.axis}-${held.index}`)?.scrollIntoView({ block: 'nearest' }));
      }
    },
    holdPoint(point, place) {
      Object.assign(app, { point, focus: place, hover: null });
      app.draw();
    },
  });
  watching(app);
  return app;
}

/** What is not saved is taken back first, then the last saved deed. */
function back(app, how) {
  const local = how === 'undo' ? app.work?.isChanged : app.work?.redoable;
  if (local) {
    app.work[how]();
    app.chosen = app.work.curve(app.chosen) ? app.chosen : (app.work.chart.curves[0]?.key ?? null);
    app.draw();
  } else if (app.record?.[how] && !app.work?.isChanged) {
    turnBack(app, how);
  }
}

function drawing(app, element, template) {
  const after = [];
  let waiting = false;
  app.draw = () => {
    if (!waiting && !app.left) {
      waiting = true;
      requestAnimationFrame(() => {
        waiting = false;
        if (!app.left) {
          render(template(app), element);
          after.splice(0).forEach((act) => act());
        }
      });
    }
  };
  /** Does something once the page shows what is now. */
  app.afterDraw = (act) => {
    after.push(act);
    app.draw();
  };
}

function watching(app) {
  const warn = (event) => {
    if (app.works.some((work) => work.isChanged)) {
      event.preventDefault();
    }
  };
  const look = async () => {
    if (app.record && !document.hidden && !app.busy && !app.stale) {
      const before = app.record.version;
      const now = await get('/api/record/version', { file: app.file }).catch(() => null);
      if (now && now.version !== before && app.record.version === before && !app.busy) {
        app.stale = true;
        app.draw();
      }
    }
  };
  const timer = setInterval(look, EVERY);
  const observer = new ResizeObserver(([entry]) => app.view?.resize(entry.contentRect.width, entry.contentRect.height));
  let observed = null;
  app.observe = (node) => {
    if (node && node !== observed) {
      observer.disconnect();
      observer.observe(node);
      observed = node;
    }
  };
  addEventListener('focus', look);
  addEventListener('beforeunload', warn);
  document.addEventListener('keydown', app.keys.page);
  app.leave = () => {
    app.left = true;
    clearInterval(timer);
    observer.disconnect();
    app.view?.leave();
    removeEventListener('focus', look);
    removeEventListener('beforeunload', warn);
    document.removeEventListener('keydown', app.keys.page);
  };
}
