import { spoken, UNITS, withMark } from "./lib/lengths.js";

/** @type {Messages} */
let messages = {};
let language = "en-GB";
/** @type {{lengths: Unit, masses: "kg" | "lb"}} */
let units = { lengths: "mm", masses: "kg" };
const KG_PER = { kg: 1, lb: 0.45359237 };
/** @type {Map<string, any>} */
const formats = new Map();
/** @type {Record<"long" | "short", Intl.DateTimeFormatOptions>} */
const DAYS = {
  long: { weekday: "long", day: "numeric", month: "long", year: "numeric", timeZone: "UTC" },
  short: { day: "numeric", month: "short", timeZone: "UTC" },
};

/** @param {Messages} all @param {string} lang */
export function setWords(all, lang) {
  messages = all;
  language = lang;
  formats.clear();
}

/** @param {Choices} choices */
export function setPlace({ words, formats: place }) {
  units = place;
  setWords({ ...messages, .../** @type {Messages} */ (words) }, place.locale);
}

/** @param {string} key */
export function knows(key) {
  return Object.hasOwn(messages, key);
}

/** `n` chooses between one and several. @param {string} key @param {Record<string, string | number>} [values] */
export function say(key, values = {}) {
  const message = messages[key] ?? key;
  const text = typeof message === "string" ? message : (message[plural(Number(values.n))] ?? message.other);
  return text.replace(/\{(\w+)\}/g, (_, name) => String(values[name] ?? ""));
}

/** @param {number} n */
function plural(n) {
  return once("plural", () => new Intl.PluralRules(language)).select(n);
}

/** Formats are slow to make. @template Format @param {string} name @param {() => Format} make @returns {Format} */
function once(name, make) {
  if (!formats.has(name)) formats.set(name, make());
  return formats.get(name);
}

/** @param {string | number} amount a decimal text @param {string} currency ISO 4217 */
export function money(amount, currency) {
  return once(currency, () => new Intl.NumberFormat(language, { style: "currency", currency })).format(Number(amount));
}

/** @param {string} iso @param {"long" | "short"} [how] */
export function day(iso, how = "long") {
  const format = once(how, () => new Intl.DateTimeFormat(language, DAYS[how]));
  const text = format.format(new Date(`${iso}T00:00:00Z`));
  return language === "en-GB" ? text.replace(",", "") : text;
}

/** @param {number} amount @param {number} [places] */
export function number(amount, places = 0) {
  return once(`${places}`, () => new Intl.NumberFormat(language, { maximumFractionDigits: places })).format(amount);
}

/** @param {number} kg @param {number} [places] */
export function weight(kg, places = 0) {
  const pounds = units.masses === "lb";
  const options = { style: "unit", unit: pounds ? "pound" : "kilogram", maximumFractionDigits: pounds ? 0 : places };
  return once(`mass${places}`, () => new Intl.NumberFormat(language, /** @type {any} */ (options))).format(kg / KG_PER[units.masses]);
}

/** A mass that was typed, in kg, and back. @param {number} amount @param {boolean} [back] */
export function typedMass(amount, back = false) {
  return Number((back ? amount / KG_PER[units.masses] : amount * KG_PER[units.masses]).toFixed(1));
}

/** In an outline's unit, on the last; in metres each in its own, short ones in mm. @param {Outline | undefined} outline @param {number[]} mm @returns {string[]} */
export function sizes(outline, ...mm) {
  const typed = String(outline?.length ?? outline?.diameter ?? outline?.points?.[0]?.x).replace("ft", "in");
  const unit = UNITS.find((each) => typed.endsWith(` ${each}`)) ?? units.lengths;
  if (unit === "m") return mm.map((each) => (each < 1000 ? `${number(each, 1)} mm` : lengthWords(spoken(each, unit))));
  const said = mm.map((each) => (unit === "mm" ? number(each, 1) : marked(spoken(each, unit, 16)).slice(0, -unit.length - 1)));
  said.push(lengthWords(`${said.pop()} ${unit}`));
  return said;
}

export function usualUnit() {
  return units.lengths;
}

export function masses() {
  return units.masses;
}

