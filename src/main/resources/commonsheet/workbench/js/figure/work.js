// What a person does at one chart until it is saved: every step can be undone.

import { scaleOf } from './scale.js';
import { printedUnit } from './units.js';

let made = 0;
/** A name for something that the record does not have yet. */
const fresh = (letter) => `${letter}new${++made}`;

/** The chart of a figure with the curves of its record, ready to be worked at. */
export function chartOf(figure, record, measures) {
  const byId = new Map(record.curves.map((curve) => [curve.id, curve]));
  return {
    page: figure.page,
    number: figure.number,
    box: [...figure.box],
    kind: figure.kind,
    axes: figure.axes.map((axis) => ({
      ...axis,
      ticks: axis.ticks.map((tick) => ({ ...tick })),
      shown: printedUnit(measures, axis),
    })),
    curves: figure.curves.map((line) => {
      const curve = byId.get(line.id);
      return {
        key: line.id,
        id: line.id,
        x: line.x,
        y: line.y,
        label: curve.label ?? '',
        kind: curve.kind,
        typed: {},
        places: line.places.map((place) => [...place]),
        errorX: line.errorX,
        errorY: line.errorY,
        drawn: false,
        hand: 0,
        removed: 0,
        traced: null,
      };
    }),
  };
}

/** A chart that was not found, in a box that a person drew. */
export function newChart(page, box) {
  const axis = (along, quantity, unit) => ({
    key: `${along}1`, along, quantity, unit, shown: unit, scale: null, ticks: [],
  });
  return {
    page,
    number: null,
    box,
    kind: 'discharge',
    axes: [axis('x', 'capacity', 'A.h'), axis('y', 'voltage', 'V')],
    curves: [],
  };
}

/** A curve without points. */
export function newCurve(chart) {
  return {
    key: fresh('c'),
    id: null,
    x: chart.axes.find((axis) => axis.along === 'x').key,
    y: chart.axes.find((axis) => axis.along === 'y').key,
    label: '',
    kind: chart.kind,
    typed: {},
    places: [],
    errorX: 0.5,
    errorY: 0.5,
    drawn: true,
    hand: 0,
    removed: 0,
    traced: null,
  };
}

/** A second y axis. */
export function newAxis(chart) {
  return {
    key: fresh('y'), along: 'y', quantity: 'current', unit: 'A', shown: 'A', scale: null, ticks: [],
    second: chart.axes.some((axis) => axis.along === 'y'),
  };
}

/** A chart under work, with the way back. */
export class Work {
  #past = [];
  #future = [];

  constructor(chart) {
    this.saved = chart;
    this.chart = chart;
  }

  get isChanged() {
    return this.#past.length > 0;
  }

  get undoable() {
    return this.#past.at(-1)?.name ?? null;
  }

  get redoable() {
    return this.#future.at(-1)?.name ?? null;
  }

  /**
   * Changes the chart.
   *
   * @param {string} name for undoing it
   * @param {(chart: object) => void} change
   * @param {boolean} [goesOn] whether it goes on with the step of the same name, as a drag does
   */
  change(name, change, goesOn = false) {
    if (!goesOn || this.undoable !== name) {
      this.#past.push({ name, chart: this.chart });
      this.chart = structuredClone(this.chart);
    }
    this.#future = [];
    change(this.chart);
  }

  /** Ends a step that went on, so that the next one of its name is a step of its own. */
  end() {
    const last = this.#past.at(-1);
    if (last) {
      last.name = last.name.trimEnd() + ' ';
    }
  }

  undo() {
    this.#move(this.#past, this.#future);
  }

  redo() {
    this.#move(this.#future, this.#past);
  }

  #move(from, to) {
    const step = from.pop();
    if (step) {
      to.push({ name: step.name, chart: this.chart });
      this.chart = step.chart;
    }
  }

  discard() {
    this.#past = [];
    this.#future = [];
    this.chart = this.saved;
  }

  curve(key) {
    return this.chart.curves.find((curve) => curve.key === key);
  }

  axis(key) {
    return this.chart.axes.find((axis) => axis.key === key);
  }

  /** The scale of an axis; computed anew for every state of the chart. */
  scale(key) {
    return scaleOf(this.axis(key));
  }
}
