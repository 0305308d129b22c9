/** The handles by which an outline is drawn larger or smaller. */

import { spoken } from "../lib/lengths.js";
import { written } from "../lib/pointer.js";
import { sizeMm } from "../order/outlines.js";
import { say } from "../words.js";
import { mm } from "./geometry.js";
import { placed } from "./placed.js";

/** @typedef {Movable["put"]} Put */

const SMALLEST_MM = 50;

/**
 * @param {Outline} outline
 * @param {string} at
 * @param {Unit} unit
 * @returns {Movable[]}
 */
export function handles(outline, at, unit) {
  const { lengthMm: length, widthMm: width } = sizeMm(outline);
  if (outline.kind === "polygon") return corners(outline, at, unit);
  const size = (/** @type {string} */ name, /** @type {"x" | "y"} */ axis) => (/** @type {Order} */ order, /** @type {XY} */ to) =>
    written(order, `${at}/${name}`, spoken(Math.max(SMALLEST_MM, to[axis]), unit));
  if (outline.kind === "round") return [handle("diameter", at, { x: length, y: length / 2 }, "x", size("diameter", "x"))];
  const { right, back, cutX, cutY } = cutOf(outline);
  const middleY = right ? (back ? (width - cutY) / 2 : (width + cutY) / 2) : width / 2;
  const middleX = back ? (right ? (length - cutX) / 2 : (length + cutX) / 2) : length / 2;
  const edges = [
    handle("length", at, { x: length, y: middleY }, "x", size("length", "x")),
    handle("width", at, { x: middleX, y: width }, "y", size("width", "y")),
  ];
  return outline.kind === "l-shape" ? [...edges, insideCorner(outline, at, unit)] : edges;
}

/**
 * @param {string} name
 * @param {string} at
 * @param {XY} here
 * @param {Axes} axes
 * @param {Put} put
 * @returns {Movable}
 */
function handle(name, at, here, axes, put) {
  return { key: `handle-${name}`, name: say(`sketch.${name}`), ...here, axes, opening: -1, field: `${at}/${name}`, put };
}

/** @param {Outline} outline */
function cutOf({ kind, notch }) {
  if (kind !== "l-shape" || !notch) return { right: false, back: false, cutX: 0, cutY: 0 };
  const { corner, length, width } = notch;
  return { right: corner.endsWith("right"), back: corner.startsWith("back"), cutX: mm(length), cutY: mm(width) };
}

/**
 * The corner inside an L: it draws both sizes of what is left out.
 * @param {Outline} outline
 * @param {string} at
 * @param {Unit} unit
 */
function insideCorner(outline, at, unit) {
  const { lengthMm: length, widthMm: width } = sizeMm(outline);
  const { right, back, cutX, cutY } = cutOf(outline);
  const room = (/** @type {number} */ cut, /** @type {number} */ whole) => Math.max(SMALLEST_MM, Math.min(cut, whole - SMALLEST_MM));
  /** @type {Put} */
  const put = (order, to) => {
    const there = { x: room(right ? length - to.x : to.x, length), y: room(back ? width - to.y : to.y, width) };
    return placed(order, `${at}/notch`, { x: cutX, y: cutY }, there, unit, "length", "width");
  };
  return handle("notch", at, { x: right ? length - cutX : cutX, y: back ? width - cutY : cutY }, "xy", put);
}

/**
 * @param {Outline} outline
 * @param {string} at
 * @param {Unit} unit
 * @returns {Movable[]}
 */
function corners(outline, at, unit) {
  return (outline.points ?? []).map((point, i) => {
    const here = { x: mm(point.x), y: mm(point.y) };
    const field = `${at}/points/${i}`;
    /** @type {Put} */
    const put = (order, to) => placed(order, field, here, to, unit);
    return { key: `handle-${i}`, name: say("outline.point", { number: i + 1 }), ...here, axes: "xy", opening: -1, field, put };
  });
}
