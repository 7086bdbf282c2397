// Begins: takes the key, then shows the way in or a card, as the address says.
import { takeKey } from './api.js';
import { byId, h } from './dom.js';
import { open, setUnit, unwatch } from './card.js';
import { forgetWatchers } from './chosen.js';
import { dress, head, keys } from './head.js';
import { findings } from './findings.js';
import { results } from './results.js';
import { worksheet } from './sheet.js';
import { get } from './api.js';

/** @type {() => void} */
let end = () => {};

let turn = 0;

async function route() {
  const mine = ++turn;
  end();
  end = () => {};
  unwatch();
  forgetWatchers();
  const name = /^#\/card\/(.+)$/.exec(location.hash)?.[1];
  try {
    const done = name ? await work(decodeURIComponent(name)) : await (await import('./start.js')).start();
    if (mine === turn) end = done;
    else done();
  } catch (e) {
    byId('page').replaceChildren(h('div', { class: 'start' }, h('h1', {}, 'Not yet'), h('p', {}, e instanceof Error ? e.message : String(e)), h('p', {}, h('a', { href: '#/' }, 'All cards'))));
  }
}

/** @param {string} name @returns {Promise<() => void>} */
async function work(name) {
  const told = await get('/start');
  const sheet = h('div', { class: 'sheet' });
  const stick = h('div', { class: 'stick' });
  const out = h('div', { class: 'results' });
  byId('page').replaceChildren(
    h('div', { class: 'work' }, h('section', { 'aria-label': 'The card in words' }, sheet), h('section', { class: 'side', 'aria-label': 'The card itself' }, stick)), out);
  const { stage } = await import('./stage.js');
  const close = stage(stick);
  findings(stick);
  worksheet(sheet);
  results(out);
  setUnit(told.unit ?? 'mm');
  head(true);
  await open(name);
  document.title = name.replace(/\.ya?ml$/, '') + ' – Hingeleaf';
  scrollTo(0, 0);
  return close;
}

takeKey();
dress();
keys();
addEventListener('hashchange', route);
route();
