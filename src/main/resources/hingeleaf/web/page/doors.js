// A slider for each door: it opens as far as the server knows that it does.
import { h } from './dom.js';
import { about, card } from './card.js';
import { choose } from './chosen.js';

export class Doors {
  /** @param {import('./studio.js').Studio} studio */
  constructor(studio) {
    this.studio = studio;
    /** @type {any[]} */
    this.doors = [];
    /** How far each stands open, by its name, 0 to 1. @type {Map<string, number>} */
    this.open = new Map();
    this.timer = 0;
    this.el = h('div', { class: 'doors', hidden: true });
  }

  /** The card has changed: its doors are asked for once the hand rests. */
  changed() {
    clearTimeout(this.timer);
    const field = card().sheet?.fields.find((/** @type {any} */ f) => f.key === 'mechanisms');
    if (!field?.items?.length) { this.take([]); return; }
    this.turn();
    this.timer = setTimeout(() => this.fetch(), 250);
  }

  async fetch() {
    const version = card()?.version;
    try {
      const told = await about('doors');
      if (card()?.version === version) this.take(told.doors);
    } catch { this.take([]); }
  }

  /** @param {any[]} doors */
  take(doors) {
    const focus = /** @type {any} */ (document.activeElement)?.dataset?.door;
    this.doors = doors;
    this.el.hidden = !doors.length;
    this.el.replaceChildren(...doors.flatMap((d) => this.one(d)));
    if (focus) this.el.querySelector(`[data-door="${CSS.escape(focus)}"]`)?.focus();
    this.turn();
  }

  /** @param {any} d */
  one(d) {
    const slider = h('input', { type: 'range', min: 0, max: 100, value: 100 * (this.open.get(d.name) ?? 0), 'data-door': d.name, 'aria-label': `Open ${d.name}, which ${d.words}`,
      oninput: () => { this.open.set(d.name, slider.valueAsNumber / 100); slider.setAttribute('aria-valuetext', Math.round(Math.abs(d.opens) * (slider.valueAsNumber / 100) * 180 / Math.PI) + ' degrees open'); this.turn(); },
      onfocus: () => choose(d.name) });
    return [h('span', { class: 'ends' }, d.name), slider, h('span', { class: 'ends' }, d.words)];
  }

  turn() {
    this.studio.swing(this.doors, this.doors.map((d) => this.open.get(d.name) ?? 0));
  }
}
