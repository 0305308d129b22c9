import { fineStep, inMm, spoken } from "../lib/lengths.js";
import { sizeMm } from "../order/slabs.js";
import { draw, lengthWords } from "../show.js";

/** @param {unknown} length */
export function mm(length) {
  return inMm(length) ?? 0;
}

/** Anticlockwise from the front left. @param {Outline} outline */
export function outlineOf(outline) {
  const { lengthMm: length, widthMm: width } = sizeMm(outline);
  if (outline.kind === "round") return { x: length / 2, y: length / 2, radius: length / 2 };
  if (outline.kind === "polygon") return (outline.points ?? []).map(({ x, y }) => ({ x: mm(x), y: mm(y), r: mm(outline.corner_radius) }));
  const radius = (/** @type {string} */ corner) => mm(outline.corner_radii?.[corner] ?? outline.corner_radius);
  /** @type {[string, number, number][]} */
  const box = [["front-left", 0, 0], ["front-right", length, 0], ["back-right", length, width], ["back-left", 0, width]];
  return box.flatMap(([corner, x, y]) => {
    if (outline.kind === "l-shape" && outline.notch?.corner === corner) return notched(corner, x, y, outline.notch);
    return [{ x, y, r: radius(corner) }];
  });
}

/** @param {string} corner @param {number} x @param {number} y @param {{length: any, width: any}} notch */
function notched(corner, x, y, { length, width }) {
  const inX = x + (corner.endsWith("left") ? 1 : -1) * mm(length);
  const inY = y + (corner.startsWith("front") ? 1 : -1) * mm(width);
  const [alongX, alongY, inside] = [{ x: inX, y }, { x, y: inY }, { x: inX, y: inY }];
  const firstAlongY = corner === "front-left" || corner === "back-right";
  return firstAlongY ? [alongY, inside, alongX] : [alongX, inside, alongY];
}

/** @param {Cutout} cutout */
export function cutoutOf(cutout) {
  const [x, y] = [mm(cutout.centre?.x), mm(cutout.centre?.y)];
  if (cutout.kind === "circle") return { x, y, radius: mm(cutout.diameter) / 2 };
  if (cutout.kind === "polygon") return (cutout.points ?? []).map((point) => ({ x: mm(point.x), y: mm(point.y) }));
  const [a, b] = [mm(cutout.length) / 2, mm(cutout.width) / 2];
  const r = cutout.kind === "slot" ? Math.min(a, b) : mm(cutout.corner_radius);
  const turn = (Number(cutout.turn_degrees ?? 0) * Math.PI) / 180;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return [[-a, -b], [a, -b], [a, b], [-a, b]].map(([u = 0, v = 0]) => ({ x: x + c * u - s * v, y: y + s * u + c * v, r }));
}

/** @type {(relief: Relief) => Shape} */
export function reliefOf({ outline, at }) {
  const [x, y] = [mm(at.x), mm(at.y)];
  const shape = outlineOf(outline);
  if (!Array.isArray(shape)) return { ...shape, x: shape.x + x, y: shape.y + y };
  return shape.map((corner) => ({ ...corner, x: corner.x + x, y: corner.y + y }));
}

/** @param {Shape} shape */
export function boxOf(shape) {
  if (!Array.isArray(shape)) {
    const { x, y, radius } = shape;
    return { from: { x: x - radius, y: y - radius }, to: { x: x + radius, y: y + radius } };
  }
  const [xs, ys] = [shape.map(({ x }) => x), shape.map(({ y }) => y)];
  const ends = (/** @type {number[]} */ all) => (all.length ? [Math.min(...all), Math.max(...all)] : [0, 0]);
  const [[left = 0, right = 0], [front = 0, back = 0]] = [ends(xs), ends(ys)];
  return { from: { x: left, y: front }, to: { x: right, y: back } };
}

