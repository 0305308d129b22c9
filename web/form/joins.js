import { read } from "../lib/json.js";
import { inMm, shownIn, spoken, withPoint, withUnit } from "../lib/lengths.js";
import { sidesOf } from "../order/slabs.js";
import { elements, mark, marked, one, say, write } from "../show.js";
import { mm, outlineOf } from "../sketch/geometry.js";
import { pointerOf } from "./fields.js";
import { offer, sideOption } from "./options.js";

const JOIN_MM = 2;
const PATIENCE_MS = 15_000;
/** @type {Order | null} whose L can be made in one piece */
let castable = null;

/**
 * A join names slabs by number, and goes with one that is gone.
 * @param {Order} order @param {Slab[]} slabs @param {Join[]} [more]
 */
export function withSlabs({ joins = [], ...order }, slabs, more = []) {
  const end = (/** @type {JoinEnd} */ { slab, side }) => ({ slab: slabs.indexOf(/** @type {Slab} */ (order.slabs[slab])), side });
  const counted = joins.map(({ one, other, gap }) => ({ one: end(one), other: end(other), gap }));
  const all = [...counted.filter(({ one, other }) => one.slab >= 0 && other.slab >= 0), ...more];
  return { ...order, slabs, ...(all.length && { joins: all }) };
}

/** @param {Store} store */
export function addJoin(store) {
  const { order, slab, unit } = store;
  const one = Math.max(0, slab - 1);
  const end = (/** @type {number} */ number, /** @type {string} */ wanted) => {
    const sides = sidesOf(order.slabs[number]?.outline ?? { kind: "rectangle" });
    return { slab: number, side: sides.includes(wanted) ? wanted : (sides[0] ?? "") };
  };
  const join = { one: end(one, "right"), other: end(one + 1, "left"), gap: spoken(JOIN_MM, unit) };
  store.change({ ...order, joins: [...(order.joins ?? []), join] });
}

/** @param {HTMLElement} form @param {Store} store @param {HTMLElement[]} names */
export function syncJoins(form, store, names) {
  const { slabs } = store.order;
  one("#joins", form).hidden = slabs.length < 2;
  for (const select of elements(form, "[data-options=slabs]")) offer(select, names);
  for (const select of elements(form, "[data-options=ends]")) {
    const number = read(store.order, pointerOf(select, store).replace(/side$/, "slab"));
    offer(select, sidesOf(slabs[number]?.outline ?? { kind: "rectangle" }).map(sideOption));
  }
  syncEnds(form, store);
  syncArms(form, store);
}

/** At a join no wall is there. @param {HTMLElement} form @param {Store} store */
function syncEnds(form, { order, slab }) {
  const joinAt = (/** @type {string} */ scope) => (order.joins ?? []).findIndex(({ one, other }) => [one, other].some((end) => end.slab === slab && scope === `edges/${end.side}`));
  for (const unseen of elements(form, "#edges option[value=wall]")) {
    const i = joinAt(unseen.closest("li")?.dataset.scope ?? "");
    write(unseen, i < 0 ? say("profile.wall") : say("joins.one", { number: i + 1 }));
  }
  for (const end of ["left", "right"]) /** @type {HTMLElement} */ (one(`label:has(#wall-${end})`, form)).hidden = joinAt(`edges/${end}`) >= 0;
}

/** The L that the shown slab is of; its side arm meets the front of its back arm. @param {Store} store */
export function lOf({ order, slab }) {
  for (const { one, other, gap } of order.joins ?? []) {
    const side = /** @type {const} */ ({ right: "left", left: "right" })[/** @type {"left" | "right"} */ (other.side)];
    const [back, arm] = [order.slabs[one.slab], order.slabs[other.slab]];
    if (one.side === "front" && side && back && arm && [one.slab, other.slab].includes(slab)) return { back, arm, side, gapMm: inMm(gap) ?? 0 };
  }
  return null;
}

/** @typedef {NonNullable<ReturnType<typeof lOf>>} L */

/** The other arm of an L where it stands beside the shown one. @param {Store} store @returns {Corner[]} */
export function otherArm(store) {
  const l = lOf(store);
  if (!l) return [];
  const { back, arm, side, gapMm } = l;
  const [length, out, wide] = [mm(back.outline.length), mm(arm.outline.length) + gapMm, mm(arm.outline.width)];
  /** @type {Record<string, (corner: XY) => XY>} */
  const stands = {
    left: ({ x, y }) => ({ x: wide - y, y: x - out }),
    right: ({ x, y }) => ({ x: length - wide + y, y: -x - gapMm }),
    "left arm": ({ x, y }) => ({ x: y + out, y: wide - x }),
    "right arm": ({ x, y }) => ({ x: -y - gapMm, y: x - length + wide }),
  };
  const isArm = store.shown === arm;
  const shape = outlineOf((isArm ? back : arm).outline);
  return Array.isArray(shape) ? shape.map((corner) => ({ ...corner, ...stands[isArm ? `${side} arm` : side]?.(corner) })) : [];
}

