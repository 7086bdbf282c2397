// How each form reads as a sentence. A form without a sentence of its own is told field by field.
import { h } from './dom.js';
import { change, explain, told } from './card.js';
import { field } from './field.js';
import { shapeField } from './shape.js';

/** Keys in braces are fields. */
const SENTENCES = {
  'stacked-frames': 'It stands {width} wide and {height} high, cut from {stock}. Each layer stands {side} off the one behind it, on sides at the {sides}, held by glue tabs {tab} wide that fold {tabs}.',
  frames: '{name}, its opening {aperture}.',
  mats: '{name}, a mat of {stock} on {on}, {at}; {border} of the panel shows round it.',
  'mats of their own size': '{name}, a mat of {stock} on {on}, {width} wide and {height} high, {at}.',
  'cut-outs': '{name}, {outline}, of {stock}, on {on}; its middle {at}.',
  words: '“{text}” on {on}, capitals {height} high, {at}.',
  windows: '{name}, {stock} behind the opening of {on}, reaching {overlap} past it.',
  door: '{name}, a {shape} door on {on}, hung at its {hinge} edge, {width} wide and {height} high; its middle {at}; cut from {stock}.',
  'base-tab': '{name}, a base tab {width} wide, of {stock}.',
  'belly-strip': '{name}, a belly strip {width} wide, of {stock}.',
  'slot-lock': '{name}, a slot-lock {height} high, of {stock}.',
  'fold-down-brace': '{name}, a fold-down brace in front of {on}, of {stock}.',
  message: 'A panel to write on, of {stock}, on the {face} of {on}.',
};

/** @param {any} form */
const fieldsOf = (form) => new Map(form.fields.map((/** @type {any} */ f) => [f.key, f]));

/**
 * @param {any} form as the server tells it
 * @param {string} label what it is called when heard
 * @returns {{sentence: Node[], rest: any[]}} the sentence, and the fields that it leaves out
 */
export function sentence(form, label) {
  const fields = fieldsOf(form);
  const own = fields.get('width')?.given && fields.get('height')?.given ? form.form + ' of their own size' : '';
  const pattern = /** @type {any} */ (SENTENCES)[own] ?? /** @type {any} */ (SENTENCES)[form.form] ?? plain(form);
  /** @type {any[]} */
  const out = [];
  const used = new Set();
  for (const bit of pattern.split(/(\{[\w-]+\})/)) {
    const key = /^\{([\w-]+)\}$/.exec(bit)?.[1];
    const f = key && fields.get(key);
    if (!key) out.push(bit);
    else if (f) { out.push(any(f, label)); used.add(key); }
  }
  return { sentence: out, rest: form.fields.filter((/** @type {any} */ f) => !used.has(f.key)) };
}

/** What must be given, key by key, for a form that has no sentence of its own. @param {any} form */
function plain(form) {
  const needed = form.fields.filter((/** @type {any} */ f) => f.needed && f.kind !== 'list' && f.kind !== 'group').map((/** @type {any} */ f) => f.key);
  const bit = (/** @type {string} */ key) => ({ name: '', stock: 'of {stock}', on: 'on {on}' }[key] ?? `${key.replace(/-/g, ' ')} {${key}}`);
  const bits = needed.map(bit).filter(Boolean);
  return (needed.includes('name') ? '{name}, ' : '') + [form.title, ...bits].join(', ').replace(', of ', ' of ') + '.';
}

/** The field of any kind, shapes and places included. @param {any} f @param {string} label @returns {any} */
export function any(f, label) {
  if (f.kind === 'oneOf') return shapeField(f, label);
  if (f.key === 'at' && f.kind === 'tuple') return place(f, label);
  return field(f, label);
}

/** Where a part sits, from the middle of what it is on. @param {any} f @param {string} label */
function place(f, label) {
  const [x, y] = f.items;
  const one = (/** @type {any} */ item, /** @type {string} */ name) => field({ ...item, kind: 'length', says: name, given: true }, label);
  if (f.given) return h('span', {}, one(x, 'how far right of the middle'), ' right of and ', one(y, 'how far above the middle'), ' above the middle');
  const set = h('button', { type: 'button', class: 'plain', 'data-path': f.path, 'aria-label': `Move ${label} off the middle`,
    onclick: () => change({ op: 'put', path: f.path, yaml: `[${told(0)}, ${told(0)}]` }).catch(explain) }, 'move it');
  return h('span', {}, 'in the middle ', set);
}
