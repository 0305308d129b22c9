/** As many rows as the order has members, made from the page's templates; and the slabs. */

import { read, without, written } from "../lib/json.js";
import { spoken } from "../lib/lengths.js";
import { sidesOf, startingSlab } from "../order/slabs.js";
import { elements, make, one, say, write } from "../show.js";
import { pointerOf } from "./fields.js";
import { offer, sideOption } from "./options.js";
import { fromTemplate } from "./templates.js";

/** @param {HTMLElement} root @param {Store} store */
export function syncRows(root, store) {
  for (const list of elements(root, "[data-list]")) {
    const at = list.dataset.list ?? "";
    const members = read(store.order, pointerOf(list, store, at)) ?? [];
    while (list.children.length > members.length) list.lastElementChild?.remove();
    while (list.children.length < members.length) {
      const row = fromTemplate(list.dataset.template ?? "");
      row.dataset.scope = `${at}/${list.children.length}`;
      list.append(row);
      syncRows(row, store);
    }
    Array.from(list.children).forEach((row, i) => name(row, members[i], i, list.dataset.name ?? ""));
  }
  for (const hint of elements(root, "[data-none]"))
    hint.hidden = (read(store.order, pointerOf(hint, store, hint.dataset.none)) ?? []).length > 0;
}

/** @param {Element} row @param {any} member @param {number} i @param {string} key */
function name(row, member, i, key) {
  const words = member?.label || say(key, { number: i + 1 });
  const legend = row.querySelector("[data-row-name]");
  if (legend) write(legend, words);
  const remove = row.querySelector(":scope > fieldset > [data-do=remove-row], :scope > fieldset > .row > [data-do=remove-row]");
  remove?.setAttribute("aria-label", say("row.remove-named", { name: words }));
}

/**
 * The order with one more member in a list, like the last one or a plain one.
 * @param {HTMLElement} button
 * @param {Store} store
 */
export function withRow(button, store) {
  const pointer = pointerOf(button, store, button.dataset.to);
  const members = read(store.order, pointer) ?? [];
  const plain = { x: spoken(0, store.unit), y: spoken(0, store.unit) };
  return written(store.order, pointer, [...members, structuredClone(members.at(-1) ?? plain)]);
}

/** @param {HTMLElement} row @param {Store} store */
export function withoutRow(row, store) {
  return without(store.order, pointerOf(row, store, row.dataset.scope));
}

const JOIN_MM = 2;

/** Show a button for each slab, and what can be done with them. @param {Store} store @param {Choices} choices */
export function showSlabs(store, choices) {
  const { slabs } = store.order;
  const list = one("#slabs");
  list.hidden = slabs.length < 2;
  const names = slabs.map(slabName);
  const shown = JSON.stringify(names);
  if (list.dataset.shown !== shown) {
    const button = (/** @type {string} */ name, /** @type {number} */ i) => make("button", { type: "button", press: () => store.lookAt(i) }, name);
    list.replaceChildren(...names.map((name, i) => make("li", {}, button(name, i))));
    list.dataset.shown = shown; // else one that is being pressed would go
  }
  elements(list, "button").forEach((button, i) => button.setAttribute("aria-current", String(i === store.slab)));
  const full = slabs.length >= (choices.limits.slabs ?? 8);
  for (const action of ["add-slab", "copy-slab"]) one(`[data-do=${action}]`).hidden = full;
  one("[data-do=remove-slab]").hidden = slabs.length < 2;
}

/** @param {{label?: string}} slab @param {number} i */
function slabName(slab, i) {
  const number = i + 1;
  return slab.label ? say("slabs.called", { number, label: slab.label }) : say("slabs.one", { number });
}

/** One more slab: plain, of the same look as the one that is shown. @param {Store} store @param {Choices} choices */
export function addSlab(store, choices) {
  const { shade, finish, place, thickness } = structuredClone(store.shown);
  insert(store, { ...startingSlab(choices, store.unit), shade, finish, place, thickness });
}

/** @param {Store} store */
export function copySlab(store) {
  insert(store, structuredClone(store.shown));
}

/** @param {Store} store @param {any} slab */
function insert(store, slab) {
  const slabs = [...store.order.slabs, slab];
  store.change({ ...store.order, slabs }, { slab: slabs.length - 1 });
}

/**
 * A join names slabs by number: those of the slab that goes go with it, the others count anew.
 * @param {Store} store
 */
export function removeSlab(store) {
  const gone = store.slab;
  const slabs = store.order.slabs.filter((_, i) => i !== gone);
  const counted = (/** @type {JoinEnd} */ { slab, side }) => ({ slab: slab > gone ? slab - 1 : slab, side });
  const { joins = [], ...rest } = store.order;
  const left = joins.filter(({ one, other }) => one.slab !== gone && other.slab !== gone);
  const again = left.map(({ one, other, gap }) => ({ one: counted(one), other: counted(other), gap }));
  store.change({ ...rest, slabs, ...(again.length && { joins: again }) });
}

/** One more join: the slab that is shown to the one before it, or to the next. @param {Store} store */
export function addJoin(store) {
  const { order, slab, unit } = store;
  const one = Math.max(0, slab - 1);
  const end = (/** @type {number} */ number, /** @type {string} */ wanted) => {
    const sides = sidesOf(order.slabs[number]?.outline ?? { kind: "rectangle" });
    return { slab: number, side: sides.includes(wanted) ? wanted : (sides[0] ?? "") };
  };
  const join = { one: end(one, "right"), other: end(one + 1, "left"), gap: spoken(JOIN_MM, unit) };
  store.change({ ...order, joins: [...(order.joins ?? []), join] });
}

/** @param {HTMLElement} form @param {Store} store */
export function syncJoins(form, store) {
  const { slabs } = store.order;
  one("#joins", form).hidden = slabs.length < 2;
  const names = slabs.map((slab, i) => make("option", { value: String(i) }, slabName(slab, i)));
  for (const select of elements(form, "[data-options=slabs]")) offer(select, names);
  for (const select of elements(form, "[data-options=ends]")) {
    const number = read(store.order, pointerOf(select, store).replace(/side$/, "slab"));
    const sides = sidesOf(slabs[number]?.outline ?? { kind: "rectangle" });
    offer(select, sides.map(sideOption));
  }
}
