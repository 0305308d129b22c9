/** What was offered, as it is looked at again: drawn, its lines, and what the customer has not answered. */

import { orderWords } from "../answer/sentences.js";
import { make, money, say } from "../show.js";
import { table } from "./costs.js";

/** Each slab as it was offered: in words, and its plan. @param {Desk} desk @param {Opened} found */
export function drawn(desk, { drawings: { plan, says = [] }, order }) {
  if (!says.length) return make("p", {}, orderWords(order));
  const figures = says.map((words, slab) => {
    const src = plan && desk.service.drawing(`${plan}?slab=${slab}`);
    return make("figure", {}, src ? make("img", { src, alt: say("drawing.plan-alt", { says: words }), loading: "lazy" }) : null, make("figcaption", {}, words));
  });
  return make("div", { class: "drawn" }, ...figures);
}

/** What the customer was asked and has not answered, each to be put away. @param {Desk} desk @param {string} token */
export function questions(desk, token) {
  const place = make("section", { class: "asked", tabindex: "-1", "aria-label": say("offers.asked") });
  const show = () => {
    const asked = desk.kept.of(token)?.asked ?? [];
    const put = (/** @type {string} */ asks) => {
      desk.kept.set(token, { asked: asked.filter((one) => one.asks !== asks) });
      show();
      place.focus();
    };
    const item = (/** @type {string} */ asks) => make("li", {}, asks, " ", make("button", { type: "button", class: "quiet", press: () => put(asks) }, say("offers.answered")));
    place.replaceChildren(...(asked.length ? [make("h3", {}, say("offers.asked")), make("ul", {}, ...asked.map(({ asks }) => item(asks)))] : []));
  };
  show();
  return place;
}

/** The lines and the words with which an offer was made. @param {Opened} found */
export function offered({ price, note }) {
  const rows = (price.lines ?? []).map(({ label, amount }) => [label, money(amount, price.currency)]);
  return make("div", {}, note ? make("p", { class: "letter-text" }, note) : null, make("details", {}, make("summary", {}, say("answer.lines")), table(rows)));
}
