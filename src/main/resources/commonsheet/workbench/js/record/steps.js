// What was done to the record so far, newest first.

import { html, nothing } from '/lit/lit-html.js';
import { nameOf } from './parts.js';

/**
 * The steps of the review, folded, and the one that a curator ends with.
 *
 * @param {import('./session.js').Session} session
 * @param {{prepared: () => void}} run what the button does
 */
export function stepList(session, { prepared }) {
  const steps = [...session.view.steps].reverse();
  return html`
    ${session.view.state === 'approved'
      ? nothing
      : html`<button type="button" class="button plain prepared" title="Says in the record that you prepared it for another person to review" @click=${prepared}>
          I have prepared this for a reviewer
        </button>`}
    ${steps.length ? foldedSteps(session, steps) : nothing}
  `;
}

function foldedSteps(session, steps) {
  return html`
    <details class="steps">
      <summary>What was done so far (${steps.length})</summary>
      <ol reversed>
        ${steps.map(
          (each) => html`
            <li>
              <time datetime=${each.at}>${when(each.at)}</time> <b>${each.by}</b> ${each.step}
              ${(each.about ?? []).length ? html`<span class="soft">${about(session, each.about)}</span>` : nothing}
              ${each.remark ? html`<q>${each.remark}</q>` : nothing}
            </li>
          `,
        )}
      </ol>
    </details>
  `;
}

function about(session, ids) {
  const names = ids.slice(0, 3).map((id) => {
    const part = session.part(id);
    return part ? nameOf(part) : id;
  });
  return ids.length > 3 ? `${names.join('; ')} and ${ids.length - 3} more` : names.join('; ');
}

function when(at) {
  const time = new Date(at);
  return Number.isNaN(time.valueOf())
    ? at
    : time.toLocaleString('en-GB', { day: 'numeric', month: 'short', year: 'numeric', hour: '2-digit', minute: '2-digit' });
}
