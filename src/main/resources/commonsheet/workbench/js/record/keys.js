// The keys of the record page. Letters act only outside fields and dialogs, and can be turned off for
// readers of screens and for voices that type (WCAG 2.2, 2.1.4).

import { html, render } from '/lit/lit-html.js';
import { LIST } from './list.js';

const OFF = 'commonsheet-keys-off';

/**
 * @typedef {object} Key
 * @property {string} key as the browser calls it
 * @property {string} shown as people call it
 * @property {string} does what it does
 * @property {string} run name of the command
 */

/** @type {Array<{title: string, keys: Key[]}>} */
export const KEYS = [
  {
    title: 'Settle the chosen value',
    keys: [
      { key: 'c', shown: 'c', does: 'Confirm it, and go to the next one to settle', run: 'confirm' },
      { key: 'e', shown: 'e', does: 'Edit: correct it', run: 'edit' },
      { key: 'x', shown: 'x', does: 'Cross out: reject it, the sheet does not say it', run: 'reject' },
      { key: 'r', shown: 'r', does: 'Return it with a remark', run: 'giveBack' },
      { key: 'f', shown: 'f', does: 'Finding: let it stand for a reason', run: 'acceptFirst' },
      { key: 'o', shown: 'o', does: 'Open the chart of a curve', run: 'openChart' },
      { key: 'a', shown: 'a', does: 'Add a value that was not read', run: 'add' },
    ],
  },
  {
    title: 'Go',
    keys: [
      { key: 'ArrowDown', shown: '↓', does: 'Next value', run: 'next' },
      { key: 'ArrowUp', shown: '↑', does: 'Value before', run: 'before' },
      { key: 'Home', shown: 'Home', does: 'First value', run: 'first' },
      { key: 'End', shown: 'End', does: 'Last value', run: 'last' },
      { key: 'n', shown: 'n', does: 'Next one to settle', run: 'nextUnsettled' },
      { key: 'N', shown: 'Shift n', does: 'One to settle before this', run: 'unsettledBefore' },
      { key: 'l', shown: 'l', does: 'List: back to the values', run: 'list' },
    ],
  },
  {
    title: 'The sheet',
    keys: [
      { key: 's', shown: 's', does: 'Search its words', run: 'search' },
      { key: 'PageDown', shown: 'Page↓', does: 'Scroll it down', run: 'scrollDown' },
      { key: 'PageUp', shown: 'Page↑', does: 'Scroll it up', run: 'scrollUp' },
      { key: '+', shown: '+', does: 'Larger', run: 'larger' },
      { key: '-', shown: '-', does: 'Smaller', run: 'smaller' },
      { key: '0', shown: '0', does: 'As wide as there is room', run: 'fitWidth' },
      { key: '1', shown: '1', does: 'The whole page', run: 'fitPage' },
      { key: 'd', shown: 'd', does: 'Draw a box and have its words read', run: 'draw' },
      { key: 'w', shown: 'w', does: 'Words: choose them by the keyboard', run: 'words' },
    ],
  },
  {
    title: 'The record',
    keys: [
      { key: 'A', shown: 'Shift a', does: 'Approve it', run: 'approve' },
      { key: 'z', shown: 'Ctrl z', does: 'Undo', run: 'undo' },
      { key: 'Z', shown: 'Ctrl Shift z', does: 'Redo', run: 'redo' },
      { key: '?', shown: '?', does: 'This list', run: 'help' },
    ],
  },
];

const PLAIN = new Map(KEYS.flatMap((group) => group.keys).map((each) => [each.key, each.run]));

// The same key without Shift on many keyboards.
PLAIN.set('=', 'larger');
const STEPS = new Set(['ArrowDown', 'ArrowUp', 'Home', 'End', 'PageDown', 'PageUp']);

/** Whether single letters act. */
export function lettersAct() {
  return localStorage.getItem(OFF) === null;
}

/**
 * Has keys run commands for as long as the page is shown.
 *
 * @param {Object<string, () => void>} commands by the names in {@link KEYS}
 * @returns {() => void} what ends it
 */
export function listen(commands) {
  const pressed = (event) => {
    const run = commands[commandOf(event)];
    if (run) {
      event.preventDefault();
      run();
    }
  };
  addEventListener('keydown', pressed);
  return () => removeEventListener('keydown', pressed);
}

function commandOf(event) {
  const { target, key } = event;
  if (event.defaultPrevented || document.querySelector('dialog[open]') || target.closest?.('input, select, textarea, [data-own-keys]')) {
    return null;
  }
  if (event.ctrlKey || event.metaKey) {
    const letter = key.toLowerCase();
    return letter === 'z' ? (event.shiftKey ? 'redo' : 'undo') : letter === 'y' ? 'redo' : null;
  }
  if (event.altKey) {
    return null;
  }
  if (STEPS.has(key)) {
    // On the sheet and on folds these keys scroll, as everywhere.
    return target.id === LIST || target === document.body ? PLAIN.get(key) : null;
  }
  if (key.length === 1 && !lettersAct() && key !== '?') {
    return null;
  }
  return key === 'z' || key === 'Z' ? null : PLAIN.get(key);
}

/** Shows the list of keys. */
export function showKeys() {
  const dialog = document.createElement('dialog');
  dialog.className = 'keys';
  dialog.setAttribute('aria-labelledby', 'keys-title');
  const turn = (event) => (event.target.checked ? localStorage.removeItem(OFF) : localStorage.setItem(OFF, 'off'));
  render(
    html`
      <form method="dialog">
        <h2 id="keys-title">Keys</h2>
        <div class="key-groups">
          ${KEYS.map(
            (group) => html`
              <section>
                <h3>${group.title}</h3>
                <dl>
                  ${group.keys.map((each) => html`<div><dt>${each.shown.split(' ').map((key) => html`<kbd>${key}</kbd> `)}</dt><dd>${each.does}</dd></div>`)}
                </dl>
              </section>
            `,
          )}
        </div>
        <label class="tick"><input type="checkbox" .checked=${lettersAct()} @change=${turn} />Single letters act as keys</label>
        <div class="buttons"><button class="button main" autofocus>Close</button></div>
      </form>
    `,
    dialog,
  );
  dialog.addEventListener('close', () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
}
