import { elements, make, one, say, telAddress } from "../show.js";
import { block, madeOf, noPrice, onPaper } from "./block.js";
import { Drawing } from "./drawing.js";
import { isAsked, toChange, withoutDelivery } from "./sentences.js";
import { costWords, findingList, notChecked, oneForAll, waysToSave } from "./findings.js";

export class AnswerPanel extends HTMLElement {
  constructor() {
    super();
    this.live = make("p", { class: "live" }, say("answer.starting"));
    this.opened = make("div", { class: "opened" });
    this.trouble = make("div", { class: "trouble" });
    this.unread = make("div", { class: "unread" });
    this.top = make("div", { class: "top" });
    this.drawing = new Drawing();
    this.pictured = make("div", { class: "pictured" });
    this.rest = make("div", { class: "rest" });
  }

  connectedCallback() {
    const body = make("div", { class: "body" }, this.top, this.pictured, this.rest);
    this.replaceChildren(this.opened, this.live, this.trouble, this.unread, body);
  }

  clear() {
    for (const part of [this.opened, this.trouble, this.unread, this.top, this.rest]) part.replaceChildren();
    this.drawing.element.hidden = true;
    delete this.dataset.state;
  }

  /** @param {string} words @param {boolean} stale */
  standing(words, stale) {
    this.live.textContent = words;
    this.classList.toggle("stale", stale);
    this.allow();
  }

  allow() {
    for (const ask of this.querySelectorAll(".ask")) ask.toggleAttribute("inert", this.classList.contains("stale"));
  }

  /** In the place of the price before; what is asked for with that one can't be sent. @param {Answer} answer @param {string} tax */
  price(answer, tax) {
    const before = this.top.querySelector(".block");
    if (answer.kind !== "quote" || !before) return false;
    before.replaceWith(block(answer.body, tax));
    this.classList.remove("stale");
    return true;
  }

  /** @param {Answer} answer @param {Showing} showing */
  show(answer, showing) {
    const opened = Array.from(this.querySelectorAll("details[open]"), keyOf);
    const focused = this.contains(document.activeElement) ? keyOf(document.activeElement) : undefined;
    this.unread.replaceChildren(...unreadNotice(answer, showing));
    this.rest.inert = answer.kind === "not-understood"; // it is for an order of before
    if (answer.kind === "quote") this.showQuote(answer.body, showing);
    if (answer.kind === "sent-back") this.showSentBack(answer.body, showing);
    for (const details of this.querySelectorAll("details")) details.open = opened.includes(keyOf(details));
    this.allow();
    if (focused) this.refocus(focused);
  }

  /** @param {Quote} quote @param {Showing} showing */
  showQuote(quote, showing) {
    const findings = findingList(quote.findings, showing);
    const ways = waysToSave(quote.ways_to_save ?? [], showing);
    this.top.replaceChildren(...there(quote.trial ? make("p", { class: "notice" }, quote.trial) : null, block(quote, showing.tax), showing.ask, onPaper(quote)));
    const changed = quote.changes?.says?.length ? changesList(quote.changes) : null;
    this.rest.replaceChildren(...there(changed, showing.keep, findings, ways, ...madeOf(quote, showing.tax)));
    this.draw(quote.drawings, showing);
  }

  /** @param {SentBack} sent @param {Showing} showing */
  showSentBack(sent, showing) {
    const stops = toChange(sent.findings);
    const asked = stops.every(isAsked);
    this.top.replaceChildren(
      ...there(
        asked ? noPrice(withoutDelivery(stops).join(" "), "") : noPrice(say("answer.no-price"), say("answer.no-price-why")),
        asked ? null : oneForAll("remedy.fix-all", sent.fix_all, showing),
        asked ? null : oneForAll("remedy.nearest", sent.nearest_makeable, showing),
        findingList(asked ? sent.findings : withoutTwice(sent), showing),
        sent.why_no_fix ? make("p", {}, sent.why_no_fix) : null,
        notChecked(sent.not_checked),
      ),
    );
    this.rest.replaceChildren();
    this.draw(sent.drawings, showing);
  }

