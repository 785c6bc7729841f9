// Which cell the record is about; each member can be put right.

import { html, nothing } from '/lit/lit-html.js';
import { ask } from '../dialog.js';

/**
 * @param {import('./session.js').Session} session
 * @param {{light: (place: object|null) => void, say: (deed: object, sentence: string) => Promise<void>}} page
 */
export function cellPanel(session, { light, say }) {
  return html`
    <section class="cell" aria-label="The cell">
      ${session.view.cell.map(
        (each) => html`
          <button
            type="button"
            class="member"
            data-missing=${!each.text}
            title="Correct: ${each.label}"
            @click=${() => correct(each, say)}
            @mouseenter=${() => light(each.place)}
            @mouseleave=${() => light(null)}
            @focus=${() => light(each.place)}
            @blur=${() => light(null)}
          >
            <span class="label">${each.label}</span>
            <span class="text">${each.text ?? 'not read'}</span>
            ${each.place ? html`<span class="heard">, on page ${each.place.page} of the sheet</span>` : nothing}
          </button>
        `,
      )}
    </section>
  `;
}

async function correct(member, say) {
  await ask({
    title: `Correct: ${member.label}`,
    text: member.text ? `Read as “${member.text}”.` : 'This was not read.',
    fields: [{ name: 'text', label: member.label, value: member.text ?? '', required: true }],
    action: 'Save',
    carryOut: ({ text }) => say({ do: 'cell', member: member.member, text }, `${member.label} is now “${text}”`),
  });
}
