// The list of the folder's records: find one, see what is left to do, compare two.

import { html, nothing, render } from '/lit/lit-html.js';
import { get } from '../api.js';
import { header } from '../header.js';
import { address, go } from '../route.js';
import { sheetJobs } from './jobs.js';
import { listKeys } from './keys.js';
import { chosenRows, withWords } from './rows.js';
import { problemList, sheetList } from './sheets.js';
import { recordTable } from './table.js';

/** How the list was last looked at; coming back from a record finds it the same. */
const look = {
  choice: { text: '', state: 'all', column: 'maker', down: false },
  picked: new Set(),
  current: null,
  top: 0,
};

const STATES = [
  ['all', 'All'],
  ['look', 'To look at'],
  ['draft', 'Draft'],
  ['reopened', 'Reopened'],
  ['approved', 'Approved'],
];

/** Shows the records of the folder. */
export function folderPage(parameters, element) {
  const state = { listing: null, rows: [], shown: [], refused: null, height: innerHeight };
  const jobs = sheetJobs(draw, load);
  const keys = listKeys(look, () => state.shown, { open, pick, draw, scroller, search });

  async function load() {
    try {
      state.listing = await get('/api/folder');
      state.rows = state.listing.records.map(withWords);
      state.refused = null;
    } catch (refused) {
      state.refused = refused.message;
    }
    choose({});
  }

  /** Filters and sorts anew; what the keyboard was at stays, if it is still shown. */
  function choose(change) {
    Object.assign(look.choice, change);
    state.shown = chosenRows(state.rows, look.choice);
    if (!state.shown.some((row) => row.file === look.current)) {
      look.current = state.shown[0]?.file ?? null;
      look.top = 0;
    }
    draw();
    const box = scroller();
    if (box) {
      box.scrollTop = look.top;
    }
  }

  function sort(column) {
    const same = look.choice.column === column;
    choose({ column, down: same ? !look.choice.down : false });
  }

  function open(file) {
    go('record', { file });
  }

  /** Two at most: a third takes the place of the one picked first. */
  function pick(file) {
    if (!look.picked.delete(file)) {
      look.picked.add(file);
      if (look.picked.size > 2) {
        look.picked.delete(look.picked.values().next().value);
      }
    }
    draw();
  }

  function scroller() {
    return element.querySelector('.scroller');
  }

  function search() {
    return element.querySelector('input[type=search]');
  }

  function scrolled(event) {
    look.top = event.target.scrollTop;
    draw();
  }

  function draw() {
    render(page(state, { choose, sort, pick, open, scrolled, keys, jobs, load, enter }), element);
  }

  function enter(file) {
    if (look.current !== file) {
      look.current = file;
      draw();
    }
  }

  const measure = new ResizeObserver(() => {
    state.height = scroller()?.clientHeight ?? innerHeight;
    draw();
  });
  addEventListener('keydown', keys.anywhere);
  addEventListener('focus', load);
  draw();
  load().then(() => scroller() && measure.observe(scroller()));
  return () => {
    jobs.leave();
    measure.disconnect();
    removeEventListener('keydown', keys.anywhere);
    removeEventListener('focus', load);
  };
}

function page(state, on) {
  const top = header({
    title: 'Records',
    detail: state.listing ? html`<span title=${state.listing.folder}>${state.listing.folder}</span>` : nothing,
    actions: html`<a class="button" href="#new">New record without a sheet</a>`,
  });
  if (state.refused) {
    return html`${top}<main><p class="refused" role="alert">${state.refused}</p></main>`;
  }
  if (!state.listing) {
    return html`${top}<main aria-busy="true"><p class="soft" role="status">Reading the records …</p></main>`;
  }
  const { records, problems } = state.listing;
  const sheets = state.listing.sheets.filter((each) => each.records.length === 0 || on.jobs.jobs.has(each.sheet));
  const reading = {
    read: (sheet) => on.jobs.readAll([sheet]),
    readAll: () => on.jobs.readAll(sheets.filter((each) => !on.jobs.jobs.has(each.sheet))),
  };
  if (records.length === 0) {
    return html`${top}<main>
      ${emptyFolder(state.listing.folder, sheets.length)} ${sheetList(sheets, on.jobs.jobs, reading)} ${problemList(problems)}
    </main>`;
  }
  return html`${top}
    <main class="whole list">
      ${controls(state, on)}
      <div class="scroller" @scroll=${on.scrolled}>
        ${recordTable(
          { rows: state.shown, top: look.top, height: state.height, current: look.current, picked: look.picked, choice: look.choice },
          { sort: on.sort, pick: on.pick, open: on.open, enter: on.enter, key: on.keys.inTable },
        )}
        ${state.shown.length === 0 ? html`<p class="none soft">No record is like that. <button type="button" class="button plain" @click=${() => on.choose({ text: '', state: 'all' })}>Show all</button></p>` : nothing}
      </div>
      ${
        sheets.length + problems.length > 0
          ? html`<div class="beside">${problemList(problems)}${sheetList(sheets, on.jobs.jobs, reading)}</div>`
          : nothing
      }
    </main>`;
}

function controls(state, on) {
  const [first, second] = look.picked;
  return html`
    <div class="controls" role="search">
      <input
        type="search"
        aria-label="Find records"
        placeholder="Find maker, model, form, sheet"
        .value=${look.choice.text}
        @input=${(event) => on.choose({ text: event.target.value })}
      />
      <div class="states" role="group" aria-label="State">
        ${STATES.map(
          ([name, label]) =>
            html`<button type="button" class="button" aria-pressed=${look.choice.state === name} @click=${() => on.choose({ state: name })}>
              ${label}
            </button>`,
        )}
      </div>
      <span class="soft small" role="status">${state.shown.length} of ${state.rows.length}</span>
      <span class="end buttons">
        ${look.picked.size === 1 ? html`<span class="soft small">Pick a second one to compare</span>` : nothing}
        ${
          look.picked.size === 2
            ? html`<a class="button main" href=${address('differences', { first, second })}>See differences</a>`
            : nothing
        }
        <span class="soft small keys"><kbd>/</kbd> find <kbd>↑</kbd> <kbd>↓</kbd> <kbd>Enter</kbd> open <kbd>Space</kbd> pick</span>
      </span>
    </div>
  `;
}

function emptyFolder(folder, sheets) {
  return html`
    <section class="empty">
      <h2>No records here yet</h2>
      <p>${folder} holds no record of a cell.</p>
      ${
        sheets > 0
          ? html`<p>Below are the sheets that were found. Read one to make its record, then check it beside the sheet.</p>`
          : html`<p>
              Put datasheets (PDF, or scans as PNG, JPEG or TIFF) into this folder and load this page again, or name the folder where they are
              with <code>--sheets</code>. A cell without a sheet can be typed in.
            </p>`
      }
      <a class="button ${sheets > 0 ? '' : 'main'}" href="#new">New record without a sheet</a>
    </section>
  `;
}
