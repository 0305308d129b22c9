import { read } from "../lib/json.js";
import { day, knows, lengthWords, money, number, say } from "../show.js";

/** @param {Quote} quote */
export function daySentence({ lead_time: lead, order }) {
  if (order.delivery?.kind === "collect" || !order.delivery)
    return say("answer.collect", { day: day(lead.ready_on) });
  return say("answer.arrives", { day: day(lead.arrives.latest) });
}

/** @param {Quote} quote */
export function named({ reference, changes }) {
  return `${reference} ${changes?.revision ?? ""}`.trim();
}

/** @param {Quote} quote */
export function ordered({ slabs, weight, order }) {
  const lines = slabs.map(({ says }, i) => [says, weight.slabs[i]?.says].filter(Boolean).join(" "));
  const way = `delivery.${order.delivery?.kind ?? "collect"}`;
  return [...lines, knows(way) ? `${say("delivery.label")}: ${say(way)}` : ""].filter(Boolean);
}

/** @param {Price} price @param {string} name */
export function taxWords(price, name) {
  const taxed = Number(price.tax_percent) > 0;
  return taxed ? say("answer.with-tax", { percent: number(price.tax_percent, 2), name }) : say("answer.no-tax");
}

/** @param {Quote} quote @returns {[string, string]} */
export function standing({ standing, valid_until }) {
  const until = { day: day(valid_until) };
  return standing === "quotation" ? [say("answer.quotation"), say("answer.valid", until)] : [say("answer.estimate"), say("answer.rates", until)];
}

/** @param {Quote} quote @param {Keeping} keeping */
export function asText(quote, { choices, wanted }) {
  const { price, link } = quote;
  const tax = choices.tax?.name ?? say("answer.tax");
  const lines = [
    say("keep.subject", { reference: named(quote) }),
    ...ordered(quote),
    wanted,
    `${say("keep.text-price", { total: money(price.total, price.currency) })} ${taxWords(price, tax)}`,
    `${daySentence(quote)}.`,
    `${standing(quote).join("; ")}.`,
    link ?? "",
  ];
  return lines.filter(Boolean).join("\n");
}

/** @param {Answered} answered */
export function unsought({ answer, partial }) {
  return partial && answer.kind === "sent-back" ? say("answer.partial") : "";
}

/** @param {NotUnderstood} body */
function unread({ faults = [], more_faults: more = 0, detail }) {
  return faults.length ? say("answer.unread", { n: faults.length + more }) : detail;
}

/** @param {Answered} answered @param {string} name */
export function sentence({ answer }, name) {
  if (answer.kind === "not-understood") {
    return unread(answer.body);
  }
  const { findings } = answer.body;
  if (answer.kind === "sent-back") {
    const stops = toChange(findings);
    return stops.every(isAsked) ? `${withoutDelivery(stops).join(" ")}. ${stops[0]?.says}` : say("answer.announce-stopped", { n: stops.length });
  }
  const { price } = answer.body;
  const key = Number(price.tax_percent) > 0 ? "answer.announce" : "answer.announce-no-tax";
  const told = findings.length ? say("findings.count", { n: findings.length }) : "";
  return say(key, { name, total: money(price.total, price.currency), day: daySentence(answer.body), findings: told }).trim();
}

/** @param {Answered} answered */
export function brief({ answer }) {
  if (answer.kind === "not-understood") return { first: unread(answer.body), more: answer.body.faults?.[0]?.says ?? "", long: false, stopped: true };
  const { findings } = answer.body;
  if (answer.kind === "quote") {
    const long = findings.some(({ check }) => check === "rests-not-told");
    const more = `${shortDay(answer.body)}${long ? ` · ${say("bar.rests-open")}` : ""}`;
    return { first: money(answer.body.price.total, answer.body.price.currency), more, long, stopped: false };
  }
  const stops = toChange(findings);
  const asked = stops.every(isAsked);
  const [first = "", plus] = asked ? withoutDelivery(stops) : [say("findings.change-count", { n: stops.length })];
  return { first, more: [plus, stops[0]?.says].filter(Boolean).join(" · "), long: asked, stopped: !asked };
}

/** Of what waits for its postcode alone: as if it were collected. @param {Finding[]} stops */
export function withoutDelivery([stop]) {
  const price = stop?.remedies?.find((remedy) => remedy.price)?.price;
  return price ? [money(price.total, price.currency), say("answer.plus-delivery")] : [say("answer.no-price")];
}

/** What stops it, what follows from another left out. @param {Finding[]} findings */
export function toChange(findings) {
  return findings.filter(({ level, follows_from: cause }) => level === "stops" && cause === undefined);
}

/** What is yet to be told; nothing of it can't be made. @param {Finding} finding */
export function isAsked({ check }) {
  return /^postcode-/.test(check);
}

/** @param {Quote} quote */
function shortDay({ lead_time: lead, order }) {
  const collected = order.delivery?.kind === "collect";
  const iso = collected ? lead.ready_on : lead.arrives.latest;
  return say(collected ? "answer.glance-collect" : "answer.glance-arrives", { day: day(iso, "short") });
}

/** @param {Order} order */
export function orderWords({ slabs }) {
  const { length, width, diameter } = slabs[0]?.outline ?? {};
  if (slabs.length > 1) return say("slabs.count", { n: slabs.length });
  const sizes = [length ?? diameter, width].filter((size) => size !== undefined);
  return sizes.length ? sizes.map(lengthWords).join(" × ") : say("at.the-slab");
}

/** Like "tap, centre from the front". @param {Order} order @param {string} pointer */
export function nameOf(order, pointer) {
  const [, , number, ...rest] = pointer.split("/");
  if (!pointer.startsWith("/slabs/")) return partName(pointer.slice(1)) ?? say("at.order");
  const inside = insideName(order, pointer, rest);
  if (order.slabs.length < 2) return inside ?? say("at.the-slab");
  const slab = say("at.slab", { number: Number(number) + 1 });
  return inside ? say("at.of", { thing: slab, part: inside }) : slab;
}

/** @param {Order} order @param {string} pointer @param {string[]} rest */
function insideName(order, pointer, rest) {
  const kinds = /** @type {Record<string, string>} */ ({ cutouts: "at.opening", reliefs: "at.relief" });
  const kind = kinds[rest[0] ?? ""];
  if (!kind || rest[1] === undefined) return partName(rest.join("/"));
  const at = pointer.split("/").slice(0, 5).join("/");
  const thing = read(order, at)?.label || say(kind, { number: Number(rest[1]) + 1 });
  const part = rest.length > 2 ? partName(rest.slice(2).join("/")) : null;
  return part ? say("at.of", { thing, part }) : thing;
}

/** Itself, else what holds it. @param {string} part */
function partName(part) {
  for (let at = part.replaceAll("/", "-"); at; at = at.includes("-") ? at.slice(0, at.lastIndexOf("-")) : "")
    if (knows(`at.${at}`)) return say(`at.${at}`);
  return null;
}