/** 0.5 or 0,5. @returns {Mark} */
export function mark() {
  return number(0.5, 1).includes(",") ? "," : ".";
}

/** @param {string} telephone */
export function telAddress(telephone) {
  return `tel:${telephone.replace(/[^\d+]/g, "")}`;
}

/** A length by the language's mark, as it stands in a field. @param {unknown} length */
export function marked(length) {
  return withMark(String(length ?? ""), mark());
}

/** As it is said: 48 in, or 48 Zoll. @param {unknown} length */
export function lengthWords(length) {
  return marked(length).replace(/(\d) (ft|in)\b/g, (_, amount, unit) => `${amount} ${say(`length.${unit}`)}`);
}

/** @param {string[]} things */
export function listed(things) {
  return new Intl.ListFormat(language, { type: "conjunction" }).format(things);
}

/** @param {ParentNode} root */
export function fillWords(root) {
  for (const element of elements(root, "[data-says]")) write(element, say(element.dataset.says ?? ""));
  for (const element of elements(root, "[data-says-label]"))
    element.setAttribute("aria-label", say(element.dataset.saysLabel ?? ""));
}

/** @param {Element} element @param {string} words */
export function write(element, words) {
  if (element.textContent !== words) element.textContent = words;
}

/** @param {string} selector @param {ParentNode} root @returns {HTMLElement} */
export function one(selector, root = document) {
  return /** @type {any} */ (root.querySelector(selector));
}

/** @param {ParentNode} root @param {string} selector @returns {HTMLElement[]} */
export function elements(root, selector) {
  return Array.from(root.querySelectorAll(selector));
}

/**
 * @template {keyof HTMLElementTagNameMap} Name
 * @param {Name} name @param {Record<string, string | (() => void)>} [attributes] @param {...Child} children @returns {HTMLElementTagNameMap[Name]}
 */
export function make(name, attributes = {}, ...children) {
  return filled(document.createElement(name), attributes, children);
}

/**
 * @template {keyof SVGElementTagNameMap} Name
 * @param {Name} name @param {Record<string, string | number>} [attributes] @param {...Child} children @returns {SVGElementTagNameMap[Name]}
 */
export function draw(name, attributes = {}, ...children) {
  return filled(document.createElementNS("http://www.w3.org/2000/svg", name), attributes, children);
}

/** @template {Element} Made @param {Made} element @param {Record<string, string | number | (() => void)>} attributes @param {Child[]} children */
function filled(element, attributes, children) {
  for (const [key, value] of Object.entries(attributes))
    if (typeof value !== "function") element.setAttribute(key, String(value));
    else element.addEventListener("click", (event) => (event.preventDefault(), value()));
  element.append(...children.filter((child) => child !== null && child !== undefined && child !== false));
  return element;
}

export const LOCALES = /** @type {Readonly<Record<string, string>>} */ ({ en: "en-GB", de: "de-DE" });

/** @param {readonly (string | null | undefined)[]} wanted language tags (RFC 5646), the best first */
export function spokenOf(wanted) {
  const primary = wanted.map((tag) => (tag ?? "").toLowerCase().split("-")[0] ?? "");
  return primary.find((language) => Object.hasOwn(LOCALES, language));
}

/** What a document says before any script runs. @param {Document} said @returns {Messages} */
export function saidIn(said) {
  const parts = [said, ...Array.from(said.querySelectorAll("template"), ({ content }) => content)];
  const all = (/** @type {string} */ name) => parts.flatMap((part) => Array.from(part.querySelectorAll(`[${name}]`), (each) => /** @type {const} */ ([each.getAttribute(name), each])));
  const texts = all("data-says").map(([name, { textContent }]) => [name, textContent]);
  const names = all("data-says-label").map(([name, each]) => [name, each.getAttribute("aria-label")]);
  return Object.fromEntries([...texts, ...names]);
}

/** @param {string} language @param {string} [from] */
export async function documentIn(language, from = "") {
  const answer = await fetch(`${from}index.${language === "en" ? "" : `${language}.`}html`);
  return new DOMParser().parseFromString(await answer.text(), "text/html");
}
