import { listed, make, money, say, weight } from "../show.js";
import { isAsked, nameOf } from "./sentences.js";

const MOST_OPEN = 2; // warnings
/** @type {Record<string, string>} what is asked for, within what it points to */
const ASKED = { "rests-not-told": "/rests", "postcode-needed": "/postcode" };
const WHENS = /** @type {const} */ (["before-order", "on-delivery", "in-use"]);

/** @param {Finding[]} findings @param {Context} context */
export function findingList(findings, context) {
  if (findings.length === 0) return null;
  const of = (/** @type {(finding: Finding) => boolean} */ wanted) =>
    under((finding) => finding.follows_from === undefined && wanted(finding), findings, context);
  const warned = findings.filter(({ level, when, follows_from: cause }) => level === "caution" && when === "before-order" && cause === undefined).slice(0, MOST_OPEN);
  const isOpen = (/** @type {Finding} */ finding) => finding.level === "stops" || warned.includes(finding);
  const open = of(isOpen);
  return make(
    "section",
    { class: "findings" },
    make("h3", { tabindex: "-1", "data-key": "findings" }, say(findings.some((one) => one.level === "stops" && !isAsked(one)) ? "findings.stopped" : "findings.to-know")),
    open.length ? make("ol", {}, ...open) : null,
    ...WHENS.map((when) => folded(when, of((finding) => !isOpen(finding) && finding.when === when))),
  );
}

/** @param {Finding["when"]} when @param {HTMLElement[]} items */
function folded(when, items) {
  if (items.length === 0) return null;
  const care = items.some(({ className }) => className === "caution");
  const words = [say(`findings.${when}`, { n: items.length }), care && say("findings.caution")].filter(Boolean).join(" · ");
  const summary = make("summary", { class: care ? "caution" : "", "data-key": `${when}-summary` }, words);
  return make("details", { class: "fold", "data-key": when }, summary, make("ol", {}, ...items));
}

/** @param {(finding: Finding) => boolean} wanted @param {Finding[]} findings @param {Context} context @returns {HTMLElement[]} */
function under(wanted, findings, context) {
  return findings.flatMap((finding, i) => (wanted(finding) ? [item(finding, i + 1, findings, context)] : []));
}

/** @param {Finding} finding @param {number} number @param {Finding[]} findings @param {Context} context @returns {HTMLElement} */
function item(finding, number, findings, context) {
  const following = under(({ follows_from: cause }) => cause === finding.id, findings, context);
  const cause = findings.find(({ id }) => id === finding.follows_from);
  const led = finding.at.filter((pointer) => !cause?.at.includes(pointer)).map((pointer) => `${pointer}${ASKED[finding.check] ?? ""}`);
  const places = new Map(led.filter(context.goes).map((pointer) => [nameOf(context.order, pointer), pointer]));
  const asked = isAsked(finding);
  const level = make("strong", { class: "level" }, say(`findings.${asked ? "asked" : finding.level}`));
  return make(
    "li",
    { class: asked ? "note" : finding.level, id: `finding-${number}`, tabindex: "-1", "data-number": `${number}`, "data-key": `finding-${finding.id}` },
    make("p", {}, level, " ", finding.says),
    make("p", { class: "links" }, ...Array.from(places).flatMap(([name, pointer]) => link(finding, name, pointer, context))),
    remedyButtons(finding.remedies ?? [], finding.id, context),
    following.length > 0 ? make("ul", { class: "following" }, ...following) : null,
  );
}

/** @param {Finding} finding @param {string} name @param {string} pointer @param {Context} context */
function link(finding, name, pointer, context) {
  const press = () => context.go(pointer, `finding-${finding.id}`);
  const attributes = { href: "#order", "data-key": `${finding.id} ${pointer}`, press };
  return [make("a", attributes, say("findings.go", { name })), " "];
}

/** @param {string[]} stages */
export function notChecked(stages) {
  if (stages.length === 0) return null;
  const names = listed(stages.map((stage) => say(`stage.${stage}`)));
  return make("p", { class: "hint" }, say("findings.not-checked", { stages: names }));
}

/** @param {Remedy[]} remedies @param {string} key @param {Context} context */
export function remedyButtons(remedies, key, context) {
  if (remedies.length === 0) return null;
  return make("ul", { class: "remedies" }, ...remedies.map((remedy, i) => choice(remedy, `${key} ${i}`, context)));
}

/** @param {"remedy.fix-all" | "remedy.nearest"} title @param {Remedy | undefined} remedy @param {Context} context */
export function oneForAll(title, remedy, context) {
  if (!remedy) return null;
  const list = make("ul", { class: "remedies" }, choice(remedy, title, context, say(title)));
  const said = title === "remedy.fix-all" || [remedy.says].flat().length > 1; // on the button
  return make("section", { class: "for-all" }, said ? null : make("h3", {}, say(title)), list);
}

/** @param {Remedy[]} ways @param {Context} context */
export function waysToSave(ways, context) {
  const buttons = remedyButtons(ways, "save", context);
  if (!buttons) return null;
  const summary = make("summary", { "data-key": "ways-summary" }, make("span", {}, say("remedy.ways")), make("span", { class: "so" }, costWords(/** @type {Remedy} */ (ways[0])) ?? ""));
  return make("details", { class: "fold ways", "data-key": "ways" }, summary, buttons);
}

/** @param {Remedy} remedy @param {string} key @param {Context} context @param {string} [title] */
function choice(remedy, key, context, title) {
  const sentences = [remedy.says].flat();
  const id = `remedy-${key.replace(/[^a-z0-9]+/gi, "-")}`;
  const press = () => context.apply(remedy);
  const words = sentences.length > 1 && title ? title : (sentences[0] ?? title ?? "");
  const button = make("button", { type: "button", "data-key": key, "aria-describedby": id, press }, words);
  const changes = sentences.length > 1 ? sentences : []; // one is on the button
  const gained = [costWords(remedy) ?? say("remedy.unpriced"), ...savedWords(remedy)].filter((one) => one);
  const costs = gained.map((one) => make("li", { class: "cost" }, one));
  const what = make("ul", { class: "changes" }, ...changes.map((change) => make("li", {}, change)), ...costs);
  for (const [event, patch] of /** @type {const} */ ([["pointerenter", remedy.patch], ["focus", remedy.patch], ["pointerleave", null], ["blur", null]]))
    button.addEventListener(event, () => context.preview(patch));
  const picture = make("div");
  void import("../sketch/movables.js").then(({ ghost }) => picture.append(ghost(context.order, remedy.patch) ?? ""));
  return make("li", {}, button, make("div", { id }, what), picture);
}

/** @param {{price_change?: Money, price?: Price}} change */
export function costWords({ price_change: change, price }) {
  if (!change) return price ? say("remedy.then", { price: money(price.total, price.currency) }) : null;
  const more = Number(change.amount);
  if (more === 0) return say("remedy.same");
  return say(more > 0 ? "remedy.more" : "remedy.less", { amount: money(Math.abs(more), change.currency) });
}

/** @param {Remedy} remedy */
function savedWords({ lighter_by_kg: kg, sooner_by_days: days }) {
  return [kg ? say("remedy.lighter", { weight: weight(kg, 1) }) : null, days ? say("remedy.sooner", { n: days }) : null];
}
