import { read, same, without, written } from "../lib/json.js";
import { withPoint, withUnit } from "../lib/lengths.js";
import { inKind, sealerFor, sidesOf } from "../order/slabs.js";
import { mark, typedMass } from "../show.js";
import { pointerOf } from "./fields.js";

const USUAL_EDGE_MM = 5;
const ALIKE = /** @type {const} */ (["shade", "finish", "place", "thickness"]);

/** @param {Control} control @param {Store} store @param {Choices} choices */
export function entered(control, store, choices) {
  const holder = /** @type {HTMLElement} */ (control.closest("[data-at]") ?? control);
  const pointer = pointerOf(holder, store);
  const value = valueOf(control, holder.dataset.as ?? "text", store);
  const whole = reshaped(pointer, value, store, choices);
  if (whole) return { order: whole, pointer };
  const keep = "required" in holder.dataset;
  let order = set(store.order, pointer, value, keep);
  if ("together" in holder.dataset) order = together(order, pointer, holder, store);
  return { order, pointer };
}

/** @param {Control} control @param {string} as @param {Store} store */
function valueOf(control, as, store) {
  if (control instanceof HTMLInputElement && as === "yes") return control.checked || "";
  if (control instanceof HTMLInputElement && as === "unknown") return control.checked ? "" : {};
  if (control instanceof HTMLInputElement && as === "wall") return control.checked ? "wall" : "square";
  const text = control.value.trim();
  if (as === "colour" && /^[0-9a-f]{6}$/i.test(text)) return `#${text}`;
  if (as === "length") return withUnit(withPoint(text, store.unit, mark()), store.unit);
  if (as === "whole" && /^\d{1,9}$/.test(text)) return Number(text);
  const number = mark() === "," ? text.replace(",", ".") : text;
  if (as === "number" && /^-?\d{1,9}(\.\d+)?$/.test(number)) return Number(number);
  if (as === "mass" && /^\d{1,9}(\.\d+)?$/.test(number)) return typedMass(Number(number));
  return text;
}

/** An empty member is left out, with what held nothing else. @param {Order} order @param {string} pointer @param {any} value @param {boolean} keepEmpty @returns {Order} */
export function set(order, pointer, value, keepEmpty) {
  if (value !== "" || keepEmpty) return written(order, pointer, value);
  const left = without(order, pointer);
  const parent = pointer.slice(0, pointer.lastIndexOf("/"));
  const holder = read(left, parent);
  const empty = holder && !Array.isArray(holder) && Object.keys(holder).length === 0;
  return empty && parent.split("/").length > 3 ? set(left, parent, "", false) : left;
}

/** Where one of these is given, the others are asked for. @param {Order} order @param {string} pointer @param {HTMLElement} control @param {Store} store */
function together(order, pointer, control, store) {
  const group = pointer.slice(0, pointer.lastIndexOf("/"));
  const members = Array.from(control.closest("fieldset")?.querySelectorAll("[data-together]") ?? []);
  const pointers = members.map((member) => pointerOf(member, store));
  if (pointers.every((each) => (read(order, each) ?? "") === "")) return set(order, group, "", false);
  return pointers.reduce((so, each) => (read(so, each) === undefined ? written(so, each, "") : so), order);
}

/** @param {string} pointer @param {any} value @param {Store} store @param {Choices} choices */
function reshaped(pointer, value, store, choices) {
  const [, , number = "0", ...rest] = pointer.split("/");
  if (/^\/joins\/\d+\/(one|other)\/slab$/.test(pointer)) return inJoin(store, pointer, value);
  if (pointer === "/delivery/kind" && value === "") return without(store.order, "/delivery");
  const at = `/slabs/${number}`;
  const slab = store.order.slabs[Number(number)];
  const part = rest.join("/");
  if (!slab || !pointer.startsWith("/slabs/")) return null;
  if (part === "outline/kind") return inOutline(store, at, inKind(slab.outline, value, store.unit));
  if (rest[0] === "reliefs" && part.endsWith("outline/kind")) {
    const holder = pointer.slice(0, -"/kind".length);
    return written(store.order, holder, inKind(read(store.order, holder), value, store.unit));
  }
  if (part === "shade/name" && value) return written(store.order, `${at}/shade`, { name: value });
  if (part === "shade/match") return written(store.order, `${at}/shade`, value ? { match: value } : { name: choices.shades[0]?.name ?? "" });
  if (part === "rests/kind") return set(store.order, `${at}/rests`, value && { kind: value }, false); // the service lays them out
  if (part === "place") {
    const order = set(store.order, pointer, value, false);
    const { sealer } = slab.finish ?? {};
    return sealer ? written(order, `${at}/finish/sealer`, sealerFor(choices, value || "indoors", sealer)) : order;
  }
  if (rest[0] === "edges" && rest[2] === "profile") return squared(inProfile(store, pointer, value, choices), at);
  if (part === "outline/corner_radius") return squared(set(store.order, pointer, value, false), at);
  return null;
}

