// Table, light and eye: where the card is looked at.
import * as THREE from 'three';
import { OrbitControls } from 'three/orbit';
import { Paper } from './paper.js';

const LOOKS = { front: [0, 0, 1], aslant: [0.46, 0.3, 1], above: [0.05, 0.95, 0.75], side: [1, 0.12, 0.3] };

export class Studio {
  /** @param {HTMLElement} home @param {string} label */
  constructor(home, label) {
    this.renderer = new THREE.WebGLRenderer({ antialias: true, alpha: true });
    this.renderer.shadowMap.enabled = true;
    this.renderer.shadowMap.type = THREE.PCFSoftShadowMap;
    this.renderer.setPixelRatio(Math.min(2, devicePixelRatio));
    this.canvas = this.renderer.domElement;
    this.canvas.tabIndex = 0;
    this.canvas.setAttribute('role', 'img');
    this.canvas.setAttribute('aria-label', label);
    home.prepend(this.canvas);
    this.home = home;
    this.scene = new THREE.Scene();
    this.sun = new THREE.DirectionalLight('#fff6e8', 1.75);
    this.floor = new THREE.Mesh(new THREE.PlaneGeometry(4000, 4000), new THREE.ShadowMaterial({ color: '#171208', opacity: 0.22 }));
    this.camera = new THREE.PerspectiveCamera(26, 1, 10, 5000);
    this.controls = new OrbitControls(this.camera, this.canvas);
    this.controls.enablePan = false;
    this.controls.addEventListener('change', () => this.draw());
    /** @type {Paper | null} */
    this.paper = null;
    /** @type {import('./pose.js').Motion | null} */
    this.motion = null;
    /** The middle of the made card and its largest measure, mm. */
    this.middle = new THREE.Vector3();
    this.reach = 150;
    this.fraction = 0;
    this.apart = 0;
    this.look = 'aslant';
    /** @type {{right: number, above: number, distance: number} | null} */
    this.eye = null;
    /** @type {() => void} */
    this.leaves = () => {};
    this.controls.addEventListener('start', () => this.leaveEye());
    this.light();
    this.canvas.addEventListener('keydown', (e) => this.key(e));
    this.watcher = new ResizeObserver(() => this.resize());
    this.watcher.observe(home);
  }

  /** A warm sun that throws soft shadows on a table. */
  light() {
    this.scene.add(new THREE.HemisphereLight('#ffffff', '#e9dfcd', 1.95));
    this.sun.castShadow = true;
    this.sun.shadow.mapSize.set(2048, 2048);
    this.sun.shadow.radius = 5;
    this.sun.shadow.bias = -0.0004;
    this.sun.shadow.normalBias = 0.35;
    this.floor.rotation.x = -Math.PI / 2;
    this.floor.receiveShadow = true;
    this.floor.raycast = () => {};
    this.scene.add(this.sun, this.sun.target, this.floor);
  }

  /** Shows a card; the eye stays where it is unless this is the first. @param {any} told */
  show(told) {
    const first = !this.paper;
    this.paper?.drop();
    this.paper = new Paper(told);
    this.scene.add(this.paper.group);
    this.settle(first);
    if (this.eye) this.lookFromEye(this.eye);
    this.pose();
  }

  /** Sets table and light to the card's size. @param {boolean} first */
  settle(first) {
    const box = /** @type {Paper} */ (this.paper).box;
    const size = box.getSize(new THREE.Vector3());
    this.middle = box.getCenter(new THREE.Vector3());
    this.reach = Math.max(size.x, size.y, size.z);
    this.floor.position.y = box.min.y - 0.3;
    this.sun.position.copy(this.middle).add(new THREE.Vector3(-0.45, 1.25, 1.2).multiplyScalar(this.reach * 1.6));
    this.sun.target.position.copy(this.middle);
    const c = this.sun.shadow.camera;
    c.left = c.bottom = -this.reach * 1.9;
    c.right = c.top = this.reach * 1.9;
    c.near = this.reach * 0.2;
    c.far = this.reach * 5;
    c.updateProjectionMatrix();
    this.flatMiddle = null;
    const by = this.middle.clone().sub(this.controls.target);
    this.controls.target.add(by);
    if (!first) this.camera.position.add(by);
    if (first) this.lookFrom(this.look);
    else this.controls.update();
  }

  /**
   * Looks from an eye in front of the middle of the card's front.
   * @param {{right: number, above: number, distance: number}} eye degrees; mm, infinite from far away
   */
  lookFromEye(eye) {
    if (!this.paper) return;
    this.eye = eye;
    const front = new THREE.Vector3(this.middle.x, this.middle.y, this.paper.box.max.z);
    const [r, a] = [eye.right, eye.above].map((d) => (d * Math.PI) / 180);
    const away = Math.min(eye.distance, 30 * this.reach);
    this.controls.target.copy(front);
    this.camera.position.set(Math.cos(a) * Math.sin(r), Math.sin(a), Math.cos(a) * Math.cos(r)).multiplyScalar(away).add(front);
    this.camera.fov = (Math.atan((this.reach * 0.6 * Math.max(1, 1 / (this.camera.aspect || 1))) / away) * 360) / Math.PI;
    this.far(away);
    this.controls.update();
    this.draw();
  }

  /** @param {number} away mm that the camera is off the card */
  far(away) {
    this.camera.near = Math.max(5, away - 4 * this.reach);
    this.camera.far = away + 4000;
    this.camera.updateProjectionMatrix();
  }

