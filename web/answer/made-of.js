/** What stands behind the price and the day: tables that open, and what they rest on. */

import { make } from "../make.js";
import { day, money, number, say } from "../words.js";

/**
 * @param {Quote} quote
 * @param {string} taxName what the tax is called here
 * @returns {HTMLElement[]}
 */
export function madeOf(quote, taxName) {
  return [lines(quote, taxName), stages(quote), depends(quote)];
}

/**
 * @param {Quote} quote
 * @param {string} name
 */
function lines({ price }, name) {
  const amount = (/** @type {string} */ text) => money(text, price.currency);
  const sums = [
    [say("answer.before-tax"), amount(price.net)],
    ...(Number(price.tax_percent) > 0 ? [[`${name} ${number(price.tax_percent, 2)}%`, amount(price.tax)]] : []),
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
  return opening("stages", "answer.stages", table(["answer.what", "answer.when"], rows, []));
}

/**
 * @param {string} starts
 * @param {string} ends
 */
function span(starts, ends) {
  return say("answer.from-to", { from: day(starts, "short"), to: day(ends, "short") });
}

/** @param {Quote} quote */
function depends({ depends_on: sentences }) {
  return make(
    "div",
    { class: "depends" },
    make("h3", {}, say("answer.depends")),
    make("ul", {}, ...sentences.map((sentence) => make("li", {}, sentence))),
  );
}

/**
 * @param {string} name
 * @param {string} key
 * @param {HTMLElement} inner
 */
function opening(name, key, inner) {
  return make("details", { "data-key": name }, make("summary", { "data-key": `${name}-summary` }, say(key)), inner);
}

/**
 * @param {string[]} heads
 * @param {string[][]} rows
 * @param {string[][]} sums
 */
function table(heads, rows, sums) {
  const head = make("tr", {}, ...heads.map((key) => make("th", { scope: "col" }, say(key))));
  const body = rows.map(([what = "", value = ""]) => make("tr", {}, make("td", {}, what), make("td", {}, value)));
  const foot = sums.map(([what = "", value = ""]) => make("tr", {}, make("th", { scope: "row" }, what), make("td", {}, value)));
  return make("table", {}, make("thead", {}, head), make("tbody", {}, ...body), make("tfoot", {}, ...foot));
}