/** A corner between two walls stays square unless its own radius was given. @type {(order: Order, at: string) => Order} */
function squared(order, at) {
  const { outline, edges = {} } = read(order, at);
  const corners = ["front-left", "front-right", "back-right", "back-left"];
  const walled = corners.filter((corner) => corner.split("-").every((side) => edges[side]?.profile === "wall"));
  if (!outline.corner_radius || walled.length === 0) return order;
  const square = Object.fromEntries(walled.map((corner) => [corner, "0 mm"]));
  return written(order, `${at}/outline/corner_radii`, { ...square, ...outline.corner_radii });
}

/** @type {(store: Store, pointer: string, number: number) => Order} */
function inJoin(store, pointer, number) {
  const at = pointer.slice(0, -"/slab".length);
  const sides = sidesOf(store.order.slabs[number]?.outline ?? { kind: "rectangle" });
  const { side } = read(store.order, at);
  return written(store.order, at, { slab: number, side: sides.includes(side) ? side : sides[0] });
}

/** @param {Store} store @param {string} at @param {Outline} outline */
function inOutline(store, at, outline) {
  const sides = sidesOf(outline);
  const slab = { ...read(store.order, at), outline };
  const edges = Object.entries(slab.edges ?? {}).filter(([side]) => sides.includes(side));
  slab.edges = Object.fromEntries(edges);
  slab.cutouts = (slab.cutouts ?? []).map((/** @type {any} */ cutout) =>
    sides.includes(cutout.open_to) ? cutout : without(cutout, "/open_to"),
  );
  if (slab.rests?.sides) slab.rests = { ...slab.rests, sides: sides.slice(0, 20) };
  if (slab.rests?.overhang) slab.rests = without(slab.rests, "/overhang");
  if (["round", "polygon"].includes(outline.kind) && slab.size_from !== "template-to-follow")
    slab.size_from = "finished";
  return written(store.order, at, slab);
}

/** @param {Store} store @param {string} pointer @param {string} profile @param {Choices} choices */
function inProfile(store, pointer, profile, choices) {
  const at = pointer.slice(0, pointer.lastIndexOf("/"));
  const offered = choices.edges.find((edge) => edge.profile === profile);
  const edge = { ...read(store.order, at), profile };
  if (profile !== "bevel" && profile !== "round") delete edge.size;
  else if (edge.size === undefined && offered)
    edge.size = `${Math.min(Math.max(USUAL_EDGE_MM, offered.smallest_mm), offered.largest_mm)} mm`;
  return written(store.order, at, edge);
}

/** What joined slabs have alike they go on having. @param {Order} order @param {Order} before @returns {Order} */
export function joinedAlike(order, { slabs: was }) {
  const slabs = [...order.slabs];
  const { joins = [] } = slabs.length === was.length ? order : {};
  const ends = joins.map(({ one, other }) => [one.slab, other.slab]);
  for (const pair of ends.flatMap(() => ends))
    for (const [from = 0, to = 0] of [pair, [...pair].reverse()])
      for (const name of ALIKE) if (same(was[from]?.[name], was[to]?.[name]) && same(slabs[to]?.[name], was[to]?.[name]) && !same(slabs[from]?.[name], was[to]?.[name])) slabs[to] = /** @type {Slab} */ ({ ...slabs[to], [name]: slabs[from]?.[name] });
  return { ...order, slabs };
}

/** Units that were entered are assumed no more. @type {(slab: Slab, old?: Slab) => Slab} */
export function withUnitsEntered(slab, old) {
  const { outline, rests } = slab;
  return rests?.assumed && outline === old?.outline && rests.units !== old.rests?.units ? { ...slab, rests: without(rests, "/assumed") } : slab;
}
