import { openedNotice, orderOf } from "../answer/opened.js";
import { day, make, money, one, say } from "../show.js";
import { copied, fetchPaper, paperButtons, saved } from "./files.js";
import { STATES, tokenIn, waits } from "./kept.js";
import { drawn, offered, questions } from "./offered.js";

const PATIENCE = "ledgerstone.patience";
const FAULT = "#offers-fault";

export class Offers {
  /** @param {Desk} desk */
  constructor(desk) {
    this.desk = desk;
    this.field = make("textarea", { id: "offer-field", rows: "2", autocomplete: "off" });
    this.opened = make("div", { id: "opened", tabindex: "-1" });
    this.list = make("div", {});
    this.patience = make("input", { id: "patience", inputmode: "numeric", value: localStorage.getItem(PATIENCE) ?? "7" });
  }

  listen() {
    const open = make("button", { type: "button", class: "main", press: () => void this.open(this.field.value) }, say("offers.open"));
    const place = one("#view-offers");
    place.replaceChildren(
      make("section", { class: "sheet" }, make("h2", {}, say("offers.open-title")), fieldOf("offer-field", "offers.field", this.field), make("p", {}, open), make("p", { class: "fault", id: "offers-fault", hidden: "" }), this.opened),
      this.list,
      make("section", { class: "sheet keep-file" }, make("p", { class: "hint" }, say("offers.here-alone")), this.files()),
    );
    place.addEventListener("dragover", (event) => event.preventDefault());
    place.addEventListener("drop", (event) => {
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      void (file ? file.text() : Promise.resolve(event.dataTransfer?.getData("text/plain") ?? "")).then((text) => this.open(text));
    });
    this.desk.kept.addEventListener("change", () => this.show());
    this.show();
  }

  files() {
    const input = make("input", { type: "file", accept: ".json,application/json", id: "offers-file" });
    input.addEventListener("change", async () => {
      const text = (await input.files?.[0]?.text()) ?? "";
      input.value = "";
      this.desk.page.announce(this.added(text));
    });
    const press = () => saved(new Blob([JSON.stringify(this.desk.kept.all())], { type: "application/json" }), "offers.json");
    this.patience.addEventListener("change", () => {
      localStorage.setItem(PATIENCE, String(this.days()));
      this.show();
    });
    return make("div", { class: "keep" }, make("button", { type: "button", class: "quiet", press }, say("offers.export")), make("label", { class: "file" }, say("offers.import"), input), fieldOf("patience", "offers.patience", this.patience));
  }

  days() {
    return Math.max(1, Number.parseInt(this.patience.value, 10) || 7);
  }

  /** @param {string} text */
  added(text) {
    try {
      return say("offers.imported", { n: this.desk.kept.add(text) });
    } catch {
      return say("offers.not-imported");
    }
  }

  show() {
    const offers = this.desk.kept.all();
    const waiting = offers.flatMap((offer) => {
      const why = waits(offer, this.desk.set.today, this.days());
      return why ? [{ offer, why }] : [];
    });
    one("#waiting").textContent = waiting.length ? String(waiting.length) : "";
    const rest = offers.filter((offer) => !waiting.some((each) => each.offer === offer));
    this.list.replaceChildren(
      section("offers.waits", waiting.map(({ offer, why }) => this.row(offer, whyWords(offer, why))), "offers.nothing-waits"),
      ...(rest.length || !waiting.length ? [section("offers.all", rest.map((offer) => this.row(offer, "")), "offers.none")] : []),
    );
  }

  /** @param {KeptOffer} offer @param {string} why */
  row(offer, why) {
    const { token, reference, customer, state, total, currency, until } = offer;
    const select = make("select", { "aria-label": say("offers.state", { reference }) }, ...STATES.map((name) => make("option", { value: name, ...(name === state && { selected: "" }) }, say(`offers.${name}`))));
    select.addEventListener("change", () => this.desk.kept.set(token, { state: /** @type {KeptOffer["state"]} */ (select.value), on: this.desk.set.today }));
    const open = make("button", { type: "button", class: "quiet", press: () => void this.openToken(token) }, say("offers.open-row", { reference }));
    const button = (/** @type {string} */ key, /** @type {() => void} */ press) => make("button", { type: "button", class: "quiet", press }, say(key));
    const unpaid = state === "yes" && !offer.paid;
    const request = unpaid ? button("papers.deposit", () => void this.note("deposit", offer)) : null;
    const paid = unpaid ? button("offers.paid", () => this.desk.kept.set(token, { paid: true })) : null;
    const remind = state === "sent" ? button("papers.reminder", () => void this.note("reminder", offer)) : null;
    const [asked, isPaid] = [offer.asked?.length ?? 0, state === "yes" && offer.paid];
    const facts = [customer, money(total, currency), say("offers.until", { day: day(until, "short") }), isPaid && say("offers.is-paid"), asked && state !== "no" && say("offers.asked-count", { n: asked })];
    const words = facts.filter(Boolean).join(" · ");
    return make("li", { class: "entry" }, make("p", {}, make("strong", {}, reference), " ", words, why ? make("span", { class: "why" }, ` ${why}`) : null), make("div", { class: "keep" }, open, select, remind, request, paid));
  }

