import { keepRoom } from "./answer/bar.js";
import { Answers } from "./answers.js";
import { Asking } from "./asking.js";
import { startingOrder } from "./order/slabs.js";
import { elements, one, say, usualUnit, write } from "./show.js";
import { canKeep, clearDraft, keepDraft, keptDraft, Store } from "./store.js";

const PATIENCE_MS = 1000;

export class Page {
  /** @param {Service} service @param {Choices} choices @param {Tools} tools */
  constructor(service, choices, tools) {
    this.choices = choices;
    this.tools = tools;
    this.service = service;
    this.form = /** @type {HTMLFormElement} */ (document.querySelector("#order"));
    const draft = keptDraft();
    this.store = new Store(draft?.order ?? startingOrder(choices, usualUnit()));
    this.store.slab = draft?.slab ?? 0;
    this.store.unit = draft?.unit ?? usualUnit();
    this.store.placed = new Set(draft?.placed);
    this.restored = draft !== null;
    this.asking = new Asking(service);
    this.answers = new Answers(this);
    /** @type {import("./form/live.js").LiveForm | null} */
    this.live = null;
  }

  async begin() {
    this.store.addEventListener("change", (event) => this.changed(/** @type {CustomEvent} */ (event).detail.cause));
    this.store.addEventListener("slab", () => this.looked());
    this.answers.listen();
    keepRoom(this.answers.panel);
    this.asking.ask(this.store.order, { typing: false });
    await this.answered();
    askForForm();
    const { LiveForm } = await import("./form/live.js");
    this.live = new LiveForm(this);
    this.live.begin();
    void this.follow();
  }

  /** What the first entry does not wait for. */
  async follow() {
    await this.live?.draw().catch(() => null); // a form without its plan still prices
    this.draftSays(say(this.restored ? "draft.restored" : canKeep() ? "draft.kept" : "draft.not-kept"));
    this.answers.again();
    void this.openLink();
    window.addEventListener("hashchange", () => void this.openLink());
  }

  /** What loads for the form never holds up a price. */
  answered() {
    return new Promise((resolve) => {
      for (const name of ["answer", "trouble"]) this.asking.addEventListener(name, resolve, { once: true });
      setTimeout(resolve, PATIENCE_MS);
    });
  }

  async openLink() {
    if (!/^#(quote|order)=/.test(location.hash)) return;
    const { openOrder, openQuote } = await import("./answer/opened.js");
    if (location.hash.startsWith("#order=")) return openOrder(this);
    await openQuote(this);
  }

  /** @param {Cause} cause */
  changed(cause) {
    if (/typing|choice|moving/.test(cause)) this.live?.laying.keepCentred();
    this.price(cause); // sent before anything is drawn anew
    this.live?.show({ all: cause !== "typing" });
    this.answers.outdated();
    this.keep();
  }

  /** @param {Cause} cause */
  price(cause) {
    if (!this.live?.laying.follows(cause)) this.asking.ask(this.store.order, { typing: cause === "typing", moving: cause === "moving" });
  }

  looked() {
    this.keep();
    this.live?.show({ all: true });
    this.answers.again();
  }

  keep() {
    const { order, slab, unit, placed } = this.store;
    this.draftSays(say(keepDraft({ order, slab, unit, placed: [...placed] }) ? "draft.kept" : "draft.not-kept"));
  }

  clear() {
    this.store.change(startingOrder(this.choices, this.store.unit), { slab: 0 });
    clearDraft();
    this.draftSays(say("draft.cleared"));
    this.announce(say("draft.cleared"));
    for (const fold of elements(document, "details[open]")) fold.removeAttribute("open");
    scrollTo(0, 0);
    one("[data-start]").focus({ preventScroll: true });
  }

  /** @param {string} words */
  draftSays(words) {
    write(one("#draft-says"), words);
  }

  /** @param {string} words */
  announce(words) {
    if (words !== "") write(one("#status"), words);
  }
}

/** All at once. */
function askForForm() {
  const links = document.querySelector("#form-modules");
  if (links instanceof HTMLTemplateElement) document.head.append(links.content);
}
