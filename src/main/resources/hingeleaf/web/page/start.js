// The way in: a finished card to fold, one question, and everything that one can start from.
import { byId, drawing, h } from './dom.js';
import { get, getText, post, put } from './api.js';
import { explain, setUnit } from './card.js';
import { head } from './head.js';
import { Motion } from './pose.js';
import { Studio } from './studio.js';

/** @returns {Promise<() => void>} what ends it */
export async function start() {
  const told = await get('/start');
  setUnit(told.unit ?? 'mm');
  document.title = 'Hingeleaf';
  head(false);
  const hero = h('div', { class: 'stage' });
  const example = told.examples.find((/** @type {any} */ e) => e.name === (told.unit === 'in' ? 'harvest-supper' : 'fair-winds'));
  byId('page').replaceChildren(h('div', { class: 'start' },
    h('div', { class: 'hero' }, welcome(told, example), h('div', {}, hero, slider(hero))),
    told.cards.length ? tiles('Your cards', '', told.cards.map(mine)) : null,
    envelope(told),
    tiles('Start from a structure', 'Every number can be changed afterwards.', told.structures.map(structure)),
    tiles('Start from a finished card', 'A copy becomes yours.', told.examples.map(finished))));
  const showing = showExample(hero, example);
  drawTiles();
  return () => { waiting.length = 0; showing.then((studio) => studio?.close()); };
}

/** Pictures still to be fetched: one after the other, so that they keep nobody waiting. @type {(() => Promise<void>)[]} */
const waiting = [];

async function drawTiles() {
  for (let next = waiting.shift(); next; next = waiting.shift()) await next();
}

/** @param {any} told @param {any} example */
function welcome(told, example) {
  const ask = h('div', { class: 'ask' }, h('h2', {}, 'Inches or millimetres?'),
    h('span', { class: 'pair' }, ['in', 'mm'].map((u) => h('button', { type: 'button', onclick: async () => {
      await put('/settings', { unit: u });
      window.dispatchEvent(new HashChangeEvent('hashchange'));
    } }, u === 'in' ? 'Inches' : 'Millimetres'))));
  return h('div', {},
    h('h1', {}, 'Cards that stand up, look in, and fold flat for the post.'),
    h('p', {}, `This is “${example.title}”, finished. Take hold of it and turn it; draw the slider and it folds. Open it, write over any number, and the card follows: its pieces, its order of work, and whatever would go wrong.`),
    told.unit ? h('button', { type: 'button', class: 'main', onclick: () => create({ from: 'example', name: example.name }) }, `Open “${example.title}”`) : ask);
}

/** @param {HTMLElement} hero */
function slider(hero) {
  return h('div', { class: 'fold' }, h('span', { class: 'ends' }, 'made'),
    h('input', { type: 'range', min: 0, max: 1000, value: 0, 'aria-label': 'Fold the card from made to flat',
      oninput: (/** @type {any} */ e) => /** @type {any} */ (hero).studio?.fold(e.target.valueAsNumber / 1000) }),
    h('span', { class: 'ends' }, 'flat'));
}

/** @param {any} hero @param {any} example */
async function showExample(hero, example) {
  try {
    const told = await get(`/examples/${example.name}/scene`);
    const studio = new Studio(hero, `${told.title} in three dimensions. Arrow keys turn it.`);
    studio.show(told.scene);
    studio.folds(new Motion(told.motion));
    hero.studio = studio;
    return studio;
  } catch (e) { explain(e); return null; }
}

/** @param {any} what */
async function create(what) {
  const made = await post('/cards', what);
  location.hash = '#/card/' + encodeURIComponent(made.name);
}

/** @param {string} title @param {string} says @param {Node[]} items */
function tiles(title, says, items) {
  return h('section', {}, h('h2', {}, title), says && h('p', {}, says), h('div', { class: 'tiles' }, items));
}

/** @param {string} name @param {string} says @param {string} picture @param {() => any} go */
function tile(name, says, picture, go) {
  const pic = h('div', { class: 'pic' });
  waiting.push(() => getText(`${picture}?ground=${document.documentElement.dataset.theme}`).then((t) => pic.replaceChildren(drawing(t))).catch(() => pic.replaceChildren(h('span', { class: 'quiet small' }, 'no picture yet'))));
  return h('button', { type: 'button', onclick: () => Promise.resolve(go()).catch(explain) }, pic, h('strong', {}, name), says && h('span', { class: 'says' }, says));
}

/** @param {string} name */
const mine = (name) => tile(name.replace(/\.ya?ml$/, ''), '', `/cards/${encodeURIComponent(name)}/picture`, () => { location.hash = '#/card/' + encodeURIComponent(name); });
/** @param {string} s */
const capital = (s) => s.charAt(0).toUpperCase() + s.slice(1);
/** @param {any} s */
const structure = (s) => tile(capital(s.title), capital(s.says), `/structures/${s.name}/picture`, () => create({ from: 'structure', name: s.name }));
/** @param {any} e */
const finished = (e) => tile(e.title, e.says, `/examples/${e.name}/picture`, () => create({ from: 'example', name: e.name }));

/** @param {any} told */
function envelope(told) {
  const width = h('input', { type: 'text', name: 'width', autocomplete: 'off' });
  const height = h('input', { type: 'text', name: 'height', autocomplete: 'off' });
  const known = h('select', { onchange: () => {
    const e = told.envelopes[Number(known.value)];
    if (e) { width.value = e.width; height.value = e.height; }
  } }, h('option', { value: '-1' }, 'measure it'), told.envelopes.map((/** @type {any} */ e, /** @type {number} */ i) => h('option', { value: i }, `${e.name}, ${e.size}`)));
  const kind = h('select', {}, told.structures.map((/** @type {any} */ s) => h('option', { value: s.name }, s.title)));
  const way = h('select', {}, h('option', { value: '' }, 'wide'), h('option', { value: 'yes' }, 'upright'));
  const form = h('form', { class: 'envelope', onsubmit: async (/** @type {any} */ e) => {
    e.preventDefault();
    form.querySelector('.refused')?.remove();
    try {
      await create({ from: 'envelope', name: kind.value, width: width.value, height: height.value, upright: way.value === 'yes' });
    } catch (x) { form.append(h('p', { class: 'refused', role: 'alert' }, x instanceof Error ? x.message : '')); }
  } },
  h('label', {}, 'Which envelope', known), h('label', {}, 'Its width', width), h('label', {}, 'Its height', height),
  h('label', {}, 'A card of', kind), h('label', {}, 'Standing', way),
  h('button', { type: 'submit', class: 'main' }, 'The largest card that fits'));
  return h('section', { id: 'envelope' }, h('h2', {}, 'I have this envelope'), h('p', {}, 'Tell its size, and you get the largest card that goes in, folded flat, with room to slide out again.'), form);
}
