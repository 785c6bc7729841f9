// What keys and buttons of the record page do.

import { ask } from '../dialog.js';
import { tell } from '../told.js';
import { chartAddress } from './chosen.js';
import { focusList } from './list.js';
import { showKeys } from './keys.js';
import { findingsOf, inWords, nameOf, nextUnsettled } from './parts.js';
import { approve } from './progress.js';

/**
 * The commands by the names in keys.js.
 *
 * @param {{session: import('./session.js').Session, editor: import('./editor.js').Editor,
 *     sheet: import('../sheet/sheet.js').Sheet, say: Function}} page
 */
export function commandsOf(page) {
  return { ...settling(page), ...going(page), ...onSheet(page), ...ofRecord(page) };
}

/** Runs what may be refused, and tells so. */
function told(run) {
  return run.catch((refused) => tell(refused.message, 'refused'));
}

function settling(page) {
  const { session, editor, say } = page;
  const accept = (finding) => acceptFinding(finding, say);
  const edit = (part = session.part()) => part && whenFree(editor, () => told(editor.open(part)));
  return {
    confirm: () => told(confirm(page)),
    edit: () => edit(),
    mend: (id) => {
      session.choose(id);
      edit(session.part(id));
    },
    add: () => whenFree(editor, () => told(editor.open(null))),
    reject: () => session.part() && reject(session.part(), say),
    giveBack: () => session.part() && giveBack(session.part(), say),
    accept,
    acceptFirst: () => {
      const finding = session.part() && findingsOf(session.view, session.part()).find((each) => each.open);
      return finding ? accept(finding) : tell('No finding is open here.');
    },
    openChart: () => {
      const part = session.part();
      if (part?.kind === 'curve' && part.place) {
        location.hash = chartAddress(session, part);
      } else {
        tell('A chart opens from one of its curves.');
      }
    },
  };
}

/** One form at a time: what is being typed is not put aside for another. */
function whenFree(editor, open) {
  if (editor.isOpen) {
    tell('Save or give up what you are typing first.', 'refused');
    editor.focus();
  } else {
    open();
  }
}

/**
 * Confirms the chosen part and goes on at once; the answer comes while the next one is looked at. A
 * refusal leads back to what was not saved.
 */
async function confirm({ session, say, editor }) {
  const part = session.part();
  if (!part || editor.isOpen || session.waiting.has(part.id)) {
    return;
  }
  if (part.standing !== 'confirmed') {
    const saved = say({ do: 'confirm', ids: [part.id] }, 'confirmed');
    goOn(session, part.id);
    try {
      await saved;
    } catch (refused) {
      session.choose(part.id);
      throw refused;
    }
    if (!session.view.progress.unsettled.length) {
      tell(session.view.progress.obstacles.length ? `Saved: all is settled. ${sentence(session.view.progress.obstacles[0])}` : 'Saved: all is settled; it can be approved (Shift A).');
    }
  } else {
    goOn(session, part.id);
  }
}

function sentence(obstacle) {
  return `${obstacle.charAt(0).toUpperCase()}${obstacle.slice(1)}.`;
}

function goOn(session, id) {
  const next = nextUnsettled(session.view, id, session.waiting);
  if (next) {
    session.choose(next);
  }
}

async function reject(part, say) {
  await ask({
    title: `Reject: ${inWords(part)}`,
    text: 'Rejected values stay in the record, and are left out of everything made from it.',
    fields: [{ name: 'reason', label: 'Why', kind: 'area' }],
    action: 'Reject',
    grave: true,
    carryOut: ({ reason }) => say({ do: 'reject', ids: [part.id], ...(reason ? { reason } : {}) }, 'rejected'),
  });
  focusList();
}

async function giveBack(part, say) {
  await ask({
    title: `Return: ${inWords(part)}`,
    text: 'It stands as unsure, with your remark among its doubts, until somebody settles it.',
    fields: [{ name: 'remark', label: 'Remark', kind: 'area', required: true }],
    action: 'Return',
    carryOut: ({ remark }) => say({ do: 'return', ids: [part.id], remark }, 'returned'),
  });
  focusList();
}

async function acceptFinding(finding, say) {
  await ask({
    title: 'Let this finding stand?',
    text: finding.message,
    fields: [{ name: 'reason', label: 'Reason', kind: 'area', required: true }],
    action: 'Let it stand',
    carryOut: ({ reason }) => say({ do: 'accept', rule: finding.rule, about: finding.about, reason }, 'finding accepted'),
  });
  focusList();
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
      tell(`Saved: ${word} ${inPlainWords(session, what)}.`);
    }
  };
  const undo = step('undo', 'undone:');
  const redo = step('redo', 'done again:');
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