  /** @param {Drawings} drawings @param {Showing} showing */
  draw(drawings, { slab, drawing, look, pictured }) {
    if (!pictured) return; // the form comes first
    const picture = (/** @type {"view" | "plan" | "assembled"} */ kind, query = "") => {
      const link = drawings[kind];
      const says = kind === "plan" ? (drawings.says?.[slab] ?? "") : (drawings.says?.join(" ") ?? "");
      return link === undefined ? undefined : { address: drawing(link) + query, alt: say(`drawing.${kind}-alt`, { says }) };
    };
    const phone = matchMedia("(max-width: 500px)").matches ? "&width=390" : "";
    const { trueSize } = this.drawing;
    trueSize.hidden = !drawings.true_size;
    if (drawings.true_size) trueSize.href = drawing(drawings.true_size);
    look(picture("view"));
    this.drawing.show({ view: picture("view"), plan: picture("plan", `?slab=${slab}${phone}`), assembled: picture("assembled") });
  }

  /** @param {string} key */
  refocus(key) {
    const again = Array.from(this.querySelectorAll("[data-key]")).find((each) => keyOf(each) === key);
    const heading = /** @type {HTMLElement | null} */ (this.closest("section"));
    const found = /** @type {HTMLElement | null} */ (again ?? heading);
    found?.focus({ preventScroll: true });
    return found;
  }
}

/** @param {SentBack} sent */
function withoutTwice({ findings, fix_all, nearest_makeable }) {
  const above = JSON.stringify((fix_all ?? nearest_makeable)?.patch);
  return findings.map((finding) => ({
    ...finding,
    remedies: finding.remedies?.filter(({ patch }) => JSON.stringify(patch) !== above),
  }));
}

/** @param {Changes} changes */
function changesList({ says, since, price_change, ready_later_days: days }) {
  const title = say("quote.changes", { reference: since.reference });
  const later = days ? say(days > 0 ? "quote.later" : "quote.sooner", { n: Math.abs(days) }) : null;
  const all = [...says, costWords({ price_change }), later].filter((one) => one);
  return make("section", {}, make("h3", {}, title), make("ul", { class: "changes" }, ...all.map((one) => make("li", {}, one))));
}

/** @param {Element | null} element */
function keyOf(element) {
  return /** @type {HTMLElement | null} */ (element)?.dataset.key;
}

/** @param {...(HTMLElement | null)} parts */
function there(...parts) {
  return parts.filter((part) => part !== null);
}

/** @param {Answer} answer @param {Showing} showing */
function unreadNotice(answer, showing) {
  if (answer.kind !== "not-understood") return [];
  const faults = answer.body.faults ?? [];
  if (faults.length === 0) return [make("p", {}, answer.body.detail)];
  const links = faults.map(({ pointer, says }) =>
    make("li", {}, make("a", { href: "#order", "data-key": pointer, press: () => showing.go(pointer, pointer) }, says)),
  );
  return [make("p", {}, say("answer.unread", { n: faults.length })), make("ul", {}, ...links)];
}

export function defineAnswer() {
  customElements.define("ledgerstone-answer", AnswerPanel);
}

/** @param {{kind: string, inS: number}} trouble @param {() => void} again */
export function troubleNotice({ kind, inS }, again) {
  return make(
    "div",
    { class: "notice" },
    make("p", {}, `${say(`trouble.${kind}`)} ${say("trouble.kept")} ${say("trouble.retry", { n: Math.round(inS) })}`),
    make("p", {}, make("button", { type: "button", "data-key": "again", press: again }, say("trouble.now"))),
    reach(),
  );
}

function reach() {
  const [email, telephone] = elements(document, "#reach a").map((link) => /** @type {Element} */ (link.cloneNode(true)));
  if (!email) return null;
  const words = say("page.reach", { email: "\u0000", telephone: "\u0000" }).split("\u0000");
  return make("p", {}, words[0] ?? "", email, words[1] ?? "", telephone, words[2] ?? "");
}

/** @param {Choices["workshop"]} workshop */
export function showWorkshop({ demonstration, email, name, ring, telephone, town }) {
  const [mail, call] = /** @type {HTMLAnchorElement[]} */ (elements(document, "#reach a"));
  if (mail) Object.assign(mail, { textContent: email, href: `mailto:${email}` });
  if (call) Object.assign(call, { textContent: ring, href: telAddress(telephone) });
  one("#maker").textContent = say(demonstration ? "page.made-up-by" : "page.made-by", { name, town });
  const invented = one("#invented"); // the desk has none
  if (invented) Object.assign(invented, { hidden: !demonstration, textContent: say("page.invented", { name }) });
}
