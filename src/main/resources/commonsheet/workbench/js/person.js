// Who works here. The name goes into every step of a review, so the pages ask for it once, keep it in
// this browser, and show it at the top where it can be changed.

import { html, render } from '/lit/lit-html.js';
import { ask } from './dialog.js';

const NAME = 'commonsheet-person';

/** The name of who works here, or null as long as nobody said it. */
export function person() {
  return localStorage.getItem(NAME);
}

/**
 * Asks for the name; whoever is needed for something asks so before.
 *
 * @returns {Promise<string|null>} the name; the one there was, or null, where the dialog is given up
 */
export async function askPerson() {
  const given = await ask({
    title: 'Who are you?',
    text: 'Your name is kept with everything you confirm, change or approve.',
    fields: [{ name: 'name', label: 'Your name', value: person() ?? '', required: true }],
    action: 'Work under this name',
    carryOut: async ({ name }) => {
      if (!name) {
        throw new Error('Give your name, as your colleagues know it.');
      }
    },
  });
  if (given) {
    localStorage.setItem(NAME, given.name);
    dispatchEvent(new CustomEvent('person', { detail: given.name }));
  }
  return person();
}

/**
 * The name, asked for where it is not known yet.
 *
 * @returns {Promise<string|null>} null where the dialog is given up
 */
export async function personOrAsk() {
  return person() ?? askPerson();
}

/** Shows who works here, wherever it is put, and lets it be changed. */
class WhoWorks extends HTMLElement {
  #redraw = () => this.#draw();

  connectedCallback() {
    addEventListener('person', this.#redraw);
    addEventListener('storage', this.#redraw);
    this.#draw();
  }

  disconnectedCallback() {
    removeEventListener('person', this.#redraw);
    removeEventListener('storage', this.#redraw);
  }

  #draw() {
    const name = person();
    render(
      html`<button type="button" class="button plain" title="Change the name you work under" @click=${askPerson}>
        ${name ? html`<span class="soft">You are</span> ${name}` : 'Say who you are'}
      </button>`,
      this,
    );
  }
}

customElements.define('who-works', WhoWorks);
