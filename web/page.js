/** The page at work: entries change the order, the order is shown and priced, answers are shown. */

import { Actions } from "./actions.js";
import { Answers } from "./answers.js";
import { Asking } from "./asking.js";
import { entered } from "./form/entries.js";
import { isControl, refill } from "./form/fields.js";
import { fillOptions, syncOptions, syncSides } from "./form/options.js";
import { placedByGap, syncPlaces } from "./form/places.js";
import { showSlabs, syncJoins, syncRows } from "./form/rows.js";
import { startingOrder } from "./order/slabs.js";
import { elements, one, say, usualUnit, write } from "./show.js";
import { Sketch } from "./sketch/sketch.js";
import { keepDraft, keptDraft, Store } from "./store.js";

export class Page {
  /**
   * @param {Service} service
   * @param {Choices} choices
   * @param {(quote: Quote, keeping: Keeping) => HTMLElement | null} keep what stands under a quote to keep it by
   */
  constructor(service, choices, keep) {
    this.choices = choices;
    this.keep = keep;
    this.service = service;
    this.form = /** @type {HTMLFormElement} */ (document.querySelector("#order"));
    const draft = keptDraft();
    this.store = new Store(draft?.order ?? startingOrder(choices, usualUnit()));
    this.store.slab = draft?.slab ?? 0;
    this.store.unit = draft?.unit ?? usualUnit();
    this.restored = draft !== null;
    this.showing = false;
    this.asking = new Asking(service);
    this.answers = new Answers(this);
    this.actions = new Actions(this);
    this.sketch = new Sketch(this);
  }

  begin() {
    fillOptions(this.form, this.choices);
    this.form.addEventListener("input", (event) => this.entry(event));
    this.form.addEventListener("change", () => this.showOrder({ all: false }));
    this.form.addEventListener("focusout", () => this.showOrder({ all: false }));
    this.form.addEventListener("submit", (event) => this.check(event));
    this.store.addEventListener("change", (event) => this.changed(/** @type {CustomEvent} */ (event).detail.cause));
    this.store.addEventListener("slab", () => this.looked());
    this.actions.listen();
    this.sketch.listen();
    openOnPaper();
    this.answers.listen();
    this.showOrder({ all: true });
    this.draftSays(say(this.restored ? "draft.restored" : "draft.kept"));
    void this.openLink();
    window.addEventListener("hashchange", () => void this.openLink());
    this.asking.ask(this.store.order, { typing: false });
  }

  /** Open the quote or the order that the address names; what does that is only loaded then. */
  async openLink() {
    if (!/^#(quote|order)=/.test(location.hash)) return;
    const { openOrder, openQuote } = await import("./answer/opened.js");
    if (location.hash.startsWith("#order=")) return openOrder(this);
    await openQuote(this);
  }

  /** @param {Event} event */
  entry({ target }) {
    if (!isControl(target)) return;
    if (target.name === "unit") return this.speak(/** @type {Unit} */ (target.value));
    if ("side" in target.dataset) return this.actions.tickSide(/** @type {HTMLInputElement} */ (target));
    if ("gap" in target.dataset) return this.gap(/** @type {HTMLInputElement} */ (target));
    if (!target.closest("[data-at]")) return;
    const { order, pointer } = entered(target, this.store, this.choices);
    const typing = target instanceof HTMLInputElement && target.type === "text";
    this.store.change(order, typing ? { cause: "typing", group: pointer } : { cause: "choice" });
  }

  /** @param {HTMLInputElement} control */
  gap(control) {
    const order = placedByGap(control, this.store);
    if (order) this.store.change(order, { cause: "typing", group: `gap ${control.id}` });
  }

  /** Read and show lengths in this unit; a slab that nobody has touched starts again in it. @param {Unit} unit */
  speak(unit) {
    this.store.speak(unit);
    if (this.restored || this.store.past.length) return;
    this.store.become({ order: startingOrder(this.choices, unit), slab: 0 }, "load");
  }

  /** @param {Cause} cause */
  changed(cause) {
    this.showOrder({ all: cause !== "typing" });
    const kept = keepDraft({ order: this.store.order, slab: this.store.slab, unit: this.store.unit });
    this.draftSays(say(kept ? "draft.kept" : "draft.not-kept"));
    this.answers.outdated();
    this.asking.ask(this.store.order, { typing: cause === "typing", moving: cause === "moving" });
  }

  looked() {
    keepDraft({ order: this.store.order, slab: this.store.slab, unit: this.store.unit });
    this.showOrder({ all: true });
    this.answers.again();
  }

  /**
   * Show the order as it is; a row that goes may lose focus, which is no cause to begin again.
   * @param {{all: boolean}} how
   */
  showOrder(how) {
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
    const { form, store, choices } = this;
    syncRows(form, store);
    syncSides(form, store, choices);
    syncJoins(form, store);
    refill(form, store, { all });
    syncOptions(form, choices, store.shown);
    showSlabs(store, choices);
    syncPlaces(form, store);
    this.actions.allow();
    this.sketch.show();
    for (const radio of elements(form, "[name=unit]"))
      if (radio instanceof HTMLInputElement) radio.checked = radio.value === store.unit;
  }

  /** @param {Event} event */
  async check(event) {
    event.preventDefault();
    const answered = await this.asking.now(this.store.order);
    this.answers.submitted(answered);
  }

  /** @param {string} words */
  draftSays(words) {
    write(one("#draft-says"), words);
  }

  /** @param {string} words said once to those who listen */
  announce(words) {
    if (words !== "") write(one("#status"), words);
  }
}

/** On paper nothing is folded away. */
function openOnPaper() {
  /** @type {HTMLDetailsElement[]} */
  let opened = [];
  window.addEventListener("beforeprint", () => {
    opened = Array.from(document.querySelectorAll("#answer details:not([open])"));
    for (const details of opened) details.open = true;
  });
  window.addEventListener("afterprint", () => {
    for (const details of opened) details.open = false;
  });
}
