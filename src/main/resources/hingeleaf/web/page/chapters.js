// The chapters of the plan, worked out one after the other while the page can be used.
import { h } from './dom.js';
import { about, card } from './card.js';
import { blocks } from './blocks.js';

const TITLES = { sheets: 'Sheets', steps: 'Order of work', post: 'Envelope and post', price: 'Price', cautions: 'Take care' };

let copies = 1;

/** @type {AbortController | null} */
let running = null;

/** The card has changed: nobody waits any longer for what is being worked out. */
export function leave() {
  running?.abort();
  running = null;
}

/**
 * @param {(id: string, title: string, says: string, ...body: any[]) => HTMLElement} section
 * @returns {{nodes: HTMLElement[], load: () => Promise<void>}}
 */
export function chapters(section) {
  const homes = Object.entries(TITLES).map(([id, title]) => ({ id, home: h('div', { class: 'chapters ' + id }, h('p', { class: 'quiet' }, 'Working it out …')), title }));
  const bar = h('div', { class: 'bar', hidden: true, role: 'status' });
  const load = () => fill(homes, bar);
  const nodes = homes.map((c) => section(c.id, c.title, '', c.id === 'price' ? many(load) : null, c.home));
  nodes[0].prepend(bar);
  return { nodes, load };
}

/** How many cards sheets and price are for. @param {() => any} load */
function many(load) {
  const input = h('input', { type: 'number', min: 1, max: 10000, value: copies, id: 'copies', onchange: () => {
    if (!input.checkValidity()) { input.reportValidity(); return; }
    copies = input.valueAsNumber;
    load();
  } });
  return h('p', { class: 'copies' }, h('label', { for: 'copies' }, 'For how many cards? '), input);
}

/** @param {{id: string, home: HTMLElement, title: string}[]} homes @param {HTMLElement} bar */
async function fill(homes, bar) {
  running?.abort();
  const stop = new AbortController();
  running = stop;
  const progress = h('progress', { max: homes.length, value: 0, 'aria-label': 'Working out the plan' });
  bar.replaceChildren(progress, h('span', {}, 'Working out the plan …'), h('button', { type: 'button', onclick: () => stop.abort() }, 'Stop'));
  bar.hidden = false;
  const version = card()?.version;
  for (const [i, c] of homes.entries()) {
    if (stop.signal.aborted) break;
    try {
      const told = await about('chapters/' + c.id, '&copies=' + copies, stop.signal);
      if (card()?.version !== version) return;
      c.home.replaceChildren(...(told.blocks.length ? blocks(withoutTitle(told.blocks)) : [h('p', { class: 'quiet' }, 'Nothing to tell for this card.')]));
    } catch (e) {
      c.home.replaceChildren(h('p', { class: 'quiet' }, stop.signal.aborted ? 'Stopped; change the card or the number to go on.' : e instanceof Error ? e.message : ''));
    }
    progress.value = i + 1;
  }
  if (running === stop) bar.hidden = true;
}

/** The section has its title already. @param {any[]} all */
const withoutTitle = (all) => {
  const flat = all[0]?.is === 'together' ? [...all[0].blocks, ...all.slice(1)] : all;
  return flat.filter((/** @type {any} */ b, /** @type {number} */ i) => !(b.is === 'heading' && flat.slice(0, i).every((/** @type {any} */ x) => x.is === 'gap')));
};
