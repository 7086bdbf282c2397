// What was found, in the maker's words, each lighting up its part.
import { h } from './dom.js';
import { about, card, doMend, explain, watch } from './card.js';
import { choose, light, reveal } from './chosen.js';

const LEVELS = { blocks: 'Blocks', warns: 'Watch', notes: 'Know' };

/** @param {HTMLElement} home */
export function findings(home) {
  const list = h('ol', {});
  const head = h('h2', { id: 'found' });
  home.append(h('section', { class: 'found', 'aria-labelledby': 'found' }, head, h('div', { 'aria-live': 'polite' }, list)));
  let timer = 0;
  watch((now) => {
    show(now.findings, false);
    clearTimeout(timer);
    if (now.scene) timer = setTimeout(() => rest(show, list), 150);
  });

  /** @param {any[]} all @param {boolean} whole whether folding and the post have been asked too */
  function show(all, whole) {
    head.textContent = all.length ? summary(all) : whole ? 'Nothing to complain of' : 'Looking …';
    const none = whole ? 'What should be seen is seen, and it folds.' : 'Folding it and asking the post …';
    list.replaceChildren(...(all.length ? all.map(one) : [h('li', { class: 'none quiet' }, none)]));
    list.dataset.whole = whole ? String(card().version) : '';
    light();
  }
}

/** What takes longer: folding, the post, and the mends that are tried. @param {(all: any[], whole: boolean) => void} show @param {HTMLElement} list */
async function rest(show, list) {
  const version = card()?.version;
  try {
    const told = await about('findings');
    if (card()?.version !== version) return;
    show(told.findings, true);
    if (told.findings.some((/** @type {any} */ f) => f.mendable)) await mends(list);
  } catch (e) { if (card()?.scene) explain(e); }
}

/** @param {any[]} all */
function summary(all) {
  const n = (/** @type {string} */ level) => all.filter((f) => f.level === level).length;
  return [[n('blocks'), 'blocking'], [n('warns'), 'to watch'], [n('notes'), 'to know']].filter(([k]) => k).map(([k, w]) => `${k} ${w}`).join(', ');
}

/** @param {any} f @param {number} i */
function one(f, i) {
  const part = partOf(f);
  return h('li', { class: f.level, 'data-part': part, 'data-finding': i, 'data-kind': f.kind },
    h('span', { class: 'level' }, /** @type {any} */ (LEVELS)[f.level]),
    h('p', {}, said(f)),
    h('div', { class: 'act' }, part && h('button', { type: 'button', 'aria-label': `Show me: ${f.message}`, onclick: () => { choose(part); reveal(part); } }, 'Show me')));
}

/** A sentence of its own, unless it begins with the name of a part. @param {any} f @returns {string} */
const said = (f) => (f.part && f.message.startsWith(f.part) ? f.message : f.message.charAt(0).toUpperCase() + f.message.slice(1));

/** The piece that a finding is about. @param {any} f */
function partOf(f) {
  const parts = card().scene?.pieces ?? [];
  return parts.find((/** @type {any} */ p) => p.id === f.part || p.name === f.part)?.id
    ?? parts.find((/** @type {any} */ p) => f.origin && f.origin.startsWith(p.origin))?.id ?? f.part;
}

/** Offers what was tried and cures. @param {HTMLElement} list */
async function mends(list) {
  const version = card()?.version;
  const told = await about('mends');
  if (card()?.version !== version) return;
  told.mends.forEach((/** @type {string[]} */ offers, /** @type {number} */ i) => {
    const act = list.querySelector(`[data-finding="${i}"] .act`);
    offers.forEach((words, k) => act?.append(h('button', { type: 'button', class: 'main', onclick: () => doMend(i, k).catch(explain) }, 'Do it: ' + words)));
  });
}
