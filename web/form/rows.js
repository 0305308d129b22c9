import { read, without, written } from "../lib/json.js";
import { inMm, shownIn, spoken, withPoint, withUnit } from "../lib/lengths.js";
import { sizeMm, startingSlab } from "../order/slabs.js";
import { elements, make, mark, marked, one, say, write } from "../show.js";
import { boxOf, cutoutOf, unitMiddles } from "../sketch/geometry.js";
import { movables } from "../sketch/movables.js";
import { pointerOf } from "./fields.js";
import { withSlabs } from "./joins.js";
import { fromTemplate } from "./options.js";

const NEAR_MM = 2;

/** @param {HTMLElement} root @param {Store} store */
export function syncRows(root, store) {
  for (const list of elements(root, "[data-list]")) {
    const at = list.dataset.list ?? "";
    const members = read(store.order, pointerOf(list, store, at)) ?? [];
    while (list.children.length > members.length) list.lastElementChild?.remove();
    while (list.children.length < members.length) {
      const row = fromTemplate(list.dataset.template ?? "");
      row.dataset.scope = `${at}/${list.children.length}`;
      list.append(row);
      syncRows(row, store);
    }
    Array.from(list.children).forEach((row, i) => name(row, members[i], i, list.dataset.name ?? ""));
  }
  for (const hint of elements(root, "[data-none]"))
    hint.hidden = (read(store.order, pointerOf(hint, store, hint.dataset.none)) ?? []).length > 0;
}

/** @param {Element} row @param {any} member @param {number} i @param {string} key */
function name(row, member, i, key) {
  const words = member?.label || say(key, { number: i + 1 });
  for (const place of elements(row, "[data-row-name]")) if (place.closest("li") === row) write(place, words);
  const remove = elements(row, "[data-do=remove-row]").find((button) => button.closest("li") === row);
  remove?.setAttribute("aria-label", `${remove.textContent}: ${words}`);
}

/** @param {HTMLElement} button @param {Store} store */
export function withRow(button, store) {
  const pointer = pointerOf(button, store, button.dataset.to);
  const members = read(store.order, pointer) ?? [];
  const plain = { x: spoken(0, store.unit), y: spoken(0, store.unit) };
  return written(store.order, pointer, [...members, structuredClone(members.at(-1) ?? plain)]);
}

/** @param {HTMLElement} row @param {Store} store */
export function withoutRow(row, store) {
  return without(store.order, pointerOf(row, store, row.dataset.scope));
}

/** @param {Store} store @param {Choices} choices */
export function showSlabs(store, choices) {
  const { slabs } = store.order;
  const list = one("#slabs");
  list.hidden = slabs.length < 2;
  const names = slabs.map(slabName);
  const shown = JSON.stringify(names);
  if (list.dataset.shown !== shown) {
    const button = (/** @type {string} */ name, /** @type {number} */ i) => make("button", { type: "button", press: () => store.lookAt(i) }, name);
    list.replaceChildren(...names.map((name, i) => make("li", {}, button(name, i))));
    list.dataset.shown = shown; // else one that is being pressed would go
  }
  elements(list, "button").forEach((button, i) => button.setAttribute("aria-current", String(i === store.slab)));
  const full = slabs.length >= (choices.limits.slabs ?? 8);
  for (const action of ["add-slab", "copy-slab"]) one(`[data-do=${action}]`).hidden = full;
  one("[data-do=remove-slab]").hidden = slabs.length < 2;
}

/** @param {Store} store */
export function slabOptions({ order }) {
  return order.slabs.map((slab, i) => make("option", { value: String(i) }, slabName(slab, i)));
}

/** @param {{label?: string}} slab @param {number} i */
function slabName(slab, i) {
  const number = i + 1;
  return slab.label ? say("slabs.called", { number, label: slab.label }) : say("slabs.one", { number });
}

/** @param {Store} store @param {Choices} choices */
export function addSlab(store, choices) {
  const { shade, finish, place, thickness } = structuredClone(store.shown);
  insert(store, { ...startingSlab(choices, store.unit), shade, finish, place, thickness });
}

/** @param {Store} store */
export function copySlab(store) {
  insert(store, structuredClone(store.shown));
}

/** @param {Store} store @param {any} slab */
function insert(store, slab) {
  const slabs = [...store.order.slabs, slab];
  store.change({ ...store.order, slabs }, { slab: slabs.length - 1 });
}

