// Places of a page and the window through which the sheet is seen.

/** Share of the window at each edge in which a place counts as not well in sight. */
const EDGE = 0.1;

/**
 * Scrolls as little as is needed for a place to stand well within sight.
 *
 * @param {number[]} box in points of the page
 * @param {HTMLElement} page
 * @param {HTMLElement} scroller around the pages
 * @param {number} scale CSS pixels per point
 */
export function bringIntoSight(box, page, scroller, scale) {
  const { left, top, width, height } = within(box, page, scale);
  const outside = (start, size, from, room) => start < from + EDGE * room || start + size > from + (1 - EDGE) * room;
  if (outside(top, height, scroller.scrollTop, scroller.clientHeight)) {
    scroller.scrollTop = top + height / 2 - scroller.clientHeight / 2;
  }
  if (outside(left, width, scroller.scrollLeft, scroller.clientWidth)) {
    scroller.scrollLeft = left + width / 2 - scroller.clientWidth / 2;
  }
}

/** The middle of a place in CSS pixels from the window's top left; null when it is out of sight. */
export function middleInSight(box, page, scroller, scale) {
  const { left, top, width, height } = within(box, page, scale);
  const x = left + width / 2 - scroller.scrollLeft;
  const y = top + height / 2 - scroller.scrollTop;
  return x > 0 && y > 0 && x < scroller.clientWidth && y < scroller.clientHeight ? [x, y] : null;
}

/** A place in CSS pixels from the top left of all pages. */
function within(box, page, scale) {
  const [x, y, width, height] = box.map((each) => each * scale);
  return { left: page.offsetLeft + x, top: page.offsetTop + y, width, height };
}
