import { Bar } from "./answer/bar.js";
import { AnswerPanel, troubleNotice } from "./answer/panel.js";
import { orderWords, sentence, unsought } from "./answer/sentences.js";
import { patched, StalePatch } from "./lib/json.js";
import { one, say, sizes } from "./show.js";

export class Answers {
  /** @param {Page} page */
  constructor(page) {
    this.page = page;
    this.panel = /** @type {AnswerPanel} */ (document.querySelector("ledgerstone-answer"));
    this.bar = new Bar();
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
    window.addEventListener("popstate", ({ state }) => state?.note && this.panel.refocus(state.note)?.scrollIntoView({ block: "center" }));
    asking.addEventListener("well", () => this.page.announce(say("trouble.well")));
  }

  waiting() {
    if (this.last?.order === this.page.store.order) return;
    this.panel.standing(say("answer.asking"), this.last !== null);
    this.bar.waiting();
  }

  forget() {
    this.last = null;
    this.panel.clear();
    this.bar.clear();
  }

  outdated() {
    if (this.last) this.panel.standing(say("answer.stale"), true);
    this.panel.dataset.state = "outdated";
    this.bar.waiting();
    one("#finished").hidden = true;
    this.page.live?.sketch?.pin([]);
  }

  /** Price and day first, where one follows another; all else once they are painted. @param {Answered} answered */
  async answered(answered) {
    const unread = answered.answer.kind === "not-understood";
    this.panel.trouble.replaceChildren();
    if (unread && !answered.settled) return;
    const isNew = this.last?.order !== answered.order;
    this.last = answered;
    this.faults = answered.answer.kind === "not-understood" ? (answered.answer.body.faults ?? []) : [];
    if (isNew && answered.order === this.page.store.order && this.panel.price(answered.answer, this.tax)) {
      this.bar.show(answered);
      this.panel.dataset.state = "answered";
      await painted();
      if (this.last !== answered) return;
    }
    const passed = answered.order !== this.page.store.order;
    const old = unread || passed;
    this.panel.standing(old ? say("answer.stale") : unsought(answered), old);
    this.again();
    if (passed) this.bar.waiting();
    else this.bar.show(answered);
    if (!unread) this.clearSummary();
    if (!passed) this.panel.dataset.state = answered.settled ? "settled" : "answered";
    if (answered.settled) this.page.announce(sentence(answered, this.tax));
  }

  get tax() {
    return this.page.choices.tax?.name ?? say("answer.tax");
  }

  again() {
    if (!this.last) return;
    const { page } = this;
    const { answer, order, settled } = this.last;
    const { ask, keep } = answer.kind === "quote" ? page.tools : {};
    const tool = (/** @type {Tools["ask"]} */ make) => (make && answer.kind === "quote" ? make(answer.body, this.keeping()) : null);
    this.panel.show(answer, {
      order,
      tax: this.tax,
      slab: Math.min(page.store.slab, order.slabs.length - 1),
      drawing: (link) => page.service.drawing(link),
      go: (pointer, note) => this.go(pointer, note),
      goes: (pointer) => page.live?.goes(pointer) ?? false,
      apply: (remedy) => this.apply(remedy),
      preview: (patch) => page.live?.sketch?.preview(order === page.store.order ? patch : null),
      ask: tool(ask),
      keep: tool(keep),
      look: (view) => this.bar.look(view),
      pictured: page.live !== null && (settled || answer.kind === "quote"), // else it is amid an edit
    });
    this.showFinished();
    const pins = order === page.store.order && answer.kind !== "not-understood" ? answer.body.findings : null;
    page.live?.told(this.faults, pins);
  }

  /** Back, as by a phone's gesture, leads to the note again. @param {string} pointer @param {string} [note] */
  go(pointer, note) {
    if (note) {
      history.replaceState({ note }, "");
      history.pushState(null, "");
    }
    this.page.live?.go(pointer);
  }

  showFinished() {
    const place = one("#finished");
    const answer = this.last?.answer;
    const { store } = this.page;
    const quote = answer?.kind === "quote" ? answer.body : null;
    const size = quote?.slabs[store.slab]?.finished_mm;
    place.hidden = !size || this.last?.order !== store.order || (store.shown.size_from ?? "finished") === "finished";
    if (!size) return;
    const [length = "", width = ""] = sizes(quote?.order.slabs[store.slab]?.outline, size.length_mm, size.width_mm);
    place.textContent = say("size_from.finished-size", { length, width });
  }

  /** @returns {Keeping} */
  keeping() {
    const { choices, service, store } = this.page;
    const { email } = choices.workshop;
    const colour = choices.matching ? "" : (store.order.own?.wanted ?? "");
    const failed = { says: say("request.failed", { email }) };
    const request = (/** @type {Record<string, string>} */ asked) => service.request(asked).catch(() => failed);
    return { choices, wanted: colour && say("shade.wanted", { colour }), request, announce: (words) => this.page.announce(words) };
  }

  close() {
    const { page } = this;
    const { since: _gone, ...order } = page.store.order;
    this.panel.opened.replaceChildren();
    history.replaceState(null, "", location.pathname + location.search);
    page.store.change(order);
    this.panel.closest("section")?.focus();
  }

  /** @param {Answered | null} answered */
  submitted(answered) {
    if (answered?.answer.kind === "not-understood" && this.faults.length)
      return this.page.live?.summary(this.faults);
    const section = this.panel.closest("section");
    section?.focus();
    section?.scrollIntoView({ block: "start" });
  }

  clearSummary() {
    this.page.live?.summary([]);
  }

  /** @param {{kind: string, inS: number}} trouble */
  troubled(trouble) {
    const again = () => void this.page.asking.again();
    this.panel.standing(this.last ? say("answer.last-answer", { what: orderWords(this.last.order) }) : "", this.last !== null);
    this.bar.away(this.last, trouble.inS);
    this.panel.trouble.replaceChildren(troubleNotice(trouble, again));
    this.panel.dataset.state = "trouble";
    this.page.announce(`${say(`trouble.${trouble.kind}`)} ${say("trouble.kept")}`);
  }

  /** @param {Remedy} remedy */
  apply(remedy) {
    const { page } = this;
    try {
      page.store.change(patched(page.store.order, remedy.patch), { cause: "fix" }); // verified as it is
      page.announce(`${[remedy.says].flat().join(" ")} ${say("remedy.done")}`);
    } catch (fault) {
      if (!(fault instanceof StalePatch)) throw fault;
      page.announce(say("remedy.stale"));
      this.panel.standing(say("remedy.stale"), true);
      page.asking.ask(page.store.order, { typing: false });
    }
  }
}

/** After the next frame, or soon. @returns {Promise<void>} */
function painted() {
  return new Promise((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve));
    setTimeout(resolve, 500);
  });
}
