/** Where a thing that is dragged comes to rest: on a centre line, level with another, or on the grid. */

import { fineStep } from "../lib/lengths.js";

/**
 * The nearest line within reach, else the nearest step of the unit.
 * @param {number} atMm
 * @param {number[]} linesMm centre lines, and the places of other openings
 * @param {number} reachMm
 * @param {Unit} unit
 * @returns {{mm: number, line: number | null}}
 */
export function snapped(atMm, linesMm, reachMm, unit) {
  const near = linesMm
    .filter((line) => Math.abs(line - atMm) <= reachMm)
    .sort((one, other) => Math.abs(one - atMm) - Math.abs(other - atMm))[0];
  if (near !== undefined) return { mm: near, line: near };
  const step = fineStep(unit);
  return { mm: Math.round(atMm / step) * step, line: null };
}

/**
 * How far one press of an arrow key moves: 1 mm, with Shift 10; an eighth of an inch, with Shift a whole.
 * @param {string} key
 * @param {boolean} shift
 * @param {Unit} unit
 * @returns {{x: number, y: number} | null} in mm, y to the back
 */
export function keyStep(key, shift, unit) {
  const ways = /** @type {Record<string, [number, number]>} */ ({
    ArrowLeft: [-1, 0],
    ArrowRight: [1, 0],
    ArrowUp: [0, 1],
    ArrowDown: [0, -1],
  });
  const way = Object.hasOwn(ways, key) ? ways[key] : undefined;
  if (!way) return null;
  const [small, large] = unit === "in" ? [3.175, 25.4] : [1, 10];
  const step = shift ? large : small;
  return { x: way[0] * step || 0, y: way[1] * step || 0 };
}
