// Two records, or two revisions of a sheet, side by side, with what differs marked.

import { html, nothing, render } from '/lit/lit-html.js';
import { get } from './api.js';
import { header } from './header.js';
import { address } from './route.js';

/** Whether what is the same is shown as well; stays as it was left. */
let all = false;

/** How the second compares with the first, row by row. */
const KINDS = {
  differs: { sign: '≠', word: 'differs' },
  first: { sign: '−', word: 'only in the first' },
  second: { sign: '+', word: 'only in the second' },
  same: { sign: '=', word: 'the same' },
};

/** The differences of the records `first` and `second`. */
export function differencesPage(parameters, element) {
  const first = parameters.get('first');
  const second = parameters.get('second');
  const state = { differences: null, refused: null };

  function toggle() {
    all = !all;
    draw();
  }

  function draw() {
    render(page(state, toggle), element);
  }

  draw();
  if (!first || !second) {
    state.refused = 'Pick two records in the list to see how they differ.';
    draw();
    return;
  }
  get('/api/differences', { first, second }).then(
    (differences) => {
      state.differences = differences;
      draw();
    },
    (refused) => {
      state.refused = refused.message;
      draw();
    },
  );
}

function kindOf(row) {
  if (row.same) {
    return 'same';
  }
  return row.second === null ? 'first' : row.first === null ? 'second' : 'differs';
}

function page(state, toggle) {
  const top = header({ back: { href: '#folder', label: 'Records' }, title: 'Differences' });
  if (state.refused) {
    return html`${top}<main class="narrow"><p class="refused" role="alert">${state.refused}</p></main>`;
  }
  if (!state.differences) {
    return html`${top}<main aria-busy="true"><p class="soft" role="status">Comparing …</p></main>`;
  }
  const { first, second } = state.differences;
  const rows = state.differences.rows.map((row) => ({ ...row, kind: kindOf(row) }));
  const shown = all ? rows : rows.filter((row) => row.kind !== 'same');
  return html`${top}
    <main class="differences">
      <div class="controls">
        <p role="status">${summary(rows)}</p>
        <span class="end buttons">
          <a class="button" href=${address('differences', { first: second.file, second: first.file })}>Swap the two</a>
          <button type="button" class="button" aria-pressed=${all} @click=${toggle}>Show what is the same</button>
        </span>
      </div>
      <div class="scroller" tabindex="0" role="region" aria-label="Differences">
        <table>
          <thead>
            <tr>
              <th scope="col" class="kind"><span class="heard">How it compares</span></th>
              <th scope="col">Value</th>
              ${side(first, 'First')} ${side(second, 'Second')}
            </tr>
          </thead>
          <tbody>
            ${shown.map((row) => line(row, first, second))}
          </tbody>
        </table>
        ${shown.length === 0 ? html`<p class="none">The two say the same.</p>` : nothing}
      </div>
    </main>`;
}

function summary(rows) {
  const count = (kind) => rows.filter((row) => row.kind === kind).length;
  const parts = [
    [count('differs'), 'differ'],
    [count('first'), 'only in the first'],
    [count('second'), 'only in the second'],
    [count('same'), 'the same'],
  ];
  return parts
    .filter(([number]) => number > 0)
    .map(([number, words]) => `${number} ${words}`)
    .join(' · ');
}

function side(record, place) {
  return html`<th scope="col" class="side">
    <span class="soft">${place}</span>
    <a href=${address('record', { file: record.file })}>${[record.maker, record.model ?? record.id].filter(Boolean).join(' ')}</a>
    <span class="chip" data-state=${record.state}>${record.state}</span>
    ${record.source ? html`<span class="under">${record.source}</span>` : nothing}
  </th>`;
}

function line(row, first, second) {
  const { sign, word } = KINDS[row.kind];
  return html`<tr data-kind=${row.kind}>
    <td class="kind" title=${word}><span aria-hidden="true">${sign}</span><span class="heard">${word}</span></td>
    <th scope="row">${row.what}${row.conditions ? html`<span class="under">${row.conditions}</span>` : nothing}</th>
    <td class="said">${said(row.first, row.firstId, first)}</td>
    <td class="said">${said(row.second, row.secondId, second)}</td>
  </tr>`;
}

/** Values and curves have a place on the record's page; members of the cell stand at its top. */
function said(text, id, record) {
  if (text === null) {
    return html`<span class="soft">not said</span>`;
  }
  return /^[sc]\d+$/.test(id ?? '') ? html`<a href=${address('record', { file: record.file, at: id })}>${text}</a>` : text;
}
