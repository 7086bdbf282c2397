// Makes elements in one breath. Text is always set as text, never as markup.

/** @typedef {string | number | Node | null | undefined | false} Child */

/**
 * @param {string} tag
 * @param {Record<string, any>} [props] attributes; `on…` keys are listeners, `class` the classes
 * @param {...(Child | Child[])} children
 * @returns {any}
 */
export function h(tag, props = {}, ...children) {
  const el = document.createElement(tag);
  for (const [key, value] of Object.entries(props)) {
    if (value === null || value === undefined || value === false) continue;
    if (key.startsWith('on')) el.addEventListener(key.slice(2), value);
    else if (key === 'value') put(/** @type {any} */ (el), value);
    else el.setAttribute(key, value === true ? '' : String(value));
  }
  el.append(...children.flat().filter((c) => c !== null && c !== undefined && c !== false).map(asNode));
  return el;
}

/** The value, and what it counts as unchanged. @param {any} el @param {any} value */
function put(el, value) {
  if ('defaultValue' in el) el.defaultValue = value;
  el.value = value;
}

/** @param {any} c */
function asNode(c) {
  return c instanceof Node ? c : document.createTextNode(String(c));
}

/**
 * A drawing that the server made, as part of the page.
 * @param {string} text
 * @returns {Element}
 */
export function drawing(text) {
  const root = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
  if (root.localName !== 'svg' || root.querySelector('script, foreignObject')) throw new Error('no drawing');
  root.setAttribute('role', 'img');
  return /** @type {Element} */ (document.adoptNode(root));
}

/** @param {string} id */
export function byId(id) {
  const el = document.getElementById(id);
  if (!el) throw new Error('the page has no ' + id);
  return el;
}

/** Says something in passing, to eyes and screen readers. @param {string} words */
export function tell(words) {
  const box = byId('tell');
  box.replaceChildren(words ? h('p', {}, words) : '');
  clearTimeout(tell.timer);
  tell.timer = setTimeout(() => box.replaceChildren(), 6000);
}
/** @type {any} */
tell.timer = 0;
