// Talks to the server on this machine, with the key that came in the address.

const KEEP = 'hingeleaf-key';

/** Takes the key out of the address, where nobody should see it for long. */
export function takeKey() {
  const given = /^#key=([\w-]+)/.exec(location.hash);
  if (given) {
    sessionStorage.setItem(KEEP, given[1]);
    history.replaceState(null, '', location.pathname + '#/');
  }
}

/** What went wrong, in the server's words. */
export class Refused extends Error {
  /** @param {number} status @param {string} message @param {any[]} findings */
  constructor(status, message, findings) {
    super(message);
    this.status = status;
    this.findings = findings;
  }
}

/**
 * @param {string} method
 * @param {string} path
 * @param {any} [body]
 * @param {AbortSignal} [signal]
 * @returns {Promise<Response>}
 */
async function ask(method, path, body, signal) {
  /** @type {Record<string, string>} */
  const headers = { 'X-Hingeleaf-Key': sessionStorage.getItem(KEEP) ?? '' };
  if (signal) headers['X-Hingeleaf-Ask'] = named(signal);
  const raw = typeof body === 'string' || body instanceof Blob;
  let answer;
  try {
    answer = await fetch('/api' + path, {
      method, headers, signal, body: body === undefined ? undefined : raw ? body : JSON.stringify(body),
    });
  } catch (e) {
    if (signal?.aborted) throw e;
    throw new Refused(0, 'The server does not answer. Your card is saved; start hingeleaf serve again and open the address it prints.', []);
  }
  if (!answer.ok) {
    const told = await answer.json().catch(() => ({}));
    throw new Refused(answer.status, told.message ?? 'this did not work', told.findings ?? []);
  }
  return answer;
}

/** A name for a question that may be stopped: then the server stops its work too. @param {AbortSignal} signal */
function named(signal) {
  const name = 'ask-' + Math.random().toString(36).slice(2) + '-' + Date.now().toString(36);
  signal.addEventListener('abort', () => { post('/stop', { ask: name }).catch(() => {}); }, { once: true });
  return name;
}

/** @param {string} path @param {AbortSignal} [signal] */
export const get = async (path, signal) => (await ask('GET', path, undefined, signal)).json();
/** @param {string} path */
export const getText = async (path) => (await ask('GET', path)).text();
/** @param {string} path @param {AbortSignal} [signal] */
export const getBlob = async (path, signal) => (await ask('GET', path, undefined, signal)).blob();
/** @param {string} path @param {any} [body] */
export const post = async (path, body = {}) => (await ask('POST', path, body)).json();
/** @param {string} path @param {any} body */
export const put = async (path, body) => (await ask('PUT', path, body)).json();
