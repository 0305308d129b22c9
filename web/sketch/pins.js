/** Findings on the plan: a numbered pin where each has its place, leading to its words. */

import { draw } from "../make.js";
import { say } from "../words.js";

const RADIUS = 13;
const APART = 2 * RADIUS + 2;

/**
 * @param {Finding[]} findings in the order of the answer's list
 * @param {number} slab
 * @param {Frame} frame
 */
export function pins(findings, slab, frame) {
  /** @type {XY[]} */
  const taken = [];
  return findings.flatMap((finding, i) => {
    const place = finding.slab === slab ? anchorOf(finding.where_mm) : null;
    if (!place) return [];
    const there = free(kept(frame.at(place), frame), taken);
    taken.push(there);
    return [pin(finding, i + 1, there)];
  });
}

/**
 * The middle of a GeoJSON-shaped place, in mm.
 * @param {{coordinates: any} | undefined} where
 * @returns {XY | null}
 */
export function anchorOf(where) {
  const points = flat(where?.coordinates ?? []);
  if (points.length === 0) return null;
  const mean = (/** @type {0 | 1} */ i) => points.reduce((sum, point) => sum + (point[i] ?? 0), 0) / points.length;
  return { x: mean(0), y: mean(1) };
}

/**
 * @param {any} coordinates
 * @returns {number[][]}
 */
function flat(coordinates) {
  return typeof coordinates[0] === "number" ? [coordinates] : coordinates.flatMap(flat);
}

/**
 * A place that may lie off the slab, kept on the paper.
 * @param {XY} point
 * @param {Frame} frame
 */
function kept({ x, y }, { wide, high }) {
  const inside = (/** @type {number} */ n, /** @type {number} */ most) => Math.max(RADIUS + 2, Math.min(n, most - RADIUS - 2));
  return { x: inside(x, wide), y: inside(y, high) };
}

/**
 * Beside pins that stand there already.
 * @param {XY} point
 * @param {XY[]} taken
 */
function free(point, taken) {
  let { x } = point;
  const met = () => taken.find((other) => Math.hypot(other.x - x, other.y - point.y) < APART);
  for (let other = met(); other; other = met()) x = other.x + APART;
  return { x, y: point.y };
}

/**
 * @param {Finding} finding
 * @param {number} number
 * @param {XY} at
 */
function pin({ says, level }, number, { x, y }) {
  const label = say("sketch.pin", { number, says });
  const link = draw("a", { href: `#finding-${number}`, class: `pin ${level}`, "aria-label": label, "data-pin": number });
  link.append(draw("circle", { cx: x, cy: y, r: RADIUS }), draw("text", { x, y: y + 5 }, String(number)));
  return link;
}
