/** The answer, as one element whose parts are drawn anew; and what is said when there is none. */

import { make, say } from "../show.js";
import { block, madeOf, noPrice, onPaper } from "./block.js";
import { Drawing, weeks } from "./drawing.js";
import { costWords, findingList, notChecked, oneForAll, waysToSave } from "./findings.js";

/** Shows one answer at a time; focus and opened parts outlast a new answer. */
export class AnswerPanel extends HTMLElement {
  constructor() {
    super();
    this.live = make("p", { class: "live" }, say("answer.starting"));
    this.opened = make("div", { class: "opened" });
    this.trouble = make("div", { class: "trouble" });
    this.unread = make("div", { class: "unread" });
    this.top = make("div", { class: "top" });
    this.drawing = new Drawing();
    this.rest = make("div", { class: "rest" });
  }

  connectedCallback() {
    const body = make("div", { class: "body" }, this.top, this.drawing.element, this.rest);
    this.replaceChildren(this.opened, this.live, this.trouble, this.unread, body);
  }

  /** Show nothing: what comes next is of another order. */
  clear() {
    for (const part of [this.opened, this.trouble, this.unread, this.top, this.rest]) part.replaceChildren();
    this.drawing.element.hidden = true;
    delete this.dataset.state;
  }

  /** Say in a word how the answer stands to the order. @param {string} words @param {boolean} stale */
  standing(words, stale) {
    this.live.textContent = words;
    this.classList.toggle("stale", stale);
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
    if (focused) this.refocus(focused);
  }

  /** @param {Quote} quote @param {Showing} showing */
  showQuote(quote, showing) {
    const findings = findingList(quote.findings, showing);
    const ways = waysToSave(quote.ways_to_save ?? [], showing);
    this.top.replaceChildren(block(quote, showing.tax), onPaper(quote));
    const changed = quote.changes?.says?.length ? changesList(quote.changes) : null;
    const strip = weeks(quote.lead_time);
    this.rest.replaceChildren(...there(changed, showing.keep, findings, strip, ways, ...madeOf(quote, showing.tax)));
    this.draw(quote.drawings, showing);
  }

  /** @param {SentBack} sent @param {Showing} showing */
  showSentBack(sent, showing) {
    this.top.replaceChildren(
      ...there(
        noPrice(say("answer.no-price-why")),
        oneForAll("remedy.fix-all", sent.fix_all, showing),
        oneForAll("remedy.nearest", sent.nearest_makeable, showing),
        findingList(withoutTwice(sent), showing),
        sent.why_no_fix ? make("p", {}, sent.why_no_fix) : null,
        notChecked(sent.not_checked),
      ),
    );
    this.rest.replaceChildren();
    this.draw(sent.drawings, showing);
  }

  /** @param {Drawings} drawings without links where the slabs are too detailed @param {Showing} showing */
  draw(drawings, { slab, drawing }) {
    const says = drawings.says?.[slab] ?? "";
    const picture = (/** @type {"view" | "plan" | "assembled"} */ kind, query = `?slab=${slab}`) => {
      const link = drawings[kind];
      return link === undefined ? undefined : { address: drawing(link) + query, alt: say(`drawing.${kind}-alt`, { says }) };
    };
    const { trueSize } = this.drawing;
    trueSize.hidden = !drawings.true_size;
    if (drawings.true_size) trueSize.href = drawing(drawings.true_size);
    this.drawing.show({ view: picture("view"), plan: picture("plan"), assembled: picture("assembled", "") });
  }

  /** @param {string} key */
  refocus(key) {
    const again = Array.from(this.querySelectorAll("[data-key]")).find((each) => keyOf(each) === key);
    const heading = /** @type {HTMLElement | null} */ (this.closest("section"));
    /** @type {HTMLElement | null} */ (again ?? heading)?.focus({ preventScroll: true });
  }
}

/** Findings without the change that stands above them all: no change has two buttons. @param {SentBack} sent */
function withoutTwice({ findings, fix_all, nearest_makeable }) {
  const above = JSON.stringify((fix_all ?? nearest_makeable)?.patch);
  return findings.map((finding) => ({
    ...finding,
    remedies: finding.remedies?.filter(({ patch }) => JSON.stringify(patch) !== above),
  }));
}

/** What differs from the quote that this one changes. @param {Changes} changes */
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
    make("li", {}, make("a", { href: "#order", "data-key": pointer, press: () => showing.go(pointer) }, says)),
  );
  return [make("p", {}, say("answer.unread", { n: faults.length })), make("ul", {}, ...links)];
}

/** Let the page's `<ledgerstone-answer>` become one, once there are words. */
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
  const [email, telephone] = Array.from(document.querySelectorAll("#reach a"), (link) => /** @type {Element} */ (link.cloneNode(true)));
  const words = say("page.reach", { email: "\u0000", telephone: "\u0000" }).split("\u0000");
  return make("p", {}, words[0] ?? "", email, words[1] ?? "", telephone, words[2] ?? "");
}

/** @param {Choices["workshop"]} workshop */
export function showWorkshop(workshop) {
  const [email, telephone] = document.querySelectorAll("#reach a");
  if (email instanceof HTMLAnchorElement) {
    email.textContent = workshop.email;
    email.href = `mailto:${workshop.email}`;
  }
  if (telephone instanceof HTMLAnchorElement) {
    telephone.textContent = workshop.telephone;
    telephone.href = `tel:${workshop.telephone.replace(/[^\d+]/g, "")}`;
  }
  const maker = document.querySelector("#maker");
  if (maker) maker.textContent = say("page.made-by", { name: workshop.name, town: workshop.town });
  const invented = /** @type {HTMLElement | null} */ (document.querySelector("#invented"));
  if (!invented) return;
  invented.hidden = !workshop.demonstration;
  invented.textContent = say("page.invented", { name: workshop.name });
}
