// The panel of the chosen value or curve: what was read beside what is printed, what is doubtful about
// it, and what can be done.

import { html, nothing } from '/lit/lit-html.js';
import { address } from '../route.js';
import { findingBox } from './finding.js';
import { standingWord } from './list.js';
import { findingsOf, methodOf, nameOf } from './parts.js';

/**
 * @param {import('./session.js').Session} session
 * @param {object} run what the buttons do, see keys.js
 * @param {*} strip template of the piece of the sheet, or nothing
 */
export function chosenPanel(session, run, strip) {
  const part = session.part();
  if (!part) {
    return html`<section class="chosen-part" aria-label="Chosen value"></section>`;
  }
  const answers = { part: (id) => session.part(id), mend: run.mend, accept: run.accept, show: (id) => session.choose(id) };
  return html`
    <section class="chosen-part" aria-label="Chosen value">
      <div class="chosen-text">
        <header>
          <h2>${nameOf(part)}</h2>
          <span class="chip" data-standing=${part.standing}>${standingWord(part)}</span>
          <span class="soft small id">${part.id}</span>
        </header>
        <p class="reading" data-kind=${part.kind}>
          <strong>${part.value}</strong>
          ${part.conditions ? html`<span class="given">${part.conditions}</span>` : nothing}
        </p>
        ${strip} ${source(session, part)}
        ${part.original ? html`<p class="original small">${part.original}</p>` : nothing}
        ${part.doubts.map((each) => html`<p class="aside doubt"><b>Doubt</b> ${each}</p>`)}
        ${part.derived ? follows(session, part) : nothing}
        ${findingsOf(session.view, part).map((each) => findingBox(each, answers, part.id))}
      </div>
      ${buttons(session, part, run)}
    </section>
  `;
}

function source(session, part) {
  if (part.derived) {
    return nothing;
  }
  const where = part.place ? `page ${part.place.page}, ${methodOf(part)}` : methodOf(part);
  return html`<p class="source small">
    ${part.words ? html`<span class="words">“${part.words}”</span>` : nothing} <span class="soft">${where}</span>
    ${part.note ? html`<span class="soft">(${part.note})</span>` : nothing}
  </p>`;
}

function follows(session, part) {
  const { evidence } = session.view.record.statements.find((each) => each.id === part.id) ?? {};
  const from = (evidence?.from ?? []).map((id) => session.part(id)).filter(Boolean);
  return html`<p class="small">
    Computed from
    ${from.map(
      (each, i) =>
        html`${i ? ', ' : nothing}<button type="button" class="link" @click=${() => session.choose(each.id)}>${nameOf(each)}</button>`,
    )}${from.length ? nothing : 'other values'}; settled when these are${part.settled ? ', and they are' : nothing}.
    ${part.note ? html`<span class="soft">(${part.note})</span>` : nothing}
  </p>`;
}

/** A chart's page lies at the place of its curve. */
export function chartAddress(session, part) {
  return address('figure', { file: session.file, curve: part.id });
}

function buttons(session, part, run) {
  const busy = session.waiting.has(part.id);
  return html`
    <div class="buttons deeds">
      ${part.settled
        ? html`<button type="button" class="button" @click=${run.nextUnsettled}>Next open <kbd>n</kbd></button>`
        : html`<button type="button" class="button main" aria-disabled=${busy} @click=${run.confirm}>Confirm <kbd>c</kbd></button>`}
      ${part.settled && part.standing !== 'confirmed' && !part.derived
        ? html`<button type="button" class="button" aria-disabled=${busy} @click=${run.confirmAnew}>Confirm</button>`
        : nothing}
      <button type="button" class="button" @click=${run.edit}>Correct <kbd>e</kbd></button>
      <button type="button" class="button" @click=${run.reject}>Reject <kbd>x</kbd></button>
      <button type="button" class="button" @click=${run.giveBack}>Return <kbd>r</kbd></button>
      ${part.kind === 'curve' && part.place
        ? html`<a class="button" href=${chartAddress(session, part)}>Open chart <kbd>o</kbd></a>`
        : nothing}
    </div>
  `;
}
