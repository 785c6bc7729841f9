// The tools above the figure.

import { html, nothing } from '/lit/lit-html.js';

const TOOLS = [
  { tool: 'look', label: 'Look', key: 'L' },
  { tool: 'axes', label: 'Axis marks', key: 'M' },
  { tool: 'points', label: 'Points', key: 'P' },
  { tool: 'trace', label: 'Trace', key: 'T' },
];

const SHOWN = [
  { only: 'both', label: 'Both' },
  { only: 'sheet', label: 'Sheet only' },
  { only: 'curves', label: 'Curves only' },
];

const choice = (label, pressed, act, key, title) => html`<button
  type="button"
  class="button"
  aria-pressed=${pressed}
  title=${title ?? (key ? `${label} (${key})` : label)}
  @click=${act}
>
  ${label}
</button>`;

export function toolbar(app) {
  const { work } = app;
  const savedUndo = !work.isChanged && app.record.undo;
  const savedRedo = !work.redoable && !work.isChanged && app.record.redo;
  return html`<div class="tools">
    <div class="set" role="group" aria-label="What a click does">
      ${TOOLS.map(({ tool, label, key }) => choice(label, app.tool === tool, () => app.setTool(tool), key))}
    </div>
    <div class="set" role="group" aria-label="What is shown">
      ${SHOWN.map(({ only, label }) => choice(label, app.only === only, () => app.show(only), null, `${label} (H)`))}
    </div>
    <div class="set" role="group" aria-label="How close">
      <button type="button" class="button" aria-label="Farther" title="Farther (−)" @click=${() => app.view.zoom(1 / 1.5)}>−</button>
      <button type="button" class="button" aria-label="Closer" title="Closer (+)" @click=${() => app.view.zoom(1.5)}>+</button>
      <button type="button" class="button" ?disabled=${app.view.isWhole} title="All of it (0)" @click=${() => app.view.fit()}>All</button>
    </div>
    <div class="set" role="group" aria-label="Back and forth">
      <button
        type="button"
        class="button"
        id="undo"
        ?disabled=${!work.isChanged && !savedUndo}
        title=${work.isChanged ? `Undo ${work.undoable.trim()} (Ctrl+Z)` : savedUndo ? `Undo ${app.record.undo}, which is saved` : 'Nothing to undo'}
        @click=${app.undo}
      >
        Undo
      </button>
      <button
        type="button"
        class="button"
        id="redo"
        ?disabled=${!work.redoable && !savedRedo}
        title=${work.redoable ? `Do ${work.redoable.trim()} again (Ctrl+Y)` : savedRedo ? `Do ${app.record.redo} again, and save it` : 'Nothing to do again'}
        @click=${app.redo}
      >
        Redo
      </button>
    </div>
  </div>`;
}

/** Which chart is shown, and how another is begun. */
export function chooser(app) {
  return html`<div class="chooser">
    <label class="heard" for="which">Chart</label>
    <select id="which" @change=${(event) => app.open(event.target.value)}>
      ${app.works.map(
        ({ chart }, index) => html`<option value=${index} ?selected=${app.works[index] === app.work}>
          Page ${chart.page}, ${chart.number === null ? 'new chart' : `chart ${chart.number}`} · ${app.kindName(chart.kind)}
        </option>`,
      )}
    </select>
    ${app.record.sheet?.found ? html`<button type="button" class="button plain" id="begin" @click=${app.begin}>A chart that was not found…</button>` : nothing}
  </div>`;
}
