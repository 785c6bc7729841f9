// Marks over one page: a frame at the place of every value, the traced curves over their charts, the
// words that a search found. Where a value stands is told by its frame and its sign, not by colour alone.

import { html, nothing, svg } from '/lit/lit-html.js';
import { repeat } from '/lit/directives/repeat.js';
import { over, placed } from '../placed.js';
import { inWords, nameOf } from '../record/parts.js';

/** Points by which a frame stands off the words it is around. */
const MARGIN = 2;

/**
 * @param {object[]} parts of the record
 * @param {{page: number, width: number, height: number}} page
 * @param {object} marks
 * @param {object|undefined} marks.chosen part
 * @param {object|null} marks.lit place that is pointed at
 * @param {object[]} marks.hits of the search on this page
 * @param {object|undefined} marks.hit the one that is gone to
 * @param {(id: string) => void} marks.choose
 */
export function pageMarks(parts, page, { chosen, lit, hits, hit, choose }) {
  const here = parts.filter((each) => each.place?.page === page.page);
  const curves = here.filter((each) => each.trace);
  // A frame around a whole chart lies beneath all others, which could not be chosen else.
  const boxes = here.filter((each) => !each.trace).sort((a, b) => (b.kind === 'curve') - (a.kind === 'curve'));
  const isLit = (part) => part === chosen || Boolean(chosen?.waitsFor.includes(part.id));
  return html`
    ${hits.map((each) => (each.boxes ?? [each.box]).map((box) => html`<span class="hit" data-current=${each === hit} ${placed(over(box, page, 1))}></span>`))}
    ${lit?.page === page.page ? html`<span class="pointed" ${placed(over(lit.box, page, MARGIN))}></span>` : nothing}
    ${curves.length ? traces(curves, page, isLit, choose, chosen) : nothing}
    ${repeat(
      boxes,
      (each) => each.id,
      (each) => html`
        <button
          type="button"
          class="mark"
          data-part=${each.id}
          tabindex="-1"
          data-standing=${each.standing}
          data-chosen=${isLit(each)}
          aria-label="${inWords(each)}, ${each.standing}"
          title=${inWords(each)}
          @click=${() => choose(among(boxes, each, chosen).id)}
          ${placed(over(each.place.box, page, MARGIN))}
        ></button>
      `,
    )}
  `;
}

/** Several values may share a place; choosing it again goes on to the next of them. */
function among(boxes, mark, chosen) {
  const place = mark.place.box.join();
  const shared = boxes.filter((each) => each.place.box.join() === place);
  return shared[(shared.indexOf(chosen) + 1) % shared.length];
}

/** Traces are long and drawn often; a trace that has changed is another array. */
const written = new WeakMap();

function pointsOf(trace) {
  if (!written.has(trace)) {
    written.set(trace, trace.map((point) => point.join()).join(' '));
  }
  return written.get(trace);
}

function traces(curves, page, isLit, choose, chosen) {
  const chart = chosen?.trace && chosen.place.page === page.page ? chosen.place.box : null;
  return html`
    ${chart ? html`<span class="plot" ${placed(over(chart, page, MARGIN))}></span>` : nothing}
    <svg class="traces" viewBox="0 0 ${page.width} ${page.height}" preserveAspectRatio="none" aria-hidden="true">
      ${repeat(
        [...curves].sort((a, b) => isLit(a) - isLit(b)),
        (each) => each.id,
        (each) => {
          const points = pointsOf(each.trace);
          return svg`
            <g class="trace" data-standing=${each.standing} data-chosen=${isLit(each)} @click=${() => choose(each.id)}>
              <title>${nameOf(each)}</title>
              <polyline class="reach" points=${points}></polyline>
              <polyline class="halo" points=${points}></polyline>
              <polyline class="line" points=${points}></polyline>
            </g>
          `;
        },
      )}
    </svg>
  `;
}
