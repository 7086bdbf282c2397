// Blocks of the plan, set in the page's own type; the words are the plan's.
import { drawing, h } from './dom.js';

/** @typedef {{is: string, [key: string]: any}} Block */

/** @param {Block[]} blocks @returns {Node[]} */
export const blocks = (blocks) => blocks.filter((b) => b.is !== 'gap').map(block);

/** @param {Block} b @returns {Node} */
function block(b) {
  switch (b.is) {
    case 'heading': return h(b.level < 3 ? 'h3' : 'h4', { class: 'chapter' }, b.text);
    case 'paragraph': return h('p', {}, spans(b.spans));
    case 'items': return h('ul', { class: 'items' }, b.items.map((/** @type {any} */ i) => h('li', {}, spans(i.spans))));
    case 'table': return table(b);
    case 'figure': return figure(b);
    case 'pair': return h('div', { class: 'beside' }, h('div', {}, blocks(b.left)), h('div', {}, blocks(b.right)));
    case 'step': return h('div', { class: 'step' }, h('span', { class: 'no' }, b.number), h('div', {}, blocks(b.blocks)));
    case 'caution': return h('div', { class: 'caution' }, h('h4', {}, b.title), h('p', {}, spans(b.spans)));
    default: return h('div', { class: 'together' }, blocks(b.blocks));
  }
}

/** @param {{text: string, voice: string}[]} all */
function spans(all) {
  const tag = /** @type {any} */ ({ strong: 'b', leaning: 'i', quiet: 'small' });
  return all.map((s) => h(tag[s.voice] ?? 'span', {}, s.text));
}

/** A size keeps together where a cell is narrow. @param {string} cell */
const kept = (cell) => cell.replace(/(\d) ([x×]) (?=\d)/g, '$1\u00a0$2\u00a0').replace(/(\d) (?=(?:mm|cm|in|g)\b)/g, '$1\u00a0');

/** @param {Block} b */
function table(b) {
  const side = (/** @type {number} */ i) => (b.columns[i].number ? 'n' : '');
  return h('div', { class: 'wide', tabindex: 0, role: 'region', 'aria-label': b.columns.map((/** @type {any} */ c) => c.title).filter(Boolean).join(', ') },
    h('table', {}, h('thead', {}, h('tr', {}, b.columns.map((/** @type {any} */ c, /** @type {number} */ i) => h('th', { scope: 'col', class: side(i) }, c.title)))),
      h('tbody', {}, b.rows.map((/** @type {string[]} */ row) => h('tr', {}, row.map((cell, i) => h('td', { class: side(i) }, b.columns[i].strong ? h('b', {}, kept(cell)) : kept(cell))))))));
}

/** @param {Block} b */
function figure(b) {
  return h('figure', { class: 'plate' }, drawn(b.drawing, b.width, b.caption), b.caption && h('figcaption', {}, b.caption));
}

/**
 * A drawing as large as its letters need to be read.
 * @param {string} text @param {number} width mm @param {string} says
 */
export function drawn(text, width, says) {
  const wide = width > 100; // on a phone such a drawing is moved sideways rather than made too small to read
  const svg = /** @type {SVGElement} */ (drawing(text));
  const home = h('div', { class: 'drawn', ...(wide ? { tabindex: 0, role: 'region', 'aria-label': says || 'Drawing' } : {}) }, svg);
  if (wide) svg.style.minWidth = `${Math.round(width * 3)}px`;
  home.style.maxWidth = `min(100%, ${Math.round(width * 4.4 + 34)}px)`;
  return home;
}
