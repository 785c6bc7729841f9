// The axes of a chart: what each shows, its marks with their values and how far they lie off.

import { html, nothing } from '/lit/lit-html.js';
import { handlePlace, isSecond, residual } from './marks.js';
import { isTurned } from './scale.js';
import { digits, printed, unitOf, unitsOf } from './units.js';

const SCALES = [
  { value: '', label: 'as its marks tell' },
  { value: 'straight', label: 'straight' },
  { value: 'logarithmic', label: 'logarithmic' },
];

export function axesPanel(app) {
  const { chart } = app.work;
  const turned = chart.axes.some((axis) => isTurned(axis.ticks)) || app.turning;
  return html`
    ${chart.axes.map((axis) => panel(app, axis, turned))}
    <div class="buttons">
      <button type="button" class="button" id="second-axis" ?disabled=${turned} @click=${app.addAxis}>A second y axis</button>
      <button type="button" class="button" id="turned" aria-pressed=${turned} @click=${app.turn}
        title="Three marks known along both axes, such as corners of the plot">The chart is turned or skewed</button>
    </div>
    ${turned ? turnedHelp() : nothing} ${chart.number === null ? plotArea(app) : nothing}
  `;
}

const turnedHelp = () => html`<p class="small soft">A turned chart takes three marks that are known along both axes, such
  as three corners of its plot. Click each, then give both its values.</p>`;

/** The quantities to choose from; one that the list does not have stays as it is. */
function measures(app, axis) {
  const known = app.measures.some((each) => each.quantity === axis.quantity);
  return known ? app.measures : [{ quantity: axis.quantity, label: axis.quantity }, ...app.measures];
}

function panel(app, axis, turned) {
  const scale = app.work.scale(axis.key);
  const units = unitsOf(app.measures, axis.quantity);
  const unit = unitOf(app.measures, axis);
  const { chart } = app.work;
  const used = chart.curves.filter((curve) => curve[axis.along] === axis.key).length;
  const side = axis.along === 'x' ? 'x axis' : isSecond(chart, axis) ? 'y axis on the right' : 'y axis';
  return html`<section class="panel axis" aria-labelledby="head-${axis.key}">
    <header>
      <h2 id="head-${axis.key}">${side}</h2>
      <span class="soft small end">${used === 1 ? '1 curve' : `${used} curves`}</span>
      ${used === 0 && chart.axes.filter((each) => each.along === axis.along).length > 1
        ? html`<button type="button" class="button plain" @click=${() => app.removeAxis(axis.key)}>Take it away</button>`
        : nothing}
    </header>
    <div class="fields three">
      <label>Shows<select id="quantity-${axis.key}" @change=${(event) => app.measure(axis.key, event.target.value)}>
        ${measures(app, axis).map(
          ({ quantity, label }) => html`<option value=${quantity} ?selected=${quantity === axis.quantity}>${label}</option>`,
        )}
      </select></label>
      <label>Printed in<select id="unit-${axis.key}" @change=${(event) => app.unit(axis.key, event.target.value)}>
        ${(units.length ? units : [unit]).map(
          ({ code, shown }) => html`<option value=${code} ?selected=${code === unit.code}>${shown || 'number'}</option>`,
        )}
      </select></label>
      <label>Scale<select id="scale-${axis.key}" @change=${(event) => app.scaleKind(axis.key, event.target.value || null)}>
        ${SCALES.map(
          ({ value, label }) => html`<option value=${value} ?selected=${value === (axis.scale ?? '')}>${label}</option>`,
        )}
      </select></label>
    </div>
    ${axis.ticks.length ? table(app, axis, unit) : nothing}
    <p class="sum small ${scale.fault ? 'fault' : ''}" role="status">${scale.fault ?? sum(app, axis, scale, unit)}</p>
    <button type="button" class="button add" id="add-${axis.key}" ?disabled=${turned && axis.along === 'y'}
      @click=${() => app.addMark(axis.key)}>Add a mark</button>
  </section>`;
}

function table(app, axis, unit) {
  return html`<table>
    <thead>
      <tr><th scope="col">Mark${unit.shown ? `, ${unit.shown}` : ''}</th><th scope="col" class="number">Place, pt</th>
        <th scope="col" class="number">Residual${unit.shown ? `, ${unit.shown}` : ''}</th><th><span class="heard">Remove</span></th></tr>
    </thead>
    <tbody>
      ${axis.ticks.map((tick, index) => row(app, axis, tick, index, unit))}
    </tbody>
  </table>`;
}

function row(app, axis, tick, index, unit) {
  const { text, off } = residual(app, axis, tick);
  const held = app.held?.axis === axis.key && app.held.index === index;
  const value = Number.isFinite(tick.value) ? printed(unit, tick) : '';
  return html`<tr class=${held ? 'chosen' : ''}>
    <td><input class="value" id="value-${axis.key}-${index}" inputmode="decimal" autocomplete="off" .value=${value}
      aria-label=${`Value of mark ${index + 1} of the ${axis.along} axis${unit.shown ? ` in ${unit.shown}` : ''}`}
      aria-invalid=${value === ''}
      @focus=${() => app.hold({ axis: axis.key, index }, handlePlace(app.work.chart, axis, tick))}
      @change=${(event) => app.markValue(axis.key, index, event.target.value)} /></td>
    <td class="number">${tick.at.toFixed(2)}</td>
    <td class="number residual ${off ? 'off' : ''}">${text}${off ? ' off' : ''}</td>
    <td><button type="button" class="button plain" aria-label=${`Remove mark ${value} of the ${axis.along} axis`}
      @click=${() => app.removeMark(axis.key, index)}>×</button></td>
  </tr>`;
}

/** How good the scale is, in the unit of the axis. */
function sum(app, axis, scale, unit) {
  const places = axis.ticks.map((tick) => handlePlace(app.work.chart, axis, tick));
  const perPoint = Math.max(...places.map((place) => scale.perPoint(place))) / Math.abs(unit.factor);
  const kind = scale.logarithmic ? 'Logarithmic' : 'Straight';
  if (axis.ticks.length <= (isTurned(axis.ticks) ? 3 : 2)) {
    return `${kind}, by just as many marks as it takes: nothing tells how good it is. One more mark would.`;
  }
  const largest = Math.max(...axis.ticks.map((tick) => Math.abs(scale.residual(tick) / unit.factor)));
  return `${kind}. Largest residual ${digits(largest, perPoint / 20)} ${unit.shown}; the scale is certain to ±${digits(
    scale.error * perPoint, perPoint / 20)} ${unit.shown}.`;
}

function plotArea(app) {
  const labels = ['Left', 'Top', 'Width', 'Height'];
  return html`<fieldset class="panel area-fields">
    <legend>Plot area, in points of the page</legend>
    ${app.work.chart.box.map(
      (side, index) => html`<label>${labels[index]}<input inputmode="decimal" .value=${String(side)}
        @change=${(event) => app.boxSide(index, event.target.value)} /></label>`,
    )}
  </fieldset>`;
}
