// One line at the foot of the page that tells what was done or refused; read out by screen readers.

import { html, render } from '/lit/lit-html.js';

let timer;

/**
 * Tells something.
 *
 * @param {string} sentence
 * @param {'done'|'refused'} kind what is refused stays until something else is told
 */
export function tell(sentence, kind = 'done') {
  const element = document.getElementById('told');
  clearTimeout(timer);
  element.dataset.kind = kind;
  render(html`${sentence}`, element);
  if (kind === 'done') {
    timer = setTimeout(() => render(html``, element), 6000);
  }
}
