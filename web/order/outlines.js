/** Outlines: their sides, their rough size, and what becomes of one when its kind changes. */

import { inMm, spoken } from "../lib/lengths.js";

const BOX = ["front", "right", "back", "left"];
const USUAL_MM = { length: 1200, width: 600 };

/**
 * The names of an outline's sides.
 * @param {Outline} outline
 * @returns {string[]}
 */
export function sidesOf(outline) {
  if (outline.kind === "round") return ["rim"];
  if (outline.kind === "polygon") return (outline.points ?? []).map((_, i) => String(i + 1));
  return outline.kind === "l-shape" ? [...BOX, "notch-x", "notch-y"] : BOX;
}

/**
 * Length and width of the box round an outline, as far as they can be read, in mm.
 * @param {Outline} outline
 */
export function sizeMm(outline) {
  if (outline.kind === "polygon") return spanMm(outline.points ?? []);
  const across = outline.kind === "round" ? outline.diameter : undefined;
  return {
    lengthMm: inMm(across ?? outline.length) ?? USUAL_MM.length,
    widthMm: inMm(across ?? outline.width) ?? USUAL_MM.width,
  };
}

/** @param {{x: unknown, y: unknown}[]} points */
function spanMm(points) {
  const xs = points.map((point) => inMm(point.x) ?? 0);
  const ys = points.map((point) => inMm(point.y) ?? 0);
  return { lengthMm: Math.max(0, ...xs), widthMm: Math.max(0, ...ys) };
}

/**
 * Where an opening may first be set down, in mm: of an L, the part that is as deep as the whole.
 * @param {Outline} outline
 */
export function roomMm(outline) {
  const { lengthMm, widthMm } = sizeMm(outline);
  const { corner, length } = outline.notch ?? {};
  const cut = outline.kind === "l-shape" ? Math.min(inMm(length) ?? 0, lengthMm) : 0;
  const from = corner?.endsWith("left") ? cut : 0;
  return { from, to: from + lengthMm - cut, widthMm };
}

/**
 * The same slab in another kind of outline, about as large.
 * @param {Outline} outline
 * @param {string} kind
 * @param {Unit} unit
 * @returns {Outline}
 */
export function inKind(outline, kind, unit) {
  const { lengthMm, widthMm } = sizeMm(outline);
  const length = outline.length ?? spoken(lengthMm, unit);
  const width = outline.width ?? spoken(widthMm, unit);
  const half = (/** @type {number} */ mm) => spoken(Math.round(mm / 2 / 5) * 5, unit);
  if (kind === "round") return { kind, diameter: spoken(Math.min(lengthMm, 2 * widthMm), unit) };
  if (kind === "polygon") return { kind, points: cornersOf(lengthMm, widthMm, unit) };
  if (kind === "rectangle") return { kind, length, width };
  const notch = { corner: "front-right", length: half(lengthMm), width: half(widthMm) };
  return { kind, length, width, notch };
}

/**
 * @param {number} lengthMm
 * @param {number} widthMm
 * @param {Unit} unit
 */
function cornersOf(lengthMm, widthMm, unit) {
  const [zero, x, y] = [spoken(0, unit), spoken(lengthMm, unit), spoken(widthMm, unit)];
  return [
    { x: zero, y: zero },
    { x, y: zero },
    { x, y },
    { x: zero, y },
  ];
}
