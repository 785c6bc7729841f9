// Sheets that have no record yet, each with what reads it into records; and files that cannot be read.

import { html, nothing } from '/lit/lit-html.js';
import { address } from '../route.js';

/**
 * @param {object[]} sheets those without records, or that were read just now
 * @param {Map<string, {state: string, sentence: string, records: string[]}>} jobs by sheet
 * @param {object} on read(sheet), readAll()
 */
export function sheetList(sheets, jobs, on) {
  if (sheets.length === 0) {
    return nothing;
  }
  const open = sheets.filter((each) => !jobs.has(each.sheet));
  return html`
    <section class="panel unread" aria-labelledby="unread-title">
      <header>
        <h2 id="unread-title">Sheets without a record</h2>
        <span class="soft small">${sheets.length}</span>
        ${
          open.length > 1
            ? html`<button type="button" class="button end" @click=${on.readAll}>Read all ${open.length}</button>`
            : nothing
        }
      </header>
      <ul>
        ${sheets.map(
          (each) => html`<li>
            <span class="name">${each.sheet.slice(each.sheet.indexOf('/') + 1)}</span>
            ${work(each, jobs.get(each.sheet), on)}
          </li>`,
        )}
      </ul>
    </section>
  `;
}

function work(sheet, job, on) {
  if (!job) {
    return html`<button
      type="button"
      class="button plain"
      aria-label="Read this sheet: ${sheet.file}"
      @click=${() => on.read(sheet)}
    >
      Read this sheet
    </button>`;
  }
  if (job.state === 'done') {
    return html`<span class="small" role="status"
      >Read:
      ${job.records.map((file) => html`<a href=${address('record', { file })}>${file.replace(/\.json$/, '')}</a> `)}</span
    >`;
  }
  if (job.state === 'failed') {
    return html`<p class="refused" role="alert">${job.sentence}</p>
      <button type="button" class="button" @click=${() => on.read(sheet)}>Try again</button>`;
  }
  return html`<span class="small working" role="status"
    >${job.state === 'waiting' ? 'Waits for its turn' : 'Being read'}
    ${job.state === 'working' ? html`<progress aria-label="Reading ${sheet.file}"></progress>` : nothing}</span
  >`;
}

/** Files that look like records and cannot be read. */
export function problemList(problems) {
  return problems.length === 0
    ? nothing
    : html`
        <section class="panel unreadable" aria-labelledby="unreadable-title">
          <header>
            <h2 id="unreadable-title">Files that cannot be read</h2>
            <span class="soft small">${problems.length}</span>
          </header>
          <ul>
            ${problems.map((each) => html`<li><strong class="name">${each.file}</strong><p class="refused">${each.sentence}</p></li>`)}
          </ul>
        </section>
      `;
}