/** Every point is taken through `at`, which turns the paper over. @param {Shape} shape @param {(point: XY) => XY} at @param {number} scale */
export function pathOf(shape, at, scale) {
  if (!Array.isArray(shape)) {
    const { x, y } = at(shape);
    const r = round(shape.radius * scale);
    return `M${round(x - r)} ${round(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
  }
  const parts = shape.map((corner, i) => {
    const before = shape.at(i - 1) ?? corner;
    const after = shape[(i + 1) % shape.length] ?? corner;
    return bend(before, corner, after, at);
  });
  return parts.length ? `M${parts.join("L")}z` : "";
}

/** A point, or a curve between its tangents. @param {XY} before @param {Corner} corner @param {XY} after @param {(point: XY) => XY} at */
function bend(before, corner, after, at) {
  const [one, other] = [towards(corner, before), towards(corner, after)];
  const angle = Math.acos(Math.max(-1, Math.min(1, one.x * other.x + one.y * other.y)));
  const off = Math.min((corner.r ?? 0) / Math.tan(angle / 2), one.length / 2, other.length / 2);
  if (!(off > 0.5)) return words(at(corner));
  const start = at({ x: corner.x + one.x * off, y: corner.y + one.y * off });
  const end = at({ x: corner.x + other.x * off, y: corner.y + other.y * off });
  return `${words(start)}Q${words(at(corner))} ${words(end)}`;
}

/** @param {XY} from @param {XY} to */
function towards(from, to) {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length, length };
}

/** @param {XY} point */
function words({ x, y }) {
  return `${round(x)} ${round(y)}`;
}

/** @param {number} n */
function round(n) {
  return Math.round(n * 10) / 10;
}

/** The nearest line within reach, else the nearest step of the unit. @param {number} atMm @param {number[]} linesMm @param {number} reachMm @param {Unit} unit */
export function snapped(atMm, linesMm, reachMm, unit) {
  const near = linesMm
    .filter((line) => Math.abs(line - atMm) <= reachMm)
    .sort((one, other) => Math.abs(one - atMm) - Math.abs(other - atMm))[0];
  if (near !== undefined) return { mm: near, line: near };
  const step = fineStep(unit);
  return { mm: Math.round(atMm / step) * step, line: null };
}

/** @type {Record<string, XY>} */
const WAYS = { ArrowLeft: { x: -1, y: 0 }, ArrowRight: { x: 1, y: 0 }, ArrowUp: { x: 0, y: 1 }, ArrowDown: { x: 0, y: -1 } };

/** 1 mm, with Shift 10; an eighth of an inch, with Shift a whole. @param {string} key @param {boolean} shift @param {Unit} unit */
export function keyStep(key, shift, unit) {
  const way = Object.hasOwn(WAYS, key) && WAYS[key];
  const step = (unit === "in" ? 3.175 : 1) * (shift ? (unit === "in" ? 8 : 10) : 1);
  return way ? { x: way.x * step || 0, y: way.y * step || 0 } : null;
}

/** From the slab's left end; the first stands in by the overhang. @param {Slab} slab */
export function unitMiddles(slab) {
  let at = mm(slab.rests?.overhang?.left);
  return (slab.rests?.units ?? []).map((/** @type {{width: unknown}} */ { width }) => {
    const wide = mm(width);
    at += wide;
    return at - wide / 2;
  });
}

const LETTER = 9;
const ASCENT = 15;
const DESCENT = 4;

/** Lines and figures keep clear of the words. @param {Movable} movable @param {Frame} frame @param {Unit} unit @param {{x: number | null, y: number | null}} lines @param {DOMRect[]} words */
export function dimensions(movable, { at, box, wide }, unit, lines, words) {
  const here = at(movable);
  const [foot, far] = [at(box.from), at(box.to)];
  const guides = [
    lines.x === null ? null : draw("line", { class: "guide", x1: here.x, x2: here.x, y1: foot.y + 6, y2: far.y - 6 }),
    lines.y === null ? null : draw("line", { class: "guide", x1: foot.x - 6, x2: far.x + 6, y1: here.y, y2: here.y }),
  ].filter((guide) => guide !== null);
  if (!movable.shape) return guides;
  const [x, y] = [lengthWords(spoken(movable.x, unit)), lengthWords(spoken(movable.y, unit))];
  const along = [-6, 18, -16, 27].flatMap((down) => [0.5, 0.3, 0.7, 0.1, 0.9].map((part) => ({ x: foot.x + part * (here.x - foot.x), y: here.y + down })));
  const across = [5, -12, 22, 39].flatMap((up) => [1, -1].map((side) => ({ x: here.x + side * (8 + (LETTER * y.length) / 2), y: foot.y - up })));
  const first = figure(x, along, words, wide);
  const taken = [...words, first.box];
  const second = figure(y, across, taken, wide);
  const row = taken.filter(({ top, bottom }) => top < here.y && here.y < bottom).map(({ left, right }) => [left, right]);
  const column = [...taken, second.box].filter(({ left, right }) => left < here.x && here.x < right).map(({ top, bottom }) => [top, bottom]);
  const path = [...uncovered(foot.x, here.x, row).map(([from, to]) => `M${from} ${here.y}H${to}`), ...uncovered(here.y, foot.y, column).map(([from, to]) => `M${here.x} ${from}V${to}`)];
  return [...guides, draw("path", { class: "dimension", d: path.join("") }), first.drawn, second.drawn];
}

/** At the first of the spots where it covers no words. @param {string} says @param {XY[]} spots @param {DOMRect[]} words @param {number} wide */
function figure(says, spots, words, wide) {
  const boxes = spots.map(({ x, y }) => new DOMRect(x - (LETTER * says.length) / 2, y - ASCENT, LETTER * says.length, ASCENT + DESCENT));
  const meets = (/** @type {DOMRect} */ one) => words.some(({ left, right, top, bottom }) => one.left < right && left < one.right && one.top < bottom && top < one.bottom);
  const i = Math.max(0, boxes.findIndex((each) => each.left > 0 && each.right < wide && !meets(each)));
  const box = /** @type {DOMRect} */ (boxes[i]);
  return { box, drawn: draw("text", { ...spots[i], class: "measure" }, says) };
}

/** The stretches of a line that nothing covers. @param {number} from @param {number} to @param {number[][]} covers */
function uncovered(from, to, covers) {
  /** @type {[number, number][]} */
  const parts = [];
  let at = from;
  for (const [start = 0, end = 0] of covers.sort(([a = 0], [b = 0]) => a - b)) {
    if (start >= to) break;
    if (start > at) parts.push([at, start]);
    at = Math.max(at, end);
  }
  return at < to ? [...parts, [at, to]] : parts;
}
