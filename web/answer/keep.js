/** Ways to keep a quote: copy its link, print it. */

import { make } from "../make.js";
import { say } from "../words.js";

/** @typedef {import("../types.js").Quote} Quote */

/**
 * @param {Quote} quote
 * @param {(words: string) => void} announce
 * @returns {HTMLElement}
 */
export function keepTools(quote, announce) {
  const said = make("p", { class: "hint said" });
  const tell = (/** @type {string} */ words) => {
    said.textContent = words;
    announce(words);
  };
  return make(
    "div",
    { class: "keep" },
    make("button", { type: "button", class: "quiet", "data-key": "copy", press: () => void copy(quote.link, tell) }, say("answer.copy-link")),
    make("button", { type: "button", class: "quiet", "data-key": "print", press: () => window.print() }, say("answer.print")),
    said,
  );
}

/**
 * @param {string} link
 * @param {(words: string) => void} tell
 */
async function copy(link, tell) {
  try {
    await navigator.clipboard.writeText(link);
    tell(say("answer.copied"));
  } catch {
    tell(say("answer.not-copied", { link }));
  }
}
