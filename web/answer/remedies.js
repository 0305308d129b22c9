/** Changes that the service found and verified: each one button that shows what it will change. */

import { read } from "../lib/pointer.js";
import { make } from "../make.js";
import { nameOf } from "../order/naming.js";
import { money, say } from "../words.js";

/**
 * @param {Remedy[]} remedies
 * @param {string} key tells this list's buttons from another's
 * @param {Context} context
 * @returns {HTMLElement | null}
 */
export function remedyButtons(remedies, key, context) {
  if (remedies.length === 0) return null;
  return make("ul", { class: "remedies" }, ...remedies.map((remedy, i) => item(remedy, `${key} ${i}`, context)));
}

/**
 * One change that settles everything, or the nearest that can be made.
 * @param {"remedy.fix-all" | "remedy.nearest"} title
 * @param {Remedy | undefined} remedy
 * @param {Context} context
 */
export function oneForAll(title, remedy, context) {
  if (!remedy) return null;
  const list = make("ul", { class: "remedies" }, item(remedy, title, context, say(title)));
  return make("section", { class: "for-all" }, make("h3", {}, say(title)), list);
}

/**
 * @param {Remedy[]} ways
 * @param {Context} context
 */
export function waysToSave(ways, context) {
  const buttons = remedyButtons(ways, "save", context);
  return buttons && make("section", { class: "ways" }, make("h3", {}, say("remedy.ways")), buttons);
}

/**
 * @param {Remedy} remedy
 * @param {string} key
 * @param {Context} context
 * @param {string} [title] on the button where the sentences are several
 */
function item(remedy, key, context, title) {
  const sentences = [remedy.says].flat();
  const changes = remedy.patch.map((operation) => changeWords(context.order, operation)).filter((words) => words !== "");
  const id = `remedy-${key.replace(/[^a-z0-9]+/gi, "-")}`;
  const press = () => context.apply(remedy);
  const words = sentences.length > 1 && title ? title : (sentences[0] ?? title ?? "");
  const button = make("button", { type: "button", "data-key": key, "aria-describedby": id, press }, words);
  const said = sentences.length > 1 ? sentences.map((sentence) => make("li", {}, sentence)) : [];
  const shown = changes.map((change) => make("li", {}, change));
  const cost = costWords(remedy, context.currency);
  const what = make("ul", { class: "changes" }, ...said, ...shown, cost && make("li", { class: "cost" }, cost));
  return make("li", {}, button, make("div", { id }, what));
}

/**
 * Say what one operation changes, by the form's names; a test changes nothing.
 * @param {Order} order as it was sent
 * @param {Operation} operation
 * @returns {string}
 */
export function changeWords(order, { op, path, value }) {
  const name = nameOf(order, path);
  const from = valueWords(read(order, path));
  const to = valueWords(value);
  if (op === "remove") return say("remedy.removed", { name });
  if (op === "replace") return from && to ? say("remedy.from-to", { name, from, to }) : say("remedy.add", { name });
  if (op === "add") return to ? say("remedy.added", { name, to }) : say("remedy.add", { name });
  return "";
}

/** @param {unknown} value */
function valueWords(value) {
  if (typeof value === "number") return String(value);
  return typeof value === "string" ? value : "";
}

/**
 * @param {Remedy} remedy
 * @param {string} currency
 */
function costWords(remedy, currency) {
  const saves = amountOf(remedy.saves);
  if (saves !== null) return say("remedy.saves", { amount: money(saves, currency) });
  const change = amountOf(remedy.price_change);
  if (change === null) {
    const price = amountOf(remedy.price);
    return price === null ? null : say("remedy.then", { price: money(price, currency) });
  }
  if (Number(change) === 0) return say("remedy.same");
  const more = Number(change) > 0;
  return say(more ? "remedy.more" : "remedy.less", { amount: money(change.replace(/^[-−]/, ""), currency) });
}

/**
 * @param {Money | undefined} given a decimal text, alone or with its currency
 * @returns {string | null}
 */
function amountOf(given) {
  if (typeof given === "string") return given;
  return given?.total ?? given?.amount ?? null;
}
