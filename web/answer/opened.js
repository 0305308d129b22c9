import { retryS, Trouble } from "../service.js";
import { day, make, money, say } from "../show.js";

/** @param {Page} page @param {number} [tries] */
export async function openQuote(page, tries = 0) {
  const token = tokenOf(location.hash);
  if (!token) return;
  tell(page, say("quote.opening"));
  try {
    show(page, await page.service.earlier(token));
  } catch (fault) {
    if (!(fault instanceof Trouble) || fault.kind === "missing") return tell(page, say("quote.missing"));
    const wait = retryS(tries, fault.afterS);
    tell(page, `${say(`trouble.${fault.kind}`)} ${say("trouble.retry", { n: Math.round(wait) })}`);
    await new Promise((resolve) => setTimeout(resolve, wait * 1000));
    if (tokenOf(location.hash) === token) return openQuote(page, tries + 1);
  }
}

/** @param {string} hash */
export function tokenOf(hash) {
  return new URLSearchParams(hash.slice(1)).get("quote");
}

/** @param {Page} page @param {Opened} found */
function show(page, found) {
  const order = orderOf(found);
  page.store.change(order, { cause: "load", slab: 0 });
  page.answers.panel.opened.replaceChildren(openedNotice(found, page.choices, () => page.answers.close()));
  page.draftSays(say("quote.opened", { reference: found.reference, day: day(found.issued) }));
  page.announce(found.says);
  const answer = page.answers.panel.closest("section");
  answer?.focus({ preventScroll: true });
  answer?.scrollIntoView({ block: "start" });
}

/** As a change to the offer. @param {Opened} found */
export function orderOf({ order, today, token }) {
  const { language: _offered, ...whole } = today?.kind === "quote" || today?.kind === "sent-back" ? today.body.order : order;
  const slabs = whole.slabs.map((/** @type {Slab} */ slab) => ({ edges: {}, ...slab }));
  return { ...whole, slabs, since: token };
}

/** @param {Page} page @param {string} words */
function tell(page, words) {
  page.draftSays(words);
  page.announce(words);
}

/** JSON in base64url, as an email's links carry it. @param {Page} page */
export function openOrder(page) {
  const packed = location.hash.slice("#order=".length).replaceAll("-", "+").replaceAll("_", "/");
  try {
    const bytes = Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0));
    const order = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
    if (!Array.isArray(order.slabs) || order.slabs.length === 0) throw new TypeError("no slabs");
    page.store.change(order, { slab: 0 });
  } catch {
    tell(page, say("quote.missing"));
  }
}

/** @param {Opened} found @param {Choices} choices @param {() => void} close @param {string} [today] */
export function openedNotice(found, choices, close, today) {
  const title = make("h3", {}, say("quote.title", { reference: found.reference }));
  const button = make("button", { type: "button", class: "quiet", "data-key": "close-quote", press: close }, say("quote.close"));
  const because = found.because.map(({ says }) => make("li", {}, says));
  const section = make(
    "section",
    { class: `notice offered ${found.stands ? "stands" : "gone"}` },
    title,
    make("p", {}, found.says),
    because.length ? make("ul", {}, ...because) : null,
    asOffered(found, choices),
    make("p", { class: "today" }, todayWords(found, today)),
    button,
  );
  return section;
}

/** @param {Opened["price"]} price @param {string} name of the tax, where there is any */
export function priceWords({ total, tax, currency }, name) {
  const amount = money(total, currency);
  return Number(tax) > 0 ? say("quote.price", { total: amount, tax: money(tax, currency), name }) : amount;
}

/** @param {Opened} found @param {Choices} choices */
function asOffered({ price, lead_time: lead }, { tax }) {
  const amount = (/** @type {string} */ text) => money(text, price.currency);
  const rows = [
    [say("answer.price"), priceWords(price, tax?.name ?? say("answer.tax"))],
    [say("answer.day"), say("quote.ready", { day: day(lead.ready_on), by: day(lead.if_ordered_by) })],
    [say("quote.deposit"), amount(price.deposit)],
  ];
  return make("dl", {}, ...rows.flatMap(([what = "", value = ""]) => [make("dt", {}, what), make("dd", {}, value)]));
}

/** @param {Opened} found @param {string} [key] */
export function todayWords({ today, price, lead_time: lead }, key = "quote.today") {
  if (!today || today.kind === "not-understood") return say("quote.today-gone");
  if (today.kind === "too-intricate") return today.body.detail;
  if (today.kind === "sent-back") return say("quote.today-stopped");
  const { body } = today;
  const same = body.price.total === price.total && body.lead_time.ready_on === lead.ready_on;
  if (same) return say("quote.today-same");
  const [total, ready] = [money(body.price.total, body.price.currency), day(body.lead_time.ready_on)];
  return say(key, { total, day: ready });
}
