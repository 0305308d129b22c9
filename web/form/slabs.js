/** More than one slab: which there are, and which one the form shows. */

import { make } from "../make.js";
import { startingSlab } from "../order/starting.js";
import { say } from "../words.js";

/**
 * Show a button for each slab.
 * @param {HTMLElement} list
 * @param {Store} store
 * @param {Choices} choices
 */
export function showSlabs(list, store, choices) {
  const many = store.order.slabs.length;
  list.hidden = many < 2;
  const focused = list.contains(document.activeElement);
  list.replaceChildren(
    ...store.order.slabs.map((slab, i) => {
      const current = i === store.slab ? "true" : "false";
      const press = () => store.lookAt(i);
      const type = { type: "button", "aria-current": current };
      return make("li", {}, make("button", { ...type, press }, slabName(slab, i)));
    }),
  );
  const now = /** @type {HTMLElement | null} */ (list.querySelector("[aria-current=true]"));
  if (focused) now?.focus();
  const tools = list.closest("form");
  allow(tools, "add-slab", many < (choices.limits.slabs ?? 8));
  allow(tools, "copy-slab", many < (choices.limits.slabs ?? 8));
  allow(tools, "remove-slab", many > 1);
}

/**
 * @param {{label?: string}} slab
 * @param {number} i
 */
function slabName(slab, i) {
  const number = i + 1;
  return slab.label ? say("slabs.called", { number, label: slab.label }) : say("slabs.one", { number });
}

/**
 * @param {HTMLElement | null} tools
 * @param {string} action
 * @param {boolean} may
 */
function allow(tools, action, may) {
  const button = /** @type {HTMLElement | null | undefined} */ (tools?.querySelector(`[data-do=${action}]`));
  if (button) button.hidden = !may;
}

/**
 * One more slab: plain, of the same look as the one that is shown.
 * @param {Store} store
 * @param {Choices} choices
 */
export function addSlab(store, choices) {
  const like = store.order.slabs[store.slab];
  const { shade, finish, place, thickness } = structuredClone(like ?? {});
  insert(store, { ...startingSlab(choices, store.unit), ...(like && { shade, finish, place, thickness }) });
}

/** @param {Store} store */
export function copySlab(store) {
  const slab = structuredClone(store.order.slabs[store.slab]);
  if (slab) insert(store, slab);
}

/**
 * @param {Store} store
 * @param {any} slab
 */
function insert(store, slab) {
  const slabs = [...store.order.slabs, slab];
  store.change({ ...store.order, slabs }, { slab: slabs.length - 1 });
}

/** @param {Store} store */
export function removeSlab(store) {
  const slabs = store.order.slabs.filter((_, i) => i !== store.slab);
  const { joins: _gone, ...rest } = store.order; // a join names slabs by number
  store.change({ ...rest, slabs });
}
