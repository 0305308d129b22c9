/** What the page says, from one file of messages a language. */

/** @typedef {string | {one: string, other: string}} Message */
/** @typedef {Readonly<Record<string, Message>>} Messages */

/** @type {Messages} */
let messages = {};
let language = "en-GB";

/**
 * Set the messages and the language that numbers, days and money are written in.
 * @param {Messages} all
 * @param {string} lang
 */
export function setWords(all, lang) {
  messages = all;
  language = lang;
}

/**
 * Whether there is a message of this name.
 * @param {string} key
 */
export function knows(key) {
  return Object.hasOwn(messages, key);
}

/**
 * Say a message, its {names} filled in; `n` chooses between one and several.
 * @param {string} key
 * @param {Record<string, string | number>} [values]
 * @returns {string}
 */
export function say(key, values = {}) {
  const message = messages[key] ?? key;
  const text = typeof message === "string" ? message : message[plural(Number(values.n))];
  return text.replace(/\{(\w+)\}/g, (_, name) => String(values[name] ?? ""));
}

/** @param {number} n */
function plural(n) {
  return new Intl.PluralRules(language).select(n) === "one" ? "one" : "other";
}

/**
 * @param {string | number} amount a decimal text
 * @param {string} currency ISO 4217
 */
export function money(amount, currency) {
  return new Intl.NumberFormat(language, { style: "currency", currency }).format(Number(amount));
}

/**
 * Write an ISO 8601 day out: Thursday 25 March 2027.
 * @param {string} iso
 * @param {"long" | "short"} [how]
 */
export function day(iso, how = "long") {
  /** @type {Intl.DateTimeFormatOptions} */
  const long = { weekday: "long", day: "numeric", month: "long", year: "numeric" };
  /** @type {Intl.DateTimeFormatOptions} */
  const short = { day: "numeric", month: "short" };
  const options = { ...(how === "long" ? long : short), timeZone: "UTC" };
  return new Intl.DateTimeFormat(language, options).format(new Date(`${iso}T00:00:00Z`)).replace(",", "");
}

/**
 * @param {number} amount
 * @param {number} [places]
 */
export function number(amount, places = 0) {
  return new Intl.NumberFormat(language, { maximumFractionDigits: places }).format(amount);
}

/** @param {string[]} things */
export function listed(things) {
  return new Intl.ListFormat(language, { type: "conjunction" }).format(things);
}

/**
 * Fill in every element that names its message: `data-says` its text, `data-says-label` its name.
 * @param {ParentNode} root
 */
export function fillWords(root) {
  for (const element of elements(root, "[data-says]")) element.textContent = say(element.dataset.says ?? "");
  for (const element of elements(root, "[data-says-label]"))
    element.setAttribute("aria-label", say(element.dataset.saysLabel ?? ""));
}

/**
 * @param {ParentNode} root
 * @param {string} selector
 * @returns {HTMLElement[]}
 */
export function elements(root, selector) {
  return Array.from(root.querySelectorAll(selector));
}
