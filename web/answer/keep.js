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
  const { link } = quote;
  const copied = link && button("copy", () => void copy(link, tell));
  return make("div", { class: "keep" }, copied, button("print", () => window.print()), said);
}

/**
 * @param {"copy" | "print"} name
 * @param {() => void} press
 */
function button(name, press) {
  return make("button", { type: "button", class: "quiet", "data-key": name, press }, say(`answer.${name}`));
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
