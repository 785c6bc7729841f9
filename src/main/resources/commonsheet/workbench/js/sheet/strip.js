// A piece of the sheet around the chosen value, shown beside what was read: the eye need not travel.

import { html, nothing } from '/lit/lit-html.js';
import { placed } from '../placed.js';

/** Points of the page shown after the words, and above and below them. */
const AFTER = 40;
const ABOVE = 5;

/** Points: about a line of a table from the name of the value to the value. */
const WIDTH = 380;

/** CSS pixels per point. */
const SCALE = 1.38;

/**
 * @param {import('../record/session.js').Session} session
 * @param {import('./pictures.js').Pictures} pictures
 */
export function strip(session, pictures) {
  const part = session.part();
  const page = session.view.sheet.pages.find((each) => each.page === part?.place?.page);
  const picture = page && pictures?.of(page.page);
  if (!picture?.url || part.kind === 'curve') {
    return nothing;
  }
  const [x, y, width, height] = part.place.box;
  // What a value is called stands before it, so most of the piece lies there.
  const shown = Math.min(WIDTH, page.width);
  const left = Math.min(Math.max(0, x + width + AFTER - shown), x - AFTER / 4, page.width - shown);
  const top = Math.max(0, y - ABOVE);
  const points = (length) => `${(length * SCALE).toFixed(1)}px`;
  return html`
    <div class="strip" aria-hidden="true" ${placed({ width: points(shown), height: points(height + 2 * ABOVE) })}>
      <div ${placed({ width: points(shown) })}>
        <img alt="" src=${picture.url} ${placed({ width: points(page.width), left: points(-left), top: points(-top) })} />
        <span ${placed({ left: points(x - left - 1), top: points(y - top - 1), width: points(width + 2), height: points(height + 2) })}></span>
      </div>
    </div>
  `;
}
