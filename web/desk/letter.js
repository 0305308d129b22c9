import { elements, make, one, say } from "../show.js";
import { copied, mailNodes, paperButtons, saved } from "./files.js";
import { keepOffer, paperOf, quoteOf } from "./offered.js";

const NAME = "ledgerstone.letter.1";
/** @type {{tone: string, name: string, to: Partial<Contract.Customer> | null}} */
const EMPTY = { tone: "full", name: "", to: null };

export class Letter {
  /** @param {Desk} desk */
  constructor(desk) {
    this.desk = desk;
    this.set = { ...EMPTY, ...JSON.parse(sessionStorage.getItem(NAME) ?? "{}") };
    /** @type {Contract.Reply | null} */
    this.reply = null;
    this.wanted = false;
    this.awaited = false; // whether it is gone to once it is written
    this.turn = 0;
    this.name = make("input", { id: "letter-name", autocomplete: "off" });
    this.paper = make("div", { id: "letter", tabindex: "-1", role: "group", "aria-label": say("reply.letter") });
    this.said = make("p", { class: "hint said" });
    this.tools = make("div", { id: "letter-tools", hidden: "" });
    this.copyButton = make("button", { type: "button", class: "main", press: () => this.copyWhole() }, say("reply.copy"));
    const tool = (/** @type {string} */ key, /** @type {() => void} */ press) => make("button", { type: "button", class: "quiet", press }, say(key));
    this.sentButton = tool("reply.sent", () => this.sent());
    this.papers = make("div", {}, make("h3", {}, say("papers.title")), paperButtons(desk, () => paperOf(desk, this.set.name), "#letter-fault"));
    const file = desk.set.drafts ? tool("reply.file", () => void this.file()) : null;
    const ways = make("div", { class: "keep" }, this.copyButton, tool("reply.copy-text", () => this.copyText()), tool("reply.draft", () => void this.download()), file, this.sentButton, desk.set.no_links && make("p", { class: "hint" }, desk.set.no_links));
    this.tools.append(ways, this.said, this.papers);
    this.taken = ""; // the letter that left the desk last, as text
  }

  listen() {
    const tone = (/** @type {string} */ value) => make("label", { class: "pick" }, make("input", { type: "radio", name: "tone", value }), say(`reply.${value}`));
    one("#reply-place").replaceChildren(
      make("div", { class: "field" }, make("label", { for: "letter-name" }, say("reply.name")), this.name),
      make("fieldset", { class: "field picks" }, make("legend", {}, say("reply.tone")), tone("full"), tone("short")),
      make("p", {}, make("button", { type: "button", class: "main", press: () => void this.write() }, say("reply.write"))),
      make("p", { class: "fault", id: "letter-fault", hidden: "" }),
      this.tools,
      this.paper,
    );
    this.fill();
    one("#reply").addEventListener("input", () => this.entered());
    this.desk.page.asking.addEventListener("answer", (event) => {
      if (this.wanted && /** @type {CustomEvent} */ (event).detail.settled) void this.again();
    });
    this.desk.page.store.addEventListener("change", () => this.paper.classList.add("stale"));
  }

