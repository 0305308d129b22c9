/** Shows each answer beside the order it belongs to, and what goes wrong on the way to one. */

import { AnswerPanel, troubleNotice } from "./answer/panel.js";
import { brief, sentence, unsought } from "./answer/sentences.js";
import { clearFaults, showFaults, showSummary } from "./form/faults.js";
import { goTo } from "./form/fields.js";
import { patched, StalePatch } from "./lib/json.js";
import { one, say, sizes } from "./show.js";

export class Answers {
  /** @param {Page} page */
  constructor(page) {
    this.page = page;
    this.panel = /** @type {AnswerPanel} */ (document.querySelector("ledgerstone-answer"));
    this.glance = one("#glance");
    /** @type {Answered | null} */
    this.last = null;
    /** @type {Fault[]} */
    this.faults = [];
  }

  listen() {
    const { asking } = this.page;
    asking.addEventListener("asking", () => this.waiting());
    asking.addEventListener("slow", () => this.panel.standing(say("answer.slow"), true));
    asking.addEventListener("answer", (event) => this.answered(/** @type {CustomEvent} */ (event).detail));
    asking.addEventListener("trouble", (event) => this.troubled(/** @type {CustomEvent} */ (event).detail));
    asking.addEventListener("well", () => this.page.announce(say("trouble.well")));
  }

  /** An answer is on its way; one that is for this order already stays as it is. */
  waiting() {
    if (this.last?.order !== this.page.store.order) this.panel.standing(say("answer.asking"), this.last !== null);
  }

  /** Another order begins: nothing of the last answer stays. */
  forget() {
    this.last = null;
    this.panel.clear();
    this.glance.hidden = true;
  }

  /** The order has moved on from the answer that is shown. */
  outdated() {
    if (this.last) this.panel.standing(say("answer.stale"), true);
    this.panel.dataset.state = "outdated";
    this.glance.classList.add("stale");
    one("#finished").hidden = true;
    this.page.sketch.pin([]);
  }

  /** @param {Answered} answered */
  answered(answered) {
    const unread = answered.answer.kind === "not-understood";
    this.panel.trouble.replaceChildren();
    if (unread && !answered.settled) return;
    this.last = answered;
    this.faults = answered.answer.kind === "not-understood" ? (answered.answer.body.faults ?? []) : [];
    const passed = answered.order !== this.page.store.order;
    const old = unread || passed;
    this.panel.standing(old ? say("answer.stale") : unsought(answered), old);
    this.again();
    this.glance.classList.toggle("stale", passed);
    if (!unread) this.clearSummary();
    if (!passed) this.panel.dataset.state = answered.settled ? "settled" : "answered";
    if (answered.settled) this.page.announce(sentence(answered, this.page.choices.tax?.name ?? say("answer.tax")));
  }

  /** Show the last answer again, for the slab that is looked at. */
  again() {
    if (!this.last) return;
    const { page } = this;
    const { answer, order } = this.last;
    const keep = answer.kind === "quote" ? page.keep(answer.body, this.keeping()) : null;
    this.panel.show(answer, {
      order,
      tax: page.choices.tax?.name ?? say("answer.tax"),
      slab: Math.min(page.store.slab, order.slabs.length - 1),
      drawing: (link) => page.service.drawing(link),
      go: (pointer) => goTo(page.form, page.store, pointer),
      apply: (remedy) => this.apply(remedy),
      keep,
    });
    this.showFinished();
    if (order === page.store.order && answer.kind !== "not-understood") page.sketch.pin(answer.body.findings);
    if (this.faults.length) showFaults(page.form, page.store, this.faults);
    else clearFaults(page.form);
    this.showGlance();
  }

  /** Beside the question of what was measured: the size that the slab comes to. */
  showFinished() {
    const place = one("#finished");
    const answer = this.last?.answer;
    const { store } = this.page;
    const size = answer?.kind === "quote" ? answer.body.slabs[store.slab]?.finished_mm : undefined;
    place.hidden = !size || this.last?.order !== store.order;
    if (!size) return;
    const [length = "", width = ""] = sizes(size.length_mm, size.width_mm);
    place.textContent = say("size_from.finished-size", { length, width });
  }

  /** @returns {Keeping} */
  keeping() {
    const { choices, service } = this.page;
    const { email } = choices.workshop;
    const failed = { says: say("request.failed", { email }) };
    const request = (/** @type {Record<string, string>} */ asked) => service.request(asked).catch(() => failed);
    return { choices, request, announce: (words) => this.page.announce(words) };
  }

  /** Put the earlier quote away; the order in the form stays, and is a change to it no more. */
  close() {
    const { page } = this;
    const { since: _gone, ...order } = page.store.order;
    this.panel.opened.replaceChildren();
    history.replaceState(null, "", location.pathname + location.search);
    page.store.change(order);
    this.panel.closest("section")?.focus();
  }

  showGlance() {
    if (!this.last) return;
    this.glance.hidden = false;
    this.glance.classList.remove("stale");
    this.glance.textContent = `${brief(this.last)} · ${say("answer.glance")}`;
  }

  /** After "Check it all": to the first thing to put right, or to the answer. @param {Answered | null} answered */
  submitted(answered) {
    if (answered?.answer.kind === "not-understood" && this.faults.length)
      return showSummary(this.page.form, this.page.store, this.faults);
    const section = this.panel.closest("section");
    section?.focus();
    section?.scrollIntoView({ block: "start" });
  }

  clearSummary() {
    showSummary(this.page.form, this.page.store, []);
  }

  /** @param {{kind: string, inS: number}} trouble */
  troubled(trouble) {
    const again = () => void this.page.asking.again();
    this.panel.standing(this.last ? say("answer.stale") : "", this.last !== null);
    this.panel.trouble.replaceChildren(troubleNotice(trouble, again));
    this.panel.dataset.state = "trouble";
    this.page.announce(`${say(`trouble.${trouble.kind}`)} ${say("trouble.kept")}`);
  }

  /** Apply a remedy to the order; one that no longer fits changes nothing. @param {Remedy} remedy */
  apply(remedy) {
    const { page } = this;
    try {
      page.store.change(patched(page.store.order, remedy.patch));
      page.announce(`${[remedy.says].flat().join(" ")} ${say("remedy.done")}`);
    } catch (fault) {
      if (!(fault instanceof StalePatch)) throw fault;
      page.announce(say("remedy.stale"));
      this.panel.standing(say("remedy.stale"), true);
      page.asking.ask(page.store.order, { typing: false });
    }
  }
}
