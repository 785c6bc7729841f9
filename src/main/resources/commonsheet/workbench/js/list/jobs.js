// Reads sheets into records and follows how far each is.

import { get, post } from '../api.js';
import { personOrAsk } from '../person.js';
import { tell } from '../told.js';

/** Milliseconds between two looks at a job. */
const LOOK = 700;

/**
 * Readings of sheets for as long as the page is shown.
 *
 * @param {() => void} changed called whenever a job is further on
 * @param {() => void} read called when a sheet has become records
 */
export function sheetJobs(changed, read) {
  const jobs = new Map();
  let left = false;

  async function follow(sheet, id) {
    while (!left) {
      const job = await get('/api/job', { id });
      jobs.set(sheet.sheet, job);
      changed();
      if (job.state === 'done' || job.state === 'failed') {
        tell(job.sentence, job.state === 'done' ? 'done' : 'refused');
        if (job.records.length > 0) {
          read();
        }
        return;
      }
      await new Promise((later) => setTimeout(later, LOOK));
    }
  }

  async function start(sheet, by) {
    jobs.set(sheet.sheet, { state: 'waiting', sentence: '', records: [] });
    changed();
    try {
      const { job } = await post('/api/sheets/read', { sheet: sheet.sheet, by });
      await follow(sheet, job);
    } catch (refused) {
      jobs.set(sheet.sheet, { state: 'failed', sentence: refused.message, records: [] });
      changed();
    }
  }

  return {
    jobs,
    /** Reads sheets, one after another. */
    async readAll(sheets) {
      const by = await personOrAsk();
      if (by) {
        sheets.forEach((sheet) => start(sheet, by));
      }
    },
    leave() {
      left = true;
    },
  };
}
