import { inMm, spoken } from "../lib/lengths.js";

const BOX = ["front", "right", "back", "left"];
const USUAL_MM = { length: 1200, width: 600 };

/** @param {Outline} outline */
export function sidesOf(outline) {
  if (outline.kind === "round") return ["rim"];
  if (outline.kind === "polygon") return (outline.points ?? []).map((_, i) => String(i + 1));
  return outline.kind === "l-shape" ? [...BOX, "notch-x", "notch-y"] : BOX;
}

/** @param {Outline} outline */
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

/** @param {Outline} outline @param {string} kind @param {Unit} unit */
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

/** @param {number} lengthMm @param {number} widthMm @param {Unit} unit */
function cornersOf(lengthMm, widthMm, unit) {
  const [zero, x, y] = [spoken(0, unit), spoken(lengthMm, unit), spoken(widthMm, unit)];
  return [
    { x: zero, y: zero },
    { x, y: zero },
    { x, y },
    { x: zero, y },
  ];
}

const METRIC = { length_mm: 1500, width_mm: 600 };
const INCHES = { length_mm: 60 * 25.4, width_mm: 24 * 25.4 };
const PLACE = "indoors";

/** @param {Choices} choices @param {Unit} unit @returns {Order} */
export function startingOrder(choices, unit) {
  return { slabs: [startingSlab(choices, unit)], delivery: { kind: "collect" }, own: { start: "blank" } };
}

/** @param {Choices} choices @param {Unit} unit */
export function startingSlab(choices, unit) {
  const { start } = choices;
  const usual = unit === "in" ? INCHES : METRIC;
  const length = Math.min(usual.length_mm, start.length_mm);
  const width = Math.min(usual.width_mm, start.width_mm);
  return {
    label: "",
    quantity: 1,
    use: "worktop",
    size_from: "finished",
    outline: { kind: "rectangle", length: spoken(length, unit), width: spoken(width, unit) },
    thickness: spoken(start.thickness_mm, unit, 16),
    cutouts: [],
    edges: {},
    shade: { name: choices.shades[0]?.name ?? "" },
    finish: { surface: choices.finishes[0]?.surface ?? "", sealer: sealerFor(choices, PLACE) },
    place: PLACE,
  };
}

/** The one asked for where it suits the place, else the first that does. @param {Choices} choices @param {string} place @param {string} [wanted] */
export function sealerFor(choices, place, wanted = "") {
  const suit = choices.sealers.filter((sealer) => sealer.places.includes(place));
  return (suit.find((sealer) => sealer.name === wanted) ?? suit[0] ?? choices.sealers[0])?.name ?? "";
}
