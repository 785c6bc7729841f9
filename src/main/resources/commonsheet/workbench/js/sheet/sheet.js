// The sheet of a record: its pages one below the other, with a mark at the place of every value.

import { html, nothing, render } from '/lit/lit-html.js';
import { repeat } from '/lit/directives/repeat.js';
import { placed } from '../placed.js';
import { drawBox } from './drawing.js';
import { pageMarks } from './marks.js';
import { Pictures } from './pictures.js';
import { Search } from './search.js';
import { bringIntoSight, middleInSight } from './sight.js';
import { tools } from './tools.js';
import { chooseWords } from './words.js';
import { Zoom } from './zoom.js';

/** Share of the window by which a key scrolls: a line or two stay in sight. */
const MOST = 0.85;

/** Shows a sheet and tells which value was chosen on it. */
export class Sheet {
  #view = null;
  #chosen = null;
  #lit = null;
  #marked = null;
  #marking = null;
  #page = 1;

  /**
   * @param {HTMLElement} element to draw in
   * @param {string} file the record's
   * @param {(id: string) => void} choose told when a mark is chosen
   * @param {() => void} back told when the keyboard leaves the sheet
   */
  constructor(element, file, choose, back) {
    this.element = element;
    this.file = file;
    this.choose = choose;
    this.back = back;
    this.search = new Search(file, { redraw: () => this.#draw(), show: (hit) => this.#scrollTo(hit), leave: back });
  }

  /**
   * Draws the sheet of a record.
   *
   * @param {object} view of the record
   * @param {string} chosen id of the chosen part
   * @param {{page: number, box: number[]}|null} marked place that a form is about
   */
  show(view, chosen, marked = null) {
    this.#view = view;
    this.#chosen = chosen;
    this.#marked = marked;
    this.#draw();
    if (!this.zoom && this.scroller) {
      this.pictures = new Pictures(this.file, this.scroller, view.sheet.pages);
      const changed = () => {
        this.pictures.sharpen();
        this.#draw();
      };
      this.zoom = new Zoom(this.scroller, view.sheet.pages, changed, () => this.#looked());
      this.scroller.addEventListener('scroll', () => this.#noticePage(), { passive: true });
    }
  }

  /** Lights up a place for as long as it is pointed at. */
  light(place) {
    this.#lit = place;
    this.#draw();
  }

  /** Brings the place of the chosen part into sight. */
  showChosen() {
    const place = this.#part(this.#chosen)?.place;
    if (place) {
      this.#scrollTo(place);
    }
  }

  /**
   * Has the person mark words on the sheet.
   *
   * @param {'draw'|'words'} how with a box, or word by word with the keyboard
   * @returns {Promise<{page: number, box: number[]}|null>} null where given up
   */
  async mark(how) {
    this.#marking?.abort();
    const marking = (this.#marking = new AbortController());
    this.hint = how === 'draw' ? 'Draw a box around the words.' : null;
    this.#draw();
    const begin = how === 'draw' ? drawBox : chooseWords;
    const page = this.pageElement(this.#page);
    const place = this.#part(this.#chosen)?.place;
    const near = place?.page === this.#page ? place.box : null;
    const box = await begin({ file: this.file, page, near, scroller: this.scroller, signal: marking.signal, hint: (text) => this.#hint(text) }).catch((refused) => {
      this.#hint(refused.message);
      return null;
    });
    if (this.#marking === marking) {
      this.#marking = null;
      this.#draw();
    }
    return box;
  }

  #hint(text) {
    this.hint = text;
    this.#draw();
  }

  /** Lets go of what it holds. */
  leave() {
    this.#marking?.abort();
    this.pictures?.leave();
    this.zoom?.leave();
  }

  get scroller() {
    return this.element.querySelector('.sheet-scroll');
  }

  /** The element of a page by its number. */
  pageElement(number) {
    return this.element.querySelector(`.sheet-page[data-page="${number}"]`);
  }

  /** Scrolls by most of what is in sight, down (1) or up (-1). */
  scrollBy(way) {
    this.scroller.scrollTop += way * MOST * this.scroller.clientHeight;
  }

  /** Goes to a page. */
  goTo(number) {
    const page = this.pageElement(number);
    if (page) {
      this.scroller.scrollTop = page.offsetTop - 8;
    }
  }

  #part(id) {
    return this.#view?.parts.find((each) => each.id === id);
  }

  #noticePage() {
    const middle = this.scroller.scrollTop + this.scroller.clientHeight / 2;
    const pages = [...this.element.querySelectorAll('.sheet-page')];
    const page = pages.find((each) => each.offsetTop + each.offsetHeight > middle) ?? pages.at(-1);
    if (page && Number(page.dataset.page) !== this.#page) {
      this.#page = Number(page.dataset.page);
      this.#draw();
    }
  }

  #scrollTo(place) {
    const element = this.pageElement(place.page);
    if (element && this.zoom) {
      bringIntoSight(place.box, element, this.scroller, this.zoom.scale);
    }
  }

  #looked() {
    const place = this.#part(this.#chosen)?.place;
    const element = place && this.pageElement(place.page);
    return element ? middleInSight(place.box, element, this.scroller, this.zoom.scale) : null;
  }

  #draw() {
    const { sheet } = this.#view;
    if (!sheet?.found) {
      return;
    }
    render(
      html`
        ${tools(this, { page: this.#page, pages: sheet.pages.length, marking: Boolean(this.#marking) })}
        ${this.#marking && this.hint
          ? html`<p class="sheet-hint" role="status">
              ${this.hint} <button type="button" class="button" @click=${() => this.#marking.abort()}>Give up <kbd>Esc</kbd></button>
            </p>`
          : nothing}
        <div class="sheet-scroll" tabindex="0" role="region" aria-label="Pages of ${sheet.file}" data-marking=${Boolean(this.#marking)}>
          <div class="sheet-pages">
            ${repeat(
              sheet.pages,
              (each) => each.page,
              (each) => this.#pageTemplate(each),
            )}
          </div>
        </div>
      `,
      this.element,
    );
  }

  #pageTemplate(page) {
    const chosen = this.#part(this.#chosen);
    const marks = { chosen, lit: this.#lit ?? this.#marked, hits: this.search.hitsOn(page.page), hit: this.search.current, choose: this.choose };
    return html`
      <div class="sheet-page" data-page=${page.page} ${placed({ '--page-width': `${page.width}px`, '--page-height': `${page.height}px` })}>
        <img alt="Page ${page.page} of the sheet" draggable="false" />
        ${pageMarks(this.#view.parts, page, marks)}
      </div>
    `;
  }
}
