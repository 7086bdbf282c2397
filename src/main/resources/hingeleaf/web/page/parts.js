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

/** @param {string} on */
export const addWords = (on) => insert('words', `{text: Your words, on: ${on}, height: ${about(6)}}`);

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
