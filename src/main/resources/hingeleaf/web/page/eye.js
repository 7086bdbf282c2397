// The eye: where it looks from, and what it sees of the parts that should show or be hidden.
import { h } from './dom.js';
import { about, card, unitShown } from './card.js';
import { choose, light, reveal } from './chosen.js';
import { written } from './lengths.js';

/** mm from the card's front to the eye, and how one says it. @type {[number, string][]} */
const DISTANCES = [[250, 'held close'], [400, 'held in the hand'], [1000, 'on a shelf'], [Infinity, 'from far away']];

/** @param {number} right @param {number} above degrees */
function place(right, above) {
  const sides = [right && `from the ${right > 0 ? 'right' : 'left'}`, above && `from ${above > 0 ? 'above' : 'below'}`].filter(Boolean);
  return sides.length ? sides.join(' and ') : 'straight on';
}

/** @param {HTMLElement} home @param {import('./studio.js').Studio} studio */
export function eyes(home, studio) {
  const eye = new Eye(studio);
  home.append(eye.el);
  return eye;
}

class Eye {
  /** @param {import('./studio.js').Studio} studio */
  constructor(studio) {
    this.studio = studio;
    this.at = { right: 0, above: 0, distance: 400 };
    this.timer = 0;
    /** @type {any[]} */
    this.seen = [];
    /** @type {AbortController | null} */
    this.running = null;
    this.pad = h('div', { class: 'pad', role: 'group', 'aria-label': 'Where the eye is', onkeydown: (/** @type {KeyboardEvent} */ e) => this.walk(e) }, this.cells());
    this.far = h('select', { 'aria-label': 'How far away the eye is', onchange: () => this.move({ ...this.at, distance: DISTANCES[this.far.selectedIndex][0] }, Boolean(this.studio.eye)) });
    this.words = h('span', {}, 'straight on');
    this.list = h('ol', { 'aria-live': 'polite' });
    this.away = h('button', { type: 'button', hidden: true, onclick: () => { this.studio.lookFrom('aslant'); this.pad.querySelector('[tabindex="0"]')?.focus(); } }, 'Put the eye away');
    this.el = h('section', { class: 'eye', 'aria-labelledby': 'eye-head' },
      h('h2', { id: 'eye-head' }, 'What the eye sees'), this.pad,
      h('div', { class: 'told' }, h('p', { class: 'where' }, this.words, ', ', this.far), this.list,
        h('p', { class: 'act' }, h('button', { type: 'button', onclick: () => this.here() }, 'From where I look now'), this.away)));
    studio.leaves = () => this.left();
  }

  cells() {
    return [20, 0, -20].flatMap((above) => [-20, 0, 20].map((right) => h('button', {
      type: 'button', 'data-right': right, 'data-above': above, 'aria-pressed': 'false', tabindex: right || above ? -1 : 0, 'aria-label': `Look ${place(right, above)}`,
      onclick: () => this.move({ ...this.at, right, above }, true),
    }, h('span', { 'aria-hidden': 'true' }, '·'))));
  }

  /** Arrow keys go from place to place. @param {KeyboardEvent} e */
  walk(e) {
    const by = /** @type {any} */ ({ ArrowLeft: -1, ArrowRight: 1, ArrowUp: -3, ArrowDown: 3 })[e.key];
    const all = [...this.pad.children];
    const next = all[all.indexOf(document.activeElement) + by];
    if (!by || !next) return;
    e.preventDefault();
    next.focus();
  }

  /** @param {{right: number, above: number, distance: number}} at @param {boolean} look whether the card is seen from there at once */
  move(at, look) {
    const farther = at.distance !== this.at.distance;
    this.at = at;
    if (look) {
      this.studio.lookFromEye(at);
      this.away.hidden = false;
    }
    this.say();
    this.ask(farther);
  }

  /** The eye goes to where the card has been turned. */
  here() {
    const now = this.studio.asEye();
    const within = (/** @type {number} */ d) => Math.max(-60, Math.min(60, d));
    this.move({ right: within(now.right), above: within(now.above), distance: Math.max(50, Math.min(5000, now.distance)) }, true);
  }

