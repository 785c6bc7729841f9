// What is being typed about a value: kept until it is saved or given up.

import { post } from '../api.js';
import { ask } from '../dialog.js';
import { dropDraft, keepDraft } from './draft.js';
import { adding, correcting, deedOf, isTouched } from './drafts.js';
import { editorForm } from './editor-form.js';

/** What is being typed, if anything; draws itself. */
export class Editor {
  /**
   * @param {import('./session.js').Session} session
   * @param {object} page
   * @param {() => Promise<object>} page.catalogue of quantities, statistics and conditions
   * @param {() => void} page.redraw
   * @param {(deed: object, sentence: string) => Promise<boolean>} page.say asks for a change
   * @param {(how: 'draw'|'words') => Promise<{page: number, box: number[]}|null>} page.mark
   * @param {() => void} page.closed what comes after
   */
  constructor(session, page) {
    this.session = session;
    this.page = page;
    /** @type {import('./drafts.js').Draft|null} */
    this.draft = null;
    this.refused = null;
    /** What is not certain about the words that were read, or null. */
    this.doubt = null;
    this.busy = false;
  }

  get isOpen() {
    return this.draft !== null;
  }

  /** Opens it for a part, or for a new value where none is given. */
  async open(part) {
    const catalogue = await this.#loaded();
    this.#start(part ? correcting(part, this.session.view.record, catalogue) : adding(this.session.view.record.source ?? {}));
  }

  /** Opens it with what was typed before the page was left. */
  async reopen(draft) {
    await this.#loaded();
    this.#start(draft);
  }

  /** Puts the focus where one types on. */
  focus() {
    document.querySelector('#edit-typed, #edit-label')?.focus();
  }

  #start(draft) {
    this.draft = draft;
    this.refused = null;
    this.doubt = null;
    this.page.redraw();
    document.querySelector(draft.id || draft.quantity ? '#edit-typed, #edit-label' : '#edit-quantity')?.focus();
    if (draft.id) {
      document.querySelector('#edit-typed')?.select();
    }
  }

  async #loaded() {
    return (this.catalogue ??= await this.page.catalogue());
  }

  /** Closes it; asks first where something was typed. */
  async giveUp() {
    if (isTouched(this.draft)) {
      const sure = await ask({ title: 'Give up what you typed?', text: 'It has not been saved.', action: 'Give it up', grave: true });
      if (!sure) {
        return;
      }
    }
    this.#close();
  }

  #close() {
    this.draft = null;
    this.refused = null;
    dropDraft(this.session.file);
    this.page.redraw();
    this.page.closed();
  }

  /** Reads the words in a box into the form; what the person typed themselves stays. */
  async readBox({ page, box }) {
    const { draft } = this;
    const read = await post('/api/place/read', { file: this.session.file, page, box, quantity: draft.quantity || null });
    draft.place = { page, box, text: read.text };
    draft.quantity = draft.quantity || read.quantity || '';
    if (read.typed && (!draft.typed || draft.typed === draft.start.typed)) {
      draft.typed = read.typed;
    }
    if (read.statistic && draft.statistic === draft.start.statistic) {
      draft.statistic = read.statistic;
    }
    this.doubt = read.doubt ?? (read.typed ? null : `No figure was found in “${read.text}”; type the value.`);
    this.#changed();
    document.querySelector(draft.quantity ? '#edit-typed' : '#edit-quantity')?.focus();
  }

  async #mark(how) {
    const box = await this.page.mark(how);
    if (!box || !this.isOpen) {
      this.focus();
      return;
    }
    await this.readBox(box).catch((refused) => {
      this.refused = refused.message;
      this.page.redraw();
    });
  }

  #set(member, value) {
    this.draft[member] = value;
    this.#changed();
  }

  #changed() {
    keepDraft(this.session.file, this.draft);
    this.page.redraw();
  }

  async #save(event) {
    event.preventDefault();
    if (this.busy) {
      return;
    }
    this.busy = true;
    this.refused = null;
    this.page.redraw();
    try {
      const deed = deedOf(this.draft, Boolean(this.session.view.sheet));
      if (await this.page.say(deed, this.draft.id ? 'corrected' : 'added')) {
        this.#close();
      }
    } catch (refused) {
      this.refused = refused.message;
    } finally {
      this.busy = false;
      this.page.redraw();
    }
  }

  #key(event) {
    if (event.key === 'Escape' && !event.defaultPrevented) {
      event.preventDefault();
      this.giveUp();
    } else if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) {
      event.preventDefault();
      event.currentTarget.requestSubmit();
    }
  }

  /** The form. */
  template() {
    const { session, draft, catalogue, refused, doubt, busy } = this;
    return editorForm({ session, draft, catalogue, refused, doubt, busy }, {
      set: (member, value) => this.#set(member, value),
      save: (event) => this.#save(event),
      key: (event) => this.#key(event),
      mark: (how) => this.#mark(how),
      giveUp: () => this.giveUp(),
    });
  }
}
