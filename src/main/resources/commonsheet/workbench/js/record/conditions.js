// The conditions under which a value holds, each a line that can be changed or taken away.

import { html } from '/lit/lit-html.js';

/**
 * @param {import('./drafts.js').Draft} draft
 * @param {{conditions: Array<{name: string, label: string, shown: string}>}} catalogue
 * @param {(conditions: Array<{name: string, typed: string}>) => void} set
 */
export function conditionFields({ conditions }, catalogue, set) {
  const change = (i, part) => set(conditions.map((each, at) => (at === i ? { ...each, ...part } : each)));
  const remove = (i) => set(conditions.filter((_, at) => at !== i));
  const add = () => {
    set([...conditions, { name: '', typed: '' }]);
    document.querySelector(`#condition-${conditions.length}`)?.focus();
  };
  return html`
    <div class="field" role="group" aria-labelledby="edit-conditions">
      <span class="label" id="edit-conditions">Conditions</span>
      ${conditions.map((each, i) => line(each, i, conditions, catalogue, { change, remove }))}
      <div class="buttons"><button type="button" class="button plain" @click=${add}>Add a condition</button></div>
    </div>
  `;
}

function line(condition, i, all, catalogue, { change, remove }) {
  const free = catalogue.conditions.filter((each) => each.name === condition.name || !all.some((other) => other.name === each.name));
  const label = catalogue.conditions.find((each) => each.name === condition.name)?.label ?? 'condition';
  return html`
    <div class="condition">
      <select id="condition-${i}" aria-label="Condition" .value=${condition.name} @change=${(event) => change(i, { name: event.target.value })}>
        <option value="" ?selected=${!condition.name}>choose …</option>
        ${free.map((each) => html`<option value=${each.name} ?selected=${each.name === condition.name}>${each.label}</option>`)}
      </select>
      <input
        aria-label="Value of ${label}"
        .value=${condition.typed}
        @input=${(event) => change(i, { typed: event.target.value })}
        autocomplete="off"
        spellcheck="false"
      />
      <button type="button" class="button plain" aria-label="Take away ${label}" title="Take away" @click=${() => remove(i)}>×</button>
    </div>
  `;
}
