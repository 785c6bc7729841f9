// The top of every page.

import { html, nothing } from '/lit/lit-html.js';
import './person.js';

/**
 * @param {object} top
 * @param {{href: string, label: string}} [top.back] where one came from; none on the list itself
 * @param {string} top.title of the page; stands in the browser's tab as well
 * @param {*} [top.detail] template after the title: state, progress
 * @param {*} [top.actions] template at the right, before the person's name
 */
export function header({ back, title, detail, actions }) {
  const tab = `${title} · Commonsheet`;
  if (document.title !== tab) {
    document.title = tab;
  }
  return html`
    <header class="frame">
      ${
        back
          ? html`<a class="back" href=${back.href}><span aria-hidden="true">←</span> ${back.label}</a>`
          : html`<a class="home" href="#folder"><img src="/mark.svg" alt="" />Commonsheet</a>`
      }
      <h1>${title}</h1>
      ${detail ? html`<div class="detail">${detail}</div>` : nothing}
      <div class="end">${actions ?? nothing}<who-works></who-works></div>
    </header>
  `;
}
