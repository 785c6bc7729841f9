// A box drawn on a page by mouse, pen or finger.

/** Points; anything smaller is a slip of the hand. */
const LEAST = 3;

/**
 * Lets a person draw a box on any page.
 *
 * @param {{scroller: HTMLElement, signal: AbortSignal, hint: (text: string) => void}} where
 * @returns {Promise<{page: number, box: number[]}|null>} null where given up
 */
export function drawBox({ scroller, signal, hint }) {
  return new Promise((answer) => {
    const frame = document.createElement('div');
    frame.className = 'drawn';
    let from = null;
    const ended = new AbortController();
    const on = (target, type, listener) => target.addEventListener(type, listener, { signal: ended.signal });

    const end = (result) => {
      ended.abort();
      frame.remove();
      answer(result);
    };
    signal.addEventListener('abort', () => end(null), { once: true });

    on(scroller, 'pointerdown', (event) => {
      const page = event.target.closest('.sheet-page');
      if (!page || event.button !== 0 || from) {
        return;
      }
      event.preventDefault();
      from = { page, pointer: event.pointerId, x: event.clientX, y: event.clientY };
      scroller.setPointerCapture(event.pointerId);
      page.append(frame);
      place(frame, page, from, from);
    });
    on(scroller, 'pointermove', (event) => {
      if (from?.pointer === event.pointerId) {
        place(frame, from.page, from, { x: event.clientX, y: event.clientY });
      }
    });
    on(scroller, 'pointerup', (event) => {
      if (from?.pointer !== event.pointerId) {
        return;
      }
      const box = boxOf(from.page, from, { x: event.clientX, y: event.clientY });
      const page = Number(from.page.dataset.page);
      from = null;
      if (box[2] < LEAST || box[3] < LEAST) {
        frame.remove();
        hint('Press, draw across the words, and let go.');
      } else {
        end({ page, box });
      }
    });
    on(scroller, 'pointercancel', () => {
      from = null;
      frame.remove();
    });
    on(scroller, 'click', (event) => event.stopPropagation());
    on(window, 'keydown', (event) => {
      if (event.key === 'Escape') {
        event.preventDefault();
        event.stopPropagation();
        end(null);
      }
    });
  });
}

/** The box between two points of the window, in points of the page and within it. */
function boxOf(page, one, other) {
  const at = page.getBoundingClientRect();
  const scale = at.width / parseFloat(page.style.getPropertyValue('--page-width'));
  const within = (value, most) => Math.min(Math.max(value, 0), most) / scale;
  const x = [within(one.x - at.left, at.width), within(other.x - at.left, at.width)].sort((a, b) => a - b);
  const y = [within(one.y - at.top, at.height), within(other.y - at.top, at.height)].sort((a, b) => a - b);
  return [x[0], y[0], x[1] - x[0], y[1] - y[0]].map((each) => Math.round(each * 10) / 10);
}

function place(frame, page, one, other) {
  const [x, y, width, height] = boxOf(page, one, other);
  const whole = { width: parseFloat(page.style.getPropertyValue('--page-width')), height: parseFloat(page.style.getPropertyValue('--page-height')) };
  frame.style.left = `${(100 * x) / whole.width}%`;
  frame.style.top = `${(100 * y) / whole.height}%`;
  frame.style.width = `${(100 * width) / whole.width}%`;
  frame.style.height = `${(100 * height) / whole.height}%`;
}
