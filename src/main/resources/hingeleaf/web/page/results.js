// What comes out: pieces with their measures, the order of work, the files. Each can be printed.
import { drawn } from './blocks.js';
import { h } from './dom.js';
import { about, card, explain, placeOf, watch } from './card.js';
import { choose, light } from './chosen.js';
import { getBlob } from './api.js';
import { chapters, leave } from './chapters.js';

/** @param {HTMLElement} home */
export function results(home) {
  let timer = 0;
  const inner = h('div', { class: 'inner' });
  home.append(inner);
  watch((now) => {
    clearTimeout(timer);
    leave();
    if (!now.scene) {
      inner.replaceChildren(h('section', {}, h('p', { class: 'quiet' }, 'Pieces and steps come here as soon as the card can be made.')));
      return;
    }
    timer = setTimeout(() => fill(inner).catch(explain), inner.children.length ? 700 : 300);
  });
}

/** @param {HTMLElement} inner */
async function fill(inner) {
  const version = card()?.version;
  const told = await about('results');
  if (card()?.version !== version) return;
  const plan = chapters(section);
  inner.replaceChildren(pieces(told), ...plan.nodes, files());
  inner.dataset.version = String(version);
  light();
  await plan.load();
}

/** @param {string} id @param {string} title @param {string} says @param {...any} body */
function section(id, title, says, ...body) {
  const print = id !== 'files' && h('button', { type: 'button', onclick: () => { document.body.dataset.print = id; window.print(); delete document.body.dataset.print; } }, 'Print this');
  return h('section', { id, 'aria-labelledby': id + '-head' }, h('div', { class: 'top' }, h('h2', { id: id + '-head' }, title), print, says && h('p', {}, says)), body);
}

/** @param {any} told */
function pieces(told) {
  const head = h('tr', {}, ['Piece', 'How many', 'Width', 'Height', 'From', 'Grain', 'Openings'].map((t, i) => h('th', { scope: 'col', class: i > 0 && i < 4 ? 'n' : '' }, t)));
  const unit = card().sheet.unit;
  const rows = told.pieces.map((/** @type {any} */ p) => h('tr', { 'data-part': p.ids.join('\n'), onclick: () => choose(p.ids[0]) },
    h('td', {}, h('b', {}, p.names)), h('td', { class: 'n' }, p.quantity), h('td', { class: 'n' }, `${p.width} ${unit}`), h('td', { class: 'n' }, `${p.height} ${unit}`),
    h('td', {}, p.stock), h('td', {}, p.grain), h('td', {}, p.openings || 'none')));
  const charts = told.pieces.map((/** @type {any} */ p) => h('figure', { class: 'plate', 'data-part': p.ids.join('\n') }, drawn(p.drawing, widthOf(p.drawing), p.names),
    h('figcaption', {}, p.names, h('span', {}, `${p.size}, ${p.stock}` + (p.scores ? `; ${p.scores} score${p.scores > 1 ? 's' : ''}` : '')))));
  const n = told.pieces.reduce((/** @type {number} */ sum, /** @type {any} */ p) => sum + p.quantity, 0);
  return section('pieces', 'Pieces', `${n} pieces, ${told.mass.toFixed(1)} g before glue. Drawings are seen on the good face, not to true size; cut from templates.pdf for that.`,
    h('div', { class: 'wide', tabindex: 0, role: 'region', 'aria-label': 'Cut list' }, h('table', {}, h('thead', {}, head), h('tbody', {}, rows))), h('div', { class: 'charts' }, charts));
}

/** How wide a drawing is meant to be, mm. @param {string} svg */
const widthOf = (svg) => Number(/viewBox="0 0 ([\d.]+)/.exec(svg)?.[1] ?? 170);

function files() {
  const list = h('ul', { class: 'files' });
  const bar = h('div', { class: 'bar', hidden: true });
  const all = h('button', { type: 'button', class: 'main', id: 'zip', onclick: () => load(bar, 'pack.zip', '', stem() + '-pack.zip') }, 'The whole pack (zip)');
  const each = h('button', { type: 'button', onclick: async () => { each.disabled = true; await names(list, bar).catch(explain); each.remove(); } }, 'Each file alone …');
  return section('files', 'The pack', 'Plan, true-size templates, every piece for a cutting machine, a picture, and all figures as data. Begin with plan.pdf; print at 100 %, and check the bar on its first page.',
    h('div', { class: 'add' }, all, each, h('button', { type: 'button', class: 'plain', onclick: () => load(bar, 'design', '', card().name) }, 'The design file itself')), bar, list);
}

const stem = () => card().name.replace(/\.ya?ml$/, '');

/** @param {HTMLElement} list @param {HTMLElement} bar */
async function names(list, bar) {
  const told = await about('files');
  list.replaceChildren(...told.files.map((/** @type {any} */ f) => h('li', {},
    h('button', { type: 'button', class: 'plain', onclick: () => load(bar, 'file', '&file=' + encodeURIComponent(f.name), f.name.split('/').at(-1)) }, f.name),
    h('span', { class: 'quiet small' }, size(f.bytes)))));
}

/** @param {number} bytes */
const size = (bytes) => (bytes < 1e6 ? `${Math.max(1, Math.round(bytes / 1000))} kB` : `${(bytes / 1e6).toFixed(1)} MB`);

/** Fetches a file with a bar and a way to stop, then hands it to the browser. @param {HTMLElement} bar @param {string} what @param {string} query @param {string} name */
async function load(bar, what, query, name) {
  const stop = new AbortController();
  bar.hidden = false;
  bar.replaceChildren(h('progress', { 'aria-label': 'Making ' + name }), h('span', {}, 'Making ' + name + ' …'), h('button', { type: 'button', onclick: () => stop.abort() }, 'Stop'));
  try {
    const blob = await getBlob(placeOf(what) + query, stop.signal);
    const link = h('a', { href: URL.createObjectURL(blob), download: name });
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  } catch (e) { explain(e); } finally { bar.hidden = true; }
}
