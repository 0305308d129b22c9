/** The offer at hand, once its letter leaves the desk: kept, and what its papers are asked by. */

import { named } from "../answer/sentences.js";

/** The quote that the letter is of, where it is one. @param {Desk} desk */
export function quoteOf({ page }) {
  const answer = page.answers.last?.answer;
  return answer?.kind === "quote" ? answer.body : null;
}

/** What a paper of this offer is asked by. @param {Desk} desk @param {string} name of the customer */
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
