/** An answer in sentences: said aloud, in a line at the foot, as text to paste. */

import { day, knows, money, number, say } from "../show.js";

/** @param {Quote} quote */
export function daySentence({ lead_time: lead, order }) {
  if (order.delivery?.kind === "collect" || !order.delivery)
    return say("answer.collect", { day: day(lead.ready_on) });
  return say("answer.arrives", { day: day(lead.arrives.latest) });
}

/** A quote's reference, with the letter of its revision. @param {Quote} quote */
export function named({ reference, changes }) {
  return `${reference} ${changes?.revision ?? ""}`.trim();
}

/** What is ordered: each slab whole, and how it comes. @param {Quote} quote */
export function ordered({ slabs, weight, order }) {
  const lines = slabs.map(({ says }, i) => [says, weight.slabs[i]?.says].filter(Boolean).join(" "));
  const way = `delivery.${order.delivery?.kind ?? "collect"}`;
  return [...lines, knows(way) ? `${say("delivery.label")}: ${say(way)}` : ""].filter(Boolean);
}

/** Whether tax is in a price, and how much. @param {Price} price @param {string} name of the tax */
export function taxWords(price, name) {
  const taxed = Number(price.tax_percent) > 0;
  return taxed ? say("answer.with-tax", { percent: number(price.tax_percent, 2), name }) : say("answer.no-tax");
}

/** @param {Quote} quote @param {string} tax what it is called here */
export function asText(quote, tax) {
  const { price, valid_until: until, link } = quote;
  const lines = [
    say("keep.subject", { reference: named(quote) }),
    ...ordered(quote),
    `${say("keep.text-price", { total: money(price.total, price.currency) })} ${taxWords(price, tax)}`,
    `${daySentence(quote)}.`,
    say(quote.standing === "quotation" ? "keep.text-quotation" : "keep.text-estimate", { day: day(until) }),
    link ?? "",
  ];
  return lines.filter(Boolean).join("\n");
}

/**
 * Where something stops the order and the search for what would settle it failed, say so.
 * @param {Answered} answered
 */
export function unsought({ answer, partial }) {
  return partial && answer.kind === "sent-back" ? say("answer.partial") : "";
}

/** How much of an order was not understood; or, where it was, why it is not worked out. @param {NotUnderstood} body */
function unread({ faults = [], more_faults: more = 0, detail }) {
  return faults.length ? say("answer.unread", { n: faults.length + more }) : detail;
}

/** The settled answer in one breath. @param {Answered} answered @param {string} name of the tax */
export function sentence({ answer }, name) {
  if (answer.kind === "not-understood") {
    return unread(answer.body);
  }
  const { findings } = answer.body;
  const stops = toChange(findings);
  if (answer.kind === "sent-back") return say("answer.announce-stopped", { n: stops });
  const { price } = answer.body;
  const key = Number(price.tax_percent) > 0 ? "answer.announce" : "answer.announce-no-tax";
  const told = findings.length ? say("findings.count", { n: findings.length }) : "";
  return say(key, { name, total: money(price.total, price.currency), day: daySentence(answer.body), findings: told }).trim();
}

/** @param {Answered} answered */
export function brief({ answer }) {
  if (answer.kind === "quote") return priceAndDay(answer.body);
  if (answer.kind === "not-understood") {
    return unread(answer.body);
  }
  return say("findings.change-count", { n: toChange(answer.body.findings) });
}

/** How many things stop it, what follows from another left out. @param {Finding[]} findings */
function toChange(findings) {
  return findings.filter(({ level, follows_from: cause }) => level === "stops" && cause === undefined).length;
}

/** @param {Quote} quote */
function priceAndDay({ price, lead_time: lead, order }) {
  const collected = order.delivery?.kind === "collect";
  const iso = collected ? lead.ready_on : lead.arrives.latest;
  const when = say(collected ? "answer.glance-collect" : "answer.glance-arrives", { day: day(iso, "short") });
  return `${money(price.total, price.currency)} · ${when}`;
}
