// Which records the list shows, and in which order. No page here, so that it can be understood alone.

/**
 * @typedef {object} Choice
 * @property {string} text words that all have to stand somewhere in the row
 * @property {string} state 'all', 'draft', 'approved', 'reopened', or 'look': with something to look at
 * @property {string} column by which it is sorted
 * @property {boolean} down
 */

/** Columns by their names: heading, what they sort by, and whether they are set as numbers. */
export const COLUMNS = [
  { name: 'maker', heading: 'Maker', by: (row) => row.maker ?? '' },
  { name: 'model', heading: 'Model', by: (row) => row.model ?? row.id },
  { name: 'form', heading: 'Form', by: (row) => `${row.form ?? ''} ${row.sizeCode ?? ''}` },
  { name: 'state', heading: 'State', by: (row) => ['reopened', 'draft', 'approved'].indexOf(row.state) },
  { name: 'values', heading: 'Values', by: (row) => row.statements, number: true },
  { name: 'curves', heading: 'Curves', by: (row) => row.curves, number: true },
  { name: 'unsettled', heading: 'To settle', by: (row) => row.unsettled, number: true },
  {
    name: 'findings',
    heading: 'Open findings',
    by: (row) => row.errors * 1e6 + row.warnings * 1e3 + row.notes,
    number: true,
  },
  { name: 'missing', heading: 'Missing', by: (row) => row.missing.length },
];

const compareTexts = new Intl.Collator('en', { numeric: true, sensitivity: 'base' }).compare;

/** Capitals and width do not matter. */
function folded(text) {
  return text.normalize('NFKC').toLowerCase();
}

/** What a row is searched by; worked out once, since it is asked at each key. */
export function withWords(row) {
  const all = [row.maker, row.model, row.id, row.form, row.sizeCode, row.sheet, ...row.missing.map((each) => `missing ${each}`)];
  return { ...row, words: folded(all.filter(Boolean).join(' ')) };
}

function isInState(row, state) {
  if (state === 'look') {
    return row.unsettled > 0 || row.errors > 0 || row.warnings > 0;
  }
  return state === 'all' || row.state === state;
}

/**
 * The rows to show.
 *
 * @param {object[]} rows made by {@link withWords}
 * @param {Choice} choice
 */
export function chosenRows(rows, choice) {
  const words = folded(choice.text).split(/\s+/).filter(Boolean);
  const { by } = COLUMNS.find((each) => each.name === choice.column);
  const sign = choice.down ? -1 : 1;
  const compare = (a, b) => (typeof by(a) === 'number' ? by(a) - by(b) : compareTexts(by(a), by(b)));
  return rows
    .filter((row) => isInState(row, choice.state) && words.every((word) => row.words.includes(word)))
    .sort((a, b) => sign * compare(a, b) || compareTexts(a.id, b.id));
}
