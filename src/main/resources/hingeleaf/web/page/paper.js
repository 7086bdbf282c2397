// The whole card in three dimensions, made from the pieces that the server tells.
import * as THREE from 'three';
import { inkMesh, markMeshes, outlineGeometry, panelGeometry } from './panel.js';
import { matrixOf } from './pose.js';

const STILL = new THREE.Matrix4();

/** @param {any} piece */
function papers(piece) {
  const clear = piece.clear ? { transparent: true, opacity: 0.22, depthWrite: false } : {};
  const make = (/** @type {string} */ color) => new THREE.MeshLambertMaterial({ color, ...clear });
  return [make(piece.front), make(piece.back), make(piece.core)];
}

export class Paper {
  /** @param {any} told pieces and panels */
  constructor(told) {
    this.group = new THREE.Group();
    this.pieces = new Map(told.pieces.map((/** @type {any} */ p) => [p.id, p]));
    const materials = new Map(told.pieces.map((/** @type {any} */ p) => [p.id, papers(p)]));
    this.line = new THREE.LineBasicMaterial({ color: '#23272b', transparent: true, opacity: 0.34 });
    this.lit = new THREE.LineBasicMaterial({ color: '#a8481f' });
    /** @type {{mesh: any, outline: any, made: any, told: any, rank: number}[]} */
    this.panels = told.panels.map((/** @type {any} */ p) => this.panel(p, materials.get(p.piece)));
    this.materials = materials;
    /** @type {any[]} */
    this.marks = [];
    /** @type {{panels: Set<number>, turn: any}[]} */
    this.doors = [];
    this.rank();
    this.place(null, 0);
    this.box = new THREE.Box3().setFromObject(this.group);
  }

  /** @param {any} told @param {any} materials */
  panel(told, materials) {
    const piece = this.pieces.get(told.piece);
    const half = piece.thickness / 2;
    const mesh = new THREE.Mesh(panelGeometry(told.shape, half), materials);
    mesh.castShadow = !piece.clear;
    mesh.receiveShadow = true;
    mesh.matrixAutoUpdate = false;
    mesh.userData = { piece: told.piece, panel: told.name, shape: told.shape };
    const outline = new THREE.LineSegments(outlineGeometry(told.shape, half), this.line);
    mesh.add(outline);
    for (const ink of told.inks) {
      for (const rings of ink.regions) {
        const drawn = inkMesh(rings, ink.back ? -half - 0.03 : half + 0.03, ink.colour, ink.back);
        drawn.raycast = () => {};
        drawn.userData = { origin: ink.origin };
        mesh.add(drawn);
      }
    }
    this.group.add(mesh);
    const lift = new THREE.Matrix4().makeTranslation(0, 0, told.lift);
    return { mesh, outline, made: matrixOf(told.made).multiply(lift), told, rank: 0 };
  }

  /** How far forward each piece stands among the others, for pulling them apart. */
  rank() {
    const depth = new Map();
    for (const p of this.panels) {
      const z = p.made.elements[14] + (p.told.name === 'panel' ? 0 : -1e6);
      depth.set(p.told.piece, Math.max(depth.get(p.told.piece) ?? -1e9, z));
    }
    const order = [...depth.entries()].sort((a, b) => a[1] - b[1]).map((e) => e[0]);
    for (const p of this.panels) p.rank = order.indexOf(p.told.piece);
  }

  /**
   * @param {import('./pose.js').Motion | null} motion null for the made card
   * @param {number} apart mm between neighbouring pieces
   */
  place(motion, apart) {
    this.panels.forEach((p, i) => {
      p.mesh.matrix.copy(motion ? motion.of(i) : STILL);
      for (const d of this.doors) if (d.panels.has(i)) p.mesh.matrix.multiply(d.turn);
      p.mesh.matrix.multiply(p.made);
      p.mesh.matrix.elements[14] += apart * p.rank;
      p.mesh.matrixWorldNeedsUpdate = true;
    });
  }

  /**
   * Marks on the panels what an eye does not see, or should not.
   * @param {{kind: string, marks: {piece: string, panel: string, regions: number[][][]}[]}[]} seen
   */
  mark(seen) {
    for (const m of this.marks) { m.geometry.dispose(); m.removeFromParent(); }
    this.marks = [];
    for (const s of seen) for (const m of s.marks) {
      const panel = this.panels.find((p) => p.told.piece === m.piece && p.told.name === m.panel);
      if (!panel) continue;
      for (const drawn of markMeshes(m.regions, this.pieces.get(m.piece).thickness / 2, s.kind)) {
        panel.mesh.add(drawn);
        this.marks.push(drawn);
      }
    }
  }

  /** Lights one piece, or the one panel of that name that is cut into a piece. @param {string} id */
  light(id) {
    for (const p of this.panels) {
      const lit = p.told.piece === id || p.told.name === id;
      p.outline.material = lit ? this.lit : this.line;
      p.outline.renderOrder = lit ? 1 : 0;
    }
    for (const [piece, all] of this.materials) {
      for (const m of /** @type {any[]} */ (all)) m.emissive.set(piece === id ? '#5a2408' : '#000000');
    }
  }

  drop() {
    for (const p of this.panels) {
      p.mesh.traverse((/** @type {any} */ o) => o.geometry?.dispose());
    }
    this.group.removeFromParent();
  }
}
