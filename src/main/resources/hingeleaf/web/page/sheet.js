// The worksheet: the whole card in sentences.
import { h } from './dom.js';
import { card, watch } from './card.js';
import { choose, light } from './chosen.js';
import { textInput } from './field.js';
import { any, sentence } from './sentence.js';
import { addFrame, addMat, addSort, addWindow, addWords, partTools } from './parts.js';
import { carried, chips } from './chips.js';

const HEADS = { mats: 'Mats', 'cut-outs': 'Cut-outs', words: 'Words', windows: 'Windows', mechanisms: 'Doors' };
const ORDER = ['mechanisms', 'mats', 'cut-outs', 'words', 'windows'];

/** @param {HTMLElement} home */
export function worksheet(home) {
  watch((now) => {
    const open = new Set([...home.querySelectorAll('details[open]')].map((d) => d.getAttribute('data-path')));
    const at = /** @type {any} */ (document.activeElement);
    const path = home.contains(at) ? at.dataset.path : null;
    const typing = path && at.type === 'text' && at.value !== at.dataset.sent ? at.value : null;
    home.dataset.renewing = 'yes'; // fields that go now are not left by their maker
    home.replaceChildren(...(now.sheet ? body(now, open) : unreadable(now)).filter((el) => el !== null));
    delete home.dataset.renewing;
    const again = path && refound(home, path);
    again?.focus();
    if (again && typing !== null) again.value = typing; // what is being typed outlives the answer to what was typed before
    light();
  });
}

/** What had the focus, or the first of several numbers that came in its place. @param {HTMLElement} home @param {string} path @returns {any} */
function refound(home, path) {
  const is = CSS.escape(path);
  return home.querySelector(`[data-path="${is}"]`) ?? home.querySelector(`[data-path^="${is}\\["]`);
}

/** @param {any} now */
function unreadable(now) {
  return [h('h1', {}, now.name), h('p', {}, 'This file cannot be read as a card just now; what is wrong stands beside. Undo the last change, or mend the file by hand and open it again.')];
}

/** @param {any} now @param {Set<string | null>} open */
function body(now, open) {
  const by = new Map(now.sheet.fields.map((/** @type {any} */ f) => [f.key, f]));
  const base = by.get('base').value;
  const form = base.fields[0].value;
  const title = by.get('title');
  return [
    h('h1', {}, textInput({ path: 'title', text: title.text, label: 'Title of the card', change: (text) => ({ op: 'text', path: 'title', text }) })),
    h('p', { class: 'kicker' }, form.title.charAt(0).toUpperCase() + form.title.slice(1) + ': ' + base.fields[0].says + '.'),
    ...told(form, 'the card', 'back', open),
    ...form.fields.filter((/** @type {any} */ f) => f.kind === 'list').flatMap((/** @type {any} */ f) => layers(f, open)),
    ...ORDER.filter((k) => by.has(k)).flatMap((k) => list(by.get(k), open)),
    ...message(by.get('message'), open),
  ];
}

/** A form as sentence and the rest behind "more". @param {any} form @param {string} label @param {string} part @param {Set<string | null>} open */
function told(form, label, part, open) {
  const { sentence: words, rest } = sentence(form, label);
  const left = rest.filter((f) => f.kind !== 'list' && f.kind !== 'group');
  return [h('p', { 'data-part': part, onfocusin: () => choose(part) }, words), more(form.path, left, label, open)];
}

/** @param {string} path @param {any[]} rest @param {string} label @param {Set<string | null>} open */
function more(path, rest, label, open) {
  const fields = rest.filter((f) => !['list', 'group'].includes(f.kind) && f.key !== 'name');
  if (!fields.length) return null;
  return h('details', { class: 'more', 'data-path': path, open: open.has(path) },
    h('summary', {}, 'more about ', label),
    h('dl', {}, fields.flatMap((f) => [h('dt', {}, f.key.replace(/-/g, ' ')),
      h('dd', {}, f.has || f.kind === 'oneOf' || f.kind === 'reference' || f.kind === 'text' || f.kind === 'length' ? any(f, label) : null, h('span', { class: 'says' }, f.says))])));
}

