/** What depends on the sides that an outline has: edges, a frame's sides, where an opening opens. */

import { sidesOf } from "../order/outlines.js";
import { elements, knows, say } from "../words.js";
import { make } from "../make.js";
import { fromTemplate } from "./rows.js";

/**
 * Say a side's name.
 * @param {string} side
 */
export function sideName(side) {
  return knows(`side.${side}`) ? say(`side.${side}`) : say("side.number", { number: side });
}

/**
 * Give the form the sides of the slab that is looked at.
 * @param {HTMLElement} root
 * @param {Store} store
 * @param {Choices} choices
 */
export function syncSides(root, store, choices) {
  const slab = store.order.slabs[store.slab];
  if (!slab) return;
  const sides = sidesOf(slab.outline);
  const said = sides.join(" ");
  for (const list of elements(root, "[data-sides]")) {
    if (list.dataset.shown === said) continue;
    list.dataset.shown = said;
    if (list.dataset.sides === "edges") list.replaceChildren(...sides.map((side) => edgeRow(side, choices)));
    else showBoxes(list, sides);
  }
  for (const select of elements(root, "[data-options=sides]")) {
    if (!(select instanceof HTMLSelectElement) || select.dataset.shown === said) continue;
    select.dataset.shown = said;
    const closed = make("option", { value: "" }, say("cutout.not-open"));
    select.replaceChildren(closed, ...sides.map((side) => make("option", { value: side }, sideName(side))));
  }
  tickSides(root, slab.rests?.sides ?? []);
}

/**
 * @param {string} side
 * @param {Choices} choices
 */
function edgeRow(side, choices) {
  const row = fromTemplate("edge-row");
  row.dataset.scope = `edges/${side}`;
  const legend = row.querySelector("[data-row-name]");
  if (legend) legend.textContent = sideName(side);
  const offered = choices.edges.map(({ profile }) => make("option", { value: profile }, say(`profile.${profile}`)));
  row.querySelector("[data-options=profiles]")?.replaceChildren(...offered);
  return row;
}

/**
 * @param {HTMLElement} fieldset
 * @param {string[]} sides
 */
function showBoxes(fieldset, sides) {
  const boxes = sides.map((side) =>
    make("label", { class: "pick" }, make("input", { type: "checkbox", value: side, "data-side": "" }), sideName(side)),
  );
  const legend = fieldset.querySelector("legend");
  fieldset.replaceChildren(...(legend ? [legend] : []), ...boxes);
}

/**
 * @param {HTMLElement} root
 * @param {string[]} ticked
 */
function tickSides(root, ticked) {
  for (const box of elements(root, "[data-side]"))
    if (box instanceof HTMLInputElement) box.checked = ticked.includes(box.value);
}
