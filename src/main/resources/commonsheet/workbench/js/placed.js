// Puts an element at its place. A style attribute would be refused by the page's own policy, so the
// properties are set one by one.

import { noChange } from '/lit/lit-html.js';
import { Directive, directive } from '/lit/directive.js';

class Placed extends Directive {
  render() {
    return noChange;
  }

  update(part, [properties]) {
    for (const [name, value] of Object.entries(properties)) {
      part.element.style.setProperty(name, value);
    }
    return noChange;
  }
}

/** Sets style properties of the element it stands in: `<div ${placed({ left: '10%' })}>`. */
export const placed = directive(Placed);

/**
 * The properties that put something over a box of a page.
 *
 * @param {number[]} box x, y, width, height in points of the page
 * @param {{width: number, height: number}} page in points
 * @param {number} margin around the box, in points
 */
export function over([x, y, width, height], page, margin = 0) {
  const percent = (length, whole) => `${((100 * length) / whole).toFixed(3)}%`;
  return {
    left: percent(x - margin, page.width),
    top: percent(y - margin, page.height),
    width: percent(width + 2 * margin, page.width),
    height: percent(height + 2 * margin, page.height),
  };
}
