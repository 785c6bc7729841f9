// A record without a sheet: of a web page, a label, a pack to compare against. Here the cell is named and
// where it was seen; its values are added on the record's page.

import { html, nothing, render } from '/lit/lit-html.js';
import { post } from './api.js';
import { field, valuesOf } from './dialog.js';
import { header } from './header.js';
import { personOrAsk } from './person.js';
import { go } from './route.js';
import { tell } from './told.js';

const FORMS = [
  { value: '', label: 'not said' },
  { value: 'cylindrical', label: 'cylindrical' },
  { value: 'prismatic', label: 'prismatic' },
  { value: 'pouch', label: 'pouch' },
  { value: 'coin', label: 'coin' },
];

const CELL = [
  { name: 'maker', label: 'Maker' },
  { name: 'model', label: 'Model', required: true },
  { name: 'form', label: 'Form', kind: 'choice', options: FORMS },
  { name: 'sizeCode', label: 'Size code', hint: 'Such as 18650 or 21700.' },
  { name: 'chemistry', label: 'Chemistry', hint: 'As it is said there, such as NMC or LiFePO4.' },
  { name: 'designation', label: 'Designation', hint: 'In the form of IEC 61960-3, such as INR19/66.' },
];

const SEEN = [
  { name: 'title', label: 'What it is', required: true, hint: 'Such as: product page, label of a pack, catalogue of 2024.' },
  { name: 'where', label: 'Where', required: true, hint: 'An address, a shop, a shelf: so that somebody else finds it.' },
  { name: 'when', label: 'When it was seen', kind: 'date', required: true },
];

/** What was typed, until a record is made of it; going elsewhere and coming back loses nothing. */
let draft = {};

/** The form for a record without a sheet. */
export function newPage(parameters, element) {
  const state = { refused: null, busy: false };

  async function submit(event) {
    event.preventDefault();
    const form = event.target;
    const by = await personOrAsk();
    if (!by || state.busy) {
      return;
    }
    const given = Object.fromEntries(
      Object.entries(valuesOf(form, [...CELL, ...SEEN])).filter(([, value]) => value !== ''),
    );
    state.busy = true;
    draw();
    try {
      const { file } = await post('/api/records', { by, ...given });
      draft = {};
      tell('The record is made; add its values now.');
      go('record', { file });
    } catch (refused) {
      Object.assign(state, { refused: refused.message, busy: false });
      draw();
    }
  }

  function keep(event) {
    draft[event.target.name] = event.target.value;
  }

  function draw() {
    render(page(state, submit, keep), element);
  }

  draw();
  element.querySelector('input')?.focus();
}

function page(state, submit, keep) {
  return html`${header({ back: { href: '#folder', label: 'Records' }, title: 'New record without a sheet' })}
    <main class="narrow">
      <form class="new" @submit=${submit} @input=${keep}>
        <p class="soft">
          For a cell whose values stand somewhere else than on a datasheet. Every value keeps where and when it was seen. If there is a
          PDF, put it into the folder and read it instead: its values then keep their places on the page.
        </p>
        <fieldset>
          <legend>The cell</legend>
          <div class="fields">${CELL.map(withDraft)}</div>
        </fieldset>
        <fieldset>
          <legend>Where it was seen</legend>
          <div class="fields">${SEEN.map(withDraft)}</div>
        </fieldset>
        ${state.refused ? html`<p class="refused" role="alert">${state.refused}</p>` : nothing}
        <div class="buttons">
          <button class="button main" ?disabled=${state.busy}>Make the record</button>
          <a class="button plain" href="#folder">Cancel</a>
        </div>
      </form>
    </main>`;
}

function withDraft(each) {
  return field({ ...each, value: draft[each.name] ?? (each.kind === 'date' ? today() : '') });
}

/** Of here, not of Greenwich. */
function today() {
  const now = new Date();
  const two = (number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
