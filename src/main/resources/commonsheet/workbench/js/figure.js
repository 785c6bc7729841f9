// The page of a sheet's charts: curves over the sheet's own figure, axes, points, tracing.

import { html, nothing } from '/lit/lit-html.js';
import { header } from './header.js';
import { address } from './route.js';
import { appOf } from './figure/app.js';
import { axesPanel } from './figure/axes.js';
import { curveList, curvePanel } from './figure/curves.js';
import { stage } from './figure/stage.js';
import { chooser, toolbar } from './figure/toolbar.js';

/** Shows the charts of a record: `#figure?file=F&curve=c1` or `&page=2&chart=1`. */
export function figurePage(parameters, element) {
  const app = appOf(parameters, element, page);
  app.start();
  return app.leave;
}

function page(app) {
  const cell = app.record?.record.cell;
  const name = cell ? [cell.maker, cell.model].filter(Boolean).join(' ') : 'record';
  return html`${header({
      back: { href: address('record', { file: app.file }), label: name || 'record' },
      title: 'Charts',
      detail: app.work ? chooser(app) : nothing,
      actions: app.work ? saving(app) : nothing,
    })}
    ${app.fault ? html`<main class="narrow"><p role="alert">${app.fault}</p></main>` : app.record ? content(app) : html`<main></main>`}`;
}

function saving(app) {
  const { isChanged } = app.work;
  return html`<button type="button" class="button plain" id="discard" ?disabled=${!isChanged} @click=${app.discard}>Discard</button>
    <button type="button" class="button main" id="save" ?disabled=${!isChanged} title="Save (Ctrl+S)" @click=${app.save}>Save</button>`;
}

function content(app) {
  return app.work ? atWork(app) : none(app);
}

function none(app) {
  const { sheet } = app.record;
  return html`<main class="narrow"><section class="empty">
    <h2>No curves yet</h2>
    <p>${
      sheet?.found
        ? 'No chart of this sheet was read. Where it has one, draw a box around it and trace its curves by clicks.'
        : (sheet?.reason ?? 'This record was typed in and has no sheet with charts.')
    }</p>
    ${sheet?.found ? html`<button type="button" class="button main" id="begin" @click=${app.begin}>Draw a box around a chart</button>` : nothing}
  </section></main>`;
}

function atWork(app) {
  const { sheet } = app.record;
  return html`<main class="whole figure">
    ${app.stale ? changedElsewhere(app) : nothing}
    <section class="view" aria-label="The chart">
      ${toolbar(app)} ${sheet?.found ? nothing : html`<p class="finding" data-severity="warning">${sheet?.reason ?? 'The record has no sheet.'}</p>`}
      <div class="holder">${stage(app)}</div>
    </section>
    <aside class="side" aria-label="Curves and axes">
      ${curveList(app)} ${app.tool === 'axes' || app.tool === 'box' ? axesPanel(app) : curvePanel(app)} ${keys()}
    </aside>
  </main>`;
}

function changedElsewhere(app) {
  return html`<div class="elsewhere" role="alert">
    <p>This record has been changed elsewhere since you loaded it. What you did here can no longer be saved.</p>
    <button type="button" class="button" @click=${app.start}>Load it as it is now</button>
  </div>`;
}

const KEYS = [
  ['L M P T', 'look, axis marks, points, trace'],
  ['H', 'the sheet alone, and back'],
  ['[ ]', 'the curve before, the next'],
  ['+ − 0', 'closer, farther, all of it'],
  ['Arrows', 'move what is in hand; with Shift finely'],
  ['Enter', 'act at the cross; on a mark: type its value'],
  ['N B A Del', 'next point, point before, add, take out'],
  ['C', 'confirm the curve'],
  ['Ctrl Z, Y, S', 'undo, redo, save'],
];

function keys() {
  return html`<details class="panel keys"><summary>Keys</summary><dl>
    ${KEYS.map(([key, does]) => html`<div><dt><kbd>${key}</kbd></dt><dd>${does}</dd></div>`)}
  </dl></details>`;
}
