// Lengths as makers write them: steps from mark to mark, and numbers from what was dragged.

/** @typedef {{unit: string, step: number}} Ruler `step` in mm, between two marks */

const MM = { mm: 1, cm: 10, in: 25.4 };

/**
 * The mark next to a length, in a direction.
 * @param {number} mm @param {number} by how many marks @param {Ruler} ruler
 */
export function stepped(mm, by, ruler) {
  const at = mm / ruler.step;
  const on = Math.round(at);
  const base = Math.abs(at - on) < 1e-6 ? on : by > 0 ? Math.floor(at) : Math.ceil(at);
  return (base + by) * ruler.step;
}

/** The nearest mark. @param {number} mm @param {Ruler} ruler */
export const marked = (mm, ruler) => Math.round(mm / ruler.step) * ruler.step;

/**
 * A length in a unit: decimals of metric ones, fractions of inches.
 * @param {number} mm @param {string} unit
 */
export function written(mm, unit) {
  const n = mm / MM[/** @type {keyof typeof MM} */ (unit)];
  return (unit === 'in' ? mixed(n) : trimmed(n)) + ' ' + unit;
}

/** @param {number} n */
function trimmed(n) {
  const text = n.toFixed(3).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

/** @param {number} n */
function mixed(n) {
  for (const below of [1, 2, 4, 8, 16, 32, 64]) {
    const top = Math.round(Math.abs(n) * below);
    if (Math.abs(Math.abs(n) * below - top) < 1e-6 * below) return fraction(top, below, n < 0);
  }
  return trimmed(n);
}

/** @param {number} top @param {number} below @param {boolean} minus */
function fraction(top, below, minus) {
  const whole = Math.floor(top / below);
  const part = top % below ? `${top % below}/${below}` : '';
  const text = [whole || (part ? '' : 0), part].filter((t) => t !== '').join(' ');
  return (minus && top ? '-' : '') + text;
}