/** @param {any} frames @param {Set<string | null>} open */
function layers(frames, open) {
  return [
    h('hr', { class: 'score' }),
    h('h2', {}, `${count(frames.items.length)}, ${frames.says}`),
    h('ol', { class: 'parts' }, frames.items.map((/** @type {any} */ item, /** @type {number} */ i) => part(item, i, frames, true, open))),
    h('div', { class: 'add' }, h('button', { type: 'button', disabled: frames.items.length >= frames.most, onclick: () => addFrame(frames) }, 'Add a frame in front')),
  ];
}

/** @param {number} n */
function count(n) {
  const words = ['No frames', 'One frame', 'Two frames', 'Three frames', 'Four frames', 'Five frames', 'Six frames', 'Seven frames', 'Eight frames', 'Nine frames', 'Ten frames', 'Eleven frames', 'Twelve frames'];
  return words[n] ?? `${n} frames`;
}

/** @param {any} item @param {number} i @param {any} field @param {boolean} ordered @param {Set<string | null>} open */
function part(item, i, field, ordered, open) {
  return entry(item, item.path, i, field, ordered, open);
}

/** A part that is told as one of several sorts: its form is inside. @param {any} item @param {number} i @param {any} field @param {Set<string | null>} open */
function sorted(item, i, field, open) {
  const form = item.fields.find((/** @type {any} */ f) => f.key === item.variant)?.value;
  return form && entry(form, item.path, i, field, false, open);
}

/** @param {any} item its form @param {string} path of the entry in its list @param {number} i @param {any} field @param {boolean} ordered @param {Set<string | null>} open */
function entry(item, path, i, field, ordered, open) {
  const named = item.fields.find((/** @type {any} */ f) => f.key === 'name' || f.key === 'text');
  const name = named.text;
  const { sentence: words, rest } = sentence(item, name);
  const id = named.key === 'name' ? name : item.path;
  return h('li', { 'data-part': id, onfocusin: () => choose(id), onpointerdown: () => choose(id) },
    h('p', {}, words),
    h('div', { class: 'tools' },
      partTools({ path, index: i, count: field.items.length, name, least: field.least, ordered }),
      more(item.path, rest, name, open)));
}

/** @param {any} field @param {Set<string | null>} open */
function list(field, open) {
  const head = field.sorts?.length > 1 ? 'Doors and stays' : /** @type {any} */ (HEADS)[field.key];
  const items = field.items.map((/** @type {any} */ item, /** @type {number} */ i) => (field.sorts ? sorted(item, i, field, open) : part(item, i, field, false, open)));
  return [
    h('hr', { class: 'score' }),
    h('h2', {}, head),
    items.length ? h('ul', { class: 'parts plain' }, items) : null,
    adder(field),
  ];
}

/** The front-most panel. */
const front = () => card().choices.parts.filter((/** @type {string} */ p) => isFrame(p)).at(-1) ?? 'back';

/** @param {string} name */
function isFrame(name) {
  const form = card().sheet.fields.find((/** @type {any} */ f) => f.key === 'base').value.fields[0].value;
  return form.fields.some((/** @type {any} */ f) => f.kind === 'list' && f.items.some((/** @type {any} */ i) => i.fields.some((/** @type {any} */ g) => g.key === 'name' && g.text === name)));
}

/** What can be added to a list: pressed, or carried to where it should sit. @param {any} field */
function adder(field) {
  if (field.key === 'cut-outs') return chips();
  if (field.key === 'mechanisms') return h('div', { class: 'add' }, field.sorts.map((/** @type {any} */ s) => carried(`Add ${s.title}`, () => addSort(s, front(), null), (spot) => addSort(s, spot.on, spot.at))));
  if (field.key === 'mats') return h('div', { class: 'add' }, carried('Add a mat on the back', () => addMat('back'), (spot) => addMat(spot.on)));
  if (field.key === 'words') return h('div', { class: 'add' }, carried('Add words on the back', () => addWords('back'), (spot) => addWords(spot.on, spot.at)));
  if (field.key === 'windows') return h('div', { class: 'add' }, carried('Add a window in the front', () => addWindow(front()), (spot) => addWindow(spot.on)));
  return null;
}

/** @param {any} field @param {Set<string | null>} open */
function message(field, open) {
  if (!field?.has) return [];
  return [h('hr', { class: 'score' }), h('h2', {}, 'To write on'), ...told(field.value, 'the message panel', 'message', open)];
}
