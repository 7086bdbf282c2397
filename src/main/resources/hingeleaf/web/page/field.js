// Numbers, papers and words that are written over in the middle of a sentence.
import { h } from './dom.js';
import { card, change, ruler } from './card.js';
import { stepped, written } from './lengths.js';

const PRETTY = { 'left-right': 'left and right', 'top-bottom': 'top and bottom', rect: 'rectangle', svg: 'drawing', in: 'in', out: 'out' };

/** @param {string} word */
export const pretty = (word) => /** @type {any} */ (PRETTY)[word] ?? word;

/**
 * Makes the change, and says under the field why where it is refused.
 * @param {any} input @param {...any} changes
 */
export async function commit(input, ...changes) {
  const home = input.closest('.f, dd, h1, label') ?? input.parentElement;
  home.querySelector('.refused')?.remove();
  input.removeAttribute('aria-invalid');
  try {
    await change(...changes);
  } catch (e) {
    const id = 'why-' + (input.dataset.path ?? 'it').replace(/\W+/g, '-');
    const at = still(input);
    at.setAttribute('aria-invalid', 'true');
    at.setAttribute('aria-describedby', id);
    (at.closest('.f, dd, h1, label') ?? at.parentElement).append(h('span', { class: 'refused', id, role: 'alert' }, e instanceof Error ? e.message : String(e)));
  }
}

/**
 * The field, or the one in its place where the answer to an earlier change renewed the worksheet.
 * @param {any} input @returns {any}
 */
function still(input) {
  const next = input.isConnected ? null : document.querySelector(`.sheet [data-path="${CSS.escape(input.dataset.path)}"]`);
  if (next instanceof HTMLInputElement) next.value = next.dataset.sent = input.value;
  return next ?? input;
}

/**
 * A place for text. Enter keeps it, Escape brings the old one back.
 * @param {{path: string, text: string, label: string, change: (text: string) => any}} f
 */
export function textInput(f) {
  const input = h('input', {
    type: 'text', value: f.text, 'data-path': f.path, 'aria-label': f.label, autocomplete: 'off', spellcheck: 'false',
    'data-sent': f.text,
    onchange: () => send(), onblur: () => send(),
    onkeydown: (/** @type {KeyboardEvent} */ e) => {
      if (e.key === 'Escape') { input.value = input.dataset.sent = f.text; input.blur(); }
      if (e.key === 'Enter') input.blur();
    },
    onfocus: () => input.select(),
  });
  /** Once for each text; a text that outlived a fresh worksheet is sent when it is left. */
  function send() {
    if (input.value === input.dataset.sent || !input.isConnected || input.closest('[data-renewing]')) return;
    input.dataset.sent = input.value;
    commit(input, f.change(input.value));
  }
  fitted(input);
  return input;
}

/** Where the browser cannot size a field by its text. @param {HTMLInputElement} input */
function fitted(input) {
  if (CSS.supports('field-sizing', 'content')) return;
  const size = () => { input.style.width = Math.max(2, input.value.length + 1) + 'ch'; };
  input.addEventListener('input', size);
  size();
}

/**
 * A length. The arrow keys go from mark to mark of the bench, with Shift ten marks.
 * @param {{path: string, text?: string, mm?: number, least?: number}} f
 * @param {string} label
 */
export function lengthInput(f, label) {
  const input = textInput({
    path: f.path, text: f.text ?? '', label,
    change: (text) => ({ op: 'length', path: f.path, text }),
  });
  input.inputMode = 'text';
  let mm = f.mm ?? 0;
  let timer = 0;
  input.addEventListener('keydown', (/** @type {KeyboardEvent} */ e) => {
    const by = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 }[e.key];
    if (!by) return;
    e.preventDefault();
    mm = stepped(mm, by * (e.shiftKey ? 10 : 1), ruler());
    input.value = input.defaultValue = input.dataset.sent = written(mm, ruler().unit); // a step is not typing: undo takes it back
    clearTimeout(timer);
    timer = setTimeout(() => commit(input, { op: 'length', path: f.path, text: input.value }), 180);
  });
  return input;
}

/**
 * One of several words.
 * @param {{path: string, label: string, value: string, options: {word: string, says: string, title?: string}[], change: (word: string) => any}} f
 */
