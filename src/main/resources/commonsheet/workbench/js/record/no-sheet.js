// Where the sheet would be, when there is none: the sentence why, and all that is known of what it
// says; for a record without one, where each value was seen.

import { html, nothing } from '/lit/lit-html.js';
import { nameOf } from './parts.js';

/** @param {import('./session.js').Session} session */
export function noSheet(session) {
  const { view } = session;
  const { title: seenOn, where, when } = view.record.source ?? {};
  const title = view.sheet ? 'The sheet cannot be shown' : (seenOn ?? 'No sheet');
  return html`
    <div class="no-sheet" tabindex="0" role="region" aria-label="What is known of the sheet">
      <h2>${title}</h2>
      ${view.sheet ? html`<p>${asSentence(view.sheet.reason)}</p>` : html`<p>Seen: ${[where, when].filter(Boolean).join(', ')}. This record has no sheet; each value stands with where it was seen.</p>`}
      <table>
        <caption class="heard">What is known of where each value stands</caption>
        <thead>
          <tr><th scope="col">Value</th><th scope="col">${view.sheet ? 'As printed' : 'Seen'}</th>${view.sheet ? html`<th scope="col">Page</th>` : nothing}</tr>
        </thead>
        <tbody>
          ${view.parts
            .filter((each) => !each.derived)
            .map(
              (each) => html`
                <tr class=${each.id === session.chosen ? 'chosen' : ''} @click=${() => session.choose(each.id, 'sheet')}>
                  <th scope="row">${nameOf(each)}</th>
                  <td>${each.words ? html`<span class="words">“${each.words}”</span>` : nothing} ${view.sheet ? nothing : each.note}</td>
                  ${view.sheet ? html`<td>${each.place?.page ?? ''}</td>` : nothing}
                </tr>
              `,
            )}
        </tbody>
      </table>
    </div>
  `;
}

function asSentence(text) {
  const words = (text ?? '').trim();
  return `${words}${/[.!?]$/.test(words) ? '' : '.'}`;
}
