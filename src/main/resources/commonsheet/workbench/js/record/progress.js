// How far the record is, what stands in the way of approving it, and the step of approving.

import { html, nothing } from '/lit/lit-html.js';
import { ask } from '../dialog.js';
import { person, personOrAsk } from '../person.js';

/** The bar at the head of the record. */
export function progressBar(session, run) {
  const { progress, state } = session.view;
  const { settled, total, obstacles } = progress;
  const ready = !obstacles.length;
  return html`
    <section class="progress" aria-label="Progress">
      <progress max=${Math.max(total, 1)} value=${settled} aria-label="Settled"></progress>
      <span class="count"><b>${settled}</b> of ${total} settled</span>
      ${approval(session.view)} ${ready || state === 'approved' ? nothing : inTheWay(obstacles)}
      ${state === 'approved'
        ? nothing
        : html`<button type="button" class="button approve ${ready ? 'main' : ''}" aria-disabled=${!ready} @click=${run.approve}>Approve <kbd>A</kbd></button>`}
    </section>
  `;
}

/** Who approved the record, as long as that holds, or that it was changed since. */
function approval({ state, record }) {
  const { approvedBy } = record.review;
  if (!approvedBy || state === 'draft') {
    return nothing;
  }
  return html`<span class="small soft">${state === 'approved' ? `approved by ${approvedBy}` : `changed since ${approvedBy} approved it`}</span>`;
}

function inTheWay(obstacles) {
  return html`
    <details class="obstacles">
      <summary><span>${obstacles.length}</span><span class="long">${obstacles.length === 1 ? 'thing' : 'things'}</span><span>in the way</span></summary>
      <ul>
        ${obstacles.map((each) => html`<li>${each.charAt(0).toUpperCase() + each.slice(1)}.</li>`)}
      </ul>
    </details>
  `;
}

/**
 * Approves, when nothing stands in the way; asks whoever prepared the record to say so.
 *
 * @param {(sentence: string, kind?: string) => void} tell
 */
export async function approve(session, tell) {
  const { progress, state, cell } = session.view;
  if (state === 'approved') {
    tell('This record is approved already.');
    return;
  }
  if (progress.obstacles.length) {
    tell(`Not yet: ${progress.obstacles[0]}.`, 'refused');
    return;
  }
  if (!(await personOrAsk())) {
    return;
  }
  const own = progress.ownWork.some((each) => isSame(each, person()));
  const what = cell.filter((each) => ['maker', 'model'].includes(each.member) && each.text).map((each) => each.text);
  const given = await ask({
    title: `Approve ${what.join(' ') || 'this record'}?`,
    text: question(progress),
    fields: own ? [{ name: 'own', kind: 'tick', label: 'I prepared this myself, and approve it all the same (this is recorded)', required: true }] : [],
    action: 'Approve',
    carryOut: ({ own: said }) => session.approve(Boolean(said)),
  });
  if (given && session.view.state === 'approved') {
    tell(`Saved: approved by ${person()}.`);
  }
}

function question({ total, ownWork }) {
  const prepared = ownWork.length ? ` ${ownWork.join(' and ')} prepared it.` : '';
  return `All ${total} values and curves are settled, and no error is open.${prepared} The approval holds your name, the time and the hash of what you approve; any later change reopens it.`;
}

/** Letter case and spaces do not tell two persons apart (docs/review.md). */
function isSame(one, other) {
  const plain = (name) => name.trim().replace(/\s+/g, ' ').toLowerCase();
  return plain(one) === plain(other);
}
