/** What each kind of rest starts with. */

import { spoken } from "../lib/lengths.js";
import { sizeMm } from "./outlines.js";

/** @typedef {import("../types.js").Slab} Slab */
/** @typedef {import("../lib/lengths.js").Unit} Unit */

const UNIT_MM = 600;
const BEARING_MM = 50;
const LEG_IN_MM = 100;

/**
 * Rests of this kind for a slab, or undefined where the customer does not know.
 * @param {string} kind
 * @param {Slab} slab
 * @param {Unit} unit
 * @returns {Slab["rests"]}
 */
export function newRests(kind, slab, unit) {
  const { lengthMm, widthMm } = sizeMm(slab.outline);
  const said = (/** @type {number} */ mm) => spoken(mm, unit);
  const count = Math.max(1, Math.round(lengthMm / UNIT_MM));
  const each = Math.round(lengthMm / count / 5) * 5;
  const corners = [LEG_IN_MM, lengthMm - LEG_IN_MM].flatMap((x) =>
    [LEG_IN_MM, widthMm - LEG_IN_MM].map((y) => ({ x: said(x), y: said(y) })),
  );
  const starts = {
    units: { units: Array.from({ length: count }, () => ({ width: said(each), for: "base" })) },
    frame: { sides: ["front", "back", "left", "right"], width: said(BEARING_MM) },
    ends: { depth: said(BEARING_MM * 2) },
    legs: { at: corners, pad: said(BEARING_MM) },
    ledges: { lines: [0, lengthMm].map((x) => ledge(said, x, widthMm)) },
    full: {},
  };
  const start = starts[/** @type {keyof typeof starts} */ (kind)];
  return start && { kind, ...start };
}

/**
 * @param {(mm: number) => string} said
 * @param {number} x
 * @param {number} widthMm
 */
function ledge(said, x, widthMm) {
  return { start: { x: said(x), y: said(0) }, end: { x: said(x), y: said(widthMm) }, depth: said(BEARING_MM) };
}
