// Shows the page that the address names, and changes it when the address changes.

import { takeKey } from './api.js';
import { differencesPage } from './differences.js';
import { figurePage } from './figure.js';
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
  figure: figurePage,
};

let leave = () => {};

function show() {
  const { page, parameters } = route();
  if (!PAGES[page]) {
    go('folder');
    return;
  }
  leave();
  leave = PAGES[page](parameters, freshElement()) ?? (() => {});
}

/** What the page before still has on its way is drawn into an element that is gone. */
function freshElement() {
  const element = document.createElement('div');
  element.id = 'page';
  document.getElementById('page').replaceWith(element);
  return element;
}

await takeKey().catch((refused) => tell(refused.message, 'refused'));
addEventListener('hashchange', show);
show();
