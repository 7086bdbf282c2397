// The hand on the card: picks a part, and drags a cut-out across the panel that it is on.
import * as THREE from 'three';
import { card, change, explain, ruler, told } from './card.js';
import { beside, choose, chosen, reveal } from './chosen.js';
import { findSpotsWith } from './carry.js';

export class Hand {
  /** @param {import('./studio.js').Studio} studio */
  constructor(studio) {
    this.studio = studio;
    this.ray = new THREE.Raycaster();
    /** @type {any} */
    this.held = null;
    studio.canvas.addEventListener('pointerdown', (e) => this.down(e));
    studio.canvas.addEventListener('pointermove', (e) => this.move(e));
    studio.canvas.addEventListener('pointerup', (e) => this.up(e));
    studio.canvas.addEventListener('pointercancel', () => this.letGo());
    findSpotsWith((x, y) => this.spot(x, y));
  }

  /** Everything under a point of the window, the nearest first. @param {number} x @param {number} y @returns {any[]} */
  under(x, y) {
    const r = this.studio.canvas.getBoundingClientRect();
    if (!this.studio.paper || x < r.left || x > r.right || y < r.top || y > r.bottom) return [];
    this.aim(x, y);
    return this.ray.intersectObjects(this.studio.paper.group.children, false);
  }

  /** @param {number} x @param {number} y */
  aim(x, y) {
    const r = this.studio.canvas.getBoundingClientRect();
    const at = new THREE.Vector2(((x - r.left) / r.width) * 2 - 1, 1 - ((y - r.top) / r.height) * 2);
    this.ray.setFromCamera(at, this.studio.camera);
  }

  /** The panel that a part could be set on. @param {number} x @param {number} y @returns {import('./carry.js').Spot | null} */
  spot(x, y) {
    const parts = new Set(card().choices.parts);
    const hit = this.under(x, y).find((h) => h.object.userData.panel === 'panel' && parts.has(h.object.userData.piece));
    if (!hit) return null;
    const at = hit.object.worldToLocal(hit.point.clone());
    const middle = middleOf(hit.object.userData.shape[0]);
    const { step } = ruler();
    return { on: hit.object.userData.piece, at: [Math.round((at.x - middle.x) / step) * step, Math.round((at.y - middle.y) / step) * step] };
  }

  /** @param {PointerEvent} e */
  down(e) {
    const hit = this.under(e.clientX, e.clientY).find((h) => !this.studio.paper?.pieces.get(h.object.userData.piece)?.clear);
    const on = hit?.object.userData.piece ?? '';
    const { part, path, panel } = hit ? this.part(on, hit) : { part: '', path: '', panel: '' };
    this.held = { x: e.clientX, y: e.clientY, piece: part, on, panel, hit, moved: false, drag: null };
    if (path && hit && this.studio.fraction === 0) {
      this.studio.controls.enabled = false;
      this.studio.canvas.setPointerCapture(e.pointerId);
      const normal = new THREE.Vector3(0, 0, 1).transformDirection(hit.object.matrixWorld);
      this.held.drag = { path, plane: new THREE.Plane().setFromNormalAndCoplanarPoint(normal, hit.point), from: hit.point.clone(), by: new THREE.Vector3() };
    }
  }

  /**
   * What is under a finger, and where in the design it is told if it can be moved. Mats and doors are
   * as large as what they cover: they move once they were picked, so that turning the card is safe.
   * @param {string} piece @param {any} hit
   * @returns {{part: string, path: string, panel: string}} `panel` where only that panel of the piece moves
   */
  part(piece, hit) {
    const line = this.line(piece, hit);
    if (line) return { part: line, path: line, panel: '' };
    const { panel } = hit.object.userData;
    const door = mechanisms().find((m) => m.name === panel && panel !== 'panel');
    if (door) return { part: door.name, path: chosen() === door.name ? door.path : '', panel };
    const origin = this.studio.paper?.pieces.get(piece)?.origin ?? '';
    const loose = /^cut-outs\[\d+]$/.test(origin);
    const large = /^mats\[\d+]$/.test(origin) || mechanisms().some((m) => m.path === origin && m.at);
    return { part: piece, path: loose || (large && chosen() === piece) ? origin : '', panel: '' };
  }

  /** The line of words under a finger. @param {string} piece @param {any} hit */
  line(piece, hit) {
    const at = hit.object.worldToLocal(hit.point.clone());
    const told = this.studio.paper?.panels.find((p) => p.mesh === hit.object)?.told;
    const ink = told?.inks.find((/** @type {any} */ i) => i.regions.length && within(i.regions, at));
    void piece;
    return /^words\[\d+]$/.test(ink?.origin ?? '') ? ink.origin : '';
  }

