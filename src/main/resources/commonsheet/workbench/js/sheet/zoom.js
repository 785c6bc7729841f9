// How large the pages are shown: by buttons, keys, Control and the wheel, two fingers.

const SMALLEST = 0.2;
const LARGEST = 8;
const STEP = 1.25;
const ROOM = 28;

/** The scale of a sheet, in CSS pixels per point of the page. */
export class Zoom {
  #fit = 'width';
  #fingers = new Map();

  /**
   * @param {HTMLElement} scroller around the pages
   * @param {Array<{width: number, height: number}>} pages in points
   * @param {() => void} changed
   * @param {() => number[]|null} looked where in the scroller the chosen place is, when it is in sight
   */
  constructor(scroller, pages, changed, looked) {
    this.looked = looked;
    this.scroller = scroller;
    this.widest = Math.max(...pages.map((each) => each.width));
    this.tallest = Math.max(...pages.map((each) => each.height));
    this.changed = changed;
    this.scale = 1;
    this.observer = new ResizeObserver(() => this.#fit && this.#apply(this.#fitting()));
    this.observer.observe(scroller);
    scroller.addEventListener('wheel', (event) => this.#wheel(event), { passive: false });
    scroller.addEventListener('pointerdown', (event) => this.#down(event));
    scroller.addEventListener('pointermove', (event) => this.#move(event));
    ['pointerup', 'pointercancel', 'pointerleave'].forEach((each) =>
      scroller.addEventListener(each, (event) => this.#fingers.delete(event.pointerId)),
    );
    this.#apply(this.#fitting());
  }

  /** Percent of the paper's own size, at 96 CSS pixels to the inch. */
  get percent() {
    return Math.round((this.scale * 7200) / 96);
  }

  larger() {
    this.#about(this.scale * STEP, ...this.#middle());
  }

  smaller() {
    this.#about(this.scale / STEP, ...this.#middle());
  }

  fitWidth() {
    this.#fit = 'width';
    this.#apply(this.#fitting());
  }

  fitPage() {
    this.#fit = 'page';
    this.#apply(this.#fitting());
  }

  /** What it is fitted to: width, page, or null where it was chosen freely. */
  get fitted() {
    return this.#fit;
  }

  leave() {
    this.observer.disconnect();
  }

  #fitting() {
    const wide = (this.scroller.clientWidth - ROOM) / this.widest;
    return this.#fit === 'width' ? wide : Math.min(wide, (this.scroller.clientHeight - ROOM) / this.tallest);
  }

  /** Changes the scale so that what lies under a point of the window stays there. */
  #about(scale, x, y) {
    const { scroller } = this;
    this.#fit = null;
    const before = this.scale;
    const left = scroller.scrollLeft + x;
    const top = scroller.scrollTop + y;
    this.#apply(scale);
    scroller.scrollLeft = (left * this.scale) / before - x;
    scroller.scrollTop = (top * this.scale) / before - y;
  }

  #middle() {
    return this.looked() ?? [this.scroller.clientWidth / 2, this.scroller.clientHeight / 2];
  }

  #apply(scale) {
    const next = Math.min(LARGEST, Math.max(SMALLEST, scale));
    const ratio = next / this.scale;
    const top = this.scroller.scrollTop;
    this.scale = next;
    this.scroller.style.setProperty('--scale', next.toFixed(4));
    if (this.#fit) {
      this.scroller.scrollTop = top * ratio;
    }
    this.changed();
  }

  #wheel(event) {
    if (event.ctrlKey || event.metaKey) {
      event.preventDefault();
      const box = this.scroller.getBoundingClientRect();
      this.#about(this.scale * Math.exp(-event.deltaY / 400), event.clientX - box.left, event.clientY - box.top);
    }
  }

  #down(event) {
    if (event.pointerType === 'touch') {
      this.#fingers.set(event.pointerId, event);
    }
  }

  /** Two fingers: what their distance was to what it is, about the place between them. */
  #move(event) {
    if (!this.#fingers.has(event.pointerId) || this.#fingers.size !== 2) {
      return;
    }
    const before = this.#apart();
    this.#fingers.set(event.pointerId, event);
    const [one, other] = [...this.#fingers.values()];
    const box = this.scroller.getBoundingClientRect();
    this.#about(
      (this.scale * this.#apart()) / before,
      (one.clientX + other.clientX) / 2 - box.left,
      (one.clientY + other.clientY) / 2 - box.top,
    );
  }

  #apart() {
    const [one, other] = [...this.#fingers.values()];
    return Math.hypot(one.clientX - other.clientX, one.clientY - other.clientY) || 1;
  }
}
