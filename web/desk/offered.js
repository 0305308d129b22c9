import { named, orderWords } from "../answer/sentences.js";
import { make, money, say } from "../show.js";
import { table } from "./costs.js";

/** @param {Desk} desk @param {Opened} found */
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

/** @param {Opened} found */
export function offered({ price, note }) {
  const rows = (price.lines ?? []).map(({ label, amount }) => [label, money(amount, price.currency)]);
  return make("div", {}, note ? make("p", { class: "letter-text" }, note) : null, make("details", {}, make("summary", {}, say("answer.lines")), table(rows)));
}

/** @param {Desk} desk */
export function quoteOf({ page }) {
  const answer = page.answers.last?.answer;
  return answer?.kind === "quote" ? answer.body : null;
}

/** @param {Desk} desk @param {string} name of the customer */
export function paperOf(desk, name) {
  const quote = quoteOf(desk);
  const reference = quote ? named(quote) : "offer";
  const { order } = desk.page.store;
  const ask = quote?.token ? { token: quote.token } : { order, ...desk.terms() };
  return { reference, order, ask: { ...ask, ...(name && { customer: name }) }, missing: desk.enquiry.questions() };
}

/** Keep the offer among the last fifty, with what its letter asks and the terms it is made by. @param {Desk} desk @param {{name: string, to: Partial<Contract.Customer> | null}} whose */
export function keepOffer(desk, { name, to }) {
  const quote = quoteOf(desk);
  if (!quote?.token) return null;
  const { token, price, valid_until: until } = quote;
  desk.kept.put({ token, reference: named(quote), customer: name, to: to?.reply_to ?? "", total: price.total, currency: price.currency, until, on: desk.set.today, state: "draft" });
  desk.kept.set(token, { asked: desk.enquiry.questions(), terms: desk.termsForm.terms });
  return quote;
}