  /** Open what was pasted or dropped: a link, a mail, or the reference of an offer kept here. @param {string} text */
  async open(text) {
    const token = tokenIn(text) || this.desk.kept.namedIn(text)?.token;
    if (token) return this.openToken(token);
    const [reference] = text.toUpperCase().match(/\b[0-9A-Z]{4}-[0-9A-Z]{4}\b( [A-Z]\b)?/) ?? [];
    this.desk.tell(FAULT, reference ? say("offers.not-here", { reference }) : say("offers.no-link"), "fault");
  }

  /** @param {string} token */
  async openToken(token) {
    /** @type {Opened | undefined} */
    const found = await this.desk.tried(FAULT, () => this.desk.service.earlier(token));
    if (!found) return;
    const reference = [found.reference, found.revision].filter(Boolean).join(" ");
    const offer = this.desk.kept.of(token) ?? { token, reference, customer: "", to: "", total: found.price.total, currency: found.price.currency, until: found.valid_until, on: this.desk.set.today, state: /** @type {const} */ ("sent") };
    this.desk.kept.put(offer);
    const notice = openedNotice(found, this.desk.page.choices, () => this.opened.replaceChildren(), "offers.today");
    const press = (/** @type {string} */ key, /** @type {() => void} */ does, kind = "quiet") => make("button", { type: "button", class: kind, press: does }, say(key));
    this.opened.replaceChildren(
      notice,
      drawn(this.desk, found),
      offered(found),
      questions(this.desk, token),
      make("div", { class: "keep" }, press("papers.yes", () => void this.yes(offer), "main"), press("papers.reminder", () => void this.note("reminder", offer)), press("papers.deposit", () => void this.note("deposit", offer)), press("offers.change", () => this.change(found, offer))),
      paperButtons(this.desk, () => ({ ...this.of(token, offer), order: found.order }), FAULT),
      make("div", { id: "note" }),
    );
    this.opened.focus({ preventScroll: true });
    this.opened.scrollIntoView({ block: "start" });
    this.desk.page.announce(found.says);
  }

  /** What an offer's papers are asked by: whose it is, and what is not answered. @param {string} token @param {KeptOffer} offer */
  of(token, { reference, customer }) {
    return { reference, ask: { token, ...(customer && { customer }) }, missing: this.desk.kept.of(token)?.asked ?? [] };
  }

  /** A yes becomes a job: the job sheet, the calendar's entries, and the request for the deposit. @param {KeptOffer} offer */
  async yes(offer) {
    this.desk.kept.set(offer.token, { state: "yes", on: this.desk.set.today });
    const of = this.of(offer.token, offer);
    await fetchPaper(this.desk, "job", of, FAULT);
    await fetchPaper(this.desk, "calendar", of, FAULT);
    await this.note("deposit", offer);
  }

  /** @param {"reminder" | "deposit"} kind @param {KeptOffer} offer */
  async note(kind, { token, customer, to }) {
    const ask = { token, ...(customer && { customer }) };
    /** @type {Contract.Note | undefined} */
    const note = await this.desk.tried(FAULT, () => this.desk.service.ask(`v1/notes/${kind}`, ask));
    if (!note) return;
    const said = copied({ "text/plain": note.text }) ? say("offers.note-copied") : "";
    const mail = `mailto:${to}?subject=${encodeURIComponent(note.subject)}&body=${encodeURIComponent(note.text)}`;
    const asked = kind === "deposit" ? (this.desk.kept.of(token)?.asked ?? []) : [];
    const still = asked.length ? make("p", { class: "why" }, say("offers.asked-still", { questions: asked.map(({ asks }) => asks).join(" ") })) : null;
    const shown = make("div", { class: "notice" }, still, note.lacks ? make("p", { class: "why" }, note.lacks) : null, make("p", { class: "hint" }, said), make("p", { class: "letter-text" }, note.text), make("p", {}, make("a", { href: mail }, say("offers.mail"))));
    (document.querySelector("#note") ?? this.opened).replaceChildren(shown);
    shown.scrollIntoView({ block: "nearest" });
    this.desk.page.announce(said);
  }

  /** A change to an offer begins with its terms but for its last day, where it was made here. @param {Opened} found @param {KeptOffer} offer */
  change(found, { customer, to, terms = {} }) {
    const { valid_until: _last, ...others } = terms;
    this.desk.enquiry.clear();
    this.desk.termsForm.become(others);
    this.desk.letter.begin({ name: customer, reply_to: to }, { anew: true });
    this.desk.page.store.change(orderOf(found), { cause: "load", slab: 0 });
    location.hash = "#offer";
  }
}

/** @param {KeptOffer} offer @param {{why: string, n: number}} why */
function whyWords({ until }, { why, n }) {
  return say(`offers.why-${why}`, { n, day: day(until, "short") });
}

/** @param {string} title @param {HTMLElement[]} rows @param {string} none */
function section(title, rows, none) {
  const inner = rows.length ? make("ul", { class: "rows" }, ...rows) : make("p", { class: "hint" }, say(none));
  return make("section", { class: "sheet" }, make("h2", {}, say(title)), inner);
}

/** @param {string} id @param {string} key @param {HTMLElement} control */
function fieldOf(id, key, control) {
  return make("div", { class: "field" }, make("label", { for: id }, say(key)), control);
}
