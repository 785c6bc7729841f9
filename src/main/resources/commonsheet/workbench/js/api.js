// Requests to the program. The key of this start comes in the address after the #, which browsers
// send nowhere; it is kept for this address only and goes along in a header.

const KEY = 'commonsheet-key';

/** What the program says when it does not carry out a request. */
export class Refused extends Error {
  /**
   * @param {number} status of HTTP
   * @param {{sentence: string}} answer with more members for some refusals
   */
  constructor(status, answer) {
    super(answer.sentence);
    this.status = status;
    this.answer = answer;
  }

  /** Whether somebody else changed the file meanwhile. */
  get isConflict() {
    return this.status === 409;
  }
}

/**
 * Takes the key out of the address, so that it is not shown or copied along. A browser that the
 * program started has a word there that gives the key once.
 */
export async function takeKey() {
  const [, kind, given] = /^#(key|once)=([\w-]+)/.exec(location.hash) ?? [];
  if (given) {
    history.replaceState(null, '', location.pathname + location.search);
    const key = kind === 'key' ? given : (await post('/api/key', { ticket: given })).key;
    localStorage.setItem(KEY, key);
  }
}

async function ask(path, parameters, options = {}) {
  const query = new URLSearchParams(
    Object.entries(parameters ?? {}).filter(([, value]) => value !== undefined && value !== null),
  );
  let answer;
  try {
    answer = await fetch(query.size ? `${path}?${query}` : path, {
      ...options,
      headers: { Authorization: `Bearer ${localStorage.getItem(KEY)}`, ...options.headers },
    });
  } catch {
    throw new Refused(0, {
      sentence: 'The program does not answer; start `commonsheet workbench` again.',
    });
  }
  if (!answer.ok) {
    const told = await answer.json().catch(() => ({ sentence: `The program answered ${answer.status}.` }));
    throw new Refused(answer.status, told);
  }
  return answer;
}

/** Asks for something, such as `get('/api/record', {file})`. */
export async function get(path, parameters) {
  return (await ask(path, parameters)).json();
}

/** Asks for a picture; gives an address for an image element. Release it when it is not shown. */
export async function picture(path, parameters, signal) {
  return URL.createObjectURL(await (await ask(path, parameters, { signal })).blob());
}

/** Asks for a change. */
export async function post(path, body) {
  const answer = await ask(path, null, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(body),
  });
  return answer.json();
}
