/** What the form starts with, so that a price shows at once. */

import { spoken } from "../lib/lengths.js";

const METRIC = { length_mm: 1500, width_mm: 600 };
const INCHES = { length_mm: 60 * 25.4, width_mm: 24 * 25.4 };
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
  const usual = unit === "in" ? INCHES : METRIC;
  const length = Math.min(usual.length_mm, limits.length_mm ?? Infinity);
  const width = Math.min(usual.width_mm, limits.width_mm ?? Infinity);
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
