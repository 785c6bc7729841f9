// The head of the record page, and the bar below it when somebody else has changed the record.

import { html } from '/lit/lit-html.js';
import { header } from '../header.js';
import { address } from '../route.js';

/** The way back to the list. */
export function back() {
  return { href: address('folder'), label: 'Records' };
}

/**
 * @param {import('./session.js').Session} session
 * @param {object} run what the buttons do, see keys.js
 */
export function recordHeader({ view }, { add, undo, redo, help }) {
  const text = (member) => view.cell.find((each) => each.member === member)?.text;
  const step = (what, word, key, run) => html`<button
    type="button"
    class="button plain"
    aria-disabled=${!what}
    title=${what ? `${word}: ${what} (${key})` : `Nothing to ${word.toLowerCase()}`}
    @click=${run}
  >
    ${word}
  </button>`;
  return header({
    back: back(),
    title: [text('maker'), text('model')].filter(Boolean).join(' ') || view.file,
    detail: html`<span class="chip" data-state=${view.state}>${view.state}</span>`,
    actions: html`
      <button type="button" class="button" @click=${add}>Add a value <kbd>a</kbd></button>
      ${step(view.undo, 'Undo', 'Ctrl Z', undo)} ${step(view.redo, 'Redo', 'Ctrl Shift Z', redo)}
      <button type="button" class="button plain" @click=${help}>Keys <kbd>?</kbd></button>
    `,
  });
}

/**
 * @param {import('./session.js').Session} session
 * @param {boolean} isTyping whether a form is open
 * @param {() => void} reload
 */
export function conflictBar({ conflict }, isTyping, reload) {
  return html`
    <div class="conflict" role="alert">
      <span><b>${conflict}</b> Nothing was overwritten${isTyping ? ', and what you are typing stays' : ''}.</span>
      <button type="button" class="button main" @click=${reload}>Load the new state</button>
    </div>
  `;
}
