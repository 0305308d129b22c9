/** Lists in the form: as many rows as the order has members, made from the page's templates. */

import { read, without, written } from "../lib/pointer.js";
import { spoken } from "../lib/lengths.js";
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
