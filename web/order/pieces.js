/** Pieces to start from: a slab already filled with what is usual for it. */

import { spoken } from "../lib/lengths.js";
import { say } from "../words.js";
import { PIECES } from "./cutouts.js";
import { newRests } from "./rests.js";
import { sealerFor, startingSlab } from "./starting.js";

/**
 * @typedef {{size: [number, number], use?: string, place?: string, walls?: string[], notch?: string,
 *   round?: boolean, openings?: [name: string, x: number, y: number][], rests?: string,
 *   units?: [width: number, what: string][]}} Sheet
 */

/** @type {Readonly<Record<string, Sheet>>} sizes in mm, common practice, no source */
const SHEETS = {
  blank: { size: [1500, 600] },
  basin: { size: [1200, 600], place: "wet-room", walls: ["back"], openings: [["basin", 600, 260], ["tap", 600, 520]], units: [[300, "base"], [600, "basin"], [300, "base"]] },
  hob: { size: [1800, 620], walls: ["back"], openings: [["hob", 900, 310]], units: [[600, "base"], [600, "hob"], [600, "base"]] },
  table: { size: [900, 900], round: true, use: "table", rests: "legs" },
  "l-left": { size: [2000, 1200], notch: "front-right", walls: ["back", "left"], rests: "full" },
  "l-right": { size: [2000, 1200], notch: "front-left", walls: ["back", "right"], rests: "full" },
  hearth: { size: [1000, 500], use: "hearth", walls: ["back"], rests: "full" },
  outdoor: { size: [1800, 700], place: "outdoors", openings: [["appliance", 900, 350]], rests: "frame" },
};
const NOTCH_MM = { length: 1400, width: 600 };

/**
 * The slab of a starting piece, in the shade and surface of the one that it takes the place of.
 * @param {string} name
 * @param {Slab | undefined} like
 * @param {Choices} choices
 * @param {Unit} unit
 * @returns {Slab}
 */
export function pieceFrom(name, like, choices, unit) {
  const sheet = SHEETS[name] ?? /** @type {Sheet} */ (SHEETS.blank);
  const plain = startingSlab(choices, unit);
  const place = sheet.place ?? plain.place ?? "";
  const finish = { ...(like?.finish ?? plain.finish), sealer: sealerFor(choices, place, like?.finish?.sealer) };
  /** @type {Slab} */
  const slab = {
    ...plain,
    use: sheet.use ?? plain.use,
    outline: name === "blank" ? plain.outline : outlineFor(sheet, unit),
    cutouts: (sheet.openings ?? []).map((opening) => cutoutFor(opening, unit)),
    edges: Object.fromEntries((sheet.walls ?? []).map((side) => [side, { profile: "wall" }])),
    shade: like?.shade ?? plain.shade,
    finish,
    place,
  };
  const units = sheet.units?.map(([width, what]) => ({ width: spoken(width, unit), for: what }));
  if (units) slab.rests = { kind: "units", units };
  else if (sheet.rests) slab.rests = newRests(sheet.rests, slab, unit);
  return slab;
}

/**
 * @param {Sheet} sheet
 * @param {Unit} unit
 * @returns {Outline}
 */
function outlineFor({ size: [long, wide], notch, round }, unit) {
  const [length, width] = [spoken(long, unit), spoken(wide, unit)];
  if (round) return { kind: "round", diameter: length };
  if (!notch) return { kind: "rectangle", length, width };
  const cut = { corner: notch, length: spoken(NOTCH_MM.length, unit), width: spoken(NOTCH_MM.width, unit) };
  return { kind: "l-shape", length, width, notch: cut };
}

/**
 * @param {[name: string, x: number, y: number]} opening
 * @param {Unit} unit
 * @returns {Cutout}
 */
function cutoutFor([name, x, y], unit) {
  const { kind, rim, heat, ...sizes } = PIECES[name === "appliance" ? "hob" : name] ?? /** @type {any} */ (PIECES.round);
  const lengths = Object.fromEntries(Object.entries(sizes).map(([key, mm]) => [key, spoken(Number(mm), unit)]));
  const centre = { x: spoken(x, unit), y: spoken(y, unit) };
  return { label: say(`piece.${name}`), kind, ...lengths, centre, rim, ...(heat && { heat }) };
}
