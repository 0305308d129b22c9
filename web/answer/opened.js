/** An earlier quote, as it was offered and as it stands today. */

import { make } from "../make.js";
import { day, money, say } from "../words.js";

/**
 * @param {Opened} found
 * @param {Choices} choices
 * @param {() => void} close
 * @returns {HTMLElement}
 */
export function openedNotice(found, choices, close) {
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
    make("p", { class: "today" }, todayWords(found)),
    button,
  );
  return section;
}

/**
 * @param {Opened} found
 * @param {Choices} choices
 */
function asOffered({ price, lead_time: lead }, { tax }) {
  const amount = (/** @type {string} */ text) => money(text, price.currency);
  const name = tax?.name ?? say("answer.tax");
  const rows = [
    [say("answer.price"), say("quote.price", { total: amount(price.total), tax: amount(price.tax), name })],
    [say("answer.day"), say("quote.ready", { day: day(lead.ready_on), by: day(lead.if_ordered_by) })],
    [say("quote.deposit"), amount(price.deposit)],
  ];
  return make("dl", {}, ...rows.flatMap(([what = "", value = ""]) => [make("dt", {}, what), make("dd", {}, value)]));
}

/**
 * What the same order is answered today, beside what was offered.
 * @param {Opened} found
 * @returns {string}
 */
export function todayWords({ today, price, lead_time: lead }) {
  if (!today || today.kind === "not-understood") return say("quote.today-gone");
  if (today.kind === "sent-back") return say("quote.today-stopped");
  const { body } = today;
  const same = body.price.total === price.total && body.lead_time.ready_on === lead.ready_on;
  if (same) return say("quote.today-same");
  const [total, ready] = [money(body.price.total, body.price.currency), day(body.lead_time.ready_on)];
  return say("quote.today", { total, day: ready });
}
