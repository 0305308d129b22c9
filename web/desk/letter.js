/** The reply as it will look: written, shown, copied, or taken as a draft. */

import { named } from "../answer/sentences.js";
import { elements, make, one, say } from "../show.js";
import { copied, saved } from "./files.js";
import { mailNodes } from "./mail.js";
import { paperButtons } from "./papers.js";

const NAME = "ledgerstone.letter.1";
/** @type {{tone: string, name: string, to: Contract.Customer | null}} */
const EMPTY = { tone: "full", name: "", to: null };

export class Letter {
  /** @param {Desk} desk */
  constructor(desk) {
    this.desk = desk;
    this.set = { ...EMPTY, ...JSON.parse(sessionStorage.getItem(NAME) ?? "{}") };
    /** @type {Contract.Reply | null} */
    this.reply = null;
    this.wanted = false;
    this.name = make("input", { id: "letter-name", autocomplete: "off" });
    this.paper = make("div", { id: "letter", tabindex: "-1", role: "group", "aria-label": say("reply.letter") });
    this.said = make("p", { class: "hint said" });
    this.tools = make("div", { id: "letter-tools", hidden: "" });
  }

  listen() {
    const tone = (/** @type {string} */ value) => make("label", { class: "pick" }, make("input", { type: "radio", name: "tone", value }), say(`reply.${value}`));
    one("#reply-place").replaceChildren(
      make("div", { class: "field" }, make("label", { for: "letter-name" }, say("reply.name")), this.name),
      make("fieldset", { class: "field picks" }, make("legend", {}, say("reply.tone")), tone("full"), tone("short")),
      make("p", {}, make("button", { type: "button", class: "main", press: () => void this.write() }, say("reply.write"))),
      make("p", { class: "fault", id: "letter-fault", hidden: "" }),
      this.tools,
      this.said,
      this.paper,
    );
    this.fill();
    one("#reply").addEventListener("input", () => this.entered());
    this.desk.page.asking.addEventListener("answer", (event) => {
      if (this.wanted && /** @type {CustomEvent} */ (event).detail.settled) void this.again();
    });
    this.desk.page.store.addEventListener("change", () => this.paper.classList.add("stale"));
  }

  /** @param {Contract.Customer | null} customer */
  begin(customer) {
    this.set = { ...EMPTY, tone: this.set.tone, name: customer?.name ?? "", to: customer };
    this.reply = null;
    this.wanted = false;
    this.paper.replaceChildren();
    this.tools.hidden = true;
    this.said.textContent = "";
    this.fill();
  }

  fill() {
    this.name.value = this.set.name;
    for (const radio of /** @type {HTMLInputElement[]} */ (elements(one("#reply-place"), "[name=tone]"))) radio.checked = radio.value === this.set.tone;
    this.keep();
  }

  entered() {
    const tone = /** @type {HTMLInputElement | null} */ (document.querySelector("[name=tone]:checked"));
    this.set = { ...this.set, name: this.name.value, tone: tone?.value ?? "full" };
    this.keep();
    if (this.wanted) void this.again();
  }

  keep() {
    sessionStorage.setItem(NAME, JSON.stringify(this.set));
  }

  /** What a reply is asked by. */
  ask() {
    const { desk, set } = this;
    const { name, to, tone } = set;
    const [assumed, missing] = [desk.enquiry.open("assumed"), desk.enquiry.open("missing")];
    const asksOnly = !desk.readable && missing.length > 0;
    const { order } = desk.page.store;
    return {
      ...(asksOnly ? order.language && { language: order.language } : { order, ...desk.hand.terms, tone }),
      ...(name && { customer: name }),
      assumed: assumed.map(({ at, says }) => ({ at, says })),
      missing: missing.map(({ at, says }) => ({ at, asks: says })),
      ...(to && { answers: answersOf(to) }),
    };
  }

