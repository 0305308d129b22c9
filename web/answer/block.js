import { day, make, money, number, say, sizes, weight as mass } from "../show.js";
import { weeks } from "./drawing.js";
import { daySentence, named, ordered, standing, taxWords } from "./sentences.js";

/** @param {Quote} quote @param {string} taxName */
export function block(quote, taxName) {
  const cells = [priceCell(quote, taxName), dayCell(quote), weightCell(quote), standingCell(quote)];
  return make("dl", { class: "block" }, ...cells);
}

/** @param {Quote} quote */
export function onPaper(quote) {
  return make("ul", { class: "on-paper" }, ...ordered(quote).map((line) => make("li", {}, line)));
}

/** @param {string} first @param {string} why */
export function noPrice(first, why) {
  return make("dl", { class: "block" }, cell("price", "answer.price", first, why));
}

/** @param {Quote} quote @param {string} name */
function priceCell({ order, price }, name) {
  const { currency } = price;
  const [net, tax] = [money(price.net, currency), money(price.tax, currency)];
  const taxed = Number(price.tax_percent) > 0;
  const more = [taxed && say("answer.net", { net, tax, name }), say("answer.deposit", { deposit: money(price.deposit, currency) })];
  const big = money(price.total, currency);
  return cell("price", "answer.price", big, taxWords(price, name), say(`answer.has-${order.delivery?.kind ?? "collect"}`), ...more);
}

/** @param {Quote} quote */
function dayCell(quote) {
  const { arrives, if_ordered_by: by } = quote.lead_time;
  const spread = arrives.earliest !== arrives.latest && quote.order.delivery?.kind !== "collect";
  const between = { earliest: day(arrives.earliest, "short"), latest: day(arrives.latest, "short") };
  const more = [spread && say("answer.between", between), say("answer.if-ordered", { day: day(by) })];
  return cell("day", "answer.day", daySentence(quote), ...more);
}

/** @param {Quote} quote */
function weightCell({ order, weight, slabs }) {
  const lines = weight.slabs.map((slab, i) => {
    const about = slab.says;
    if (weight.slabs.length < 2) return about;
    return say("answer.weighs", { label: slab.label || say("slabs.one", { number: i + 1 }), about });
  });
  const measured = slabs.map(({ finished_mm: size }, i) => {
    const outline = order.slabs[i]?.outline;
    const [length = "", width = "", thickness = ""] = sizes(outline, size.length_mm, size.width_mm, size.thickness_mm);
    if (outline?.kind === "round") return say("answer.across", { length: String(sizes(outline, size.length_mm)), thickness });
    return say("answer.size", { length, width, thickness });
  });
  const packed = say("answer.packed", { weight: mass(weight.packed_kg) });
  return cell("weight", "answer.weight", capital(lines.shift() ?? ""), ...lines.map(capital), packed, ...measured);
}

/** @param {string} words */
function capital(words) {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** @param {Quote} quote */
function standingCell(quote) {
  return cell("standing", "answer.standing", ...standing(quote), say("answer.reference", { reference: named(quote) }));
}

/** @param {string} kind @param {string} key @param {string} first @param {...(string | false | null)} more */
function cell(kind, key, first, ...more) {
  const lines = more.filter((line) => line).map((line) => make("dd", {}, line));
  return make("div", { class: `cell ${kind}` }, make("dt", {}, say(key)), make("dd", { class: "first" }, first), ...lines);
}

/** @param {Quote} quote @param {string} taxName */
export function madeOf(quote, taxName) {
  return [lines(quote, taxName), stages(quote), depends(quote)];
}

/** @param {Quote} quote @param {string} name */
function lines({ price }, name) {
  const amount = (/** @type {string} */ text) => money(text, price.currency);
  const sums = [
    [say("answer.before-tax"), amount(price.net)],
    ...(Number(price.tax_percent) > 0 ? [[say("answer.tax-line", { name, percent: number(price.tax_percent, 2) }), amount(price.tax)]] : []),
    [say("answer.total"), amount(price.total)],
  ];
  const rows = price.lines.map(({ label, amount: sum }) => [label, amount(sum)]);
  return opening("lines", "answer.lines", table(["answer.what", "answer.amount"], rows, sums));
}

/** @param {Quote} quote */
function stages({ lead_time: lead }) {
  const rows = lead.stages.map(({ name, starts, ends, why }) => {
    const when = starts === ends ? day(starts, "short") : span(starts, ends);
    return [why ? `${name}: ${why}` : name, when];
  });
  return opening("stages", "answer.stages", weeks(lead), table(["answer.what", "answer.when"], rows, []));
}

/** @param {string} starts @param {string} ends */
function span(starts, ends) {
  return say("answer.from-to", { from: day(starts, "short"), to: day(ends, "short") });
}

/** @param {Quote} quote */
function depends({ depends_on: sentences }) {
  return opening("depends", "answer.depends", make("ul", { class: "depends" }, ...sentences.map((sentence) => make("li", {}, sentence))));
}

/** @param {string} name @param {string} key @param {...(Element | null)} inner */
function opening(name, key, ...inner) {
  return make("details", { class: "fold", "data-key": name }, make("summary", { "data-key": `${name}-summary` }, say(key)), ...inner);
}

/** @param {string[]} heads @param {string[][]} rows @param {string[][]} sums */
function table(heads, rows, sums) {
  const head = make("tr", {}, ...heads.map((key) => make("th", { scope: "col" }, say(key))));
  const body = rows.map(([what = "", value = ""]) => make("tr", {}, make("td", {}, what), make("td", {}, value)));
  const foot = sums.map(([what = "", value = ""]) => make("tr", {}, make("th", { scope: "row" }, what), make("td", {}, value)));
  return make("table", {}, make("thead", {}, head), make("tbody", {}, ...body), make("tfoot", {}, ...foot));
}
