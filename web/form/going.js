/** Takes somebody to the field that a finding, a fault or a remedy speaks of. */

import { findField } from "./fields.js";

/**
 * Focus the field of a JSON Pointer, on whichever slab it is.
 * @param {HTMLElement} form
 * @param {Store} store
 * @param {string} pointer
 */
export function goTo(form, store, pointer) {
  const found = pointer.match(/^\/slabs\/(\d+)/);
  if (found && Number(found[1]) !== store.slab) store.lookAt(Number(found[1]));
  const control = findField(form, store, pointer);
  if (!control) return;
  for (let up = control.parentElement; up; up = up.parentElement)
    if (up instanceof HTMLDetailsElement) up.open = true;
  control.focus();
  control.scrollIntoView({ block: "center" });
}
