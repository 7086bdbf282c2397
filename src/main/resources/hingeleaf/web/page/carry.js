// Which panel of the card is under a point of the window: told by the stage, asked by the worksheet.

/** @typedef {{on: string, at: [number, number]}} Spot `at` in mm from the panel's middle */

/** @type {(x: number, y: number) => Spot | null} */
let finder = () => null;

/** @param {(x: number, y: number) => Spot | null} f */
export function findSpotsWith(f) {
  finder = f;
}

/** @param {number} x @param {number} y */
export const dropAt = (x, y) => finder(x, y);