/** An arm stays as long along its wall; null where that is no length. @param {HTMLInputElement} control @param {Store} store */
export function withArm({ dataset, value }, store) {
  const { order, unit } = store;
  const l = lOf(store);
  if (l && dataset.arm === "way") return value === l.side ? null : otherWay(store, l);
  const typed = withUnit(withPoint(value, unit, mark()), unit);
  const mm = inMm(typed);
  if (!l || mm === null) return null;
  const deep = inMm(l.back.outline.width) ?? 0;
  const length = (/** @type {number} */ along, /** @type {number} */ less) => spoken(along - less - l.gapMm, unit);
  /** @type {Record<string, {back?: object, arm?: object}>} */
  const changes = {
    back: { back: { length: typed } },
    deep: { back: { width: typed }, arm: { length: length(alongMm(l), mm) } },
    side: { arm: { length: length(mm, deep) } },
    wide: { arm: { width: typed } },
  };
  const { back, arm } = changes[dataset.arm ?? ""] ?? {};
  const sized = (/** @type {Slab} */ slab) => ({ ...slab, outline: { ...slab.outline, ...(slab === l.back ? back : slab === l.arm ? arm : {}) } });
  return { ...order, slabs: order.slabs.map(sized) };
}

/** @param {Store} store @param {L} l */
function otherWay({ order, placed, unit }, { back, arm }) {
  const swapped = (/** @type {string} */ name) => name.replace(/left|right/, (side) => (side === "left" ? "right" : "left"));
  const sides = (/** @type {object | undefined} */ all) => all && Object.fromEntries(Object.entries(all).map(([name, one]) => [swapped(name), one]));
  /** What the service placed it goes on placing. @template T @param {T} old @param {any} made @returns {T} */
  const as = (old, made) => {
    if (placed.has(JSON.stringify(old))) placed.add(JSON.stringify(made));
    return made;
  };
  const turned = (/** @type {Slab} */ slab) => {
    const { outline, edges, rests, cutouts = [], reliefs = [] } = slab;
    const x = (/** @type {unknown} */ at, /** @type {unknown} */ wide = 0) => spoken((inMm(outline.length) ?? 0) - (inMm(at) ?? 0) - (inMm(wide) ?? 0), unit);
    return {
      ...slab,
      outline: { ...outline, ...(outline.corner_radii && { corner_radii: sides(outline.corner_radii) }) },
      edges: sides(edges),
      cutouts: cutouts.map((one) => (one.centre ? { ...one, centre: as(one.centre, { ...one.centre, x: x(one.centre.x) }) } : one)),
      reliefs: reliefs.map((one) => ({ ...one, at: as(one.at, { ...one.at, x: x(one.at.x, one.outline.length ?? one.outline.diameter) }) })),
      ...(rests && { rests: as(rests, { ...rests, ...(rests.units && { units: [...rests.units].reverse() }), ...(rests.overhang && { overhang: sides(rests.overhang) }) }) }),
    };
  };
  const both = [back, arm];
  const joins = order.joins?.map((join) => (order.slabs[join.other.slab] === arm ? { ...join, other: { ...join.other, side: swapped(join.other.side) } } : join));
  return { ...order, slabs: order.slabs.map((slab) => (both.includes(slab) ? turned(slab) : slab)), joins };
}

/** @param {L} l */
function alongMm({ back, arm, gapMm }) {
  return (inMm(back.outline.width) ?? 0) + gapMm + (inMm(arm.outline.length) ?? 0);
}

/** @param {HTMLElement} form @param {Store} store */
function syncArms(form, store) {
  const { order } = store;
  const l = lOf(store);
  one("#arms", form).hidden = !l;
  one("#one-piece", form).hidden = order !== castable; // one that is being pressed must not go
  if (!l) return;
  const { back, arm } = l;
  /** @type {Record<string, unknown>} */
  const all = { way: l.side, back: back.outline.length, deep: back.outline.width, side: spoken(alongMm(l), store.unit), wide: arm.outline.width };
  for (const field of elements(form, "[data-plain]")) field.hidden = true;
  const [long, deep] = store.shown === back ? ["back", "deep"] : ["side", "wide"];
  for (const control of /** @type {HTMLInputElement[]} */ (elements(form, "[data-arm]"))) {
    const { arm: name = "" } = control.dataset;
    control.dataset.scope = name === long ? "outline/length" : name === deep ? "outline/width" : ""; // where a link leads
    if (control !== document.activeElement) control.value = marked(shownIn(all[name], store.unit));
  }
}

/** @param {Order} order @param {L} l @param {Unit} unit */
export function inOnePiece(order, { back, arm, side, gapMm }, unit) {
  const mm = (/** @type {unknown} */ length) => inMm(length) ?? 0;
  const [out, wide] = [mm(arm.outline.length) + gapMm, mm(back.outline.width)];
  const notch = { corner: side === "left" ? "front-right" : "front-left", length: spoken(mm(back.outline.length) - mm(arm.outline.width), unit), width: spoken(out, unit) };
  const { rests: _said, ...slab } = back;
  const cutouts = slab.cutouts?.map((cutout) => (cutout.centre ? { ...cutout, centre: { x: cutout.centre.x, y: spoken(mm(cutout.centre.y) + out, unit) } } : cutout));
  const whole = { ...slab, cutouts, outline: { kind: "l-shape", length: back.outline.length, width: spoken(out + wide, unit), notch } };
  const alone = withSlabs(order, order.slabs.filter((each) => each !== arm));
  return { ...alone, slabs: alone.slabs.map((each) => (each === back ? whole : each)) };
}

/** @param {Page} page @param {Answered} answered */
export async function offerOnePiece({ form, service, store }, { order, settled }) {
  const l = lOf(store);
  if (!l || !settled || order !== store.order) return;
  const { kind } = await service.quote(inOnePiece(order, l, store.unit), { minimal: true, signal: AbortSignal.timeout(PATIENCE_MS) });
  if (order !== store.order) return;
  if (kind === "quote") castable = order;
  one("#one-piece", form).hidden = order !== castable;
}
