/** Faults that the service found: beside their fields, and in a summary that takes focus. */

import { elements, make, one, say } from "../show.js";
import { findField, goTo } from "./fields.js";

/** @param {HTMLElement} form */
export function clearFaults(form) {
  for (const fault of elements(form, ".fault")) fault.remove();
  for (const control of elements(form, "[aria-invalid]")) {
    control.removeAttribute("aria-invalid");
    const ids = (control.getAttribute("aria-describedby") ?? "").split(" ");
    const left = ids.filter((id) => id !== `${control.id}-fault`).join(" ");
    if (left) control.setAttribute("aria-describedby", left);
    else control.removeAttribute("aria-describedby");
  }
}

/**
 * Show each fault beside its field; the field somebody is typing in may wait.
 * @param {HTMLElement} form
 * @param {Store} store
 * @param {Fault[]} faults
 * @param {{sparing?: Element | null}} [how]
 */
export function showFaults(form, store, faults, { sparing = null } = {}) {
  clearFaults(form);
  for (const { pointer, says } of faults) {
    if (isOnAnotherSlab(pointer, store)) continue;
    const control = findField(form, store, pointer);
    if (control && control !== sparing) mark(control, says);
  }
}

/** @param {string} pointer @param {Store} store */
function isOnAnotherSlab(pointer, store) {
  const found = pointer.match(/^\/slabs\/(\d+)/);
  return found !== null && Number(found[1]) !== store.slab;
}

/** @param {HTMLElement} control @param {string} says */
function mark(control, says) {
  const field = control.closest(".field") ?? control.parentElement;
  if (!field) return;
  const before = make("span", { class: "unseen" }, `${say("form.error")} `);
  const fault = make("p", { class: "fault", id: `${control.id}-fault` }, before, says);
  const row = control.closest("input[type=radio], input[type=checkbox]") ? null : control;
  if (row && row.parentElement === field) row.before(fault);
  else field.append(fault);
  control.setAttribute("aria-invalid", "true");
  const ids = control.getAttribute("aria-describedby");
  control.setAttribute("aria-describedby", [ids, fault.id].filter(Boolean).join(" "));
}

/**
 * Show the summary of every fault and move focus to it; none hides it.
 * @param {HTMLElement} form
 * @param {Store} store
 * @param {Fault[]} faults
 */
export function showSummary(form, store, faults) {
  const summary = one("#problems", form);
  summary.hidden = faults.length === 0;
  const title = say("page.title");
  document.title = faults.length ? say("form.error-title", { title }) : title;
  const links = faults.map(({ pointer, says }) => {
    const link = make("a", { href: "#order", press: () => goTo(form, store, pointer) }, says);
    return make("li", {}, link);
  });
  summary.querySelector("ul")?.replaceChildren(...links);
  if (faults.length) summary.focus();
}
