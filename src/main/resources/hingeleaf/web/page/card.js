// The card that lies open: what the server last said of it, and the changes on their way.
import { get, post, Refused } from './api.js';
import { tell } from './dom.js';
import { marked, written } from './lengths.js';

/** @type {any} */
let now = null;
let view = 'mm';
/** @type {Promise<any>} */
let queue = Promise.resolve();
/** @type {Set<(card: any) => void>} */
const watchers = new Set();
/** @type {Set<(state: string) => void>} */
const savers = new Set();

export const card = () => now;
export const ruler = () => ({ unit: now?.sheet?.unit ?? view, step: now?.sheet?.step ?? 1 });
export const unitShown = () => view;

/** A length on the marks as the design should say it: bare in its own unit. @param {number} mm */
export function told(mm) {
  const text = written(marked(mm, ruler()), ruler().unit);
  return now.designUnit === ruler().unit ? text.replace(/ \w+$/, '') : JSON.stringify(text);
}

/** @param {(card: any) => void} watcher */
export function watch(watcher) {
  watchers.add(watcher);
}

/** @param {(state: string) => void} watcher */
export function watchSaving(watcher) {
  savers.add(watcher);
}

export function unwatch() {
  watchers.clear();
  savers.clear();
  now = null;
}

const path = () => '/cards/' + encodeURIComponent(now.name);

/** @param {any} next */
function take(next) {
  now = next;
  watchers.forEach((w) => w(now));
  if (next.told) tell(next.told);
  return now;
}

/** @param {string} state */
const saving = (state) => savers.forEach((s) => s(state));

/** @param {string} unit */
export function setUnit(unit) {
  view = unit;
}

/** @param {string} name */
export async function open(name) {
  return take(await get(`/cards/${encodeURIComponent(name)}?unit=${view}`));
}

/** Shows the same card in the other system. @param {string} unit */
export async function show(unit) {
  view = unit;
  if (now) take(await get(`${path()}?unit=${view}`));
}

/**
 * One thing after the other: each change starts from what the last one left.
 * @param {() => Promise<any>} work
 */
function inTurn(work) {
  const mine = queue.then(async () => {
    saving('saving');
    try {
      const next = take(await work());
      saving('saved');
      return next;
    } catch (e) {
      saving('saved');
      if (e instanceof Refused && e.status === 409) take(await get(`${path()}?unit=${view}`));
      throw e;
    }
  });
  queue = mine.catch(() => {});
  return mine;
}

/**
 * Changes the card; refused with a sentence where that cannot be.
 * @param {...any} changes
 */
export function change(...changes) {
  return inTurn(() => post(`${path()}/edit?unit=${view}`, { base: now.version, changes }));
}

export const undo = () => inTurn(() => post(`${path()}/undo?unit=${view}`));
export const redo = () => inTurn(() => post(`${path()}/redo?unit=${view}`));

/** @param {number} finding @param {number} mend */
export function doMend(finding, mend) {
  return inTurn(() => post(`${path()}/mend?unit=${view}`, { base: now.version, finding, mend }));
}

/** Something about the card. @param {string} what @param {string} [query] @param {AbortSignal} [signal] */
export function about(what, query = '', signal) {
  return get(`${path()}/${what}?unit=${view}${query}`, signal);
}

/** @param {string} what */
export const placeOf = (what) => `${path()}/${what}?unit=${view}`;

/** Says a refusal in passing. @param {unknown} e */
export function explain(e) {
  if (e instanceof Error && e.name !== 'AbortError') tell(e.message);
}
