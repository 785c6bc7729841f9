// What keys and buttons of the record page do.

import { tell } from '../told.js';
import { focusList } from './list.js';
import { showKeys } from './keys.js';
import { nameOf, nextUnsettled } from './parts.js';
import { approve } from './progress.js';
import { settling, told } from './settling.js';

/**
 * The commands by the names in keys.js.
 *
 * @param {{session: import('./session.js').Session, editor: import('./editor.js').Editor,
 *     sheet: import('../sheet/sheet.js').Sheet, say: Function}} page
 */
export function commandsOf(page) {
  return { ...settling(page), ...going(page), ...onSheet(page), ...ofRecord(page) };
}

function going({ session }) {
  const go = (to) => {
    const shown = session.view.parts.filter((each) => document.getElementById(`part-${each.id}`));
    const at = shown.findIndex((each) => each.id === session.chosen);
    const next = shown[Math.min(Math.max(to(at, shown.length), 0), shown.length - 1)];
    if (next) {
      session.choose(next.id);
    }
  };
  const unsettled = (backwards) => {
    const next = nextUnsettled(session.view, session.chosen, session.waiting, backwards);
    return next ? session.choose(next) : tell('Nothing else is left to settle.');
  };
  return {
    next: () => go((at) => at + 1),
    before: () => go((at) => at - 1),
    first: () => go(() => 0),
    last: () => go((_, all) => all),
    nextUnsettled: () => unsettled(false),
    unsettledBefore: () => unsettled(true),
    list: focusList,
  };
}

function onSheet(page) {
  const zoom = (how) => () => page.sheet?.zoom[how]();
  const mark = (how) => () => page.sheet && told(addMarked(page, how));
  return {
    search: () => page.sheet?.search.focus(),
    scrollDown: () => page.sheet?.scrollBy(1),
    scrollUp: () => page.sheet?.scrollBy(-1),
    larger: zoom('larger'),
    smaller: zoom('smaller'),
    fitWidth: zoom('fitWidth'),
    fitPage: zoom('fitPage'),
    draw: mark('draw'),
    words: mark('words'),
  };
}

/** Reads marked words into the form that is open, or into one for a new value. */
async function addMarked({ sheet, editor }, how) {
  const marked = await sheet.mark(how);
  if (!marked) {
    if (!editor.isOpen) {
      focusList();
    }
    return;
  }
  if (!editor.isOpen) {
    await editor.open(null);
  }
  await editor.readBox(marked);
}

function ofRecord(page) {
  const { session } = page;
  const step = (direction, word) => async () => {
    const what = session.view[direction];
    if (!what) {
      tell(`There is nothing to ${direction}.`);
      return;
    }
    if (await session.step(direction)) {
      tell(`${word}: ${inPlainWords(session, what)}. Saved.`);
    }
  };
  const undo = step('undo', 'Undone');
  const redo = step('redo', 'Done again');
  return {
    approve: () => told(approve(session, tell).then(focusList)),
    undo: () => told(undo()),
    redo: () => told(redo()),
    help: showKeys,
  };
}

/** "confirm s3" with the name of the value for its id. */
function inPlainWords(session, what) {
  return what.replace(/\b[sc]\d+\b/g, (id) => (session.part(id) ? nameOf(session.part(id)) : id));
}
