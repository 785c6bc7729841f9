// The values and curves as a list box: one stop for the keyboard, the chosen one told to readers of
// screens, arrows to go along. What can be done with the chosen one stands below, in its panel.

import { html, nothing } from '/lit/lit-html.js';
import { repeat } from '/lit/directives/repeat.js';
import { findingsOf, grouped, inWords } from './parts.js';

/** Id of the list's element, to which the focus returns. */
export const LIST = 'parts';

/** What is told of a standing where a sign says it to the eye. */
const SIGNS = { read: '·', unsure: '?', confirmed: '✓', corrected: '≠', rejected: '×' };

/**
 * The list.
 *
 * @param {import('./session.js').Session} session
 * @param {{derivedShown: boolean, toggleDerived: () => void}} options
 */
export function partList(session, { derivedShown, toggleDerived }) {
  const { view, chosen } = session;
  if (!view.parts.length) {
    return html`<p class="empty">This record says nothing of its cell yet. Add its first value with <kbd>a</kbd>.</p>`;
  }
  const groups = grouped(view.parts);
  const derived = groups.find((each) => each.derived);
  return html`
    <div
      id=${LIST}
      class="parts"
      role="listbox"
      tabindex="0"
      aria-label="Values and curves"
      aria-activedescendant=${chosen && (derivedShown || !session.part()?.derived) ? `part-${chosen}` : nothing}
    >
      ${repeat(
        groups.filter((each) => !each.derived || derivedShown),
        (each) => each.key,
        (each) => group(session, each),
      )}
    </div>
    ${derived
      ? html`<button type="button" class="button plain derived-toggle" aria-expanded=${derivedShown} @click=${toggleDerived}>
          ${derivedShown ? 'Hide what was computed' : `Show ${derived.parts.length} values computed from these`}
        </button>`
      : nothing}
  `;
}

function group(session, { key, title, parts }) {
  return html`
    <div role="group" aria-labelledby="group-${key}">
      <div class="group-title" id="group-${key}" role="presentation">${title}</div>
      ${repeat(
        parts,
        (each) => each.id,
        (each) => row(session, each),
      )}
    </div>
  `;
}

function row(session, part) {
  const waiting = session.waiting.has(part.id);
  const open = findingsOf(session.view, part).filter((each) => each.open);
  return html`
    <div
      id="part-${part.id}"
      class="part"
      role="option"
      aria-selected=${part.id === session.chosen}
      data-standing=${part.standing}
      data-settled=${part.settled}
      @click=${() => session.choose(part.id)}
    >
      <span class="sign" aria-hidden="true">${SIGNS[part.standing] ?? ''}</span>
      <span class="name">
        ${part.name}${part.kind === 'curve' || !part.statistic ? nothing : html` <span class="statistic">${part.statistic}</span>`}
      </span>
      <span class="value">${part.kind === 'curve' ? (part.typed ?? '') : part.value}</span>
      <span class="standing"><span class="chip" data-standing=${part.standing}>${waiting ? 'saving …' : standingWord(part)}</span></span>
      <span class="under">
        ${part.conditions ? html`<span class="given">${part.conditions}</span>` : nothing}
        ${part.kind === 'curve' ? html`<span>${part.value}</span>` : nothing}
        ${part.words && part.kind !== 'curve' ? html`<span class="words">“${part.words}”</span>` : nothing}
        ${part.original ? html`<span class="original">${part.original}</span>` : nothing}
      </span>
      ${part.settled ? nothing : part.doubts.map((each) => html`<span class="aside doubt"><b>Doubt</b> ${each}</span>`)}
      ${open.map(
        (each) => html`<span class="aside" data-severity=${each.severity}><b>${severityWord(each)}</b> ${messageAt(session, each, part)}</span>`,
      )}
    </div>
  `;
}

/** What a finding says, once; at the others that it is about, where that stands. */
function messageAt({ view }, finding, part) {
  const first = view.parts.find((each) => finding.about.includes(each.id));
  return first === part ? finding.message : `as at ${inWords(first)}`;
}

/** The word for where a part stands. */
export function standingWord(part) {
  return part.derived && part.standing === 'read' ? 'computed' : part.standing;
}

/** A finding's severity as a word at the beginning of a sentence. */
export function severityWord({ severity }) {
  return severity.charAt(0).toUpperCase() + severity.slice(1);
}

/** Brings the chosen row into sight. */
export function showChosen(session) {
  document.getElementById(`part-${session.chosen}`)?.scrollIntoView({ block: 'nearest' });
}

/** Puts the focus where the keys for values are at home. */
export function focusList() {
  document.getElementById(LIST)?.focus({ preventScroll: true });
}
