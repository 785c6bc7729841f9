// Which cell the record is about; each member can be put right.

import { html, nothing } from '/lit/lit-html.js';
import { ask } from '../dialog.js';
import { tell } from '../told.js';

/**
 * @param {import('./session.js').Session} session
 * @param {{light: (place: object|null) => void, catalogue: () => Promise<object>, say: (deed: object, sentence: string) => Promise<void>}} page
 */
export function cellPanel(session, { light, catalogue, say }) {
  return html`
    <section class="cell" aria-label="The cell">
      ${session.view.cell.map(
        (each) => html`
          <button
            type="button"
            class="member"
            data-missing=${!each.text}
            title="Correct: ${each.label}"
            @click=${() => correct(each, catalogue, say).catch((refused) => tell(refused.message, 'refused'))}
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

async function correct(member, catalogue, say) {
  const { choices } = (await catalogue()).cellMembers.find((each) => each.member === member.member) ?? {};
  const field = { name: 'text', label: member.label, value: member.text ?? '', required: true };
  await ask({
    title: `Correct: ${member.label}`,
    text: member.words ? `Printed: “${member.words}”.` : member.text ? `It says “${member.text}” now.` : 'This was not read.',
    fields: [choices ? { ...field, kind: 'choice', options: choices.map((each) => ({ value: each, label: each })) } : field],
    action: 'Save',
    carryOut: ({ text }) => say({ do: 'cell', member: member.member, text }, `${member.label} is now “${text}”`),
  });
}
