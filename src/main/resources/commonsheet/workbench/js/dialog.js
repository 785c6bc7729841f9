// Asks a person for a few words: a remark, a reason, a name. One dialog at a time.

import { html, nothing, render } from '/lit/lit-html.js';

/**
 * @typedef {object} Field
 * @property {string} name of the value
 * @property {string} label above the field
 * @property {'text'|'area'|'choice'|'tick'|'date'} [kind] text when not given; a tick's value is a boolean
 * @property {string|boolean} [value] to start with
 * @property {boolean} [required]
 * @property {string} [hint] below the field
 * @property {Array<{value: string, label: string}>} [options] of a choice
 */

/**
 * Asks, in a dialog that the keyboard stays in; Escape gives up.
 *
 * @param {object} asked
 * @param {string} asked.title
 * @param {*} [asked.text] a sentence or a template below the title
 * @param {Field[]} [asked.fields]
 * @param {string} asked.action what the button says that goes on
 * @param {boolean} [asked.grave] where what follows takes something away
 * @param {(values: object) => Promise<*>} [asked.carryOut] what to do before the dialog closes;
 *     where it fails, its sentence is shown and what was typed stays
 * @returns {Promise<object|null>} the values by name, trimmed; null where given up
 */
export function ask(asked) {
  const dialog = document.createElement('dialog');
  dialog.setAttribute('aria-labelledby', 'dialog-title');
  document.body.append(dialog);
  return new Promise((answer) => {
    let values = null;
    const state = { refused: null, busy: false };
    const draw = () => render(form(asked, state, submit, () => dialog.close()), dialog);
    async function submit(event) {
      event.preventDefault();
      if (state.busy) {
        return;
      }
      const given = valuesOf(event.target, asked.fields ?? []);
      state.busy = true;
      state.refused = null;
      draw();
      try {
        await asked.carryOut?.(given);
        values = given;
        dialog.close();
      } catch (refused) {
        state.refused = refused.message;
        state.busy = false;
        draw();
      }
    }
    dialog.addEventListener('close', () => {
      dialog.remove();
      answer(values);
    });
    draw();
    dialog.showModal();
    (dialog.querySelector('input, select, textarea') ?? dialog.querySelector('.button.main'))?.focus();
  });
}

function form(asked, state, submit, close) {
  return html`
    <form @submit=${submit} @keydown=${sendByKey}>
      <div>
        <h2 id="dialog-title">${asked.title}</h2>
        ${asked.text ? html`<p class="soft">${asked.text}</p>` : nothing}
      </div>
      ${(asked.fields ?? []).map(field)}
      ${state.refused ? html`<p class="refused" role="alert">${state.refused}</p>` : nothing}
      <div class="buttons">
        <button type="button" class="button plain" @click=${close}>Cancel</button>
        <button class="button main ${asked.grave ? 'grave' : ''}" ?disabled=${state.busy}>${asked.action}</button>
      </div>
    </form>
  `;
}

/** Control and Enter send from within a field of several lines, too. */
function sendByKey(event) {
  if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) {
    event.preventDefault();
    event.currentTarget.requestSubmit();
  }
}

/** A field with its label; for forms on pages as well. */
export function field(each) {
  const id = `field-${each.name}`;
  if (each.kind === 'tick') {
    return html`<label class="tick"
      ><input type="checkbox" name=${each.name} .checked=${Boolean(each.value)} ?required=${each.required} />${each.label}</label
    >`;
  }
  return html`
    <div class="field">
      <label for=${id}>${each.label}${each.required ? nothing : html` <span class="soft">(optional)</span>`}</label>
      ${control(each, id)}
      ${each.hint ? html`<span class="hint" id="${id}-hint">${each.hint}</span>` : nothing}
    </div>
  `;
}

function control(each, id) {
  const hint = each.hint ? `${id}-hint` : nothing;
  if (each.kind === 'choice') {
    return html`<select id=${id} name=${each.name} ?required=${each.required} aria-describedby=${hint}>
      ${each.options.map(
        (option) => html`<option value=${option.value} ?selected=${option.value === (each.value ?? '')}>${option.label}</option>`,
      )}
    </select>`;
  }
  if (each.kind === 'area') {
    return html`<textarea id=${id} name=${each.name} ?required=${each.required} aria-describedby=${hint}>${each.value ?? ''}</textarea>`;
  }
  return html`<input
    id=${id}
    name=${each.name}
    type=${each.kind === 'date' ? 'date' : 'text'}
    value=${each.value ?? ''}
    ?required=${each.required}
    aria-describedby=${hint}
    autocomplete="off"
  />`;
}

/** The values of a form's fields by name, trimmed; a tick's as a boolean. */
export function valuesOf(form, fields) {
  return Object.fromEntries(
    fields.map((each) => {
      const element = form.elements.namedItem(each.name);
      return [each.name, each.kind === 'tick' ? element.checked : element.value.trim()];
    }),
  );
}
