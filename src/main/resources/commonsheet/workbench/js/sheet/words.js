// Words of a page chosen by the keyboard: arrows go from word to word, Shift takes those between along,
// Enter has them read. A list box, so that readers of screens tell every word.

import { get } from '../api.js';
import { over } from '../placed.js';

/**
 * Lets a person choose words of a page.
 *
 * @param {{file: string, page: HTMLElement, near: number[]|null, signal: AbortSignal,
 *     hint: (text: string) => void}} where `near` is a box of the page to begin at
 * @returns {Promise<{page: number, box: number[]}|null>} null where given up
 */
export async function chooseWords({ file, page, near, signal, hint }) {
  const number = Number(page.dataset.page);
  const { words } = await get('/api/place/words', { file, page: number });
  if (!words.length) {
    throw new Error(`No words are known on page ${number}; draw a box instead.`);
  }
  hint('Arrow keys go from word to word, Shift takes more, Enter reads them.');
  const list = listOf(words, page, number);
  page.append(list);
  let at = near ? nearestTo(words, near) : 0;
  let from = at;

  const show = () => {
    const [first, last] = [Math.min(from, at), Math.max(from, at)];
    [...list.children].forEach((each, i) => {
      each.setAttribute('aria-selected', i >= first && i <= last);
      each.dataset.at = i === at;
    });
    list.setAttribute('aria-activedescendant', list.children[at].id);
    list.children[at].scrollIntoView({ block: 'nearest', inline: 'nearest' });
  };

  return new Promise((answer) => {
    const end = (result) => {
      list.remove();
      answer(result);
    };
    const take = () => end({ page: number, box: around(words.slice(Math.min(from, at), Math.max(from, at) + 1)) });
    signal.addEventListener('abort', () => end(null), { once: true });
    list.addEventListener('keydown', (event) => {
      const next = nextWord(words, at, event.key);
      if (next !== null) {
        at = next;
        from = event.shiftKey ? from : at;
        show();
      } else if (event.key === 'Enter') {
        take();
      } else if (event.key === 'Escape') {
        end(null);
      } else {
        return;
      }
      event.preventDefault();
      event.stopPropagation();
    });
    list.addEventListener('click', (event) => {
      const word = [...list.children].indexOf(event.target);
      if (word >= 0) {
        at = word;
        from = event.shiftKey ? from : at;
        show();
      }
    });
    show();
    list.focus({ preventScroll: true });
  });
}

function listOf(words, page, number) {
  const size = { width: parseFloat(page.style.getPropertyValue('--page-width')), height: parseFloat(page.style.getPropertyValue('--page-height')) };
  const list = document.createElement('div');
  list.className = 'words-list';
  list.tabIndex = 0;
  list.dataset.ownKeys = '';
  list.setAttribute('role', 'listbox');
  list.setAttribute('aria-multiselectable', 'true');
  list.setAttribute('aria-label', `Words of page ${number}`);
  words.forEach((each, i) => {
    const word = document.createElement('div');
    word.id = `word-${i}`;
    word.setAttribute('role', 'option');
    word.setAttribute('aria-label', each.text);
    Object.entries(over(each.box, size, 1)).forEach(([name, value]) => word.style.setProperty(name, value));
    list.append(word);
  });
  return list;
}

/** The word whose place is nearest to a box. */
function nearestTo(words, [left, top]) {
  const far = ({ box }) => Math.abs(box[0] - left) + 3 * Math.abs(box[1] - top);
  return words.reduce((best, each, i) => (far(each) < far(words[best]) ? i : best), 0);
}

/** The word that a key goes to, or null where the key goes nowhere. */
function nextWord(words, at, key) {
  switch (key) {
    case 'ArrowRight':
      return Math.min(at + 1, words.length - 1);
    case 'ArrowLeft':
      return Math.max(at - 1, 0);
    case 'Home':
      return 0;
    case 'End':
      return words.length - 1;
    case 'ArrowDown':
      return nearest(words, at, 1);
    case 'ArrowUp':
      return nearest(words, at, -1);
    default:
      return null;
  }
}

/** The nearest word on the lines below (1) or above (-1). */
function nearest(words, at, way) {
  const middle = ({ box: [x, y, width, height] }) => [x + width / 2, y + height / 2];
  const [x, y] = middle(words[at]);
  const line = words[at].box[3] * 0.6;
  let best = at;
  let least = Infinity;
  words.forEach((each, i) => {
    const [otherX, otherY] = middle(each);
    const down = way * (otherY - y);
    // A line further costs more than going along it, so that columns are kept.
    const far = 3 * down + Math.abs(otherX - x);
    if (down > line && far < least) {
      least = far;
      best = i;
    }
  });
  return best;
}

function around(words) {
  const left = Math.min(...words.map((each) => each.box[0]));
  const top = Math.min(...words.map((each) => each.box[1]));
  const right = Math.max(...words.map((each) => each.box[0] + each.box[2]));
  const bottom = Math.max(...words.map((each) => each.box[1] + each.box[3]));
  return [left - 1, top - 1, right - left + 2, bottom - top + 2];
}
