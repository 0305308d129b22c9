/** Lists in the form, and the slabs: as many as the order has. */

import { read, without, written } from "../lib/json.js";
import { spoken } from "../lib/lengths.js";
import { make } from "../make.js";
import { startingSlab } from "../order/starting.js";
import { elements, fillWords, say } from "../words.js";
import { pointerOf } from "./fields.js";

let made = 0;

/**
 * Make a row from a template: words filled in, every label tied to its control.
 * @param {string} id
 * @returns {HTMLElement}
 */
export function fromTemplate(id) {
  const template = document.getElementById(id);
  if (!(template instanceof HTMLTemplateElement)) throw new Error(`There is no template ${id}.`);
  const row = template.content.firstElementChild?.cloneNode(true);
  if (!(row instanceof HTMLElement)) throw new Error(`The template ${id} is empty.`);
  fillWords(row);
  for (const field of elements(row, ".field")) tie(field);
  return row;
}

/** @param {HTMLElement} field */
function tie(field) {
  const control = field.querySelector("input, select");
  const label = field.querySelector("label");
  const hint = field.querySelector(".hint");
  if (!control || !label) return;
  made += 1;
  control.id = `field-${made}`;
  if (!label.contains(control)) label.htmlFor = control.id;
  if (!hint) return;
  hint.id = `${control.id}-hint`;
  control.setAttribute("aria-describedby", hint.id);
}

/**
 * Give every list under a root the rows that the order has.
 * @param {HTMLElement} root
 * @param {Store} store
 */
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

/**
 * @param {Element} row
 * @param {any} member
 * @param {number} i
 * @param {string} key
 */
function name(row, member, i, key) {
  const words = member?.label || say(key, { number: i + 1 });
  const legend = row.querySelector("[data-row-name]");
  if (legend && legend.textContent !== words) legend.textContent = words;
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

/**
 * The order without the member that a row shows.
 * @param {HTMLElement} row
 * @param {Store} store
 */
export function withoutRow(row, store) {
  return without(store.order, pointerOf(row, store, row.dataset.scope));
}

/**
 * Show a button for each slab.
 * @param {HTMLElement} list
 * @param {Store} store
 * @param {Choices} choices
 */
export function showSlabs(list, store, choices) {
  const many = store.order.slabs.length;
  list.hidden = many < 2;
  const focused = list.contains(document.activeElement);
  list.replaceChildren(
    ...store.order.slabs.map((slab, i) => {
      const current = i === store.slab ? "true" : "false";
      const press = () => store.lookAt(i);
      const type = { type: "button", "aria-current": current };
      return make("li", {}, make("button", { ...type, press }, slabName(slab, i)));
    }),
  );
  const now = /** @type {HTMLElement | null} */ (list.querySelector("[aria-current=true]"));
  if (focused) now?.focus();
  const tools = list.closest("form");
  allow(tools, "add-slab", many < (choices.limits.slabs ?? 8));
  allow(tools, "copy-slab", many < (choices.limits.slabs ?? 8));
  allow(tools, "remove-slab", many > 1);
}

/**
 * @param {{label?: string}} slab
 * @param {number} i
 */
function slabName(slab, i) {
  const number = i + 1;
  return slab.label ? say("slabs.called", { number, label: slab.label }) : say("slabs.one", { number });
}

/**
 * @param {HTMLElement | null} tools
 * @param {string} action
 * @param {boolean} may
 */
function allow(tools, action, may) {
  const button = /** @type {HTMLElement | null | undefined} */ (tools?.querySelector(`[data-do=${action}]`));
  if (button) button.hidden = !may;
}

/**
 * One more slab: plain, of the same look as the one that is shown.
 * @param {Store} store
 * @param {Choices} choices
 */
export function addSlab(store, choices) {
  const like = store.order.slabs[store.slab];
  const { shade, finish, place, thickness } = structuredClone(like ?? {});
  insert(store, { ...startingSlab(choices, store.unit), ...(like && { shade, finish, place, thickness }) });
}

/** @param {Store} store */
export function copySlab(store) {
  const slab = structuredClone(store.order.slabs[store.slab]);
  if (slab) insert(store, slab);
}

/**
 * @param {Store} store
 * @param {any} slab
 */
function insert(store, slab) {
  const slabs = [...store.order.slabs, slab];
  store.change({ ...store.order, slabs }, { slab: slabs.length - 1 });
}

/** @param {Store} store */
export function removeSlab(store) {
  const slabs = store.order.slabs.filter((_, i) => i !== store.slab);
  const { joins: _gone, ...rest } = store.order; // a join names slabs by number
  store.change({ ...rest, slabs });
}
