// The line of tools above the sheet.

import { html, nothing } from '/lit/lit-html.js';
import { address } from '../route.js';

/**
 * @param {import('./sheet.js').Sheet} sheet
 * @param {{page: number, pages: number, marking: boolean}} now
 */
export function tools(sheet, { page, pages, marking }) {
  const { zoom } = sheet;
  return html`
    <div class="sheet-tools">
      ${pages > 1
        ? html`
            <select aria-label="Page" .value=${String(page)} @change=${(event) => sheet.goTo(Number(event.target.value))}>
              ${Array.from({ length: pages }, (_, i) => html`<option value=${i + 1} ?selected=${i + 1 === page}>Page ${i + 1} of ${pages}</option>`)}
            </select>
          `
        : nothing}
      <div class="zoom-tool" role="group" aria-label="Size">
        <button type="button" class="button plain" aria-label="Smaller" title="Smaller (-)" @click=${() => zoom?.smaller()}>−</button>
        <span class="percent small soft">${zoom?.percent ?? 100} %</span>
        <button type="button" class="button plain" aria-label="Larger" title="Larger (+)" @click=${() => zoom?.larger()}>+</button>
        <button type="button" class="button plain" aria-pressed=${zoom?.fitted === 'width'} title="As wide as there is room (0)" @click=${() => zoom?.fitWidth()}>Width</button>
        <button type="button" class="button plain" aria-pressed=${zoom?.fitted === 'page'} title="The whole page (1)" @click=${() => zoom?.fitPage()}>Page</button>
      </div>
      ${sheet.search.template()}
      <button type="button" class="button plain draw" aria-pressed=${marking} title="Draw a box and have its words read (d)" @click=${() => sheet.drawAsked?.()}>
        Draw a box
      </button>
      <a class="button plain" href=${address('figure', { file: sheet.file })} title="The charts of the sheet with their curves">Charts</a>
    </div>
  `;
}
