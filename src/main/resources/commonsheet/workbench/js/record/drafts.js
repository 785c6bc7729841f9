// What is being typed about a value, as plain data: made from a part, and turned into the deed that the
// program is asked for. Only what was changed is asked for.

/**
 * @typedef {object} Draft
 * @property {string|null} id of what is corrected; null for a new value
 * @property {string} kind statement or curve
 * @property {string} quantity
 * @property {string} typed the value, in any unit
 * @property {string} statistic '' for none
 * @property {string} label of a curve
 * @property {Array<{name: string, typed: string}>} conditions
 * @property {{page: number, box: number[], text: string}|null} place drawn or chosen anew
 * @property {string} where a value without a sheet was seen
 * @property {string} when it was seen there
 * @property {string} remark
 * @property {object} start the same as it was at first
 */

/** A draft that corrects a part. */
export function correcting(part, record, catalogue) {
  const raw = [...record.statements, ...(record.curves ?? [])].find((each) => each.id === part.id) ?? {};
  return started({
    id: part.id,
    kind: part.kind,
    quantity: raw.quantity ?? '',
    typed: part.kind === 'curve' ? '' : (part.typed ?? part.value),
    statistic: raw.statistic ?? '',
    label: raw.label ?? '',
    conditions: Object.entries(raw.conditions ?? {}).map(([name, value]) => ({ name, typed: withUnit(value, name, catalogue) })),
    place: null,
    where: '',
    when: '',
    remark: '',
  });
}

/**
 * A draft of a value that was not read.
 *
 * @param {{where?: string, when?: string}} source of the record: where its values were seen, when
 *     there is no sheet
 */
export function adding(source) {
  return started({
    id: null,
    kind: 'statement',
    quantity: '',
    typed: '',
    statistic: '',
    label: '',
    conditions: [],
    place: null,
    where: source.where ?? '',
    when: source.when ?? new Date().toISOString().slice(0, 10),
    remark: '',
  });
}

function started(draft) {
  return { ...draft, start: structuredClone(draft) };
}

function withUnit(value, name, catalogue) {
  const unit = catalogue.conditions.find((each) => each.name === name)?.shown;
  return unit ? `${value} ${unit}` : String(value);
}

/** Whether something was typed that would be lost. */
export function isTouched({ start, ...draft }) {
  return JSON.stringify(draft) !== JSON.stringify(start);
}

/**
 * What the program is asked to do.
 *
 * @param {Draft} draft
 * @param {boolean} bySheet whether the record has a sheet
 * @returns {object}
 * @throws {Error} with a sentence where something is missing
 */
export function deedOf(draft, bySheet) {
  return draft.id ? correction(draft) : addition(draft, bySheet);
}

function correction(draft) {
  const deed = { do: 'correct', id: draft.id };
  for (const member of ['quantity', 'typed', 'statistic', 'label']) {
    if (draft[member].trim() !== draft.start[member]) {
      deed[member] = draft[member].trim();
    }
  }
  const conditions = changedConditions(draft);
  if (Object.keys(conditions).length) {
    deed.conditions = conditions;
  }
  if (draft.place) {
    deed.place = draft.place;
  }
  if (Object.keys(deed).length === 2) {
    throw new Error('Nothing was changed. Where the reading is right, confirm it instead.');
  }
  return remarked(deed, draft);
}

function addition(draft, bySheet) {
  if (!draft.quantity) {
    throw new Error('Choose the quantity first.');
  }
  if (!draft.typed.trim()) {
    throw new Error('Type the value, such as 3350 mAh.');
  }
  if (bySheet && !draft.place) {
    throw new Error('Show where it stands on the sheet: draw a box around it or choose its words.');
  }
  if (!bySheet && !draft.where.trim()) {
    throw new Error('Say where you saw the value: a page of the web, a label.');
  }
  const deed = { do: 'add', quantity: draft.quantity, typed: draft.typed.trim(), conditions: changedConditions(draft) };
  if (draft.statistic) {
    deed.statistic = draft.statistic;
  }
  if (draft.place) {
    deed.place = draft.place;
  }
  if (!bySheet) {
    deed.seen = { where: draft.where.trim(), when: draft.when };
  }
  return remarked(deed, draft);
}

function remarked(deed, draft) {
  return draft.remark.trim() ? { ...deed, remark: draft.remark.trim() } : deed;
}

function changedConditions({ conditions, start }) {
  const before = new Map(start.conditions.map((each) => [each.name, each.typed]));
  const changed = {};
  for (const { name, typed } of conditions) {
    if (name && before.get(name) !== typed.trim()) {
      changed[name] = typed.trim();
    }
  }
  for (const name of before.keys()) {
    if (!conditions.some((each) => each.name === name)) {
      changed[name] = null;
    }
  }
  return changed;
}
