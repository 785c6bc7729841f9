// The list of the folder's records.

import { html, render } from '/lit/lit-html.js';
import { get } from './api.js';
import { header } from './header.js';
import { address } from './route.js';

/** Shows the records of the folder. */
export function folderPage(parameters, element) {
  get('/api/folder').then(
    (listing) =>
      render(
        html`${header({ title: 'Records' })}
          <main>
            <ul>
              ${listing.records.map(
                (each) =>
                  html`<li><a href=${address('record', { file: each.file })}>${each.id}</a>
                    <span class="chip" data-state=${each.state}>${each.state}</span></li>`,
              )}
            </ul>
          </main>`,
        element,
      ),
    (refused) => render(html`${header({ title: 'Records' })}<main><p class="refused" role="alert">${refused.message}</p></main>`, element),
  );
}