/** @param {Store} store */
export function removeSlab(store) {
  store.change(withSlabs(store.order, store.order.slabs.filter((slab) => slab !== store.shown)));
}

/** From an opening's near edge, in mm. @param {Cutout} cutout @param {Outline} outline */
export function gapsOf(cutout, outline) {
  const { from, to } = boxOf(cutoutOf(cutout));
  const { lengthMm, widthMm } = sizeMm(outline);
  return { left: from.x, front: from.y, right: lengthMm - to.x, back: widthMm - to.y };
}

/** Null where it is no length. @param {HTMLInputElement} control @param {Store} store */
export function placedByGap(control, store) {
  const side = /** @type {Side} */ (control.dataset.gap);
  const number = numberOf(control, store);
  const { cutouts, outline } = store.shown;
  const cutout = cutouts?.[number];
  const gap = inMm(withUnit(withPoint(control.value, store.unit, mark()), store.unit));
  if (!cutout || gap === null) return null;
  const off = (gap - gapsOf(cutout, outline)[side]) * (side === "left" || side === "front" ? 1 : -1);
  return moved(store, number, side === "left" || side === "right" ? { x: off, y: 0 } : { x: 0, y: off });
}

/** On the unit that is the nearest to a place. @param {number} number @param {Store} store @param {number} pressedMm */
export function centredOnUnit(number, store, pressedMm) {
  const off = (/** @type {number} */ middle) => Math.abs(middle - pressedMm);
  const [middle] = unitMiddles(store.shown).sort((one, other) => off(one) - off(other));
  const there = movables(store.order, store.slab, store.unit)[number];
  return middle === undefined || !there ? null : moved(store, number, { x: middle - there.x, y: 0 });
}

/** @param {Store} store @param {number} number @param {XY} by */
function moved(store, number, by) {
  const there = movables(store.order, store.slab, store.unit)[number];
  return there ? there.put(store.order, { x: there.x + by.x, y: there.y + by.y }) : null;
}

/** @param {HTMLElement} element @param {Store} store */
export function numberOf(element, store) {
  return Number(pointerOf(element, store, "place").split("/")[4]);
}

/** @param {HTMLElement} form @param {Store} store */
export function syncPlaces(form, store) {
  const slab = store.shown;
  for (const control of /** @type {HTMLInputElement[]} */ (elements(form, "[data-gap]"))) {
    const cutout = slab.cutouts?.[numberOf(control, store)];
    if (!cutout) continue;
    const side = /** @type {Side} */ (control.dataset.gap);
    const fromStart = side === "left" || side === "front";
    /** @type {HTMLElement} */ (control.closest(".field")).hidden = !fromStart && (slab.size_from ?? "finished") !== "finished";
    if (control === document.activeElement) continue;
    const gap = gapsOf(cutout, slab.outline)[side];
    control.value = marked(shownIn(spoken(gap, store.unit), store.unit));
  }
  const { length } = read(slab, "/rests/units") ?? [];
  for (const place of elements(form, "[data-on-units]")) {
    place.hidden = !length;
    if (place.childElementCount === length + 1) continue;
    const buttons = Array.from({ length }, (_, i) =>
      make("button", { type: "button", class: "quiet", "data-do": "on-unit", "data-unit-number": String(i) }, say("units.one", { number: i + 1 })),
    );
    place.replaceChildren(make("legend", {}, say("place.on-unit")), ...buttons);
  }
}

/** What stands in the middle, and was put there by hand, stays there. @param {Slab} slab @param {Slab | undefined} old @param {Store} store @returns {Slab} */
export function centred(slab, old, { placed, unit }) {
  if (!old || slab.outline === old.outline || slab.cutouts !== old.cutouts) return slab;
  const [was, is] = [sizeMm(old.outline), sizeMm(slab.outline)];
  const on = (/** @type {Place["x"]} */ at, /** @type {"lengthMm" | "widthMm"} */ way) =>
    was[way] !== is[way] && Math.abs((inMm(at) ?? 0) - was[way] / 2) < NEAR_MM ? spoken(is[way] / 2, unit) : at;
  const cutouts = slab.cutouts?.map((one) =>
    one.centre && !placed.has(placeOf(one)) ? { ...one, centre: { x: on(one.centre.x, "lengthMm"), y: on(one.centre.y, "widthMm") } } : one,
  );
  return { ...slab, cutouts };
}

/** @param {any} member */
export function placeOf({ centre, at }) {
  return JSON.stringify(centre ?? at);
}
