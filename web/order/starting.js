/** What the form starts with, so that a price shows at once. */

import { spoken } from "../lib/lengths.js";

/** @typedef {import("../types.js").Choices} Choices */
/** @typedef {import("../types.js").Order} Order */
/** @typedef {import("../types.js").Slab} Slab */
/** @typedef {import("../lib/lengths.js").Unit} Unit */

const LENGTH_MM = 1500;
const WIDTH_MM = 600;
const PLACE = "indoors";

/**
 * An order of one plain slab of what this workshop offers.
 * @param {Choices} choices
 * @param {Unit} unit
 * @returns {Order}
 */
export function startingOrder(choices, unit) {
  return { slabs: [startingSlab(choices, unit)], delivery: { kind: "collect" } };
}

/**
 * @param {Choices} choices
 * @param {Unit} unit
 * @returns {Slab}
 */
export function startingSlab(choices, unit) {
  const { limits, thicknesses_mm: stocked } = choices;
  const length = Math.min(LENGTH_MM, limits.length_mm ?? LENGTH_MM);
  const width = Math.min(WIDTH_MM, limits.width_mm ?? WIDTH_MM);
  const middle = stocked[Math.floor(stocked.length / 2)] ?? limits.thinnest_mm ?? 40;
  return {
    label: "",
    quantity: 1,
    use: "worktop",
    size_from: "finished",
    outline: { kind: "rectangle", length: spoken(length, unit), width: spoken(width, unit) },
    thickness: spoken(middle, "mm"),
    cutouts: [],
    edges: {},
    shade: { name: choices.shades[0]?.name ?? "" },
    finish: { surface: choices.finishes[0]?.surface ?? "", sealer: sealerFor(choices, PLACE) },
    place: PLACE,
  };
}

/**
 * The sealer to start with in a place: the one asked for where it suits, else the first that does.
 * @param {Choices} choices
 * @param {string} place
 * @param {string} [wanted]
 * @returns {string}
 */
export function sealerFor(choices, place, wanted = "") {
  const suit = choices.sealers.filter((sealer) => sealer.places.includes(place));
  return (suit.find((sealer) => sealer.name === wanted) ?? suit[0] ?? choices.sealers[0])?.name ?? "";
}