  /** @param {Partial<Contract.Customer> | null} customer @param {{anew: boolean}} how */
  begin(customer, { anew }) {
    const name = (anew ? "" : this.set.name) || (customer?.name ?? "");
    this.set = { ...EMPTY, tone: this.set.tone, name, to: customer };
    this.reply = null;
    this.wanted = false;
    this.paper.replaceChildren();
    this.tools.hidden = true;
    this.said.textContent = "";
    this.taken = "";
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

  ask() {
    const { desk, set } = this;
    const { name, to, tone } = set;
    const [assumed, missing] = [desk.enquiry.open("assumed"), desk.enquiry.questions()];
    const asksOnly = !desk.readable && missing.length > 0;
    const { order } = desk.page.store;
    const asked = desk.enquiry.original.sent(desk.enquiry.wished);
    return {
      ...(asksOnly ? order.language && { language: order.language } : { order, ...desk.terms(), tone }),
      ...(name && { customer: name }),
      assumed: assumed.map(({ at, says }) => ({ at, says })),
      missing,
      ...(!asksOnly && asked && { asked }),
      ...(to && { answers: answersOf(to) }),
    };
  }

  async write() {
    const { answers, asking, store } = this.desk.page;
    // The offer that is kept is the one that the letter makes.
    if (answers.last?.order !== store.order) await this.desk.tried("#letter-fault", () => asking.now(store.order));
    [this.wanted, this.awaited] = [true, true];
    await this.again();
  }

  async again() {
    const asked = this.desk.page.store.order;
    const turn = ++this.turn;
    const reply = await this.desk.tried("#letter-fault", () => this.desk.service.ask("v1/replies", this.ask()));
    if (!reply || turn !== this.turn || asked !== this.desk.page.store.order) return;
    this.reply = reply;
    this.paper.replaceChildren(make("p", { class: "subject" }, reply.subject), ...mailNodes(reply.html, (link) => this.desk.service.drawing(link)));
    this.paper.classList.remove("stale");
    this.showTools();
    this.compare(reply);
    if (!this.awaited) return;
    this.awaited = false;
    this.paper.focus({ preventScroll: true });
    this.tools.scrollIntoView({ block: "start" });
  }

  /** What cannot be made yet has no papers, and no offer to keep. */
  showTools() {
    const isOffer = Boolean(quoteOf(this.desk)?.token);
    for (const part of [this.sentButton, this.papers]) part.hidden = !isOffer;
    this.tools.hidden = false;
  }

  /** What was copied, or taken as a draft, is no longer the letter that is shown. @param {Contract.Reply} reply */
  compare({ text }) {
    const isOther = this.taken !== "" && this.taken !== text;
    this.copyButton.textContent = say(isOther ? "reply.copy-again" : "reply.copy");
    if (isOther) this.tell(say("reply.anew"));
    else if (this.taken === "") this.said.textContent = "";
  }

  copyWhole() {
    if (this.reply) this.copy("reply.copied", { "text/html": this.reply.html, "text/plain": this.reply.text });
  }

  copyText() {
    if (this.reply) this.copy("reply.text-copied", { "text/plain": this.reply.text });
  }

  /** @param {string} done @param {Record<string, string>} forms by media type */
  copy(done, forms) {
    this.leaves();
    if (copied(forms)) return this.tell(say(done));
    getSelection()?.selectAllChildren(this.paper);
    this.tell(say("reply.not-copied"));
  }

  async download() {
    const draft = await this.desk.tried("#letter-fault", () => this.desk.service.file("v1/replies", this.ask(), "message/rfc822"));
    if (!draft) return;
    saved(draft, "reply.eml");
    this.leaves();
  }

  async file() {
    const done = await this.desk.tried("#letter-fault", () => this.desk.service.ask("v1/drafts", this.ask()));
    if (!done) return;
    this.leaves();
    this.tell(done.says);
  }

  sent() {
    const quote = keepOffer(this.desk, this.set);
    if (quote?.token) this.desk.kept.set(quote.token, { state: "sent", on: this.desk.set.today });
    this.tell(say("reply.noted"));
  }

  leaves() {
    this.taken = this.reply?.text ?? "";
    this.copyButton.textContent = say("reply.copy");
    this.said.textContent = "";
    keepOffer(this.desk, this.set);
  }

  /** @param {string} words */
  tell(words) {
    this.said.textContent = words;
    this.desk.page.announce(words);
  }
}

/** @param {Partial<Contract.Customer>} customer */
function answersOf({ reply_to: to, subject, message_id, references }) {
  return Object.fromEntries(Object.entries({ to, subject, message_id, references }).filter(([, value]) => value));
}
