// The charts of a record, one of them at work; new ones in boxes that a person draws.

import { ask } from '../dialog.js';
import { tell } from '../told.js';
import { load } from './saving.js';
import { around, View } from './view.js';
import { chartOf, newChart, Work } from './work.js';

/** Points of the page to which boxes of one plot agree. */
const SAME = 3;
/** No plot is smaller, in points. */
const LEAST = 20;

/** Opening and loading, for the page's own object. */
export function chartsOf(app) {
  const sizeOf = (page) => app.record.sheet?.pages?.find((each) => each.page === page);

  return {
    /** Shows the chart at work from the beginning. */
    showChart() {
      const { chart } = app.work;
      const size = sizeOf(chart.page);
      const whole = chart.whole ? { x: 0, y: 0, w: size.width, h: size.height } : around(chart.box, size);
      const before = app.view?.size;
      app.view?.leave();
      app.view = new View({ file: app.file, page: chart.page }, whole, app.draw, app.record.sheet?.found);
      app.view.size = before ?? app.view.size;
      Object.assign(app, {
        proposal: null, cross: null, drawing: null, hover: null, focus: null, held: null, turning: false, alone: null,
      });
      app.draw();
    },

    open(index) {
      app.work = app.works[index];
      app.chosen = app.work.chart.curves[0]?.key ?? null;
      app.showChart();
    },

    /** Begins a chart that was not found. */
    async begin() {
      const { pages } = app.record.sheet;
      const given = await ask({
        title: 'A chart that was not found',
        text: 'Choose its page, then draw a box around its plot area, from axis to axis.',
        fields: [{
          name: 'page', label: 'Page', kind: 'choice', value: String(app.work?.chart.page ?? 1), required: true,
          options: pages.map(({ page }) => ({ value: String(page), label: `Page ${page}` })),
        }],
        action: 'Show the page',
      });
      if (given) {
        const size = sizeOf(Number(given.page));
        const box = [0.1 * size.width, 0.1 * size.height, 0.8 * size.width, 0.3 * size.height].map(Math.round);
        app.work = new Work({ ...newChart(size.page, box), whole: true });
        app.works.push(app.work);
        app.chosen = null;
        app.tool = 'box';
        app.showChart();
      }
    },

    boxDrawn(box) {
      app.drawing = null;
      if (box[2] < LEAST || box[3] < LEAST) {
        tell('Draw the box from one corner of the plot to the other.', 'refused');
        return;
      }
      app.work.change('drawing the box', (chart) => Object.assign(chart, { box, whole: false }));
      app.tool = 'axes';
      app.showChart();
      tell('Now give each axis two marks: click where a tick stands and type its value.');
    },

    boxSide(index, text) {
      const number = Number(text);
      if (Number.isFinite(number) && (index < 2 || number > 0)) {
        app.work.change('the plot area', (chart) => {
          chart.box[index] = number;
        });
      }
      app.draw();
    },

    /** Takes in what the program knows now; what is not saved at other charts stays. */
    receive({ record, figure, catalogue }) {
      const kept = app.works.filter((work) => work !== app.work && work.isChanged);
      Object.assign(app, { record, catalogue, measures: figure.measures, stale: false, fault: null });
      app.works = figure.figures.map((each) => {
        const same = kept.find(({ chart }) => chart.page === each.page && chart.number === each.number);
        return same ?? new Work(chartOf(each, record.record, figure.measures));
      });
      app.works.push(...kept.filter((work) => work.chart.number === null));
    },

    /** After a change was saved: the same chart as it is now. */
    async reload() {
      const { page, box } = app.work.chart;
      const { chosen } = app;
      app.receive(await load(app.file));
      const isSame = ({ chart }) =>
        chart.page === page && Math.abs(chart.box[0] - box[0]) < SAME && Math.abs(chart.box[1] - box[1]) < SAME;
      app.work = app.works.find(isSame) ?? app.works[0] ?? null;
      app.turning = false;
      app.chosen = app.work?.curve(chosen) ? chosen : (app.work?.chart.curves.at(-1)?.key ?? null);
      app.draw();
    },

    /** From the address, or after somebody else's change. */
    async start() {
      try {
        app.work = null;
        app.works = [];
        app.receive(await load(app.file));
        const { curve, page, chart } = app.asked;
        const byCurve = app.works.findIndex((work) => work.curve(curve));
        const byPlace = app.works.findIndex((work) => work.chart.page === page && work.chart.number === chart);
        if (app.works.length) {
          app.open(Math.max(0, byCurve, byPlace));
          app.chosen = app.work.curve(curve) ? curve : app.chosen;
        }
      } catch (refused) {
        app.fault = refused.message;
      }
      app.draw();
    },
  };
}
