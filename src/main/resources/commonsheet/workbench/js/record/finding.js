// A finding with its answers: mend what it concerns, or let it stand for a reason.

import { html, nothing } from '/lit/lit-html.js';
import { severityWord } from './list.js';
import { inWords, nameOf } from './parts.js';

/**
 * @param {object} finding
 * @param {{part: (id: string) => object, mend: (id: string) => void, accept: (finding: object) => void}} answers
 * @param {string} [beside] id of the part it is shown beside
 */
export function findingBox(finding, answers, beside) {
  const others = finding.about.filter((id) => id !== beside).map(answers.part).filter(Boolean);
  return html`
    <div class="finding" data-severity=${finding.severity} data-open=${finding.open}>
      <span class="severity">${finding.open ? severityWord(finding) : `${severityWord(finding)}, accepted`}</span>
      ${finding.message}
      ${finding.accepted
        ? html`<p class="soft">${finding.accepted.by} lets it stand: “${finding.accepted.reason}”</p>`
        : nothing}
      <details>
        <summary>Why this is checked</summary>
        <p class="soft">Rule ${finding.rule}${finding.source ? html`; source: ${finding.source}` : nothing}</p>
      </details>
      <div class="buttons">
        ${finding.open
          ? html`
              <button type="button" class="button" @click=${() => answers.accept(finding)}>Let it stand …</button>
              ${beside ? html`<button type="button" class="button" @click=${() => answers.mend(beside)}>Mend</button>` : nothing}
            `
          : nothing}
        ${beside ? nothing : others.map((each) => html`<button type="button" class="button" @click=${() => answers.mend(each.id)}>Mend ${nameOf(each)}</button>`)}
      </div>
      ${beside && others.length ? alsoAbout(others, answers) : nothing}
    </div>
  `;
}

function alsoAbout(others, answers) {
  return html`<p>
    Also about
    ${others.map(
      (each, i) => html`${i ? ', ' : nothing}<button type="button" class="link" @click=${() => answers.show(each.id)}>${inWords(each)}</button>`,
    )}
  </p>`;
}
