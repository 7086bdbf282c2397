// The hand on the card: picks a part, and drags a cut-out across the panel that it is on.
import * as THREE from 'three';
import { card, change, explain, ruler, told } from './card.js';
import { choose, reveal } from './chosen.js';
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
    this.held = { x: e.clientX, y: e.clientY, piece: hit?.object.userData.piece ?? '', hit, moved: false, drag: null };
    const path = this.movable(this.held.piece);
    if (path && hit && this.studio.fraction === 0) {
      this.studio.controls.enabled = false;
      this.studio.canvas.setPointerCapture(e.pointerId);
      const normal = new THREE.Vector3(0, 0, 1).transformDirection(hit.object.matrixWorld);
      this.held.drag = { path, plane: new THREE.Plane().setFromNormalAndCoplanarPoint(normal, hit.point), from: hit.point.clone(), by: new THREE.Vector3() };
    }
  }

  /** Where in the design a loose part is told. @param {string} piece */
  movable(piece) {
    const told = this.studio.paper?.pieces.get(piece);
    return told && /^cut-outs\[\d+]$/.test(told.origin) ? told.origin : '';
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
      if (p.told.piece === held.piece) {
        p.mesh.matrix.copy(p.made).setPosition(new THREE.Vector3().setFromMatrixPosition(p.made).add(held.drag.by));
        p.mesh.matrixWorldNeedsUpdate = true;
      }
    }
    this.studio.draw();
  }

  /** @param {PointerEvent} e */
  up(e) {
    const held = this.held;
    this.letGo();
    if (!held) return;
    if (held.drag && held.moved) this.set(held);
    else if (!held.moved) {
      choose(held.piece);
      reveal(held.piece);
    }
    void e;
  }

  letGo() {
    this.held = null;
    this.studio.controls.enabled = true;
  }

  /** Keeps the place that a cut-out was dragged to, on the marks. @param {any} held */
  set(held) {
    const field = card().sheet.fields.find((/** @type {any} */ f) => f.key === 'cut-outs');
    const item = field.items.find((/** @type {any} */ i) => i.path === held.drag.path);
    const at = item.fields.find((/** @type {any} */ f) => f.key === 'at');
    const local = held.drag.by.clone().transformDirection(held.hit.object.matrixWorld.clone().invert()).multiplyScalar(held.drag.by.length());
    const to = [0, 1].map((k) => told(at.items[k].mm + local.getComponent(k)));
    choose(held.piece);
    change({ op: 'put', path: at.path, yaml: `[${to.join(', ')}]` }).catch((e) => { explain(e); this.studio.pose(); });
  }
}

/** @param {number[]} ring */
function middleOf(ring) {
  const xs = ring.filter((_, i) => i % 2 === 0);
  const ys = ring.filter((_, i) => i % 2 === 1);
  return { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
}
