// Ornaments to drag on the card, or to add with the keyboard and then move by numbers.
import { h } from './dom.js';
import { card, explain } from './card.js';
import { addCutOut } from './parts.js';
import { dropAt } from './carry.js';
import { post } from './api.js';

const SHAPES = {
  circle: 'M12 3a9 9 0 1 0 .01 0z', square: 'M4 4h16v16H4z', arch: 'M5 21V12a7 7 0 0 1 14 0v9z', ellipse: 'M12 6a10 6 0 1 0 .01 0z',
};

export function chips() {
  const files = card().drawings;
  return h('div', {},
    h('div', { class: 'add', role: 'group', 'aria-label': 'Add a cut-out' },
      Object.entries(SHAPES).map(([name, d]) => chip(name, name, d)),
      files.map((/** @type {string} */ f) => chip(f, f.replace(/\.svg$/, ''), null)),
      upload()),
    h('p', { class: 'hint' }, 'Drag a shape on the card where it should sit, or press it to set it in the middle of the back and move it by its numbers.'));
}

/** @param {string} shape @param {string} name @param {string | null} d */
function chip(shape, name, d) {
  const el = h('button', {
    type: 'button', class: 'chip', 'data-shape': shape, 'aria-label': `Add a cut-out: ${name}`,
    onclick: () => { if (!el.dataset.carried) addCutOut(shape, 'back', [0, 0]); delete el.dataset.carried; },
    onpointerdown: (/** @type {PointerEvent} */ e) => carry(e, el, (spot) => addCutOut(shape, spot.on, spot.at)),
  });
  if (d) {
    const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    svg.setAttribute('viewBox', '0 0 24 24');
    svg.setAttribute('aria-hidden', 'true');
    const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
    path.setAttribute('d', d);
    svg.append(path);
    el.append(svg);
  }
  el.append(name);
  return el;
}

/** Follows the pointer; where it is let go over a panel, the part is set there. @param {PointerEvent} e @param {any} el @param {(spot: import('./carry.js').Spot) => any} drop */
function carry(e, el, drop) {
  const from = [e.clientX, e.clientY];
  const stage = document.querySelector('.work .stage');
  const move = (/** @type {PointerEvent} */ m) => {
    if (Math.hypot(m.clientX - from[0], m.clientY - from[1]) > 6) el.dataset.carried = 'yes';
    stage?.classList.toggle('drop', Boolean(el.dataset.carried && dropAt(m.clientX, m.clientY)));
  };
  const up = (/** @type {PointerEvent} */ m) => {
    document.removeEventListener('pointermove', move);
    stage?.classList.remove('drop');
    const at = el.dataset.carried && dropAt(m.clientX, m.clientY);
    if (at) drop(at);
    setTimeout(() => delete el.dataset.carried, 0);
  };
  document.addEventListener('pointermove', move);
  document.addEventListener('pointerup', up, { once: true });
}

/**
 * A button that adds a part, and can be carried to where the part should sit.
 * @param {string} words @param {() => any} add @param {(spot: import('./carry.js').Spot) => any} drop
 */
export function carried(words, add, drop) {
  const el = h('button', { type: 'button', class: 'chip',
    onclick: () => { if (!el.dataset.carried) add(); delete el.dataset.carried; },
    onpointerdown: (/** @type {PointerEvent} */ e) => carry(e, el, drop) }, words);
  return el;
}

/** Takes an outline from a file of the maker's. */
function upload() {
  const input = h('input', { type: 'file', accept: '.svg,image/svg+xml', class: 'unseen', tabindex: '-1', 'aria-hidden': 'true',
    onchange: async () => {
      const file = input.files?.[0];
      if (!file) return;
      try {
        await post('/drawings?name=' + encodeURIComponent(file.name), file);
        await addCutOut(file.name, 'back', [0, 0]);
      } catch (e) { explain(e); }
    } });
  return [h('button', { type: 'button', onclick: () => input.click() }, 'Your own drawing (SVG) …'), input];
}
