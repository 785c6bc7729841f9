// The form in which a value is corrected or added, in the place of the chosen one's panel.

import { html, nothing } from '/lit/lit-html.js';
import { post } from '../api.js';
import { ask } from '../dialog.js';
import { conditionFields } from './conditions.js';
import { dropDraft, keepDraft } from './draft.js';
import { adding, correcting, deedOf, isTouched } from './drafts.js';
import { nameOf } from './parts.js';
import './quantity-field.js';

/** What is being typed, if anything; draws itself. */
export class Editor {
  /**
   * @param {import('./session.js').Session} session
   * @param {object} page
   * @param {() => Promise<object>} page.catalogue of quantities, statistics and conditions
   * @param {() => void} page.redraw
   * @param {(deed: object, sentence: string) => Promise<boolean>} page.say asks for a change
   * @param {(how: 'draw'|'words') => Promise<{page: number, box: number[]}|null>} page.mark
   * @param {() => void} page.closed what comes after
   */
  constructor(session, page) {
    this.session = session;
    this.page = page;
    /** @type {import('./drafts.js').Draft|null} */
    this.draft = null;
    this.refused = null;
    this.busy = false;
  }

  get isOpen() {
    return this.draft !== null;
  }

  /** Opens it for a part, or for a new value where none is given. */
  async open(part) {
    const catalogue = await this.#loaded();
    this.#start(part ? correcting(part, this.session.view.record, catalogue) : adding());
  }

  /** Opens it with what was typed before the page was left. */
  async reopen(draft) {
    await this.#loaded();
    this.#start(draft);
  }

  /** Puts the focus where one types on. */
  focus() {
    document.querySelector('#edit-typed, #edit-label')?.focus();
  }

