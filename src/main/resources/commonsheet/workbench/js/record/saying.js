// Asks for a change and tells how it went. "Saved" is told only after the program has answered.

import { inWords } from './parts.js';

/**
 * @param {import('./session.js').Session} session
 * @param {(sentence: string, kind?: string) => void} tell
 * @returns {(deed: object, what: string) => Promise<boolean>} throws what was refused
 */
export function saying(session, tell) {
  return async (deed, what) => {
    const known = new Set(session.view.parts.map((each) => each.id));
    if (!(await session.change(deed))) {
      return false;
    }
    const { settled, total } = session.view.progress;
    const added = deed.do === 'add' && session.view.parts.find((each) => !known.has(each.id) && !each.derived);
    const part = added || session.part(deed.id ?? deed.ids?.[0]);
    tell(`Saved: ${part ? `${inWords(part)} ${what}` : what}. ${settled} of ${total} settled.`);
    if (added) {
      session.choose(added.id);
    }
    return true;
  };
}
