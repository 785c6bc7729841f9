// The list of the folder's records.

import { html, render } from '/lit/lit-html.js';
import { get } from './api.js';

/** Shows the records of the folder. */
export function folderPage(parameters, element) {
  get('/api/folder').then(
    (listing) =>
      render(html`<main><h1>Records</h1><ul>${listing.records.map((each) => html`<li>${each.id}</li>`)}</ul></main>`, element),
    (refused) => render(html`<main><p role="alert">${refused.message}</p></main>`, element),
  );
}
