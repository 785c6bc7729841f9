// The table of records. Thousands fit: only the rows in sight are drawn, between two empty rows as high
// as those out of sight. Rows are of one height for that.

import { html, nothing } from '/lit/lit-html.js';
import { repeat } from '/lit/directives/repeat.js';
import { styleMap } from '/lit/directives/style-map.js';
import { address } from '../route.js';
import { COLUMNS } from './rows.js';

/** Pixels; the same as in folder.css. */
export const ROW_HEIGHT = 38;

/** Rows drawn beyond the edges, so that scrolling shows no gaps. */
const BEYOND = 12;

/**
 * @param {object} view
 * @param {object[]} view.rows those to show, in order
 * @param {number} view.top pixels scrolled
 * @param {number} view.height pixels in sight
 * @param {string|null} view.current the file of the row that the keyboard is at
 * @param {Set<string>} view.picked files of rows picked to be compared
 * @param {import('./rows.js').Choice} view.choice
 * @param {object} on what to do: sort(column), enter(file), pick(file), key(event)
 */
export function recordTable(view, on) {
  const first = Math.max(0, Math.floor(view.top / ROW_HEIGHT) - BEYOND);
  const end = Math.min(view.rows.length, Math.ceil((view.top + view.height) / ROW_HEIGHT) + BEYOND);
  return html`
    <table class="records" role="grid" aria-rowcount=${view.rows.length + 1} aria-label="Records" @keydown=${on.key}>
      <thead>
        <tr aria-rowindex="1">
          <th class="pick" scope="col"><span class="heard">Pick to compare</span></th>
          ${COLUMNS.map((column) => heading(column, view.choice, on.sort))}
        </tr>
      </thead>
      <tbody>
        ${space(first)}
        ${repeat(
          view.rows.slice(first, end),
          (row) => row.file,
          (row, i) => recordRow(row, first + i, view, on),
        )}
        ${space(view.rows.length - end)}
      </tbody>
    </table>
  `;
}

function space(rows) {
  return rows > 0
    ? html`<tr class="space" aria-hidden="true"><td colspan=${COLUMNS.length + 1} style=${styleMap({ height: `${rows * ROW_HEIGHT}px` })}></td></tr>`
    : nothing;
}

function heading(column, choice, sort) {
  const sorted = choice.column === column.name;
  return html`<th
    scope="col"
    data-column=${column.name}
    class=${column.number ? 'number' : ''}
    aria-sort=${sorted ? (choice.down ? 'descending' : 'ascending') : 'none'}
  >
    <button type="button" @click=${() => sort(column.name)}>
      ${column.heading}<span class="arrow" aria-hidden="true">${sorted ? (choice.down ? '▾' : '▴') : ''}</span>
    </button>
  </th>`;
}

function recordRow(row, index, view, on) {
  const current = row.file === view.current;
  const picked = view.picked.has(row.file);
  return html`
    <tr
      aria-rowindex=${index + 2}
      aria-selected=${picked}
      class=${current ? 'current' : ''}
      tabindex=${current ? 0 : -1}
      data-file=${row.file}
      @focus=${() => on.enter(row.file)}
      @dblclick=${() => on.open(row.file)}
    >
      <td class="pick">
        <label
          ><input type="checkbox" tabindex="-1" .checked=${picked} @change=${() => on.pick(row.file)} /><span class="heard"
            >Pick ${row.model ?? row.id}</span
          ></label
        >
      </td>
      <td class="maker">${row.maker ?? html`<span class="soft">not said</span>`}</td>
      <td class="model"><a tabindex="-1" href=${address('record', { file: row.file })}>${row.model ?? row.id}</a></td>
      <td>${row.form ?? html`<span class="soft">–</span>`}${row.sizeCode ? html` <span class="soft">${row.sizeCode}</span>` : nothing}</td>
      <td><span class="chip" data-state=${row.state}>${row.state}</span></td>
      <td class="number">${row.statements}</td>
      <td class="number">${row.curves || html`<span class="soft">–</span>`}</td>
      <td class="number">${row.unsettled || html`<span class="soft">none</span>`}</td>
      <td class="number">${findings(row)}</td>
      <td class="missing" title=${row.missing.join(', ')}>${missing(row.missing)}</td>
    </tr>
  `;
}

function findings({ errors, warnings, notes }) {
  if (errors + warnings + notes === 0) {
    return html`<span class="soft">none</span>`;
  }
  return html`<span class="counts">${count(errors, 'error')}${count(warnings, 'warning')}${count(notes, 'note')}</span>`;
}

function count(number, severity) {
  return number === 0
    ? nothing
    : html`<span class="count" data-severity=${severity}>${number} ${severity}${number === 1 ? '' : 's'}</span>`;
}

function missing(labels) {
  return labels.length === 0 ? html`<span class="soft">nothing</span>` : labels.join(', ');
}
