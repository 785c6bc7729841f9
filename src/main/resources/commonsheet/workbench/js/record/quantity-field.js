// A field in which a quantity is found by typing some of its name (combo box by WAI-ARIA 1.2).

import { html, nothing, render } from '/lit/lit-html.js';

class QuantityField extends HTMLElement {
  #options = [];
  #value = '';
  #text = '';
  #open = false;
  #at = 0;

  /** @param {Array<{name: string, label: string, shown: string}>} options */
  set options(options) {
    this.#options = options;
    this.#settle();
  }

  /** @param {string} value name of the quantity, '' for none */
  set value(value) {
    if (value !== this.#value) {
      this.#value = value;
      this.#settle();
    }
  }

  connectedCallback() {
    this.#settle();
  }

  /** The field says what is chosen, whatever was typed to find it. */
  #settle() {
    this.#text = this.#options.find((each) => each.name === this.#value)?.label ?? '';
    this.#open = false;
    this.#draw();
  }

  get #found() {
    const words = this.#text.toLowerCase().split(/\s+/).filter(Boolean);
    const all = this.#options.filter((each) => words.every((word) => each.label.toLowerCase().includes(word)));
    return this.#isWhole ? this.#options : all;
  }

  get #isWhole() {
    return this.#options.some((each) => each.label === this.#text);
  }

  #choose(option) {
    if (!option) {
      return;
    }
    this.#value = option.name;
    this.#settle();
    this.dispatchEvent(new CustomEvent('choose', { detail: option.name }));
  }

  #typed(text) {
    this.#text = text;
    this.#open = true;
    this.#at = 0;
    this.#draw();
  }

  #key(event) {
    const found = this.#found;
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      event.preventDefault();
      const by = event.key === 'ArrowDown' ? 1 : -1;
      this.#at = this.#open ? (this.#at + by + found.length) % found.length : Math.max(0, found.findIndex((each) => each.name === this.#value));
      this.#open = true;
      this.#draw();
    } else if (event.key === 'Enter' && this.#open) {
      event.preventDefault();
      this.#choose(found[this.#at]);
    } else if (event.key === 'Escape' && this.#open) {
      event.preventDefault();
      this.#settle();
    }
  }

  /** On leaving, the only quantity that fits what was typed is taken. */
  #left() {
    if (this.#open && this.#text && !this.#isWhole && this.#found.length === 1) {
      this.#choose(this.#found[0]);
    }
    this.#settle();
  }

  #draw() {
    const found = this.#open ? this.#found : [];
    render(
      html`
        <input
          id="edit-quantity"
          role="combobox"
          aria-expanded=${this.#open}
          aria-controls="quantities"
          aria-autocomplete="list"
          aria-activedescendant=${found.length ? `quantity-${found[this.#at]?.name}` : nothing}
          placeholder="type some of its name"
          autocomplete="off"
          spellcheck="false"
          .value=${this.#text}
          @input=${(event) => this.#typed(event.target.value)}
          @keydown=${(event) => this.#key(event)}
          @blur=${() => this.#left()}
          @click=${() => this.#typed(this.#text)}
        />
        <div id="quantities" role="listbox" aria-label="Quantities" ?hidden=${!found.length}>
          ${found.map(
            (each, i) => html`
              <div
                role="option"
                id="quantity-${each.name}"
                aria-selected=${i === this.#at}
                @mousedown=${(event) => {
                  event.preventDefault();
                  this.#choose(each);
                }}
              >
                ${each.label} <span class="soft">${each.shown}</span>
              </div>
            `,
          )}
        </div>
      `,
      this,
    );
    this.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' });
  }
}

customElements.define('quantity-field', QuantityField);
