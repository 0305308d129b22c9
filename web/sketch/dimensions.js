import { spoken } from "../lib/lengths.js";
import { draw, lengthWords } from "../show.js";

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