  /** The card is no longer seen from the eye. */
  left() {
    this.away.hidden = true;
    this.mark();
    this.say();
  }

  say() {
    const { right, above, distance } = this.at;
    const on = Boolean(this.studio.eye);
    for (const b of this.pad.children) {
      const here = Number(b.dataset.right) === right && Number(b.dataset.above) === above;
      b.setAttribute('aria-pressed', String(here && on));
      b.classList.toggle('here', here);
      b.tabIndex = here ? 0 : -1;
    }
    if (!this.pad.querySelector('[tabindex="0"]')) this.pad.children[4].tabIndex = 0;
    const angle = (/** @type {number} */ d, /** @type {string} */ plus, /** @type {string} */ minus) => d && `${Math.abs(d)}° from the ${d > 0 ? plus : minus}`;
    this.words.textContent = [angle(right, 'right', 'left'), above && `${Math.abs(above)}° from ${above > 0 ? 'above' : 'below'}`].filter(Boolean).join(', ') || 'Straight on';
    const known = DISTANCES.some(([mm]) => mm === distance);
    this.far.replaceChildren(...(known ? DISTANCES : [...DISTANCES, [distance, 'where you are']]).map(([mm, says]) =>
      h('option', { selected: mm === distance }, says + (mm === Infinity ? '' : `, ${shown(Number(mm))}`))));
  }

  /** The card has changed. */
  changed() {
    clearTimeout(this.timer);
    this.seen = [];
    this.timer = setTimeout(() => { this.say(); this.ask(true); }, 500);
  }

  /** First what the eye sees from where it is; the other places later. @param {boolean} all */
  async ask(all) {
    const version = card()?.version;
    if (!card()?.scene) return;
    if (all) this.running?.abort();
    const stop = all ? new AbortController() : this.running ?? new AbortController();
    this.running = stop;
    const { right, above, distance } = this.at;
    const far = distance === Infinity ? 'far' : distance;
    try {
      const told = await about('sight', `&right=${right}&above=${above}&distance=${far}`, stop.signal);
      if (card()?.version !== version || this.at.right !== right || this.at.above !== above || this.at.distance !== distance) return;
      this.take(told.seen);
      this.el.dataset.ready = String(version);
      if (!all) return;
      for (const b of this.pad.children) b.firstChild.textContent = '·';
      const grid = await about('sight/grid', `&distance=${far}`, stop.signal);
      if (card()?.version === version && this.at.distance === distance) this.grid(grid.cells);
    } catch (e) {
      if (!stop.signal.aborted) this.list.replaceChildren(h('li', { class: 'none quiet' }, e instanceof Error ? e.message : ''));
    }
  }

  /** @param {any[]} seen */
  take(seen) {
    this.seen = seen;
    this.list.replaceChildren(...(seen.length ? seen.map((s) => h('li', { class: s.kind, 'data-part': s.part },
      h('button', { type: 'button', class: 'plain', onclick: () => { choose(s.part); reveal(s.part); } }, s.words)))
      : [h('li', { class: 'none quiet' }, 'Everything that should be seen is seen, and no glue tab shows.')]));
    this.mark();
    light();
  }

  mark() {
    this.studio.paper?.mark(this.studio.eye ? this.seen : []);
    this.studio.draw();
  }

  /** @param {any[]} cells */
  grid(cells) {
    for (const c of cells) {
      const b = [...this.pad.children].find((x) => Number(x.dataset.right) === c.right && Number(x.dataset.above) === c.above);
      if (!b) continue;
      b.firstChild.textContent = c.count ? String(c.count) : '✓';
      b.classList.toggle('some', c.count > 0);
      b.setAttribute('aria-label', `Look ${place(c.right, c.above)}: ${c.count ? `${c.count} to see to` : 'nothing amiss'}`);
    }
    this.pad.dataset.ready = String(card()?.version);
  }
}

/** About so far, in the maker's own system. @param {number} mm */
const shown = (mm) => (unitShown() === 'in' ? `${Math.round(mm / 25.4)} in` : written(mm, 'mm'));
