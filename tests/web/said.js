/** All that the page says in a language: what its document says itself, and its file of messages. */

import { readFileSync } from "node:fs";

import { messages as germanFile } from "../../web/messages.de.js";
import { messages as file } from "../../web/messages.en.js";

const plain = (/** @type {string} */ text) => text.replaceAll("&lt;", "<").replaceAll("&#x27;", "'").replaceAll("&quot;", '"').replaceAll("&amp;", "&");

/** @param {string} name */
function saidBy(name) {
  const seen = readFileSync(new URL(`../../web/${name}`, import.meta.url), "utf8");
  const texts = [...seen.matchAll(/<[^<>]*\bdata-says="([^"]+)"[^<>]*>([^<]+)(?=<)/g), ...seen.matchAll(/\bdata-says-label="([^"]+)" aria-label="([^"]*)"/g)];
  return Object.fromEntries(texts.map(([, key, text = ""]) => [key, plain(text)]));
}

/** @type {Record<string, any>} */
export const messages = { ...saidBy("index.html"), ...file };
/** @type {Record<string, any>} */
export const german = { ...saidBy("index.de.html"), ...germanFile };
