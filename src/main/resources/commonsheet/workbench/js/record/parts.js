// The values and curves of a record: their order, their groups, and what they are called.

/** What a part is called: "Capacity, minimum", "Discharge curve 0.2C". */
export function nameOf(part) {
  if (part.kind === 'curve') {
    return part.typed ? `${part.name} ${part.typed}` : part.name;
  }
  return part.statistic ? `${part.name}, ${part.statistic}` : part.name;
}

/** A part in a sentence. */
export function inWords(part) {
  return part.kind === 'curve' ? nameOf(part) : `${nameOf(part)} ${part.value}`;
}

/**
 * The parts in groups, each as they follow on the sheet: what stands on a page, the curves of one
 * chart, what was seen elsewhere, and what was computed.
 *
 * @returns {Array<{key: string, title: string, derived: boolean, parts: object[]}>}
 */
export function grouped(parts) {
  const groups = [];
  for (const part of parts) {
    const { key, title } = groupOf(part);
    let group = groups.find((each) => each.key === key);
    if (!group) {
      group = { key, title, derived: part.derived, parts: [] };
      groups.push(group);
    }
    group.parts.push(part);
  }
  return groups;
}

function groupOf(part) {
  if (part.derived) {
    return { key: 'derived', title: 'Computed from these' };
  }
  if (!part.place) {
    return { key: `away-${part.kind}`, title: part.kind === 'curve' ? 'Curves of other files' : 'Seen elsewhere' };
  }
  const { page, box } = part.place;
  return part.kind === 'curve'
    ? { key: `chart-${page}-${box.join('-')}`, title: `Page ${page}, chart: ${part.name.toLowerCase()}` }
    : { key: `page-${page}`, title: `Page ${page}` };
}

/**
 * The next part that a person has yet to settle, from after `id` on and then from the beginning.
 *
 * @param {Set<string>} passed ids that are being settled at this moment
 */
export function nextUnsettled(view, id, passed = new Set(), backwards = false) {
  const order = backwards ? [...view.parts].reverse() : view.parts;
  const from = order.findIndex((each) => each.id === id) + 1;
  const open = new Set(view.progress.unsettled);
  return [...order.slice(from), ...order.slice(0, from)].find(
    (each) => open.has(each.id) && !passed.has(each.id) && each.id !== id,
  )?.id;
}

/** The parts that are not as they were. */
export function changedParts(before, after) {
  const old = new Map(before.parts.map((each) => [each.id, asText(each)]));
  return after.parts.filter((each) => !each.derived && old.get(each.id) !== asText(each));
}

function asText({ value, typed, statistic, conditions, standing, doubts }) {
  return JSON.stringify([value, typed, statistic, conditions, standing, doubts]);
}

/** The findings that concern a part. */
export function findingsOf(view, part) {
  return part.findings.map((index) => view.findings[index]);
}

/** The findings that concern no part that is shown: they are about the sheet as a whole. */
export function wholeFindings(view) {
  const shown = new Set(view.parts.flatMap((each) => each.findings));
  return view.findings.filter((each) => !shown.has(each.index));
}

const METHODS = {
  'table cell': 'from a table',
  'text line': 'from a line of text',
  'vector curve': 'from the lines of the chart',
  'colour trace': 'from the colours of the chart',
  'hand placed': 'placed by hand',
  'typed in': 'typed in by a person',
  derived: 'computed',
};

/** How a part was obtained, in words. */
export function methodOf(part) {
  return METHODS[part.method] ?? part.method;
}
