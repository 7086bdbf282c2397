// The shape of an opening or an ornament: which sort, and its sizes.
import { h } from './dom.js';
import { card, ruler, told } from './card.js';
import { choiceInput, field, lengthInput, pretty } from './field.js';

const SIZES = { circle: 1, square: 1, rect: 2, ellipse: 2, arch: 2, rounded: 3 };

/**
 * A shape of a sort with sizes like those it had.
 * @param {string} sort @param {number[]} mm sizes before @param {string} file of a drawing
 */
export function shapeYaml(sort, mm, file = '') {
  const [w, hgt = w, r = w / 8] = mm.length ? mm : [30];
  if (sort === 'svg') return `{svg: ${JSON.stringify(file)}, width: ${told(w)}}`;
  const n = /** @type {any} */ (SIZES)[sort];
  if (n === 1) return `{${sort}: ${told(w)}}`;
  const sizes = n === 2 ? [w, hgt] : [w, hgt, Math.min(r, w / 2, hgt / 2)];
  return `{${sort}: [${sizes.map(told).join(', ')}]}`;
}

/** The sizes of a shape as the server tells it, in mm. @param {any} value */
export function sizesOf(value) {
  const main = value?.fields.find((/** @type {any} */ f) => f.key === value.variant);
  if (!main) return [];
  if (value.variant === 'svg') return [value.fields.find((/** @type {any} */ f) => f.key === 'width').mm];
  return main.kind === 'length' ? [main.mm] : main.items.map((/** @type {any} */ i) => i.mm);
}

/**
 * @param {any} f a field of the kind oneOf @param {string} label
 * @returns {Node}
 */
export function shapeField(f, label) {
  const value = f.value;
  const files = card().drawings;
  const sorts = f.variants.filter((/** @type {any} */ v) => v.word !== 'svg' || files.length || value?.variant === 'svg');
  const options = sorts.map((/** @type {any} */ v) => ({ word: v.word, says: pretty(v.word), title: v.says }));
  if (!f.needed) options.unshift({ word: '', says: 'as it comes' });
  const sort = choiceInput({
    path: f.path, label: `${label}: ${f.says}`, value: value?.variant ?? '', options,
    change: (w) => (w === '' ? { op: 'clear', path: f.path } : { op: 'put', path: f.path, yaml: shapeYaml(w, sizesOf(value).length ? sizesOf(value) : [usualSize()], files[0]) }),
  });
  return h('span', { class: 'f' + (f.given ? '' : ' usual') }, sort, value && ' ', value && sizes(value, label));
}

/** A size to begin with: half the card. */
function usualSize() {
  const width = card().sheet.fields.find((/** @type {any} */ g) => g.key === 'base')?.value?.fields[0]?.value?.fields
    ?.find((/** @type {any} */ g) => g.key === 'width')?.mm;
  return Math.round((width ?? 80) / 2 / ruler().step) * ruler().step;
}

/** @param {any} value @param {string} label */
function sizes(value, label) {
  const main = value.fields.find((/** @type {any} */ g) => g.key === value.variant);
  if (value.variant === 'svg') {
    const width = value.fields.find((/** @type {any} */ g) => g.key === 'width');
    const file = choiceInput({
      path: main.path, label: `${label}: ${main.says}`, value: main.text,
      options: card().drawings.map((/** @type {string} */ d) => ({ word: d, says: d.replace(/\.svg$/, '') })),
      change: (w) => ({ op: 'text', path: main.path, text: w }),
    });
    return h('span', {}, file, ', ', lengthInput(width, `${label}: ${width.says}`), ' wide');
  }
  if (main.kind === 'length') return h('span', {}, lengthInput(main, `${label}: ${main.says}`), value.variant === 'circle' ? ' across' : '');
  return field(main, label);
}

