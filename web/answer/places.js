/** What a place in the order is called, in the form's own words. */

import { read } from "../lib/json.js";
import { knows, say } from "../show.js";

/**
 * What a JSON Pointer into the order speaks of: "tap, centre from the front".
 * @param {Order} order
 * @param {string} pointer
 */
export function nameOf(order, pointer) {
  const [, , number, ...rest] = pointer.split("/");
  if (!pointer.startsWith("/slabs/")) return partName(pointer.slice(1)) ?? say("at.order");
  const inside = insideName(order, pointer, rest);
  if (order.slabs.length < 2) return inside ?? say("at.the-slab");
  const slab = say("at.slab", { number: Number(number) + 1 });
  return inside ? say("at.of", { thing: slab, part: inside }) : slab;
}

/** @param {Order} order @param {string} pointer @param {string[]} rest */
function insideName(order, pointer, rest) {
  const kinds = /** @type {Record<string, string>} */ ({ cutouts: "at.opening", reliefs: "at.relief" });
  const kind = kinds[rest[0] ?? ""];
  if (!kind || rest[1] === undefined) return partName(rest.join("/"));
  const at = pointer.split("/").slice(0, 5).join("/");
  const thing = read(order, at)?.label || say(kind, { number: Number(rest[1]) + 1 });
  const part = rest.length > 2 ? partName(rest.slice(2).join("/")) : null;
  return part ? say("at.of", { thing, part }) : thing;
}

/** The nearest message for a part: itself, else what holds it. @param {string} part */
function partName(part) {
  for (let at = part.replaceAll("/", "-"); at; at = at.includes("-") ? at.slice(0, at.lastIndexOf("-")) : "")
    if (knows(`at.${at}`)) return say(`at.${at}`);
  return null;
}
