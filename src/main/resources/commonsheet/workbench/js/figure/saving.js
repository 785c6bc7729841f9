// From the page into the record's file and back.

import { get, post } from '../api.js';
import { ask } from '../dialog.js';
import { personOrAsk } from '../person.js';
import { tell } from '../told.js';
import { deedOf, obstacle } from './deed.js';

/** What the program knows of a record's charts. */
export async function load(file) {
  const [record, figure, catalogue] = await Promise.all([
    get('/api/record', { file }), get('/api/figure', { file }), get('/api/catalogue'),
  ]);
  // Somebody wrote the file between both answers.
  return record.version === figure.version ? { record, figure, catalogue } : load(file);
}

/** Carries a change out; what cannot be is told, and nothing that was typed is lost. */
async function change(app, path, body, done) {
  const by = await personOrAsk();
  if (!by) {
    return false;
  }
  app.busy = 'Saving…';
  app.draw();
  try {
    await post(path, { file: app.file, version: app.record.version, by, ...body });
    await app.reload();
    tell(done);
    return true;
  } catch (refused) {
    app.stale ||= Boolean(refused.isConflict);
    tell(refused.message, 'refused');
    return false;
  } finally {
    app.busy = null;
    app.draw();
  }
}

export async function save(app) {
  const { work } = app;
  if (!work.isChanged) {
    return;
  }
  const why = obstacle(work);
  if (why) {
    tell(why, 'refused');
    return;
  }
  const deed = deedOf(work.chart, work.saved);
  if (!deed.curves.length) {
    tell('Nothing is changed that a record keeps: marks are kept with the curves that they are for.', 'refused');
    return;
  }
  await change(app, '/api/figure/change', { deed }, 'Saved. The curves are computed anew from their places.');
}

/** Takes the last saved deed back, or does it again. */
export async function turnBack(app, how) {
  const what = how === 'undo' ? app.record.undo : app.record.redo;
  await change(app, `/api/record/${how}`, {}, how === 'undo' ? `Undone: ${what}.` : `Done again: ${what}.`);
}

const ASKED = {
  return: { title: 'Give it back', name: 'remark', label: 'What is to be looked at again', required: true, action: 'Return it' },
  reject: { title: 'Reject the curve', name: 'reason', label: 'Why it is none', required: false, action: 'Reject it', grave: true },
};

/** Confirms, returns or rejects the chosen curve. */
export async function settle(app, how) {
  const curve = app.work.curve(app.chosen);
  if (!curve?.id) {
    tell('Choose a curve of the record first.', 'refused');
    return;
  }
  if (app.work.isChanged) {
    tell('Save or discard your changes first.', 'refused');
    return;
  }
  let given = {};
  const asked = ASKED[how];
  if (asked) {
    given = await ask({
      title: asked.title,
      fields: [{ name: asked.name, label: asked.label, kind: 'area', required: asked.required }],
      action: asked.action,
      grave: asked.grave,
    });
    if (!given) {
      return;
    }
  }
  const deed = { do: how, ids: [curve.id], ...given };
  const done = { confirm: 'confirmed', return: 'returned', reject: 'rejected' }[how];
  if ((await change(app, '/api/record/change', { deed }, `${curve.id} ${done}.`)) && how === 'confirm') {
    app.chooseNext(1);
  }
}

/** The line of ink at a place, as a proposal. */
export async function trace(app, [x, y]) {
  app.busy = 'Following the line…';
  app.draw();
  try {
    app.proposal = await post('/api/figure/trace', {
      file: app.file, page: app.work.chart.page, box: app.work.chart.box, at: { x, y },
    });
  } catch (refused) {
    app.proposal = null;
    tell(refused.message, 'refused');
  } finally {
    app.busy = null;
    app.draw();
  }
}
