// Search in the words of the sheet, those of pictures too where they were recognised.

import { html, nothing } from '/lit/lit-html.js';
import { get } from '../api.js';

const SETTLE = 160;

/** What was searched, what was found, and where one is. */
export class Search {
  #hits = [];
  #at = 0;
  #text = '';
  #timer;
  #asked = 0;

  /**
   * @param {string} file the record's
   * @param {{redraw: () => void, show: (hit: object) => void, leave: () => void}} sheet
   */
  constructor(file, sheet) {
    this.file = file;
    this.sheet = sheet;
    this.state = '';
    this.unread = [];
    this.reading = false;
  }

  /** The hit that is gone to. */
  get current() {
    return this.#hits[this.#at];
  }

  hitsOn(page) {
    return this.#hits.filter((each) => each.page === page);
  }

  focus() {
    const field = document.getElementById('sheet-search');
    field?.focus();
    field?.select();
  }

  #typed(text) {
    this.#text = text;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#ask(), SETTLE);
  }

  async #ask() {
    const asked = ++this.#asked;
    const text = this.#text.trim();
    const found = text ? await get('/api/place/search', { file: this.file, text }).catch((refused) => ({ hits: [], refused })) : { hits: [] };
    if (asked !== this.#asked) {
      return;
    }
    this.#hits = found.hits;
    this.#at = 0;
    this.unread = found.unread ?? [];
    this.state = found.refused ? found.refused.message : text ? this.#found() : '';
    this.#show();
  }

  #found() {
    return this.#hits.length ? `${this.#at + 1} of ${this.#hits.length}` : 'not found';
  }

  /** Has the words of a page that is a picture recognised, and searches again. */
  async #read() {
    if (this.reading) {
      return;
    }
    this.reading = true;
    this.sheet.redraw();
    await get('/api/place/words', { file: this.file, page: this.unread[0] }).catch(() => null);
    this.reading = false;
    await this.#ask();
  }

  #step(by) {
    if (this.#hits.length) {
      this.#at = (this.#at + by + this.#hits.length) % this.#hits.length;
      this.state = this.#found();
      this.#show();
    }
  }

  #show() {
    this.sheet.redraw();
    if (this.current) {
      this.sheet.show(this.current);
    }
  }

  #clear(event) {
    event.target.value = '';
    clearTimeout(this.#timer);
    this.#asked++;
    this.#text = '';
    this.#hits = [];
    this.state = '';
    this.sheet.redraw();
    this.sheet.leave();
  }

  #key(event) {
    if (event.key === 'Enter') {
      event.preventDefault();
      this.#step(event.shiftKey ? -1 : 1);
    } else if (event.key === 'Escape') {
      event.preventDefault();
      this.#clear(event);
    }
  }

  /** The field with its count and its steps. */
  template() {
    return html`
      <div class="sheet-search" role="search">
        <input
          id="sheet-search"
          type="search"
          aria-label="Search the words of the sheet"
          placeholder="Search the sheet"
          autocomplete="off"
          spellcheck="false"
          @input=${(event) => this.#typed(event.target.value)}
          @keydown=${(event) => this.#key(event)}
        />
        <span class="count small soft" role="status">${this.state}</span>
        ${this.state && this.unread.length
          ? html`<button type="button" class="button plain" title="Pages whose words are not recognised yet: ${this.unread.join(', ')}" @click=${() => this.#read()}>
              ${this.reading ? 'Recognising …' : `Recognise page ${this.unread[0]}`}
            </button>`
          : nothing}
        ${this.#hits.length > 1
          ? html`
              <button type="button" class="button plain" aria-label="Hit before" title="Hit before (Shift Enter)" @click=${() => this.#step(-1)}>↑</button>
              <button type="button" class="button plain" aria-label="Next hit" title="Next hit (Enter)" @click=${() => this.#step(1)}>↓</button>
            `
          : nothing}
      </div>
    `;
  }
}
