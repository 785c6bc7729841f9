// What is done with the chosen value: confirm, correct, reject, return, answer its findings.

import { ask } from '../dialog.js';
import { personOrAsk } from '../person.js';
import { tell } from '../told.js';
import { chartAddress } from './chosen.js';
import { focusList } from './list.js';
import { findingsOf, inWords, nextUnsettled } from './parts.js';

/** Runs what may be refused, and tells so. */
export function told(run) {
  return run.catch((refused) => tell(refused.message, 'refused'));
}

/** The commands for the chosen value, by the names in keys.js. */
export function settling(page) {
  const { session, editor, say } = page;
  const accept = (finding) => acceptFinding(finding, say);
  const edit = (part = session.part()) => part && whenFree(editor, () => told(editor.open(part)));
  return {
    confirm: () => told(confirm(page)),
    confirmAnew: () => told(confirm(page, true)),
    prepared: () => told(say({ do: 'prepared' }, 'prepared for a reviewer')),
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
 * Confirms the chosen part and goes on at once; what is settled is left as it is. A button confirms
 * that, too (`anew`).
 * the answer comes while the next one is looked at. A
 * refusal leads back to what was not saved.
 */
async function confirm({ session, say, editor }, anew = false) {
  const part = session.part();
  if (!part || editor.isOpen || session.waiting.has(part.id)) {
    return;
  }
  if (part.settled && !anew) {
    goOn(session, part.id);
    return;
  }
  if (!(await personOrAsk())) {
    return;
  }
  const saved = say({ do: 'confirm', ids: [part.id] }, 'confirmed');
  goOn(session, part.id);
  try {
    await saved;
  } catch (refused) {
    session.choose(part.id);
    throw refused;
  }
  const { unsettled, obstacles } = session.view.progress;
  if (!unsettled.length) {
    tell(`Saved: all is settled${obstacles.length ? `. ${sentence(obstacles[0])}` : '; it can be approved (Shift A).'}`);
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
