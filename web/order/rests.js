/** What each kind of rest starts with. */

import { spoken } from "../lib/lengths.js";
import { sidesOf, sizeMm } from "./outlines.js";

const UNIT_MM = 600;
const BEARING_MM = 50;
const LEG_IN_MM = 100;
const MOST_SIDES = 20;

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
  const starts = {
    units: { units: Array.from({ length: count }, () => ({ width: said(each), for: "base" })) },
    frame: { sides: sidesOf(slab.outline).slice(0, MOST_SIDES), width: said(BEARING_MM) },
    ends: { depth: said(BEARING_MM * 2) },
    legs: { at: legsAt(slab, lengthMm, widthMm, said), pad: said(BEARING_MM) },
    ledges: { lines: [0, lengthMm].map((x) => ledge(said, x, widthMm)) },
    full: {},
  };
  const start = starts[/** @type {keyof typeof starts} */ (kind)];
  return start && { kind, ...start };
}

/**
 * Four legs, in from the corners; under a round slab in from its rim.
 * @param {Slab} slab
 * @param {number} lengthMm
 * @param {number} widthMm
 * @param {(mm: number) => string} said
 */
function legsAt({ outline }, lengthMm, widthMm, said) {
  const round = outline.kind === "round";
  const exactMm = round ? LEG_IN_MM + (lengthMm / 2 - LEG_IN_MM) * (1 - Math.SQRT1_2) : LEG_IN_MM;
  const inMm = Math.round(exactMm / 5) * 5;
  return [inMm, lengthMm - inMm].flatMap((x) => [inMm, widthMm - inMm].map((y) => ({ x: said(x), y: said(y) })));
}

/**
 * @param {(mm: number) => string} said
 * @param {number} x
 * @param {number} widthMm
 */
function ledge(said, x, widthMm) {
  return { start: { x: said(x), y: said(0) }, end: { x: said(x), y: said(widthMm) }, depth: said(BEARING_MM) };
}
