// Where every panel is between made and flat: reckoned by the server, interpolated here.
import * as THREE from 'three';

/** @param {number[]} p nine numbers of a rotation by rows, three of a shift */
export function matrixOf(p) {
  return new THREE.Matrix4().set(p[0], p[1], p[2], p[9], p[3], p[4], p[5], p[10], p[6], p[7], p[8], p[11], 0, 0, 0, 1);
}

/** @typedef {{turns: any[], shifts: any[]}} Path */

export class Motion {
  /** @param {{follows: number[], paths: number[][][]}} told */
  constructor(told) {
    this.follows = told.follows;
    /** @type {Path[]} */
    this.paths = told.paths.map((poses) => ({
      turns: poses.map((p) => new THREE.Quaternion().setFromRotationMatrix(matrixOf(p))),
      shifts: poses.map((p) => new THREE.Vector3(p[9], p[10], p[11])),
    }));
    this.now = this.paths.map(() => new THREE.Matrix4());
    this.turn = new THREE.Quaternion();
    this.shift = new THREE.Vector3();
    this.one = new THREE.Vector3(1, 1, 1);
  }

  /** @param {number} fraction 0 made, 1 flat */
  set(fraction) {
    this.paths.forEach((path, i) => {
      const last = path.turns.length - 1;
      const at = Math.min(last, Math.max(0, fraction * last));
      const k = Math.min(last - 1, Math.floor(at));
      if (last === 0) {
        this.now[i].compose(path.shifts[0], path.turns[0], this.one);
        return;
      }
      this.turn.slerpQuaternions(path.turns[k], path.turns[k + 1], at - k);
      this.shift.lerpVectors(path.shifts[k], path.shifts[k + 1], at - k);
      this.now[i].compose(this.shift, this.turn, this.one);
    });
  }

  /** @param {number} panel */
  of(panel) {
    return this.now[this.follows[panel]];
  }
}
