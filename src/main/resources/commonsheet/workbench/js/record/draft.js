// What a person is typing, kept in this browser until it is saved or given up: neither a closed
// window nor a program that was ended takes it away.

const PREFIX = 'commonsheet-draft:';

/** Keeps a draft of a record. */
export function keepDraft(file, draft) {
  localStorage.setItem(PREFIX + file, JSON.stringify(draft));
}

/** The draft of a record, or null. */
export function keptDraft(file) {
  try {
    return JSON.parse(localStorage.getItem(PREFIX + file));
  } catch {
    return null;
  }
}

/** Forgets the draft of a record. */
export function dropDraft(file) {
  localStorage.removeItem(PREFIX + file);
}
