// Shows the page that the address names, and changes it when the address changes.

import { takeKey } from './api.js';
import { differencesPage } from './differences.js';
import { folderPage } from './list/page.js';
import { newPage } from './new.js';
import { recordPage } from './record.js';
import { go, route } from './route.js';
import { tell } from './told.js';

/**
 * A page is started with the parameters of its address and the element to draw in; it gives back
 * what to do when it is left.
 *
 * @type {Object<string, (parameters: URLSearchParams, element: HTMLElement) => (() => void)>}
 */
const PAGES = {
  folder: folderPage,
  new: newPage,
  differences: differencesPage,
  record: recordPage,
};

let leave = () => {};

function show() {
  const { page, parameters } = route();
  if (!PAGES[page]) {
    go('folder');
    return;
  }
  leave();
  // A new element for each page: what an earlier one still draws, when an answer comes late, is not seen.
  const element = document.createElement('div');
  element.className = 'shown';
  document.getElementById('page').replaceChildren(element);
  leave = PAGES[page](parameters, element) ?? (() => {});
}

await takeKey().catch((refused) => tell(refused.message, 'refused'));
addEventListener('hashchange', show);
show();
