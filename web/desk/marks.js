/** Phrases of the enquiry and the fields that they filled, each a way to the other. */

import { findField } from "../form/fields.js";
import { elements, make, one, say } from "../show.js";

/**
 * A phrase that was taken: each press goes to the next of the fields that it filled.
 * @param {{text: string, points: Point[]}} piece
 * @param {(point: Point) => void} go
 */
export function phrase({ text, points }, go) {
  let next = 0;
  const press = () => {
    const point = points[next % points.length];
    next += 1;
    if (point) go(point);
  };
  const kinds = points.map(({ kind }) => kind).join(" ");
  return make("button", { type: "button", class: `phrase ${kinds}`, "data-at": points.map(({ at }) => at).join(" "), press }, text);
}

/** Put each open point beside its field. @param {HTMLElement} form @param {Store} store @param {Point[]} open */
export function markFields(form, store, open) {
  for (const old of elements(form, ".mark")) old.remove();
  for (const point of open) {
    const slab = point.at.match(/^\/slabs\/(\d+)/)?.[1];
    if (slab !== undefined && Number(slab) !== store.slab) continue;
    const field = findField(form, store, point.at)?.closest(".field, fieldset");
    field?.append(point.kind === "said" ? back(point) : make("p", { class: `mark ${point.kind}` }, kindOf(point), " ", point.says));
  }
}

/** A way back from a field to the phrase that filled it. @param {Point} point */
function back(point) {
  const press = () => {
    const found = elements(one("#marked"), ".phrase").find(({ dataset }) => dataset.at?.split(" ").includes(point.at));
    found?.focus();
    found?.scrollIntoView({ block: "center" });
  };
  return make("p", { class: "mark said" }, make("button", { type: "button", class: "link", press }, say("points.said", { text: point.says })));
}

/** @param {Point} point */
export function kindOf({ kind }) {
  return make("strong", { class: "level" }, say(`points.${kind}`));
}
