// The part that is picked: it lights its sentence, its piece, its finding, and itself.

let part = '';
/** @type {Set<(part: string) => void>} */
const watchers = new Set();

export const chosen = () => part;

/** @param {string} next id of a piece, or empty for none */
export function choose(next) {
  if (next === part) return;
  part = next;
  watchers.forEach((w) => w(part));
  light();
}

/** @param {(part: string) => void} watcher */
export function watchChosen(watcher) {
  watchers.add(watcher);
}

export function forgetWatchers() {
  watchers.clear();
  part = '';
}

/** Marks everything in the page that speaks of the picked part. */
export function light() {
  for (const el of document.querySelectorAll('[data-part]')) {
    const parts = (el.getAttribute('data-part') ?? '').split('\n');
    el.classList.toggle('lit', part !== '' && parts.includes(part));
  }
}

/** Whether sentences and card stand side by side; else a sentence that came into sight would take the card out of it. */
export const beside = () => matchMedia('(min-width: 62.01rem)').matches;

/** Brings the sentence of a part into sight. @param {string} name */
export function reveal(name) {
  const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
  document.querySelector(`.sheet [data-part="${CSS.escape(name)}"]`)
    ?.scrollIntoView({ block: 'nearest', behavior: calm ? 'auto' : 'smooth' });
}
