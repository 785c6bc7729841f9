// Where a page is shown larger than the picture of the whole of it can be, the part that is in sight is
// asked for by itself and laid over it.

import { picture } from '../api.js';
import { over } from '../placed.js';

const SETTLE = 160;

/** Points; parts begin and end at multiples of it, so that small moves ask for nothing new. */
const GRID = 40;

/** The parts of pages that are in sight, as sharp as they are shown. */
export class Detail {
  #shown = new Map();
  #timer;

  /**
   * @param {string} file the record's
   * @param {HTMLElement} scroller around the pages
   * @param {Map<number, {width: number, height: number}>} pages by number, in points
   * @param {number} from the width in pixels beyond which a part is asked for
   */
  constructor(file, scroller, pages, from) {
    this.file = file;
    this.scroller = scroller;
    this.pages = pages;
    this.from = from;
    this.moved = () => this.refresh();
    scroller.addEventListener('scroll', this.moved, { passive: true });
  }

  /** Asks for what came into sight, once nothing moves any more. */
  refresh() {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.scroller.querySelectorAll('.sheet-page[data-shown]').forEach((each) => this.#look(each)), SETTLE);
  }

  #look(element) {
    const page = this.pages.get(Number(element.dataset.page));
    const pixels = (element.clientWidth * (devicePixelRatio || 1)) / page.width;
    const box = pixels * page.width > this.from ? this.#inSight(element, page) : null;
    if (!box) {
      this.#remove(element);
      return;
    }
    const width = Math.ceil(box[2] * pixels);
    const key = `${box} ${width}`;
    if (this.#shown.get(element)?.key !== key) {
      this.#ask(element, page, box, width, key);
    }
  }

  /** The part of a page within the window around it, in points; null for none. */
  #inSight(element, page) {
    const scale = element.clientWidth / page.width;
    const window = this.scroller.getBoundingClientRect();
    const at = element.getBoundingClientRect();
    const span = (from, to, most) => [Math.max(0, Math.floor(from / scale / GRID) * GRID), Math.min(most, Math.ceil(to / scale / GRID) * GRID)];
    const [left, right] = span(window.left - at.left, window.right - at.left, page.width);
    const [top, bottom] = span(window.top - at.top, window.bottom - at.top, page.height);
    return right > left && bottom > top ? [left, top, right - left, bottom - top] : null;
  }

  async #ask(element, page, box, width, key) {
    const before = this.#shown.get(element);
    before?.abort.abort();
    const abort = new AbortController();
    this.#shown.set(element, { ...before, key, abort });
    try {
      const url = await picture('/api/place/picture', { file: this.file, page: element.dataset.page, box: box.join(), width }, abort.signal);
      const image = new Image();
      image.alt = '';
      image.className = 'detail';
      Object.entries(over(box, page)).forEach(([name, value]) => image.style.setProperty(name, value));
      image.onload = () => {
        this.#shown.get(element)?.image?.remove();
        element.querySelector('img').after(image);
        URL.revokeObjectURL(url);
        this.#shown.set(element, { key, abort, image });
      };
      image.src = url;
    } catch {
      // The picture of the whole page is there; it is less sharp, and no less true.
      this.#shown.delete(element);
    }
  }

  #remove(element) {
    const shown = this.#shown.get(element);
    shown?.abort.abort();
    shown?.image?.remove();
    this.#shown.delete(element);
  }

  /** Lets all go. */
  leave() {
    clearTimeout(this.#timer);
    this.scroller.removeEventListener('scroll', this.moved);
    [...this.#shown.keys()].forEach((each) => this.#remove(each));
  }
}
