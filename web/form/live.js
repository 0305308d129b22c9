import { Actions } from "../actions.js";
import { elements, make, one, say } from "../show.js";
import { entered } from "./entries.js";
import { findField, goes, goTo, isControl, refill, syncFolds } from "./fields.js";
import { offerOnePiece, syncJoins, withArm } from "./joins.js";
import { Laying } from "./laying.js";
import { fillOptions, syncOptions, syncSides } from "./options.js";
import { placedByGap, showSlabs, slabOptions, syncPlaces, syncRows } from "./rows.js";

export class LiveForm {
  /** @param {Page} page */
  constructor(page) {
    this.page = page;
    this.showing = false;
    /** @type {import("../sketch/sketch.js").Sketch | null} */
    this.sketch = null;
    this.laying = new Laying(page);
    this.actions = new Actions(this);
  }

  begin() {
    const { choices, form } = this.page;
    for (const named of elements(form, "[name]:is(input, select):not([data-at], [data-unit], [type=radio])")) named.dataset.at = named.getAttribute("name") ?? "";
    fillOptions(form, choices);
    form.addEventListener("input", (event) => this.entry(event));
    form.addEventListener("change", () => this.show({ all: false }));
    form.addEventListener("focusout", () => this.show({ all: false }));
    form.addEventListener("submit", (event) => this.check(event));
    this.actions.listen();
    this.page.asking.addEventListener("answer", (event) => void offerOnePiece(this.page, /** @type {CustomEvent} */ (event).detail).catch(() => {}));
    this.show({ all: true });
  }

  /** The plan, which loads after the fields. */
  async draw() {
    const { Sketch } = await import("../sketch/sketch.js");
    this.sketch = new Sketch(this.page);
    this.sketch.listen();
  }

  /** @param {Event} event */
  entry({ target }) {
    const { choices, store } = this.page;
    if (!isControl(target)) return;
    if ("unit" in target.dataset) return void this.laying.speak(/** @type {Unit} */ (target.value));
    if ("quick" in target.dataset) return this.actions.quick(target);
    if ("side" in target.dataset) return this.actions.tickSide(/** @type {HTMLInputElement} */ (target));
    if ("gap" in target.dataset) return this.typed(target, placedByGap(/** @type {HTMLInputElement} */ (target), store));
    if ("arm" in target.dataset) return this.typed(target, withArm(/** @type {HTMLInputElement} */ (target), store));
    if (!target.closest("[data-at]")) return;
    const { order, pointer } = entered(target, store, choices);
    const typing = target instanceof HTMLInputElement && target.type === "text";
    store.change(order, typing ? { cause: "typing", group: pointer } : { cause: "choice" });
  }

  /** @param {Control} control @param {Order | null} order null: no length */
  typed({ id }, order) {
    if (order) this.page.store.change(order, { cause: "typing", group: id });
  }

  /** A row that goes may lose focus. @param {{all: boolean}} how */
  show(how) {
    if (this.showing) return;
    this.showing = true;
    try {
      this.refresh(how);
    } finally {
      this.showing = false;
    }
  }

  /** @param {{all: boolean}} how */
  refresh({ all }) {
    const { form, store, choices } = this.page;
    syncRows(form, store);
    syncSides(form, store, choices);
    refill(form, store, { all });
    syncJoins(form, store, slabOptions(store));
    syncOptions(form, choices, store.shown, store.unit);
    showSlabs(store, choices);
    for (const start of elements(form, "[data-start]")) start.setAttribute("aria-pressed", String(start.dataset.start === store.order.own?.start));
    syncPlaces(form, store);
    this.actions.allow();
    this.sketch?.show();
    /** @type {HTMLSelectElement} */ (form.querySelector("#unit")).value = store.unit;
    syncFolds(form, store.unit);
  }

  /** @param {Fault[]} faults @param {Finding[] | null} findings */
  told(faults, findings) {
    const { form, store } = this.page;
    if (findings) this.sketch?.pin(findings);
    clearFaults(form);
    for (const { pointer, says } of faults) {
      const slab = pointer.match(/^\/slabs\/(\d+)/)?.[1];
      const control = slab === undefined || Number(slab) === store.slab ? findField(form, store, pointer) : null;
      if (control) mark(control, says);
    }
  }

  /** @param {Fault[]} faults */
  summary(faults) {
    const summary = one("#problems");
    summary.hidden = faults.length === 0;
    const title = say("page.title");
    document.title = faults.length ? say("form.error-title", { title }) : title;
    const links = faults.map(({ pointer, says }) => make("li", {}, make("a", { href: "#order", press: () => this.go(pointer) }, says)));
    one("ul", summary).replaceChildren(...links);
    if (faults.length) summary.focus();
  }

  /** @param {string} pointer */
  go(pointer) {
    goTo(this.page.form, this.page.store, pointer);
  }

  /** @param {string} pointer */
  goes(pointer) {
    return goes(this.page.form, this.page.store, pointer);
  }

  /** @param {Event} event */
  async check(event) {
    event.preventDefault();
    const answered = await this.page.asking.now(this.page.store.order);
    this.page.answers.submitted(answered);
  }
}

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

/** @param {HTMLElement} control @param {string} says */
export function mark(control, says) {
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
