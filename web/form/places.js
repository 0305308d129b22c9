/** Other ways to say where an opening is: by its distance to an edge, or centred on a unit. */

import { read } from "../lib/json.js";
import { inMm, shownIn, spoken, withPoint, withUnit } from "../lib/lengths.js";
import { sizeMm } from "../order/slabs.js";
import { elements, lengthWords, make, mark, say } from "../show.js";
import { unitMiddles } from "../sketch/drag.js";
import { boxOf, cutoutOf } from "../sketch/geometry.js";
import { movables } from "../sketch/movables.js";
import { pointerOf } from "./fields.js";

/**
 * How far an opening's near edge is from each end of the slab, in mm.
 * @param {Cutout} cutout
 * @param {Outline} outline
 */
export function gapsOf(cutout, outline) {
  const { from, to } = boxOf(cutoutOf(cutout));
  const { lengthMm, widthMm } = sizeMm(outline);
  return { left: from.x, front: from.y, right: lengthMm - to.x, back: widthMm - to.y };
}

/**
 * The order after a distance to an edge was typed; null where it does not read as one.
 * @param {HTMLInputElement} control with `data-gap`
 * @param {Store} store
 */
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

/**
 * The order with an opening's centre over the middle of a unit.
 * @param {HTMLElement} button with `data-unit-number`
 * @param {Store} store
 */
export function centredOnUnit(button, store) {
  const number = numberOf(button, store);
  const middle = unitMiddles(store.shown)[Number(button.dataset.unitNumber)];
  const there = movables(store.order, store.slab, store.unit)[number];
  return middle === undefined || !there ? null : moved(store, number, { x: middle - there.x, y: 0 });
}

/** @param {Store} store @param {number} number of the opening @param {XY} by */
function moved(store, number, by) {
  const there = movables(store.order, store.slab, store.unit)[number];
  return there ? there.put(store.order, { x: there.x + by.x, y: there.y + by.y }) : null;
}

/** @param {HTMLElement} element @param {Store} store */
function numberOf(element, store) {
  return Number(pointerOf(element, store, "place").split("/")[4]);
}

/**
 * Show each opening's distances, and a button for each unit that it can be centred on.
 * @param {HTMLElement} form
 * @param {Store} store
 */
export function syncPlaces(form, store) {
  const slab = store.shown;
  for (const control of /** @type {HTMLInputElement[]} */ (elements(form, "[data-gap]"))) {
    const cutout = slab.cutouts?.[numberOf(control, store)];
    if (!cutout) continue;
    const side = /** @type {Side} */ (control.dataset.gap);
    const fromStart = side === "left" || side === "front"; // the other ends are only known of a finished size
    /** @type {HTMLElement} */ (control.closest(".field")).hidden = !fromStart && (slab.size_from ?? "finished") !== "finished";
    if (control === document.activeElement) continue;
    const gap = gapsOf(cutout, slab.outline)[side];
    control.value = lengthWords(shownIn(spoken(gap, store.unit), store.unit));
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
