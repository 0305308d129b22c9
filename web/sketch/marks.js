/** What is written on the plan: how it lies on the screen, its sizes, its numbered findings. */

import { spoken } from "../lib/lengths.js";
import { draw, lengthWords, say } from "../show.js";

const LEFT = 40;
const RIGHT = 24;
const TOP = 30;
const FOOT = 40;
const HIGHEST = 340;

/** @param {Box} box of the slab, in mm @param {number} wide of the screen's place @returns {Frame} */
export function frameFor(box, wide) {
  const [length, width] = [Math.max(1, box.to.x - box.from.x), Math.max(1, box.to.y - box.from.y)];
  const scale = Math.min((wide - LEFT - RIGHT) / length, HIGHEST / width);
  const left = LEFT + (wide - LEFT - RIGHT - length * scale) / 2;
  const foot = TOP + width * scale;
  return {
    wide,
    high: foot + FOOT,
    scale,
    box,
    at: ({ x, y }) => ({ x: left + (x - box.from.x) * scale, y: foot - (y - box.from.y) * scale }),
    from: ({ x, y }) => ({ x: box.from.x + (x - left) / scale, y: box.from.y + (foot - y) / scale }),
  };
}

/** @param {Outline} outline @param {Frame} frame */
export function overall({ kind, length, width, diameter }, { at, box }) {
  const [foot, far] = [at(box.from), at(box.to)];
  const [middleX, middleY] = [(foot.x + far.x) / 2, (foot.y + far.y) / 2];
  const front = kind === "round" ? lengthWords(diameter) : say("sketch.front", { length: lengthWords(length) });
  const parts = [draw("text", { x: middleX, y: foot.y + 30, class: "size" }, front.trim())];
  if (width !== undefined && kind !== "round")
    parts.push(draw("text", { transform: `translate(${foot.x - 24} ${middleY}) rotate(-90)`, class: "size" }, lengthWords(width)));
  return parts;
}

/**
 * How far a thing is from the left and the front, and the lines it rests on.
 * @param {Movable} movable
 * @param {Frame} frame
 * @param {Unit} unit
 * @param {{x: number | null, y: number | null}} lines
 */
export function dimensions(movable, { at, box }, unit, lines) {
  const here = at(movable);
  const [foot, far] = [at(box.from), at(box.to)];
  const guides = [
    lines.x === null ? null : draw("line", { class: "guide", x1: here.x, x2: here.x, y1: foot.y + 6, y2: far.y - 6 }),
    lines.y === null ? null : draw("line", { class: "guide", x1: foot.x - 6, x2: far.x + 6, y1: here.y, y2: here.y }),
  ].filter((guide) => guide !== null);
  if (!movable.shape) return guides;
  const [x, y] = [lengthWords(spoken(movable.x, unit)), lengthWords(spoken(movable.y, unit))];
  return [
    ...guides,
    draw("path", { class: "dimension", d: `M${foot.x} ${here.y}H${here.x}V${foot.y}` }),
    draw("text", { x: (foot.x + here.x) / 2, y: here.y - 6, class: "measure" }, x),
    draw("text", { x: here.x + 6, y: (here.y + foot.y) / 2 + 5, class: "measure beside" }, y),
  ];
}

const RADIUS = 13;
const APART = 2 * RADIUS + 2;

/**
 * @param {Finding[]} findings in the order of the answer's list
 * @param {number} slab
 * @param {Frame} frame
 * @param {XY[]} taken what is drawn by hand, which no pin may cover
 */
export function pins(findings, slab, frame, taken) {
  return findings.flatMap((finding, i) => {
    const place = finding.slab === slab ? anchorOf(finding.where_mm) : null;
    if (!place) return [];
    const there = free(kept(frame.at(place), frame), taken, frame.wide);
    taken.push(there);
    return [pin(finding, i + 1, there)];
  });
}

/** The middle of a GeoJSON-shaped place, in mm. @param {{coordinates: any} | undefined} where */
export function anchorOf(where) {
  const points = flat(where?.coordinates ?? []);
  if (points.length === 0) return null;
  const mean = (/** @type {0 | 1} */ i) => points.reduce((sum, point) => sum + (point[i] ?? 0), 0) / points.length;
  return { x: mean(0), y: mean(1) };
}

/** @param {any} coordinates @returns {number[][]} */
function flat(coordinates) {
  return typeof coordinates[0] === "number" ? [coordinates] : coordinates.flatMap(flat);
}

/** A place that may lie off the slab, kept on the paper. @param {XY} point @param {Frame} frame */
function kept({ x, y }, { wide, high }) {
  const inside = (/** @type {number} */ n, /** @type {number} */ most) => Math.max(RADIUS + 2, Math.min(n, most - RADIUS - 2));
  return { x: inside(x, wide), y: inside(y, high) };
}

/** Beside what stands there, towards the middle. @param {XY} point @param {XY[]} taken @param {number} wide */
function free({ x, y }, taken, wide) {
  const step = x > wide / 2 ? -APART - 1 : APART + 1;
  const met = () => taken.find((other) => Math.hypot(other.x - x, other.y - y) < APART);
  for (let other = met(); other; other = met()) x = other.x + step;
  return { x, y };
}

/** @param {Finding} finding @param {number} number @param {XY} at */
function pin({ says, level }, number, { x, y }) {
  const label = say("sketch.pin", { number, says });
  const link = draw("a", { href: `#finding-${number}`, class: `pin ${level}`, "aria-label": label, "data-pin": number });
  link.append(draw("circle", { cx: x, cy: y, r: RADIUS }), draw("text", { x, y: y + 5 }, String(number)));
  return link;
}
