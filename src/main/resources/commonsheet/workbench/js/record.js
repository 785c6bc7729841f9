// The page on which a record is checked: its sheet at the left, what was read from it at the right.

import { html, nothing, render } from '/lit/lit-html.js';
import { get } from './api.js';
import { header } from './header.js';
import { address } from './route.js';
import { cellPanel } from './record/cell.js';
import { chosenPanel } from './record/chosen.js';
import { commandsOf } from './record/commands.js';
import { dropDraft, keptDraft } from './record/draft.js';
import { Editor } from './record/editor.js';
import { findingBox } from './record/finding.js';
import { back, conflictBar, recordHeader } from './record/head.js';
import { listen } from './record/keys.js';
import { focusList, partList, showChosen } from './record/list.js';
import { noSheet } from './record/no-sheet.js';
import { nameOf, wholeFindings } from './record/parts.js';
import { progressBar } from './record/progress.js';
import { saying } from './record/saying.js';
import { Session } from './record/session.js';
import { makeMovable } from './record/split.js';
import { stepList } from './record/steps.js';
import { Sheet } from './sheet/sheet.js';
import { strip } from './sheet/strip.js';
import { tell } from './told.js';

/** Shows a record beside its sheet. */
export function recordPage(parameters, element) {
  const page = new RecordPage(parameters, element);
  page.start();
  return () => page.leave();
}

/** Holds the parts of the page together. */
class RecordPage {
  #derivedShown = false;
  #unlisten = () => {};

  constructor(parameters, element) {
    this.element = element;
    this.session = new Session(parameters.get('file'));
    this.at = parameters.get('at');
    this.say = saying(this.session, tell);
    this.redraw = () => this.#draw();
    this.catalogue = () => (this.asked ??= get('/api/catalogue'));
    this.editor = new Editor(this.session, {
      catalogue: this.catalogue,
      redraw: this.redraw,
      say: this.say,
      mark: (how) => this.sheet.mark(how),
      closed: focusList,
    });
  }

  async start() {
    const { session } = this;
    render(html`${header({ back: back(), title: 'Record' })}<main><p role="status">Loading …</p></main>`, this.element);
    try {
      await session.load();
    } catch (refused) {
      this.#refuse(refused);
      return;
    }
    if (this.left) {
      return;
    }
    this.commands = commandsOf(this);
    session.addEventListener('changed', this.redraw);
    session.addEventListener('chosen', (event) => this.#chosen(event.detail));
    this.#draw();
    this.#furnish();
    session.choose(session.part(this.at) ? this.at : session.chosen);
    focusList();
    session.watch();
    this.#unlisten = listen(this.commands);
    this.#resume();
  }

  #refuse(refused) {
    render(
      html`${header({ back: back(), title: 'Record' })}
        <main><p class="refused" role="alert">${refused.message}</p></main>`,
      this.element,
    );
  }

  /** What lit-html does not draw: the sheet in its own element, the line between. */
  #furnish() {
    const { session } = this;
    makeMovable(this.element.querySelector('.split'), this.element.querySelector('.desk'));
    // The panel of the chosen value grows over the list with what it tells; its row stays in sight.
    this.room = new ResizeObserver(() => showChosen(session));
    this.room.observe(this.element.querySelector('.record-scroll'));
    if (session.view.sheet?.found) {
      this.sheet = new Sheet(this.element.querySelector('.sheet'), session.file, (id) => session.choose(id, 'sheet'), focusList);
      this.sheet.drawAsked = this.commands.draw;
      this.sheet.show(session.view, session.chosen);
      this.element.addEventListener('picture', this.redraw);
    }
  }

  /** What was being typed when the page was last left. */
  #resume() {
    const draft = keptDraft(this.session.file);
    if (draft && (draft.id === null || this.session.part(draft.id))) {
      if (draft.id) {
        this.session.choose(draft.id);
      }
      this.editor.reopen(draft);
      tell('What you had typed and not saved is here again.');
    } else if (draft) {
      dropDraft(this.session.file);
    }
  }

  #chosen({ id, from }) {
    history.replaceState(null, '', address('record', { file: this.session.file, at: id }));
    if (this.session.part(id).derived) {
      this.#derivedShown = true;
    }
    this.#draw();
    showChosen(this.session);
    if (from !== 'sheet') {
      this.sheet?.showChosen();
    } else if (!this.editor.isOpen) {
      focusList();
    }
  }

  #draw() {
    if (this.left || !this.commands) {
      return;
    }
    const { session } = this;
    render(
      html`
        ${recordHeader(session, this.commands)} ${session.conflict ? conflictBar(session, this.editor.isOpen, () => this.#reload()) : nothing}
        <main class="desk whole">
          <section class="sheet" aria-label="Sheet">${session.view.sheet?.found ? nothing : noSheet(session)}</section>
          <div class="split" role="separator" tabindex="0" aria-label="Line between sheet and record"></div>
          <section class="record" aria-label="Record">${this.#record()}</section>
        </main>
      `,
      this.element,
    );
    this.sheet?.show(session.view, session.chosen, this.editor.draft?.place);
  }

  async #reload() {
    try {
      const changed = await this.session.load();
      const names = changed.slice(0, 4).map(nameOf);
      tell(names.length ? `Loaded. Changed meanwhile: ${names.join('; ')}${changed.length > 4 ? ' and more' : ''}.` : 'Loaded.');
    } catch (refused) {
      tell(refused.message, 'refused');
    }
    (this.editor.isOpen ? this.editor : { focus: focusList }).focus();
  }

  #record() {
    const { session, editor, commands } = this;
    return html`
      ${progressBar(session, commands)}
      <div class="record-scroll">
        ${cellPanel(session, { light: (place) => this.sheet?.light(place), catalogue: this.catalogue, say: this.say })} ${this.#wholeFindings()}
        ${partList(session, {
          derivedShown: this.#derivedShown,
          toggleDerived: () => {
            this.#derivedShown = !this.#derivedShown;
            this.#draw();
          },
        })}
        ${stepList(session, commands)}
      </div>
      ${editor.isOpen ? editor.template() : chosenPanel(session, commands, this.sheet ? strip(session, this.sheet.pictures) : nothing)}
    `;
  }

  #wholeFindings() {
    const { session, commands } = this;
    const findings = wholeFindings(session.view);
    const answers = { part: (id) => session.part(id), mend: commands.mend, accept: commands.accept };
    return findings.length
      ? html`<section class="whole-findings" aria-label="Findings of the sheet as a whole">${findings.map((each) => findingBox(each, answers))}</section>`
      : nothing;
  }

  leave() {
    this.left = true;
    this.#unlisten();
    this.session.leave();
    this.room?.disconnect();
    this.sheet?.leave();
    this.element.removeEventListener('picture', this.redraw);
  }
}