  async write() {
    this.wanted = true;
    if (await this.again()) this.paper.focus({ preventScroll: true });
    this.tools.scrollIntoView({ block: "nearest" });
  }

  /** Write it as the order now stands. */
  async again() {
    const asked = this.desk.page.store.order;
    const reply = await this.desk.tried("#letter-fault", () => this.desk.service.ask("v1/replies", this.ask()));
    if (!reply || asked !== this.desk.page.store.order) return false;
    this.reply = reply;
    this.paper.replaceChildren(make("p", { class: "subject" }, reply.subject), ...mailNodes(reply.html, (link) => this.desk.service.drawing(link)));
    this.paper.classList.remove("stale");
    this.showTools();
    return true;
  }

  showTools() {
    if (!this.tools.hasChildNodes()) {
      const button = (/** @type {string} */ key, /** @type {() => void} */ press, kind = "quiet") => make("button", { type: "button", class: kind, press }, say(key));
      this.tools.append(
        make("div", { class: "keep" }, button("reply.copy", () => this.copyWhole(), "main"), button("reply.copy-text", () => this.copyText()), button("reply.draft", () => void this.download()), this.desk.set.drafts && button("reply.file", () => void this.file()), button("reply.sent", () => this.sent())),
        make("h3", {}, say("papers.title")),
        paperButtons(this.desk, () => this.paperOf(), "#letter-fault"),
      );
    }
    this.tools.hidden = false;
  }

  copyWhole() {
    if (this.reply) this.copy("reply.copied", { "text/html": this.reply.html, "text/plain": this.reply.text });
  }

  copyText() {
    if (this.reply) this.copy("reply.text-copied", { "text/plain": this.reply.text });
  }

  /** @param {string} done @param {Record<string, string>} forms by media type */
  copy(done, forms) {
    this.keepOffer();
    if (copied(forms)) return this.tell(say(done));
    getSelection()?.selectAllChildren(this.paper);
    this.tell(say("reply.not-copied"));
  }

  async download() {
    const draft = await this.desk.tried("#letter-fault", () => this.desk.service.file("v1/replies", this.ask(), "message/rfc822"));
    if (!draft) return;
    saved(draft, "reply.eml");
    this.keepOffer();
  }

  /** Put the reply among the drafts of the maker's own mailbox. */
  async file() {
    const done = await this.desk.tried("#letter-fault", () => this.desk.service.ask("v1/drafts", this.ask()));
    if (!done) return;
    this.keepOffer();
    this.tell(done.says);
  }

  sent() {
    const quote = this.keepOffer();
    if (quote?.token) this.desk.kept.set(quote.token, { state: "sent", on: this.desk.set.today });
    this.tell(say("reply.noted"));
  }

  /** The quote that the letter is of, where it is one. */
  quote() {
    const answer = this.desk.page.answers.last?.answer;
    return answer?.kind === "quote" ? answer.body : null;
  }

  /** What a paper of this offer is asked by. */
  paperOf() {
    const quote = this.quote();
    const reference = quote ? named(quote) : "offer";
    const order = { order: this.desk.page.store.order, ...this.desk.terms() };
    return { reference, ask: quote?.token ? { token: quote.token } : order };
  }

  /** Keep the offer among the last fifty, once its letter leaves the desk. */
  keepOffer() {
    const quote = this.quote();
    if (!quote?.token) return null;
    const { token, price, valid_until: until } = quote;
    const [customer, to] = [this.set.name, this.set.to?.reply_to ?? ""];
    this.desk.kept.put({ token, reference: named(quote), customer, to, total: price.total, currency: price.currency, until, on: this.desk.set.today, state: "draft" });
    return quote;
  }

  /** @param {string} words */
  tell(words) {
    this.said.textContent = words;
    this.desk.page.announce(words);
  }
}

/** @param {Contract.Customer} customer */
function answersOf({ reply_to: to, subject, message_id, references }) {
  return Object.fromEntries(Object.entries({ to, subject, message_id, references }).filter(([, value]) => value));
}
