// One panel of paper as a solid: front, back and cut edge, with its inks and a fine outline.
import * as THREE from 'three';

/** @typedef {{front: any, back: any, core: any}} Papers */

/** @param {number[]} flat x, y, x, y … */
function points(flat) {
  const out = [];
  for (let i = 0; i < flat.length; i += 2) out.push(new THREE.Vector2(flat[i], flat[i + 1]));
  return out;
}

/**
 * @param {number[][]} rings outer first, in mm
 * @param {number} half half the thickness, mm
 */
export function panelGeometry(rings, half) {
  const [outer, ...holes] = rings.map(points);
  const all = [outer, ...holes].flat();
  const faces = THREE.ShapeUtils.triangulateShape(outer, holes);
  /** @type {number[]} */
  const at = [];
  /** @type {number[]} */
  const normal = [];
  const put = (/** @type {any} */ p, /** @type {number} */ z, /** @type {number[]} */ n) => { at.push(p.x, p.y, z); normal.push(...n); };
  for (const [a, b, c] of faces) for (const i of turned(all, a, b, c)) put(all[i], half, [0, 0, 1]);
  const front = at.length / 3;
  for (const [a, b, c] of faces) for (const i of turned(all, a, b, c).reverse()) put(all[i], -half, [0, 0, -1]);
  const back = at.length / 3 - front;
  for (const ring of [outer, ...holes]) edge(ring, half, put);
  const geometry = new THREE.BufferGeometry();
  geometry.setAttribute('position', new THREE.Float32BufferAttribute(at, 3));
  geometry.setAttribute('normal', new THREE.Float32BufferAttribute(normal, 3));
  geometry.addGroup(0, front, 0);
  geometry.addGroup(front, back, 1);
  geometry.addGroup(front + back, at.length / 3 - front - back, 2);
  return geometry;
}

/** The corners of a triangle, anticlockwise. @param {any[]} all @param {number} a @param {number} b @param {number} c */
function turned(all, a, b, c) {
  const [p, q, r] = [all[a], all[b], all[c]];
  return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x) > 0 ? [a, b, c] : [a, c, b];
}

/** The cut edge: rings run with the paper on their left. @param {any[]} ring @param {number} half @param {any} put */
function edge(ring, half, put) {
  for (let i = 0; i < ring.length; i++) {
    const p = ring[i];
    const q = ring[(i + 1) % ring.length];
    const d = Math.hypot(q.x - p.x, q.y - p.y) || 1;
    const n = [(q.y - p.y) / d, -(q.x - p.x) / d, 0];
    put(p, -half, n); put(q, -half, n); put(q, half, n);
    put(p, -half, n); put(q, half, n); put(p, half, n);
  }
}

/** @param {number[][]} rings @param {number} half */
export function outlineGeometry(rings, half) {
  /** @type {number[]} */
  const at = [];
  for (const z of [half + 0.02, -half - 0.02]) {
    for (const flat of rings) {
      const ring = points(flat);
      ring.forEach((p, i) => {
        const q = ring[(i + 1) % ring.length];
        at.push(p.x, p.y, z, q.x, q.y, z);
      });
    }
  }
  const geometry = new THREE.BufferGeometry();
  geometry.setAttribute('position', new THREE.Float32BufferAttribute(at, 3));
  return geometry;
}

/** @param {number[][]} rings @param {number} z @param {string} colour @param {boolean} back */
export function inkMesh(rings, z, colour, back) {
  const [outer, ...holes] = rings.map(points);
  const shape = new THREE.Shape(outer);
  shape.holes = holes.map((r) => new THREE.Path(r));
  const material = new THREE.MeshLambertMaterial({ color: colour, side: back ? THREE.BackSide : THREE.FrontSide, polygonOffset: true, polygonOffsetFactor: -2, polygonOffsetUnits: -2 });
  const mesh = new THREE.Mesh(new THREE.ShapeGeometry(shape), material);
  mesh.position.z = z;
  mesh.receiveShadow = true;
  return mesh;
}

/**
 * What an eye does not see of a panel is drawn through all that covers it; what it should not see is
 * drawn where it shows.
 * @param {number[][][]} regions @param {number} half half the thickness, mm @param {string} kind
 */
export function markMeshes(regions, half, kind) {
  const through = kind === 'covered';
  const shapes = regions.map((rings) => {
    const [outer, ...holes] = rings.map(points);
    const shape = new THREE.Shape(outer);
    shape.holes = holes.map((r) => new THREE.Path(r));
    return shape;
  });
  const fill = new THREE.Mesh(new THREE.ShapeGeometry(shapes), new THREE.MeshBasicMaterial({
    color: '#c2410c', transparent: true, opacity: through ? 0.3 : 0.85, depthTest: !through, depthWrite: false, side: THREE.DoubleSide,
    polygonOffset: true, polygonOffsetFactor: -4, polygonOffsetUnits: -4,
  }));
  fill.position.z = half + 0.05;
  const edge = new THREE.LineSegments(outlineGeometry(regions.flat(), half + 0.05), new THREE.LineBasicMaterial({ color: '#c2410c', depthTest: !through, transparent: true }));
  for (const m of [fill, edge]) { m.renderOrder = 5; m.raycast = () => {}; }
  return [fill, edge];
}
