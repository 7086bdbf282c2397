// The line at the top: where one is, undo and redo, units, light and dark.
import { byId, h } from './dom.js';
import { explain, redo, show, undo, unitShown, watch, watchSaving } from './card.js';
import { put } from './api.js';

const KEEP = 'hingeleaf-theme';

/** Sets the theme that was chosen, or the system's. */
export function dress() {
  const kept = localStorage.getItem(KEEP);
  document.documentElement.dataset.theme = kept ?? (matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light');
}

function themes() {
  const dark = () => document.documentElement.dataset.theme === 'dark';
  const button = h('button', { type: 'button', class: 'plain', onclick: () => {
    localStorage.setItem(KEEP, dark() ? 'light' : 'dark');
    dress();
    button.textContent = dark() ? 'Light' : 'Dark';
  } }, dark() ? 'Light' : 'Dark');
  return button;
}

/** @param {(unit: string) => void} [changed] */
export function unitPair(changed) {
  const unit = (/** @type {string} */ word, /** @type {string} */ says) => h('button', {
    type: 'button', 'aria-pressed': String((unitShown() === 'in') === (word === 'in')), 'data-unit': word, 'aria-label': says,
    onclick: async (/** @type {any} */ e) => {
      for (const b of e.target.parentElement.children) b.setAttribute('aria-pressed', String(b === e.target));
      try { await put('/settings', { unit: word }); await show(word); changed?.(word); } catch (x) { explain(x); }
    },
  }, word);
  return h('span', { class: 'pair', role: 'group', 'aria-label': 'Units' }, unit('mm', 'mm: show in millimetres'), unit('in', 'in: show in inches'));
}

/** @param {boolean} withCard */
export function head(withCard) {
  const saved = h('span', { class: 'saved', role: 'status' }, withCard ? 'Saved' : '');
  const back = h('button', { type: 'button', class: 'plain', onclick: () => undo().catch(explain), 'aria-keyshortcuts': 'Control+Z' }, 'Undo');
  const again = h('button', { type: 'button', class: 'plain', onclick: () => redo().catch(explain), 'aria-keyshortcuts': 'Control+Shift+Z' }, 'Redo');
  byId('head').replaceChildren(
    h('a', { class: 'name', href: '#/' }, h('img', { src: '/page/leaf.svg', alt: '' }), withCard ? 'All cards' : 'Hingeleaf'),
    ...(withCard ? [saved, back, again] : []), unitPair(withCard ? undefined : () => window.dispatchEvent(new HashChangeEvent('hashchange'))), themes());
  if (!withCard) return;
  watch((now) => { back.disabled = !now.undo; again.disabled = !now.redo; });
  watchSaving((state) => { saved.textContent = state === 'saving' ? 'Saving …' : 'Saved'; });
}

/** Ctrl-Z and Ctrl-Shift-Z, where no text is being written. */
export function keys() {
  document.addEventListener('keydown', (e) => {
    const typing = e.target instanceof HTMLInputElement && e.target.type === 'text' && e.target.value !== e.target.defaultValue && e.target.matches(':focus');
    if (!(e.ctrlKey || e.metaKey) || e.key.toLowerCase() !== 'z' || typing || !location.hash.startsWith('#/card/')) return;
    e.preventDefault();
    (e.shiftKey ? redo() : undo()).catch(explain);
  });
}
