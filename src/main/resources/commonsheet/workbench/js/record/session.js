// One record as this page knows it: what the program last said of it, what is chosen, and what is on
// its way to the file. Nothing counts as saved before the program has answered.

import { Refused, get, post } from '../api.js';
import { personOrAsk } from '../person.js';
import { changedParts, nextUnsettled } from './parts.js';

const BETWEEN_LOOKS = 3000;

/** Tells `changed` whenever something is to be drawn anew, and `chosen` when another part is. */
export class Session extends EventTarget {
  #line = Promise.resolve();
  #sent = 0;
  #timer;

  /** @param {string} file the record's, as the folder names it */
  constructor(file) {
    super();
    this.file = file;
    /** What the program said last; null before it did. */
    this.view = null;
    /** Id of the chosen part, or null. */
    this.chosen = null;
    /** Ids of the parts whose change is on its way. */
    this.waiting = new Set();
    /** The sentence that tells of somebody else's change, until it is loaded. */
    this.conflict = null;
  }

  /** Loads the record as its file is now. */
  async load() {
    const before = this.view;
    this.view = await get('/api/record', { file: this.file });
    this.conflict = null;
    if (!this.part()) {
      this.chosen = nextUnsettled(this.view, null) ?? this.view.parts[0]?.id ?? null;
    }
    this.#tell('changed');
    return before ? changedParts(before, this.view) : [];
  }

  /** The part of an id, the chosen one when none is given. */
  part(id = this.chosen) {
    return this.view?.parts.find((each) => each.id === id);
  }

  /** Chooses a part; `from` tells whether that was done on the sheet or in the list. */
  choose(id, from = 'list') {
    if (!this.part(id)) {
      return;
    }
    this.chosen = id;
    this.dispatchEvent(new CustomEvent('chosen', { detail: { id, from } }));
    this.#tell('changed');
  }

  /**
   * Asks for a change, after those before it.
   *
   * @param {object} deed what to do
   * @returns {Promise<boolean>} false where the person did not say who they are
   * @throws {Refused} where it was not done; nothing was written then
   */
  change(deed) {
    return this.#ask('/api/record/change', { deed }, deed.ids ?? (deed.id ? [deed.id] : []));
  }

  /** Takes back the last change, or makes the one again that was taken back. */
  step(direction) {
    return this.#ask(`/api/record/${direction}`, {}, []);
  }

  /** Approves the record. */
  approve(ownWork) {
    return this.#ask('/api/record/approve', { ownWork }, []);
  }

  /** Whether something is on its way to the file. */
  get isSaving() {
    return this.#sent > 0;
  }

  async #ask(path, body, ids) {
    const by = await personOrAsk();
    if (!by) {
      return false;
    }
    ids.forEach((id) => this.waiting.add(id));
    this.#sent++;
    this.#tell('changed');
    const turn = this.#line.then(() => this.#send(path, { ...body, by }));
    // Whatever stands behind a refused change was asked of a state that never came to be.
    this.#line = turn;
    try {
      await turn;
      return true;
    } finally {
      ids.forEach((id) => this.waiting.delete(id));
      if (--this.#sent === 0) {
        this.#line = Promise.resolve();
      }
      this.#tell('changed');
    }
  }

  async #send(path, body) {
    if (this.conflict) {
      throw new Refused(409, { sentence: 'Load the new state of the record first.' });
    }
    try {
      this.view = await post(path, { file: this.file, version: this.view.version, ...body });
      this.#tell('changed');
    } catch (refused) {
      if (refused.isConflict) {
        this.conflict = refused.message;
      }
      throw refused;
    }
  }

  /** Looks every few seconds whether the file was changed by somebody else. */
  watch() {
    const look = () => document.visibilityState === 'visible' && this.#look();
    this.#timer = setInterval(look, BETWEEN_LOOKS);
    addEventListener('focus', look);
    this.leave = () => {
      clearInterval(this.#timer);
      removeEventListener('focus', look);
    };
  }

  /** Stops looking. */
  leave() {}

  async #look() {
    if (!this.view || this.isSaving || this.conflict) {
      return;
    }
    const mine = this.view.version;
    const { version } = await get('/api/record/version', { file: this.file }).catch(() => ({ version: mine }));
    if (version !== mine && mine === this.view.version && !this.isSaving) {
      this.conflict = 'Somebody else has changed this record.';
      this.#tell('changed');
    }
  }

  #tell(what) {
    this.dispatchEvent(new Event(what));
  }
}
