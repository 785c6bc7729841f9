// The form in which a value is corrected or added, in the place of the chosen one's panel.

import { html, nothing } from '/lit/lit-html.js';
import { conditionFields } from './conditions.js';
import { nameOf } from './parts.js';
import './quantity-field.js';

/**
 * @param {{session: import('./session.js').Session, draft: import('./drafts.js').Draft,
 *     catalogue: object, refused: string|null, doubt: string|null, busy: boolean}} now
 * @param {{set: (member: string, value: *) => void, save: (event: Event) => void,
 *     key: (event: KeyboardEvent) => void, mark: (how: string) => void, giveUp: () => void}} run
 */
export function editorForm(now, run) {
  const { session, draft, catalogue, refused, doubt, busy } = now;
  const part = draft.id ? session.part(draft.id) : null;
  const title = draft.id ? `Correct: ${part ? nameOf(part) : draft.id}` : 'Add a value';
  return html`
    <form class="editor" aria-label=${title} data-own-keys @submit=${(event) => run.save(event)} @keydown=${(event) => run.key(event)}>
      <div class="fields">
        <h2>${title}</h2>
        ${part ? reading(part) : nothing}
        ${draft.kind === 'curve' ? labelField(draft, run) : valueFields(draft, catalogue, run)}
        ${conditionFields(draft, catalogue, (conditions) => run.set('conditions', conditions))}
        ${session.view.sheet?.found ? placeField(draft, doubt, run) : nothing}
        ${draft.id === null && !session.view.sheet ? seenFields(draft, run) : nothing}
        <div class="field">
          <label for="edit-remark">Remark <span class="soft">(optional)</span></label>
          <input id="edit-remark" .value=${draft.remark} @input=${(event) => run.set('remark', event.target.value)} autocomplete="off" />
        </div>
      </div>
      ${refused ? html`<p class="refused" role="alert">${refused}</p>` : nothing}
      <div class="buttons">
        <button class="button main" ?disabled=${busy}>Save</button>
        <button type="button" class="button plain" @click=${() => run.giveUp()}>Cancel</button>
        <span class="soft small"><kbd>Enter</kbd> saves, <kbd>Esc</kbd> gives up</span>
      </div>
    </form>
  `;
}

function reading(part) {
  return html`<p class="small soft">
    Read as ${part.kind === 'curve' ? nameOf(part) : part.value}${part.words ? html` from <span class="words">“${part.words}”</span>` : nothing}; that
    is kept beside your correction.
  </p>`;
}

function labelField(draft, run) {
  return html`<div class="field">
    <label for="edit-label">Name of the curve</label>
    <input id="edit-label" .value=${draft.label} @input=${(event) => run.set('label', event.target.value)} autocomplete="off" />
  </div>`;
}

function valueFields(draft, catalogue, run) {
  return html`
    <div class="field">
      <label for="edit-quantity">Quantity</label>
      <quantity-field
        .options=${catalogue.quantities}
        .value=${draft.quantity}
        @choose=${(event) => run.set('quantity', event.detail)}
      ></quantity-field>
    </div>
    <div class="pair">
      <div class="field">
        <label for="edit-typed">Value, in any unit</label>
        <input
          id="edit-typed"
          .value=${draft.typed}
          @input=${(event) => run.set('typed', event.target.value)}
          aria-describedby="edit-typed-hint"
          autocomplete="off"
          spellcheck="false"
        />
        <span class="hint" id="edit-typed-hint">3350 mAh, 2.5 to 4.2 V, 45 ± 1 g, ≤ 20 mΩ</span>
      </div>
      <div class="field">
        <label for="edit-statistic">Statistic</label>
        <select id="edit-statistic" .value=${draft.statistic} @change=${(event) => run.set('statistic', event.target.value)}>
          <option value="" ?selected=${draft.statistic === ''}>none stated</option>
          ${catalogue.statistics.map((each) => html`<option value=${each} ?selected=${draft.statistic === each}>${each}</option>`)}
        </select>
      </div>
    </div>
  `;
}

function placeField({ place }, doubt, run) {
  return html`
    <div class="field" role="group" aria-labelledby="edit-place">
      <span class="label" id="edit-place">Place on the sheet</span>
      ${place ? html`<p class="small">page ${place.page}: <span class="words">“${place.text}”</span></p>` : nothing}
      ${doubt ? html`<p class="aside doubt" role="status"><b>Doubt</b> ${doubt}</p>` : nothing}
      <div class="buttons">
        <button type="button" class="button" @click=${() => run.mark('draw')}>Draw a box</button>
        <button type="button" class="button" @click=${() => run.mark('words')}>Choose words</button>
      </div>
    </div>
  `;
}

function seenFields(draft, run) {
  return html`
    <div class="pair">
      <div class="field">
        <label for="edit-where">Where seen</label>
        <input id="edit-where" .value=${draft.where} @input=${(event) => run.set('where', event.target.value)} autocomplete="off" />
      </div>
      <div class="field">
        <label for="edit-when">When</label>
        <input id="edit-when" type="date" .value=${draft.when} @input=${(event) => run.set('when', event.target.value)} />
      </div>
    </div>
  `;
}
