// The line between the sheet and the record: dragged, or moved by arrow keys. On narrow screens the
// two lie above each other and the line between them moves up and down.

const PLACE = 'commonsheet-split';
const PLACE_NARROW = 'commonsheet-split-narrow';
const LEAST = 0.25;
const MOST = 0.75;
const BY_KEY = 0.03;
const USUAL = 0.56;
const USUAL_NARROW = 0.46;

/**
 * Makes a separator work.
 *
 * @param {HTMLElement} separator
 * @param {HTMLElement} frame gets the share of the sheet as `--sheet-share`
 */
export function makeMovable(separator, frame) {
  const narrow = matchMedia('(width < 56rem)');
  const place = () => (narrow.matches ? PLACE_NARROW : PLACE);
  const usual = () => (narrow.matches ? USUAL_NARROW : USUAL);
  const kept = () => Number(localStorage.getItem(place())) || usual();
  let share;

  const set = (wanted) => {
    share = Math.min(MOST, Math.max(LEAST, wanted));
    frame.style.setProperty('--sheet-share', `${(100 * share).toFixed(1)}%`);
    separator.setAttribute('aria-valuenow', Math.round(100 * share));
    separator.setAttribute('aria-orientation', narrow.matches ? 'horizontal' : 'vertical');
    localStorage.setItem(place(), share);
  };
  const move = (event) => {
    const box = frame.getBoundingClientRect();
    set(narrow.matches ? (event.clientY - box.top) / box.height : (event.clientX - box.left) / box.width);
  };

  separator.addEventListener('pointerdown', (event) => {
    event.preventDefault();
    separator.focus();
    separator.setPointerCapture(event.pointerId);
    separator.addEventListener('pointermove', move);
  });
  separator.addEventListener('lostpointercapture', () => separator.removeEventListener('pointermove', move));
  separator.addEventListener('dblclick', () => set(usual()));
  separator.addEventListener('keydown', (event) => {
    const steps = { ArrowLeft: -BY_KEY, ArrowUp: -BY_KEY, ArrowRight: BY_KEY, ArrowDown: BY_KEY };
    if (event.key in steps) {
      event.preventDefault();
      set(share + steps[event.key]);
    } else if (event.key === 'Home' || event.key === 'End') {
      event.preventDefault();
      set(event.key === 'Home' ? LEAST : MOST);
    }
  });
  narrow.addEventListener('change', () => set(kept()));
  separator.setAttribute('aria-valuemin', 100 * LEAST);
  separator.setAttribute('aria-valuemax', 100 * MOST);
  set(kept());
}