  #start(draft) {
    this.draft = draft;
    this.refused = null;
    this.page.redraw();
    document.querySelector(draft.id || draft.quantity ? '#edit-typed, #edit-label' : '#edit-quantity')?.focus();
    if (draft.id) {
      document.querySelector('#edit-typed')?.select();
    }
  }

  async #loaded() {
    return (this.catalogue ??= await this.page.catalogue());
  }

  /** Closes it; asks first where something was typed. */
  async giveUp() {
    if (isTouched(this.draft)) {
      const sure = await ask({ title: 'Give up what you typed?', text: 'It has not been saved.', action: 'Give it up', grave: true });
      if (!sure) {
        return;
      }
    }
    this.#close();
  }

  #close() {
    this.draft = null;
    this.refused = null;
    dropDraft(this.session.file);
    this.page.redraw();
    this.page.closed();
  }

  /** Reads the words in a box into the form; what the person typed themselves stays. */
  async readBox({ page, box }) {
    const { draft } = this;
    const read = await post('/api/place/read', { file: this.session.file, page, box, quantity: draft.quantity || null });
    draft.place = { page, box, text: read.text };
    draft.quantity = draft.quantity || read.quantity || '';
    if (read.typed && (!draft.typed || draft.typed === draft.start.typed)) {
      draft.typed = read.typed;
    }
    if (read.statistic && draft.statistic === draft.start.statistic) {
      draft.statistic = read.statistic;
    }
    this.refused = read.typed ? null : `No figure was found in “${read.text}”; type the value.`;
    this.#changed();
    document.querySelector(draft.quantity ? '#edit-typed' : '#edit-quantity')?.focus();
  }

  #set(member, value) {
    this.draft[member] = value;
    this.#changed();
  }

  #changed() {
    keepDraft(this.session.file, this.draft);
    this.page.redraw();
  }

  async #save(event) {
    event.preventDefault();
    if (this.busy) {
      return;
    }
    this.busy = true;
    this.refused = null;
    this.page.redraw();
    try {
      const deed = deedOf(this.draft, Boolean(this.session.view.sheet));
      if (await this.page.say(deed, this.draft.id ? 'corrected' : 'added')) {
        this.#close();
      }
    } catch (refused) {
      this.refused = refused.message;
    } finally {
      this.busy = false;
      this.page.redraw();
    }
  }

  #key(event) {
    if (event.key === 'Escape' && !event.defaultPrevented) {
      event.preventDefault();
      this.giveUp();
    } else if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) {
      event.preventDefault();
      event.currentTarget.requestSubmit();
    }
  }

  /** The form. */
  template() {
    const { draft } = this;
    const part = draft.id ? this.session.part(draft.id) : null;
    const title = draft.id ? `Correct: ${part ? nameOf(part) : draft.id}` : 'Add a value';
    return html`
      <form class="editor" aria-label=${title} data-own-keys @submit=${(event) => this.#save(event)} @keydown=${(event) => this.#key(event)}>
        <div class="fields">
          <h2>${title}</h2>
          ${part ? this.#reading(part) : nothing}
          ${draft.kind === 'curve' ? this.#labelField() : this.#valueFields()}
          ${conditionFields(draft, this.catalogue, (conditions) => this.#set('conditions', conditions))}
          ${this.session.view.sheet?.found ? this.#placeField() : nothing}
          ${draft.id === null && !draft.place ? this.#seenFields() : nothing}
          <div class="field">
            <label for="edit-remark">Remark <span class="soft">(optional)</span></label>
            <input id="edit-remark" .value=${draft.remark} @input=${(event) => this.#set('remark', event.target.value)} autocomplete="off" />
          </div>
        </div>
        ${this.refused ? html`<p class="refused" role="alert">${this.refused}</p>` : nothing}
        <div class="buttons">
          <button class="button main" ?disabled=${this.busy}>Save</button>
          <button type="button" class="button plain" @click=${() => this.giveUp()}>Cancel</button>
          <span class="soft small"><kbd>Enter</kbd> saves, <kbd>Esc</kbd> gives up</span>
        </div>
      </form>
    `;
  }

  #reading(part) {
    return html`<p class="small soft">
      Read as ${part.kind === 'curve' ? nameOf(part) : part.value}${part.words ? html` from <span class="words">“${part.words}”</span>` : nothing}; that
      is kept beside your correction.
    </p>`;
  }

  #labelField() {
    return html`<div class="field">
      <label for="edit-label">Name of the curve</label>
      <input id="edit-label" .value=${this.draft.label} @input=${(event) => this.#set('label', event.target.value)} autocomplete="off" />
    </div>`;
  }

  #valueFields() {
    const { draft, catalogue } = this;
    return html`
      <div class="field">
        <label for="edit-quantity">Quantity</label>
        <quantity-field
          .options=${catalogue.quantities}
          .value=${draft.quantity}
          @choose=${(event) => this.#set('quantity', event.detail)}
        ></quantity-field>
      </div>
      <div class="pair">
        <div class="field">
          <label for="edit-typed">Value, in any unit</label>
          <input
            id="edit-typed"
            .value=${draft.typed}
            @input=${(event) => this.#set('typed', event.target.value)}
            aria-describedby="edit-typed-hint"
            autocomplete="off"
            spellcheck="false"
          />
          <span class="hint" id="edit-typed-hint">3350 mAh, 2.5 to 4.2 V, 45 ± 1 g, ≤ 20 mΩ</span>
        </div>
        <div class="field">
          <label for="edit-statistic">Statistic</label>
          <select id="edit-statistic" .value=${draft.statistic} @change=${(event) => this.#set('statistic', event.target.value)}>
            <option value="" ?selected=${draft.statistic === ''}>none stated</option>
            ${catalogue.statistics.map((each) => html`<option value=${each} ?selected=${draft.statistic === each}>${each}</option>`)}
          </select>
        </div>
      </div>
    `;
  }

  #placeField() {
    const { place } = this.draft;
    return html`
      <div class="field" role="group" aria-labelledby="edit-place">
        <span class="label" id="edit-place">Place on the sheet</span>
        ${place ? html`<p class="small">page ${place.page}: <span class="words">“${place.text}”</span></p>` : nothing}
        <div class="buttons">
          <button type="button" class="button" @click=${() => this.#mark('draw')}>Draw a box</button>
          <button type="button" class="button" @click=${() => this.#mark('words')}>Choose words</button>
        </div>
      </div>
    `;
  }

  async #mark(how) {
    const box = await this.page.mark(how);
    if (!box || !this.isOpen) {
      this.focus();
      return;
    }
    await this.readBox(box).catch((refused) => {
      this.refused = refused.message;
      this.page.redraw();
    });
  }

  #seenFields() {
    const { draft } = this;
    const optional = this.session.view.sheet ? html` <span class="soft">(where not on the sheet)</span>` : nothing;
    return html`
      <div class="pair">
        <div class="field">
          <label for="edit-where">Where seen${optional}</label>
          <input id="edit-where" .value=${draft.where} @input=${(event) => this.#set('where', event.target.value)} autocomplete="off" />
        </div>
        <div class="field">
          <label for="edit-when">When</label>
          <input id="edit-when" type="date" .value=${draft.when} @input=${(event) => this.#set('when', event.target.value)} />
        </div>
      </div>
    `;
  }
}