  /** Where the card is looked at from, as an eye. */
  asEye() {
    const d = this.camera.position.clone().sub(this.controls.target);
    const far = d.length();
    const angle = (/** @type {number} */ rad) => Math.round((rad * 180) / Math.PI);
    return { right: angle(Math.atan2(d.x, d.z)), above: angle(Math.asin(d.y / far)), distance: Math.round(far) };
  }

  leaveEye() {
    if (!this.eye) return;
    this.eye = null;
    this.leaves();
  }

  /** @param {string} name */
  lookFrom(name) {
    this.leaveEye();
    this.look = name;
    this.camera.fov = 26;
    this.controls.target.copy(this.flatMiddle ? this.middle.clone().lerp(this.flatMiddle, this.fraction) : this.middle);
    this.far(this.reach * 3);
    const d = new THREE.Vector3(.../** @type {any} */ (LOOKS)[name]).normalize();
    const fit = Math.max(1, 1.12 / Math.min(1.12, this.camera.aspect || 1));
    this.camera.position.copy(this.controls.target).addScaledVector(d, this.reach * 2.95 * fit);
    this.controls.update();
    this.draw();
  }

  /** @param {number} fraction from made to flat @param {number} [apart] mm */
  fold(fraction, apart = this.apart) {
    this.fraction = fraction;
    this.apart = apart;
    this.pose();
  }

  pose() {
    if (!this.paper) return;
    const moving = this.motion && this.motion.follows.length === this.paper.panels.length ? this.motion : null;
    moving?.set(this.fraction);
    this.paper.place(this.fraction > 0 ? moving : null, this.apart);
    this.follow(moving ? this.fraction : 0);
    this.draw();
  }

  /**
   * Opens doors by shares of how far each opens; they shut as the card folds.
   * @param {{panels: number[], from: number[], to: number[], opens: number}[]} doors @param {number[]} shares 0 to 1
   */
  swing(doors, shares) {
    if (!this.paper) return;
    this.paper.doors = doors.map((d, i) => ({ panels: new Set(d.panels), turn: turnAbout(d, d.opens * shares[i]) }));
    this.pose();
  }

  /** How the card folds; the eye will follow it to where it then lies. @param {import('./pose.js').Motion} motion */
  folds(motion) {
    this.motion = motion;
    this.flatMiddle = null;
    if (!this.paper || motion.follows.length !== this.paper.panels.length) return;
    motion.set(1);
    this.paper.place(motion, 0);
    this.flatMiddle = new THREE.Box3().setFromObject(this.paper.group).getCenter(new THREE.Vector3());
    this.pose();
  }

  /** Keeps the card in the middle while it folds to one side. @param {number} fraction */
  follow(fraction) {
    if (!this.flatMiddle) return;
    if (this.eye && fraction === 0) return;
    this.leaveEye();
    const by = this.middle.clone().lerp(this.flatMiddle, fraction).sub(this.controls.target);
    if (by.lengthSq() < 1e-6) return;
    this.controls.target.add(by);
    this.camera.position.add(by);
    this.controls.update();
  }

  draw() {
    if (this.asked) return;
    this.asked = requestAnimationFrame(() => {
      this.asked = 0;
      this.renderer.render(this.scene, this.camera);
    });
  }

  resize() {
    const { clientWidth: w, clientHeight: hgt } = this.home;
    if (!w || !hgt) return;
    const before = this.camera.aspect;
    this.renderer.setSize(w, hgt, false);
    this.camera.aspect = w / hgt;
    this.camera.updateProjectionMatrix();
    if (this.paper && before !== this.camera.aspect) this.eye ? this.lookFromEye(this.eye) : this.lookFrom(this.look);
    this.draw();
  }

  /** Turns and zooms by the keyboard. @param {KeyboardEvent} e */
  key(e) {
    const turn = /** @type {any} */ ({ ArrowLeft: [-0.12, 0], ArrowRight: [0.12, 0], ArrowUp: [0, 0.1], ArrowDown: [0, -0.1] })[e.key];
    const zoom = /** @type {any} */ ({ '+': 0.9, '=': 0.9, '-': 1.1 })[e.key];
    if (!turn && !zoom) return;
    e.preventDefault();
    this.leaveEye();
    const at = new THREE.Spherical().setFromVector3(this.camera.position.clone().sub(this.controls.target));
    if (turn) {
      at.theta += turn[0];
      at.phi = Math.min(2.6, Math.max(0.15, at.phi - turn[1]));
    } else at.radius *= zoom;
    this.camera.position.setFromSpherical(at).add(this.controls.target);
    this.controls.update();
    this.draw();
  }

  close() {
    this.watcher.disconnect();
    this.controls.dispose();
    this.paper?.drop();
    this.renderer.dispose();
    this.canvas.remove();
  }
}
/** @param {{from: number[], to: number[]}} line @param {number} angle rad */
function turnAbout(line, angle) {
  const from = new THREE.Vector3().fromArray(line.from);
  const axis = new THREE.Vector3().fromArray(line.to).sub(from).normalize();
  return new THREE.Matrix4().makeTranslation(from.x, from.y, from.z)
    .multiply(new THREE.Matrix4().makeRotationAxis(axis, angle))
    .multiply(new THREE.Matrix4().makeTranslation(-from.x, -from.y, -from.z));
}

/** @type {any} */
Studio.prototype.asked = 0;
/** @type {any} */
Studio.prototype.flatMiddle = null;
