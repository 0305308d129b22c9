/** Sizes written on the plan: over all, and of what is being moved. */

import { draw } from "../make.js";
import { spoken } from "../lib/lengths.js";
import { say } from "../words.js";

/**
 * Length and width as they were typed.
 * @param {Outline} outline
 * @param {Frame} frame
 */
export function overall({ kind, length, width, diameter }, { at, box }) {
  const [foot, far] = [at(box.from), at(box.to)];
  const [middleX, middleY] = [(foot.x + far.x) / 2, (foot.y + far.y) / 2];
  const front = kind === "round" ? String(diameter) : say("sketch.front", { length: String(length ?? "") });
  const parts = [draw("text", { x: middleX, y: foot.y + 30, class: "size" }, front.trim())];
  if (width !== undefined && kind !== "round")
    parts.push(draw("text", { transform: `translate(${foot.x - 24} ${middleY}) rotate(-90)`, class: "size" }, String(width)));
  return parts;
}

/**
 * How far a thing is from the left and from the front, and the lines that it has come to rest on.
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
  if (movable.opening < 0) return guides;
  const [x, y] = [spoken(movable.x, unit), spoken(movable.y, unit)];
  return [
    ...guides,
    draw("path", { class: "dimension", d: `M${foot.x} ${here.y}H${here.x}V${foot.y}` }),
    draw("text", { x: (foot.x + here.x) / 2, y: here.y - 6, class: "measure" }, x),
    draw("text", { x: here.x + 6, y: (here.y + foot.y) / 2 + 5, class: "measure beside" }, y),
  ];
}
