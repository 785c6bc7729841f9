// The pictures of the pages, each as wide as it is shown: asked for when its page comes near, asked for
// anew when it is enlarged, let go when it is far away.

import { picture } from '../api.js';
import { Detail } from './detail.js';

/** Pixels; a picture serves for all widths up to its own, so that small changes ask for nothing. */
const STEP = 320;

/** Pixels; beyond this only the part in sight is asked for, see detail.js. */
const WIDEST = 2560;

const SETTLE = 140;

/** Keeps the pictures of a sheet's pages as sharp as they are shown. */
export class Pictures {
  #near = new Set();
  #shown = new Map();
  #timer;

  /**
   * @param {string} file the record's
   * @param {HTMLElement} scroller around the pages
   * @param {object[]} pages with their size in points
   */
  constructor(file, scroller, pages) {
    this.file = file;
    this.scroller = scroller;
    this.pages = new Map(pages.map((each) => [each.page, each]));
    this.detail = new Detail(file, scroller, this.pages, WIDEST);
    this.observer = new IntersectionObserver((entries) => this.#noticed(entries), { root: scroller, rootMargin: '60% 0px' });
    scroller.querySelectorAll('.sheet-page').forEach((each) => this.observer.observe(each));
  }

  #noticed(entries) {
    for (const { target, isIntersecting } of entries) {
      if (isIntersecting) {
        this.#near.add(target);
        this.#ask(target);
      } else if (this.#near.delete(target)) {
        this.#letGo(target);
      }
    }
  }

  /** Asks for wider pictures where they are now shown larger. */
  sharpen() {
    this.detail.refresh();
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#near.forEach((each) => this.#ask(each)), SETTLE);
  }

  /** The picture of a page as it is at hand: its address and its width. */
  of(number) {
    return [...this.#shown].find(([element]) => Number(element.dataset.page) === number)?.[1];
  }

  async #ask(element) {
    const pixels = element.clientWidth * (devicePixelRatio || 1);
    if (!pixels) {
      return;
    }
    const width = Math.min(WIDEST, Math.ceil(pixels / STEP) * STEP);
    const shown = this.#shown.get(element);
    if (shown && (shown.asked ?? shown.width) >= width) {
      return;
    }
    shown?.abort?.abort();
    const abort = new AbortController();
    this.#shown.set(element, { ...shown, asked: width, abort });
    try {
      const url = await picture('/api/place/picture', { file: this.file, page: element.dataset.page, width }, abort.signal);
      this.#put(element, url, width);
    } catch (refused) {
      if (!abort.signal.aborted) {
        this.#shown.delete(element);
        element.dataset.problem = refused.message;
      }
    }
  }

  #put(element, url, width) {
    const before = this.#shown.get(element)?.url;
    const image = element.querySelector('img');
    image.onload = () => {
      element.dataset.shown = 'true';
      if (before) {
        URL.revokeObjectURL(before);
      }
      this.scroller.dispatchEvent(new CustomEvent('picture', { bubbles: true }));
    };
    this.#shown.set(element, { url, width });
    image.src = url;
  }

  #letGo(element) {
    const shown = this.#shown.get(element);
    shown?.abort?.abort();
    if (shown?.url) {
      URL.revokeObjectURL(shown.url);
      element.querySelector('img').removeAttribute('src');
      delete element.dataset.shown;
    }
    this.#shown.delete(element);
  }

  /** Lets all go. */
  leave() {
    clearTimeout(this.#timer);
    this.detail.leave();
    this.observer.disconnect();
    this.#near.forEach((each) => this.#letGo(each));
  }
}
