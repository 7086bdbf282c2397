// Adding, reordering and taking away parts.
import { h } from './dom.js';
import { card, change, explain, ruler, told } from './card.js';
import { shapeYaml } from './shape.js';

/** A name that no part has yet. @param {string} stem */
export function freeName(stem) {
  const taken = new Set(card().choices.parts);
  if (!taken.has(stem)) return stem;
  for (let i = 2; ; i++) if (!taken.has(`${stem}-${i}`)) return `${stem}-${i}`;
}

/** A paper to begin with, unlike the card's own. */
function paper() {
  const papers = card().choices.papers.filter((/** @type {any} */ p) => !p.clear);
  return (papers.find((/** @type {any} */ p) => /220/.test(p.word) && !/white/.test(p.word)) ?? papers[0]).word;
}

/** A length on the marks, about so many mm. @param {number} mm */
const about = (mm) => told(Math.max(mm, ruler().step));

/**
 * @param {string} list path of the list @param {string} yaml @param {number} [at]
 */
function insert(list, yaml, at) {
  const items = card().sheet.fields.find((/** @type {any} */ f) => f.path === list)?.items ?? [];
  return change({ op: 'insert', path: list, at: at ?? items.length, yaml }).catch(explain);
}

/**
 * A cut-out of a shape on a part, its middle so far from the part's middle, in mm.
 * @param {string} shape a sort, or the name of a drawing @param {string} on @param {[number, number]} at
 */
export function addCutOut(shape, on, at) {
  const file = shape.endsWith('.svg');
  const name = freeName(file ? shape.replace(/\.svg$/, '').replace(/[^\p{L}\p{N}-]+/gu, '-') : shape === 'rect' ? 'panel' : shape);
  const size = Math.round(25 / ruler().step) * ruler().step;
  const outline = shapeYaml(file ? 'svg' : shape, [size, shape === 'arch' ? Math.round(size * 1.3 / ruler().step) * ruler().step : size], shape);
  const where = at.map(told).join(', ');
  return insert('cut-outs', `{name: ${name}, on: ${on}, at: [${where}], outline: ${outline}, stock: ${paper()}}`);
}

/** @param {any} frames the field */
export function addFrame(frames) {
  return insertFrame(frames, frames.items.length);
}

/** @param {any} frames @param {number} at */
function insertFrame(frames, at) {
  return change({ op: 'insert', path: frames.path, at, yaml: `{name: ${freeName('frame')}}` }).catch(explain);
}

/** @param {string} on */
export const addMat = (on) => insert('mats', `{name: ${freeName('mat')}, on: ${on}, stock: ${paper()}}`);

/** @param {string} on @param {[number, number]} [at] mm from the panel's middle */
export const addWords = (on, at) => insert('words', `{text: Your words, on: ${on}${placed(at)}, height: ${about(6)}}`);

/** @param {[number, number] | null | undefined} at */
const placed = (at) => (at ? `, at: [${at.map(told).join(', ')}]` : '');

/**
 * A mechanism of a sort, with what it must be given. A door that is not carried anywhere is set over
 * the opening of its panel, of its own paper; one that is carried is as large as its sort suggests.
 * @param {{word: string, sample: Record<string, string>}} sort @param {string} on @param {[number, number] | null} at
 */
export function addSort(sort, on, at) {
  /** @type {Record<string, string>} */
  const given = { ...sort.sample };
  if ('name' in given) given.name = freeName(given.name);
  if ('on' in given && sort.word === 'door') given.on = on;
  given.stock = sort.word === 'door' ? paper() : cardsOwn();
  if (sort.word === 'door') Object.assign(given, at ? { at: `[${at.map(told).join(', ')}]` } : over(on));
  const yaml = Object.entries(given).map(([key, text]) => `${key}: ${text}`).join(', ');
  return insert('mechanisms', `{${sort.word}: {${yaml}}}`);
}

/** The paper of the card's frames. */
function cardsOwn() {
  const base = card().sheet.fields.find((/** @type {any} */ f) => f.key === 'base').value.fields[0].value;
  return base.fields.find((/** @type {any} */ f) => f.key === 'stock')?.text ?? paper();
}

/** The size and place of a door that covers a panel's opening. @param {string} on @returns {Record<string, string>} */
function over(on) {
  const panel = card().scene?.panels.find((/** @type {any} */ p) => p.piece === on && p.name === 'panel');
  const [outer, hole] = (panel?.shape ?? []).map(boxOf);
  if (!hole) return {};
  const lap = 4 * ruler().step;
  const up = (/** @type {number} */ mm) => told(Math.ceil(mm / ruler().step) * ruler().step);
  return { width: up(hole.w + lap), height: up(hole.h + lap), at: `[${told(hole.x - outer.x)}, ${told(hole.y - outer.y)}]` };
}

/** Size and middle of a ring. @param {number[]} ring */
function boxOf(ring) {
  const xs = ring.filter((_, i) => i % 2 === 0);
  const ys = ring.filter((_, i) => i % 2 === 1);
  const [l, r, b, t] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return { w: r - l, h: t - b, x: (l + r) / 2, y: (b + t) / 2 };
}

/** @param {string} on */
export function addWindow(on) {
  const clear = card().choices.papers.find((/** @type {any} */ p) => p.clear);
  return insert('windows', `{name: ${freeName('pane')}, on: ${on}, stock: ${clear?.word ?? 'acetate'}}`);
}

/**
 * The small tools of a part in a list.
 * @param {{path: string, index: number, count: number, name: string, least: number, ordered: boolean}} p
 */
export function partTools(p) {
  const act = (/** @type {any} */ c) => change(c).catch(explain);
  const move = (/** @type {number} */ by, /** @type {string} */ words) => h('button', {
    type: 'button', class: 'plain', disabled: p.index + by < 0 || p.index + by >= p.count,
    'aria-label': `${words} ${p.name}`, 'data-path': `${p.path}~${by}`,
    onclick: () => act({ op: 'move', path: p.path, to: p.index + by }),
  }, by < 0 ? 'further back' : 'further forward');
  return [
    p.ordered && move(-1, 'Move further back:'),
    p.ordered && move(1, 'Move further forward:'),
    h('button', { type: 'button', class: 'plain', disabled: p.count <= p.least, 'aria-label': `Take away ${p.name}`,
      onclick: () => act({ op: 'remove', path: p.path }) }, 'take away'),
  ];
}
