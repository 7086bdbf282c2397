// The card beside the worksheet: looks, folding slider, ways to lie flat, layers pulled apart.
import { h } from './dom.js';
import { about, card, explain, watch } from './card.js';
import { beside, choose, chosen, reveal, watchChosen } from './chosen.js';
import { Hand } from './hand.js';
import { Motion } from './pose.js';
import { Studio } from './studio.js';
import { Doors } from './doors.js';
import { eyes } from './eye.js';

/** @param {HTMLElement} home @returns {() => void} ends it */
export function stage(home) {
  const frame = h('div', { class: 'stage' });
  const caption = h('p', { class: 'caption' });
  const gone = h('div', { class: 'gone', hidden: true }, h('p', {}, 'The card cannot be shown until what blocks it is put right.'));
  frame.append(caption, gone);
  home.append(frame);
  const studio = new Studio(frame, 'The card in three dimensions. Arrow keys turn it, plus and minus bring it nearer or further.');
  new Hand(studio);
  frame.append(looks(studio));
  const folding = new Folding(studio);
  const doors = new Doors(studio);
  folding.el.append(doors.el);
  home.append(folding.el);
  const eye = eyes(home, studio);
  watch((now) => {
    gone.hidden = Boolean(now.scene);
    if (!now.scene) return;
    studio.show(now.scene);
    studio.paper?.light(chosen());
    doors.changed();
    folding.changed();
    eye.changed();
    frame.dataset.shown = String(now.version);
  });
  watchChosen((part) => {
    studio.paper?.light(part);
    studio.draw();
    const piece = studio.paper?.pieces.get(part);
    caption.replaceChildren(...(piece ? [h('strong', {}, piece.name), ', ' + piece.stock, beside() ? '' : toWords(part)] : []));
  });
  frame.addEventListener('keydown', (/** @type {KeyboardEvent} */ e) => e.key === 'Escape' && choose(''));
  return () => studio.close();
}

/** On a narrow page the sentence of what was picked is out of sight. @param {string} part */
const toWords = (part) => h('button', { type: 'button', class: 'plain', onclick: () => reveal(part) }, 'its sentence');

/** @param {Studio} studio */
function looks(studio) {
  const one = (/** @type {string} */ name, /** @type {string} */ words) => h('button', { type: 'button', onclick: () => studio.lookFrom(name) }, words);
  return h('div', { class: 'looks', role: 'group', 'aria-label': 'Look at the card' },
    one('front', 'Front'), one('aslant', 'Aslant'), one('side', 'Side'), one('above', 'Above'));
}

class Folding {
  /** @param {Studio} studio */
  constructor(studio) {
    this.studio = studio;
    /** @type {any} */
    this.flats = null;
    this.rest = -1;
    this.asked = 0;
    this.slider = h('input', { type: 'range', min: 0, max: 1000, step: 1, value: 0, 'aria-label': 'Fold the card from made to flat', oninput: () => this.slide() });
    this.apart = h('input', { type: 'range', min: 0, max: 30, step: 0.5, value: 0, 'aria-label': 'Pull the layers apart', oninput: () => this.studio.fold(this.slider.valueAsNumber / 1000, this.apart.valueAsNumber) });
    this.choice = h('select', { 'aria-label': 'Which way it lies flat', onchange: () => { this.rest = Number(this.choice.value); this.fetch(); } });
    this.words = h('span', {});
    this.el = h('div', { class: 'fold' },
      h('span', { class: 'ends' }, 'made'), this.slider, h('span', { class: 'ends' }, 'flat'),
      h('p', { class: 'rest' }, h('span', {}, 'Flat, it '), this.choice, this.words),
      h('span', { class: 'ends' }, 'together'), this.apart, h('span', { class: 'ends' }, 'layers apart'));
  }

  slide() {
    const at = this.slider.valueAsNumber / 1000;
    this.slider.setAttribute('aria-valuetext', at === 0 ? 'made' : at === 1 ? 'flat' : Math.round(at * 100) + ' percent folded');
    this.studio.fold(at);
  }

  /** The card has changed: its ways to lie flat are asked for once the hand rests. */
  changed() {
    clearTimeout(this.asked);
    this.asked = setTimeout(() => this.fetch(), this.flats ? 250 : 0);
  }

  async fetch() {
    const version = card()?.version;
    try {
      const flats = await about('flats');
      if (card()?.version !== version) return;
      this.flats = flats;
      this.rest = this.rest < 0 ? flats.best : Math.min(this.rest, flats.rests.length - 1);
      const motion = await about('motion', '&rest=' + this.rest);
      if (card()?.version !== version) return;
      this.studio.folds(new Motion(motion));
      this.tell();
      this.studio.pose();
      this.el.dataset.ready = String(version);
    } catch (e) { if (card()?.scene) explain(e); }
  }

  tell() {
    const { rests, count } = this.flats;
    this.choice.replaceChildren(...rests.map((/** @type {any} */ r, /** @type {number} */ i) => h('option', { value: i, selected: i === this.rest }, `${r.words}, ${r.size}`)));
    const rest = rests[this.rest];
    const whole = rest.words.length > 36 ? h('span', { class: 'whole' }, `It ${rest.words}: `) : '';
    this.words.replaceChildren(whole, `${rest.limp} of card at the thickest spot${count > 1 ? `; ${count} ways in all` : ''}.`);
  }
}
