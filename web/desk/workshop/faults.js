import { elements, make, one, say } from "../../show.js";
import { idOf } from "./field.js";
import { parent } from "./changes.js";

/** @typedef {import("./form.js").Form} Form */

export class Faults {
  /** @param {Form} form */
  constructor(form) {
    this.form = form;
    /** @type {Set<string>} the pointers of the fields that were left */
    this.left = new Set();
  }

  listen() {
    this.form.place.addEventListener("focusout", ({ target }) => this.leave(/** @type {Element} */ (target)));
  }

  /** @param {Element} control */
  leave(control) {
    const pointer = /** @type {HTMLElement | null} */ (control.closest(".field"))?.dataset.pointer;
    if (!pointer || this.left.has(pointer)) return;
    this.left.add(pointer);
    if (this.form.profile.faults.some((fault) => fault.pointer === pointer)) this.form.mark();
  }

  /** Whether nothing was entered yet, nor was it left. @param {string} pointer */
  isOpen(pointer) {
    const value = this.form.value(pointer);
    return value !== undefined && (value.standing === "invented" || (!value.value && !value.values?.length)) && !this.left.has(pointer);
  }

  show() {
    const { place, profile } = this.form;
    for (const gone of elements(place, ".field[data-pointer] > .fault, .taken")) gone.remove();
    for (const fault of elements(place, "[data-fault]")) fault.hidden = true;
    for (const control of elements(place, "[aria-invalid]")) control.removeAttribute("aria-invalid");
    for (const { pointer, says } of profile.taken ?? []) this.form.fieldAt(pointer)?.append(make("p", { class: "hint taken", role: "status" }, says));
    for (const { pointer, says } of profile.faults) if (!this.isOpen(pointer)) this.fault(pointer, says);
    this.count();
  }

  /** @param {string} pointer @param {string} says */
  fault(pointer, says) {
    for (let at = pointer; at; at = parent(at)) {
      const place = this.form.fieldAt(at);
      const table = /** @type {HTMLElement | null} */ (this.form.place.querySelector(`[data-fault="${CSS.escape(at)}"]`));
      if (!place && !table) continue;
      place?.append(make("p", { class: "fault", id: `${idOf(at)}-fault` }, says));
      const control = place?.querySelector("input, select, textarea");
      control?.setAttribute("aria-invalid", "true");
      if (table) Object.assign(table, { hidden: false, textContent: says });
      (place ?? table)?.closest("details")?.setAttribute("open", "");
      return;
    }
  }

  count() {
    const subjects = new Map(this.form.tables().map(({ pointer, subject }) => [pointer, subject]));
    const of = (/** @type {string} */ pointer) => subjects.get(`/${pointer.split("/")[1]}`);
    for (const link of elements(one("#subjects"), "a")) {
      const faults = this.form.profile.faults.filter(({ pointer }) => `#${of(pointer)}` === link.getAttribute("href") && !this.isOpen(pointer)).length;
      one(".amiss", link).textContent = faults ? say("subject.faults", { n: faults }) : "";
    }
  }
}

/** A tick of all in a table, once it was seen. @param {Form} form @param {string} pointer */
export function tick(form, pointer) {
  if (!isInvented(form, pointer)) return make("span");
  const box = make("input", { type: "checkbox" });
  const opened = make("span", { class: "hint", role: "status" });
  box.addEventListener("change", () => {
    const folded = box.checked ? foldedIn(form, pointer) : [];
    opened.textContent = folded.length ? say("whose.opened", { n: folded.length }) : "";
    if (!folded.length) return void form.confirm(pointer, box.checked);
    box.checked = false;
    for (const entry of folded) entry.setAttribute("open", "");
  });
  return make("p", { class: "ticks" }, make("label", { class: "tick" }, box, make("span", {}, say("whose.table"))), opened);
}

/** @param {Form} form @param {string} pointer */
function isInvented(form, pointer) {
  return form.values(pointer).some(({ standing }) => standing === "invented");
}

/** @param {Form} form @param {string} pointer */
function foldedIn(form, pointer) {
  const entries = elements(form.place, "details.entry:not([open])");
  return entries.filter(({ dataset: { pointer: own = "" } }) => own.startsWith(`${pointer}/`) && isInvented(form, own));
}
