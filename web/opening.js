/** Opens the quote that the page's address names: #quote=TOKEN. */

import { day, say } from "./words.js";

/** @typedef {import("./page.js").Page} Page */

/**
 * Show an earlier quote's order in the form; the draft that stood there comes back by undo.
 * @param {Page} page
 */
export async function openQuote(page) {
  const token = new URLSearchParams(location.hash.slice(1)).get("quote");
  if (!token) return;
  page.announce(say("quote.opening"));
  try {
    const found = await page.service.earlier(token);
    const quote = found.quote ?? found;
    if (!Array.isArray(quote.order?.slabs)) throw new Error("There is no order in that quote.");
    page.store.change(quote.order, { cause: "load", slab: 0 });
    tell(page, say("quote.opened", { reference: quote.reference ?? "", day: day(quote.issued) }));
  } catch {
    tell(page, say("quote.missing"));
  }
}

/**
 * @param {Page} page
 * @param {string} words
 */
function tell(page, words) {
  page.draftSays(words);
  page.announce(words);
}
