/** What the checks have to say, numbered as on the drawing, each leading to its fields. */

import { make } from "../make.js";
import { nameOf } from "../order/naming.js";
import { listed, say } from "../words.js";
import { remedyButtons } from "./remedies.js";

/** @typedef {{order: Order, currency: string, go: (pointer: string) => void, apply: (remedy: Remedy) => void}} Context */

/**
 * @param {Finding[]} findings
 * @param {Context} context
 * @returns {HTMLElement | null}
 */
export function findingList(findings, context) {
  if (findings.length === 0) return null;
  const stops = findings.some(({ level }) => level === "stops");
  return make(
    "section",
    { class: "findings" },
    make("h3", { tabindex: "-1", "data-key": "findings" }, say(stops ? "findings.stopped" : "findings.to-know")),
    make("ol", {}, ...findings.map((finding, i) => item(finding, i + 1, context))),
  );
}

/**
 * @param {Finding} finding
 * @param {number} number as on its pin
 * @param {Context} context
 */
function item(finding, number, context) {
  const level = make("strong", { class: "level" }, say(`findings.${finding.level}`));
  return make(
    "li",
    { class: finding.level, id: `finding-${number}`, tabindex: "-1", "data-key": `finding-${finding.id}` },
    make("p", {}, level, " ", finding.says),
    make("p", { class: "links" }, ...finding.at.flatMap((pointer) => link(finding, pointer, context))),
    remedyButtons(finding.remedies ?? [], finding.id, context),
  );
}

/**
 * @param {Finding} finding
 * @param {string} pointer
 * @param {Context} context
 */
function link(finding, pointer, context) {
  const name = nameOf(context.order, pointer);
  const press = () => context.go(pointer);
  const attributes = { href: "#order", "data-key": `${finding.id} ${pointer}`, press };
  return [make("a", attributes, say("findings.go", { name })), " "];
}

/**
 * Say which stages were left out because an earlier one stopped the order.
 * @param {string[]} stages
 */
export function notChecked(stages) {
  if (stages.length === 0) return null;
  const names = listed(stages.map((stage) => say(`stage.${stage}`)));
  return make("p", { class: "hint" }, say("findings.not-checked", { stages: names }));
}
