// Which part of the page is shown, and its picture, sharp at any zoom.

import { picture } from '../api.js';
import { tell } from '../told.js';

/** Room around the plot for the numbers and titles of its axes, as a share of it and in points. */
const ROOM = 0.16;
const LEAST_ROOM = 52;
const CLOSEST = 14;
const FINEST = 3200;

/** The part of a page around a plot. */
export function around([x, y, width, height], page) {
  const across = Math.max(LEAST_ROOM, ROOM * width);
  const down = Math.max(LEAST_ROOM, ROOM * height);
  const left = Math.max(0, x - across);
  const top = Math.max(0, y - down);
  return {
    x: left,
    y: top,
    w: Math.min(page?.width ?? Infinity, x + width + across) - left,
    h: Math.min(page?.height ?? Infinity, y + height + down) - top,
  };
}

/** A view of a page that can be moved, with the pictures that belong to it. */
export class View {
  #aborted = null;
  #timer = null;
  #asked = null;

  /**
   * @param {object} asked `{file, page}`
   * @param {{x, y, w, h}} whole what is shown at first
   * @param {() => void} draw called when a picture has come
   * @param {boolean} found whether there is a sheet to show
   */
  constructor(asked, whole, draw, found) {
    this.asked = asked;
    this.whole = whole;
    this.shown = { ...whole };
    this.draw = draw;
    this.found = found;
    this.pictures = [];
    this.size = { width: 1, height: 1 };
    if (found) {
      this.#fetch(whole, Math.min(FINEST, whole.w * 6), true);
    }
  }

  /** Pixels of the screen to a point of the page. */
  get k() {
    return Math.min(this.size.width / this.shown.w, this.size.height / this.shown.h) || 1;
  }

  get box() {
    const { x, y, w, h } = this.shown;
    return `${x} ${y} ${w} ${h}`;
  }

  get isWhole() {
    return this.shown.w === this.whole.w && this.shown.x === this.whole.x && this.shown.y === this.whole.y;
  }

  resize(width, height) {
    if (width !== this.size.width || height !== this.size.height) {
      this.size = { width, height };
      this.#sharpen();
      this.draw();
    }
  }

  /** The place on the page under the pointer. */
  place(event, element) {
    const bounds = element.getBoundingClientRect();
    const left = (bounds.width - this.shown.w * this.k) / 2;
    const top = (bounds.height - this.shown.h * this.k) / 2;
    return [
      this.shown.x + (event.clientX - bounds.left - left) / this.k,
      this.shown.y + (event.clientY - bounds.top - top) / this.k,
    ];
  }

  /** Closer or farther, around a place that stays where it is. */
  zoom(factor, [px, py] = this.middle) {
    const closest = Math.min(this.whole.w, this.whole.h) / CLOSEST;
    const w = Math.min(this.whole.w, Math.max(closest, this.shown.w / factor));
    const scale = w / this.shown.w;
    this.#show({
      x: px - (px - this.shown.x) * scale,
      y: py - (py - this.shown.y) * scale,
      w,
      h: this.shown.h * scale,
    });
  }

  get middle() {
    return [this.shown.x + this.shown.w / 2, this.shown.y + this.shown.h / 2];
  }

  /** Moves by pixels of the screen. */
  pan(dx, dy) {
    this.#show({ ...this.shown, x: this.shown.x - dx / this.k, y: this.shown.y - dy / this.k });
  }

  /** Brings a place into sight. */
  reveal([px, py]) {
    const { x, y, w, h } = this.shown;
    if (px < x || py < y || px > x + w || py > y + h) {
      this.#show({ x: px - w / 2, y: py - h / 2, w, h });
    }
  }

  fit() {
    this.#show({ ...this.whole });
  }

  #show(part) {
    const within = (at, size, from, whole) => Math.min(Math.max(at, from), from + whole - size);
    this.shown = {
      ...part,
      x: within(part.x, part.w, this.whole.x, this.whole.w),
      y: within(part.y, part.h, this.whole.y, this.whole.h),
    };
    this.#sharpen();
    this.draw();
  }

  /** Asks for a finer picture of what is shown, once nobody moves it any more. */
  #sharpen() {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      const wanted = this.shown.w * this.k * (globalThis.devicePixelRatio ?? 1);
      const base = this.pictures[0];
      if (base && wanted / this.shown.w > base.width / base.part.w) {
        this.#fetch(this.shown, Math.min(FINEST, wanted), false);
      }
    }, 180);
  }

  async #fetch(part, width, isBase) {
    this.#aborted?.abort();
    this.#aborted = new AbortController();
    const box = [part.x, part.y, part.w, part.h].map((each) => each.toFixed(2)).join(',');
    if (this.#asked === `${box} ${width}`) {
      return;
    }
    this.#asked = `${box} ${width}`;
    try {
      const parameters = { ...this.asked, box, width: Math.ceil(width) };
      const href = await picture('/api/place/picture', parameters, this.#aborted.signal);
      const old = isBase ? this.pictures : this.pictures.slice(1);
      this.pictures = isBase ? [{ href, part, width }] : [this.pictures[0], { href, part, width }];
      old.forEach((each) => URL.revokeObjectURL(each.href));
      this.draw();
    } catch (refused) {
      if (refused.name !== 'AbortError' && isBase && !this.#aborted.signal.aborted) {
        tell(refused.message, 'refused');
      }
    }
  }

  leave() {
    clearTimeout(this.#timer);
    this.#aborted?.abort();
    this.pictures.forEach((each) => URL.revokeObjectURL(each.href));
    this.pictures = [];
  }
}