export function choiceInput(f) {
  const options = f.options.some((o) => o.word === f.value) ? f.options : [{ word: f.value, says: f.value || '—' }, ...f.options];
  const select = h('select', {
    'data-path': f.path, 'aria-label': f.label,
    onchange: () => commit(select, f.change(select.value)),
  }, options.map((o) => h('option', { value: o.word, title: o.title, selected: o.word === f.value }, o.says)));
  return select;
}

/** What a reference may name. @param {any} f */
function named(f) {
  const { papers, glues, folders, parts } = card().choices;
  if (f.what.includes('paper')) return papers.map((/** @type {any} */ p) => ({ word: p.word, says: p.says.replace(/ ?\(.*\)/, '') }));
  if (f.what.includes('glue')) return glues;
  if (f.what.includes('embossing')) return folders;
  return parts.map((/** @type {string} */ p) => ({ word: p, says: p === 'back' ? 'the back' : p }));
}

/** A dot in the paper's colour. @param {any} f */
function swatch(f) {
  const paper = card().choices.papers.find((/** @type {any} */ p) => p.word === f.text);
  if (!paper) return null;
  const dot = h('span', { class: 'swatch', 'aria-hidden': 'true' });
  dot.style.background = paper.colour;
  return dot;
}

/**
 * The field of any kind, to stand in a sentence.
 * @param {any} f as the server tells it @param {string} label for those who hear the page
 * @returns {Node | null}
 */
export function field(f, label) {
  const name = `${label}: ${f.says}`;
  const el = input(f, name);
  return el && h('span', { class: 'f' + (f.given ? '' : ' usual') }, f.kind === 'reference' && swatch(f), el);
}

/** @param {any} f @param {string} name */
function input(f, name) {
  const text = (/** @type {string} */ t) => (t === '' && !f.needed ? { op: 'clear', path: f.path } : { op: 'text', path: f.path, text: t });
  switch (f.kind) {
    case 'length': return lengthInput(f, name);
    case 'number': case 'whole':
      return textInput({ path: f.path, text: f.text ?? '', label: name, change: (t) => ({ op: 'put', path: f.path, yaml: t.trim() }) });
    case 'name':
      return textInput({ path: f.path, text: f.text ?? '', label: name, change: (t) => ({ op: 'rename', path: f.path.replace(/\.name$/, ''), text: t.trim() }) });
    case 'text': return textInput({ path: f.path, text: f.text ?? '', label: name, change: text });
    case 'colour': return h('input', { type: 'color', value: f.text ?? '#222222', 'data-path': f.path, 'aria-label': name,
      onchange: (/** @type {any} */ e) => commit(e.target, { op: 'text', path: f.path, text: e.target.value }) });
    case 'word': return choiceInput({ path: f.path, label: name, value: f.text ?? '', change: text,
      options: f.choices.map((/** @type {any} */ c) => ({ word: c.word, says: pretty(c.word), title: c.says })) });
    case 'reference': return choiceInput({ path: f.path, label: name, value: f.text ?? '', change: text,
      options: f.needed ? named(f) : [{ word: '', says: /left out: (?:cut into )?(.+)$/.exec(f.says)?.[1] ?? 'the usual one' }, ...named(f)] });
    case 'yesNo': return choiceInput({ path: f.path, label: name, value: f.yes ? 'yes' : 'no',
      options: [{ word: 'yes', says: 'yes' }, { word: 'no', says: 'no' }], change: (w) => ({ op: 'put', path: f.path, yaml: w }) });
    case 'stages': return several(f, name, ', ');
    case 'tuple': return several(f, name, ' × ');
    default: return null;
  }
}

/** Several lengths one after the other. @param {any} f @param {string} name @param {string} between */
function several(f, name, between) {
  const items = f.items ?? [];
  return h('span', {}, items.flatMap((/** @type {any} */ item, /** @type {number} */ i) => [
    i > 0 && (item.name === 'radius' ? ', corners ' : between), lengthInput(pathFor(f, item, items), name + (items.length > 1 ? ', ' + (item.name ?? i + 1) : ''))]));
}

/** Offsets that nobody has given yet are given as a pair. @param {any} f @param {any} item @param {any[]} items */
function pathFor(f, item, items) {
  return f.given || items.length === 1 ? item : { ...item, path: item.path };
}
