// The list by keyboard: arrows go through the rows, Enter opens one, Space picks it to be compared.

import { ROW_HEIGHT } from './table.js';

const PAGE = 12;

/**
 * @param {{current: string|null, top: number}} look where the keyboard is
 * @param {() => object[]} rows those that are shown
 * @param {object} on open(file), pick(file), draw(), scroller(), search()
 */
export function listKeys(look, rows, on) {
  function focusCurrent() {
    on.scroller()?.querySelector('tr.current')?.focus({ preventScroll: true });
  }

  /** The row is brought into sight before it is drawn, since rows out of sight are not. */
  function goTo(index) {
    const shown = rows();
    const box = on.scroller();
    if (shown.length === 0 || !box) {
      return;
    }
    const to = Math.min(shown.length - 1, Math.max(0, index));
    look.current = shown[to].file;
    const head = box.querySelector('thead').offsetHeight;
    const top = to * ROW_HEIGHT;
    if (top < box.scrollTop) {
      box.scrollTop = top;
    } else if (top + ROW_HEIGHT + head > box.scrollTop + box.clientHeight) {
      box.scrollTop = top + ROW_HEIGHT + head - box.clientHeight;
    }
    look.top = box.scrollTop;
    on.draw();
    focusCurrent();
  }

  function inTable(event) {
    const at = rows().findIndex((row) => row.file === look.current);
    const inRow = event.target.closest('tbody tr');
    const moves = { ArrowDown: at + 1, ArrowUp: at - 1, PageDown: at + PAGE, PageUp: at - PAGE, Home: 0, End: rows().length - 1 };
    if (event.altKey || event.ctrlKey || event.metaKey) {
      return;
    }
    if (event.key in moves) {
      event.preventDefault();
      goTo(inRow ? moves[event.key] : at);
    } else if (inRow && event.key === 'Enter') {
      event.preventDefault();
      on.open(look.current);
    } else if (inRow && event.key === ' ') {
      event.preventDefault();
      on.pick(look.current);
      focusCurrent();
    }
  }

  /** From anywhere: / goes to the search; from there arrow down goes to the rows. */
  function anywhere(event) {
    const typing = event.target.closest?.('input, textarea, select, dialog');
    if (event.key === '/' && !typing) {
      event.preventDefault();
      on.search()?.focus();
    } else if (event.target === on.search() && (event.key === 'ArrowDown' || event.key === 'Enter')) {
      event.preventDefault();
      goTo(Math.max(0, rows().findIndex((row) => row.file === look.current)));
    } else if (event.target === on.search() && event.key === 'Escape' && on.search().value) {
      event.preventDefault();
      on.search().value = '';
      on.search().dispatchEvent(new Event('input'));
    }
  }

  return { inTable, anywhere };
}