  /** @param {PointerEvent} e */
  move(e) {
    const held = this.held;
    if (!held) return;
    if (Math.hypot(e.clientX - held.x, e.clientY - held.y) > 4) held.moved = true;
    if (!held.drag || !held.moved) return;
    this.aim(e.clientX, e.clientY);
    const at = this.ray.ray.intersectPlane(held.drag.plane, new THREE.Vector3());
    if (!at) return;
    held.drag.by.copy(at).sub(held.drag.from);
    for (const p of this.studio.paper?.panels ?? []) {
      if (held.drag.path.startsWith('words')) this.letters(p, held);
      else if (p.told.piece === held.on && (!held.panel || held.panel === p.told.name)) {
        p.mesh.matrix.copy(p.made).setPosition(new THREE.Vector3().setFromMatrixPosition(p.made).add(held.drag.by));
        p.mesh.matrixWorldNeedsUpdate = true;
      }
    }
    this.studio.draw();
  }

  /** The letters go with the finger; the panel stays. @param {any} p @param {any} held */
  letters(p, held) {
    if (p.mesh !== held.hit.object) return;
    const by = this.along(held);
    for (const m of p.mesh.children) if (m.userData.origin === held.drag.path) m.position.set(by.x, by.y, m.position.z);
  }

  /** The way of the finger in the frame of the panel that was taken hold of. @param {any} held */
  along(held) {
    return held.drag.by.clone().transformDirection(held.hit.object.matrixWorld.clone().invert()).multiplyScalar(held.drag.by.length());
  }

  /** @param {PointerEvent} e */
  up(e) {
    const held = this.held;
    this.letGo();
    if (!held) return;
    if (held.drag && held.moved) this.set(held);
    else if (!held.moved) {
      choose(held.piece);
      if (beside()) reveal(held.piece);
    }
    void e;
  }

  letGo() {
    this.held = null;
    this.studio.controls.enabled = true;
  }

  /** Keeps the place that a part was dragged to, on the marks. @param {any} held */
  set(held) {
    const at = fieldAt(held.drag.path + '.at');
    if (!at) return;
    const local = this.along(held);
    const to = [0, 1].map((k) => told((at.items?.[k]?.mm ?? 0) + local.getComponent(k)));
    choose(held.piece);
    change({ op: 'put', path: at.path, yaml: `[${to.join(', ')}]` }).catch((e) => { explain(e); this.studio.show(card().scene); });
  }
}

/** The field of a path, wherever it is in the worksheet. @param {string} path @returns {any} */
function fieldAt(path) {
  /** @type {(form: any) => any} */
  const search = (form) => {
    for (const f of form?.fields ?? []) {
      if (f.path === path) return f;
      const found = search(f.value) ?? (f.items ?? []).map(search).find(Boolean);
      if (found) return found;
    }
    return undefined;
  };
  return search(card().sheet);
}

/** What moves: its name, where it is told, and whether it has a place of its own. @returns {{name: string, path: string, at: boolean}[]} */
function mechanisms() {
  const items = card().sheet?.fields.find((/** @type {any} */ f) => f.key === 'mechanisms')?.items ?? [];
  return items.flatMap((/** @type {any} */ i) => {
    const form = i.fields.find((/** @type {any} */ f) => f.key === i.variant)?.value;
    const key = (/** @type {string} */ k) => form?.fields.find((/** @type {any} */ f) => f.key === k);
    return form ? [{ name: key('name')?.text ?? '', path: form.path, at: key('at')?.kind === 'tuple' }] : [];
  });
}

/** Whether a point lies in the box around regions, a little room about it. @param {number[][][]} regions @param {{x: number, y: number}} at */
function within(regions, at) {
  const flat = regions.flatMap((r) => r[0]);
  const [xs, ys] = [0, 1].map((k) => flat.filter((_, i) => i % 2 === k));
  const room = 1.5;
  return at.x > Math.min(...xs) - room && at.x < Math.max(...xs) + room && at.y > Math.min(...ys) - room && at.y < Math.max(...ys) + room;
}

/** @param {number[]} ring */
function middleOf(ring) {
  const xs = ring.filter((_, i) => i % 2 === 0);
  const ys = ring.filter((_, i) => i % 2 === 1);
  return { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
}
