// The curves of a chart: which there are, and what is said of the chosen one.

import { html, nothing } from '/lit/lit-html.js';
import { nameOf } from './deed.js';
import { digits, plain, toShown, unitOf } from './units.js';

export function curveList(app) {
  return html`<section class="panel" aria-labelledby="curves-head">
    <header><h2 id="curves-head">Curves</h2>
      <button type="button" class="button plain end" id="new-curve" @click=${app.newCurve}>New by hand</button></header>
    <ul class="lines">
      ${app.work.chart.curves.map((curve) => line(app, curve))}
    </ul>
    ${app.work.chart.curves.length ? nothing : html`<p class="none soft">None yet. Give both axes two marks, then trace a curve by a click on its ink.</p>`}
  </section>`;
}

function line(app, curve) {
  const chosen = curve.key === app.chosen;
  const standing = app.standing(curve);
  return html`<li class=${chosen ? 'chosen' : ''}>
    <button type="button" class="pick" aria-pressed=${chosen} id="pick-${curve.key}" @click=${() => app.choose(curve.key)}>
      <span class="swatch" data-ink=${app.colour(curve.key)} data-standing=${standing}></span>
      <span class="id">${curve.id ?? 'new'}</span>
      <span class="what">${curve.label || app.inWords(curve) || html`<i class="soft">no label</i>`}</span>
      <span class="chip" data-standing=${standing}>${curve.id && !app.isChanged(curve) ? standing : 'not saved'}</span>
    </button>
    <button
      type="button"
      class="button plain alone"
      aria-pressed=${app.alone === curve.key}
      title="Show this curve alone"
      aria-label=${`Show ${nameOf(curve)} alone`}
      @click=${() => app.showAlone(curve.key)}
    >
      ${app.alone === curve.key ? 'All' : 'Alone'}
    </button>
  </li>`;
}

/** What is said of the chosen curve, to be changed. */
export function curvePanel(app) {
  const curve = app.work.curve(app.chosen);
  if (!curve) {
    return html`<section class="panel"><p class="none soft">Choose a curve to change what is said of it.</p></section>`;
  }
  const recorded = app.recorded(curve);
  const ys = app.work.chart.axes.filter((axis) => axis.along === 'y');
  return html`<section class="panel curve-panel" aria-labelledby="curve-head">
    <header><h2 id="curve-head">${curve.id ? `Curve ${curve.id}` : 'New curve'}</h2>
      <span class="soft small end">${extent(app, curve)}</span></header>
    <div class="fields">
      <label>Label<input id="label" .value=${curve.label} autocomplete="off" @change=${(event) => app.say('label', event.target.value.trim())} /></label>
      <label>Shows<select id="kind" @change=${(event) => app.say('kind', event.target.value)}>
        ${app.catalogue.curveKinds.map(
          ({ kind, label }) => html`<option value=${kind} ?selected=${kind === curve.kind}>${label}</option>`,
        )}
      </select></label>
      ${
        ys.length > 1
          ? html`<label>Belongs to<select id="its-axis" @change=${(event) => app.say('y', event.target.value)}>
              ${ys.map((axis) => html`<option value=${axis.key} ?selected=${axis.key === curve.y}>${app.axisName(axis)}</option>`)}
            </select></label>`
          : nothing
      }
    </div>
    ${conditions(app, curve, recorded)} ${told(recorded)}
    <div class="buttons deeds">
      ${
        curve.id
          ? html`<button type="button" class="button" id="confirm" title="The curve is right (C)" @click=${() => app.settle('confirm')}>Confirm</button>
              <button type="button" class="button" @click=${() => app.settle('return')}>Return…</button>
              <button type="button" class="button grave" @click=${() => app.settle('reject')}>Reject…</button>`
          : html`<button type="button" class="button grave" @click=${app.forget}>Take it away</button>`
      }
    </div>
  </section>`;
}

function extent(app, curve) {
  const x = app.work.scale(curve.x);
  const y = app.work.scale(curve.y);
  if (!curve.places.length || x.fault || y.fault) {
    return `${curve.places.length} points`;
  }
  const part = (axis, scale, error) => {
    const unit = unitOf(app.measures, axis);
    const values = curve.places.map((place) => toShown(unit, scale.value(place)));
    const half = Math.max(...curve.places.map((place) => scale.perPoint(place))) * error / Math.abs(unit.factor);
    return `${digits(Math.min(...values), half)} to ${digits(Math.max(...values), half)} ${unit.shown} ±${Number(half.toPrecision(2))}`;
  };
  return html`${part(app.work.axis(curve.x), x, curve.errorX)}<br />${part(app.work.axis(curve.y), y, curve.errorY)}, ${curve.places.length} points`;
}

function conditions(app, curve, recorded) {
  const values = recorded?.conditions ?? {};
  const typed = curve.typed;
  const names = app.catalogue.conditions.filter(
    ({ name }) => (name in typed ? typed[name] !== null : values[name] !== undefined),
  );
  const others = app.catalogue.conditions.filter((each) => !names.includes(each));
  return html`<div class="conditions">
    <h3>Conditions</h3>
    ${names.map(
      ({ name, label, shown }) => html`<label
          ><span>${label}</span
          ><input id="condition-${name}" .value=${typed[name] ?? `${plain(values[name])} ${shown}`.trim()} autocomplete="off"
            @change=${(event) => app.condition(name, event.target.value)} /></label
        ><button type="button" class="button plain" aria-label=${`Without ${label}`} title="The chart does not say it"
          @click=${() => app.condition(name, null)}>×</button>`,
    )}
    <select id="add-condition" aria-label="Add a condition" @change=${(event) => {
      app.condition(event.target.value, '');
      const { value } = event.target;
      event.target.value = '';
      document.getElementById(`condition-${value}`)?.focus();
    }}>
      <option value="">Add a condition…</option>
      ${others.map(({ name, label, shown }) => html`<option value=${name}>${label}${shown ? ` (${shown})` : ''}</option>`)}
    </select>
  </div>`;
}

function told(curve) {
  if (!curve) {
    return nothing;
  }
  return html`${(curve.doubts ?? []).map((doubt) => html`<p class="doubt"><b>?</b> ${doubt}</p>`)}
    <details class="told">
      <summary>How it came about</summary>
      <p class="small">Method: ${curve.method}. ${curve.evidence.note ?? ''}</p>
      ${curve.original ? html`<p class="small soft">Read before: ${curve.original.label ? `"${curve.original.label}", ` : ''}${
        curve.original.points ? `${curve.original.points.length} points, kept in the record` : 'the same points'}.</p>` : nothing}
    </details>`;
}
