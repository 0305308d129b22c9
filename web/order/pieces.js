/** Openings that one press adds, and slabs to start from: each filled with what is usual. */

import { fineStep, inMm, spoken } from "../lib/lengths.js";
import { say } from "../show.js";
import { newRests, roomMm, sealerFor, sizeMm, startingSlab } from "./slabs.js";

/** @type {Readonly<Record<string, Piece>>} sizes in mm, common practice, no source */
export const PIECES = {
  basin: { kind: "circle", diameter: 360, rim: "shown" },
  sink: { kind: "rectangle", length: 500, width: 400, corner_radius: 25, rim: "shown" },
  tap: { kind: "circle", diameter: 35, rim: "covered" },
  hob: { kind: "rectangle", length: 560, width: 480, corner_radius: 12, rim: "covered", heat: true },
  round: { kind: "circle", diameter: 150, rim: "shown" },
  rectangle: { kind: "rectangle", length: 300, width: 200, corner_radius: 15, rim: "shown" },
  slot: { kind: "slot", length: 250, width: 40, rim: "shown" },
};
/** @type {Readonly<Record<string, Piece>>} sizes in mm, common practice, no source */
const RELIEFS = {
  drainer: { kind: "drainer", length: 350, width: 400, depth: 6, grooves: 7, fall: 4 },
  recess: { kind: "recess", length: 150, width: 100, depth: 8 },
  rebate: { kind: "rebate", length: 300, width: 20, depth: 10 },
};
const LENGTHS = ["diameter", "length", "width", "corner_radius", "depth", "fall"];
const TRIES = [1 / 2, 1 / 4, 3 / 4, 1 / 8, 7 / 8];
const APART_MM = 80;
const BEHIND_MM = 65;

/**
 * @param {string} name one of PIECES
 * @param {string} label what the customer calls it
 * @param {Slab} slab
 * @param {Unit} unit
 */
export function newCutout(name, label, slab, unit) {
  const piece = PIECES[name] ?? /** @type {Piece} */ (PIECES.round);
  const { x, y } = placeFor(name, piece, slab);
  return { label, ...inUnit(piece, unit), centre: placeIn(x, y, unit) };
}

/**
 * Make a place that is thinner; its place is its front left corner.
 * @param {string} name one of RELIEFS
 * @param {string} label
 * @param {Slab} slab
 * @param {Unit} unit
 */
export function newRelief(name, label, slab, unit) {
  const piece = RELIEFS[name] ?? /** @type {Piece} */ (RELIEFS.recess);
  const { x, y } = placeFor(name, piece, slab);
  const { length, width, ...rest } = inUnit(piece, unit);
  const { from, to, widthMm } = roomMm(slab.outline);
  const corner = (/** @type {number} */ middle, size = 0, low = 0, high = 0) => Math.max(low, Math.min(middle - size / 2, high - size));
  const at = placeIn(corner(x, piece.length, from, to), corner(y, piece.width, 0, widthMm), unit);
  return { label, ...rest, outline: { kind: "rectangle", length, width }, at };
}

/** @type {(piece: Piece, unit: Unit) => any} */
function inUnit(piece, unit) {
  const said = Object.entries(piece).map(([key, value]) => [key, LENGTHS.includes(key) ? spoken(Number(value), unit) : value]);
  return Object.fromEntries(said);
}

/** @type {(x: number, y: number, unit: Unit) => Place} */
function placeIn(x, y, unit) {
  return { x: spoken(fine(x, unit), unit), y: spoken(fine(y, unit), unit) };
}

/** @param {number} mm @param {Unit} unit */
function fine(mm, unit) {
  return Math.round(mm / fineStep(unit)) * fineStep(unit);
}

/**
 * A tap goes behind the last basin; anything else to the first free place along the middle.
 * @param {string} name
 * @param {Piece} piece
 * @param {Slab} slab
 */
function placeFor(name, piece, slab) {
  const { from, to, widthMm } = roomMm(slab.outline);
  const boxes = [...(slab.cutouts ?? []).map(boxOf), ...(slab.reliefs ?? []).map(reliefBoxOf)];
  const big = boxes.filter((box) => box.half > 60).pop();
  if (name === "tap") {
    const y = Math.max(widthMm - BEHIND_MM, widthMm / 2);
    return { x: freeX(big ? big.x : (from + to) / 2, y, boxes), y };
  }
  const half = Math.max(piece.diameter ?? 0, piece.length ?? 0) / 2;
  const free = TRIES.map((part) => from + part * (to - from)).find((x) =>
    boxes.every((box) => Math.abs(box.x - x) > box.half + half + APART_MM),
  );
  return { x: free ?? (from + to) / 2, y: widthMm / 2 };
}

/** @param {number} x @param {number} y @param {{x: number, y: number, half: number}[]} boxes */
function freeX(x, y, boxes) {
  const taken = (/** @type {number} */ at) =>
    boxes.some((box) => box.half <= 60 && Math.abs(box.x - at) < APART_MM && Math.abs(box.y - y) < APART_MM);
  let at = x;
  for (let step = 1; taken(at) && step < 8; step += 1) at = x + step * APART_MM;
  return at;
}

/** @param {Cutout} cutout */
function boxOf(cutout) {
  const half = Math.max(inMm(cutout.diameter) ?? 0, inMm(cutout.length) ?? 0) / 2;
  return { x: inMm(cutout.centre?.x) ?? 0, y: inMm(cutout.centre?.y) ?? 0, half };
}

/** @type {(relief: Relief) => {x: number, y: number, half: number}} */
function reliefBoxOf({ at, outline }) {
  const { lengthMm, widthMm } = sizeMm(outline);
  return { x: (inMm(at.x) ?? 0) + lengthMm / 2, y: (inMm(at.y) ?? 0) + widthMm / 2, half: lengthMm / 2 };
}

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

/** @param {Sheet} sheet @param {Unit} unit */
function outlineFor({ size: [long, wide], notch, round }, unit) {
  const [length, width] = [spoken(long, unit), spoken(wide, unit)];
  if (round) return { kind: "round", diameter: length };
  if (!notch) return { kind: "rectangle", length, width };
  const cut = { corner: notch, length: spoken(NOTCH_MM.length, unit), width: spoken(NOTCH_MM.width, unit) };
  return { kind: "l-shape", length, width, notch: cut };
}

/** @param {[name: string, x: number, y: number]} opening @param {Unit} unit */
function cutoutFor([name, x, y], unit) {
  const piece = PIECES[name === "appliance" ? "hob" : name] ?? /** @type {Piece} */ (PIECES.round);
  return { label: say(`piece.${name}`), ...inUnit(piece, unit), centre: placeIn(x, y, unit) };
}
