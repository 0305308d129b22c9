/** What can be moved on the plan: openings by their centres, the outline by handles. */

import { spoken } from "../lib/lengths.js";
import { written } from "../lib/pointer.js";
import { say } from "../words.js";
import { boxOf, cutoutOf, mm } from "./geometry.js";
import { handles } from "./handles.js";
import { placed } from "./placed.js";

/** @typedef {"x" | "y" | "xy"} Axes */
/**
 * @typedef {{key: string, name: string, x: number, y: number, axes: Axes, opening: number,
 *   field: string, put: (order: Order, to: XY) => Order}} Movable
 * its place in mm; `opening` is -1 for a handle; `field` and `put` are where it stands in the order
 */

/**
 * @param {Order} order
 * @param {number} number of the slab
 * @param {Unit} unit
 * @returns {Movable[]}
 */
export function movables(order, number, unit) {
  const slab = order.slabs[number];
  if (!slab) return [];
  const at = `/slabs/${number}`;
  const openings = (slab.cutouts ?? []).map((cutout, i) => opening(cutout, i, at, unit));
  return [...openings, ...handles(slab.outline, `${at}/outline`, unit)];
}

/**
 * @param {Cutout} cutout
 * @param {number} i
 * @param {string} slab
 * @param {Unit} unit
 * @returns {Movable}
 */
function opening(cutout, i, slab, unit) {
  const at = `${slab}/cutouts/${i}`;
  const name = cutout.label || say("at.opening", { number: i + 1 });
  const { from, to } = boxOf(cutoutOf(cutout));
  const here = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const put = (/** @type {Order} */ order, /** @type {XY} */ there) =>
    cutout.points ? shifted(order, at, cutout, there.x - here.x, there.y - here.y, unit) : placed(order, `${at}/centre`, here, there, unit);
  return { key: `opening-${i}`, name, ...here, axes: "xy", opening: i, field: at, put };
}

/**
 * @param {Order} order
 * @param {string} at
 * @param {Cutout} cutout
 * @param {number} dx
 * @param {number} dy
 * @param {Unit} unit
 */
function shifted(order, at, cutout, dx, dy, unit) {
  const points = (cutout.points ?? []).map(({ x, y }) => ({ x: spoken(mm(x) + dx, unit), y: spoken(mm(y) + dy, unit) }));
  return written(order, `${at}/points`, points);
}
