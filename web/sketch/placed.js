/** Writes a place that was drawn into the order, in the customer's unit. */

import { spoken } from "../lib/lengths.js";
import { written } from "../lib/pointer.js";

/**
 * Write a place; a coordinate that has not moved stays as it was typed.
 * @param {Order} order
 * @param {string} at
 * @param {XY} here
 * @param {XY} there
 * @param {Unit} unit
 * @param {string} [inX] the member that x is written to
 * @param {string} [inY]
 */
export function placed(order, at, here, there, unit, inX = "x", inY = "y") {
  const first = Math.abs(there.x - here.x) < 0.01 ? order : written(order, `${at}/${inX}`, spoken(there.x, unit));
  return Math.abs(there.y - here.y) < 0.01 ? first : written(first, `${at}/${inY}`, spoken(there.y, unit));
}
