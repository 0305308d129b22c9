/** Ties every control that has `data-at` to its place in the order, both ways. */

import { read } from "../lib/json.js";
import { shownIn } from "../lib/lengths.js";
import { elements, lengthWords, typedMass } from "../show.js";

/**
 * The JSON Pointer of an element, from what it and what holds it say.
 * @param {Element} element
 * @param {Store} store
 * @param {string} [at]
 */
export function pointerOf(element, store, at = /** @type {HTMLElement} */ (element).dataset.at ?? "") {
  let pointer = at === "" ? "" : `/${at}`;
  for (let up = element.parentElement; up; up = up.parentElement) {
    const scope = up.dataset.scope;
    if (scope === "slab") return `/slabs/${store.slab}${pointer}`;
    if (scope !== undefined) pointer = `/${scope}${pointer}`;
  }
  return pointer;
}

/**
 * Write the order into every control under a root; the one being typed into is left alone
 * unless `all`.
 * @param {HTMLElement} root
 * @param {Store} store
 * @param {{all: boolean}} how
 */
export function refill(root, store, { all }) {
  for (const element of elements(root, "[data-at]")) {
    const value = read(store.order, pointerOf(element, store)) ?? element.dataset.default;
    if (element instanceof HTMLFieldSetElement) refillRadios(element, value);
    else if (all || element !== document.activeElement) refillOne(element, value, store);
  }
  showWhen(root, store);
}

/** @param {HTMLElement} element @param {any} value @param {Store} store */
function refillOne(element, value, store) {
  if (element instanceof HTMLInputElement && element.type === "checkbox") element.checked = value === true || value === "wall";
  else if (isControl(element)) {
    const { as = "text" } = element.dataset;
    const mass = as === "mass" && typeof value === "number" ? typedMass(value, true) : value;
    const plain = as === "length" ? shownIn(value, store.unit) : String(mass ?? "");
    const text = as === "length" || typeof value === "number" ? lengthWords(plain) : plain;
    if (element.value !== text) element.value = text;
  }
}

/** @param {HTMLFieldSetElement} fieldset @param {any} value */
function refillRadios(fieldset, value) {
  for (const radio of /** @type {HTMLInputElement[]} */ (elements(fieldset, "input[type=radio]")))
    radio.checked = radio.value === value;
}

/**
 * Show only what has a meaning for this order: `data-when="outline/kind=round"`.
 * @param {HTMLElement} root
 * @param {Store} store
 */
export function showWhen(root, store) {
  for (const element of elements(root, "[data-when]")) {
    const [at = "", values = ""] = (element.dataset.when ?? "").split("=");
    element.hidden = !values.split(" ").includes(read(store.order, pointerOf(element, store, at)));
  }
}

/**
 * Find what shows a pointer: its own control, else the nearest that holds it, else one inside.
 * @param {HTMLElement} root
 * @param {Store} store
 * @param {string} pointer
 */
export function findField(root, store, pointer) {
  const places = elements(root, "[data-at], [data-scope], [data-list]").map((element) => ({
    element,
    pointer: placeOf(element, store),
  }));
  const shown = places.filter(({ element }) => !element.closest("[hidden]"));
  const holding = shown
    .filter((place) => pointer === place.pointer || pointer.startsWith(`${place.pointer}/`))
    .sort((one, other) => other.pointer.length - one.pointer.length)[0];
  const inside = shown.find((place) => place.pointer.startsWith(`${pointer}/`));
  const found = holding && holding.pointer.split("/").length > 3 ? holding : (inside ?? holding);
  return found ? firstControl(found.element) : null;
}

/** @param {HTMLElement} element @param {Store} store */
function placeOf(element, store) {
  const { scope, list } = element.dataset;
  if (scope === "slab") return `/slabs/${store.slab}`;
  return pointerOf(element, store, scope ?? list ?? element.dataset.at);
}

/** @param {HTMLElement} element */
function firstControl(element) {
  if (isControl(element)) return element;
  const inner = elements(element, "input, select, textarea, button").find((e) => !e.closest("[hidden]"));
  return /** @type {HTMLElement} */ (element.querySelector("input:checked") ?? inner ?? element);
}

/** @param {EventTarget | null} element */
export function isControl(element) {
  return (
    element instanceof HTMLInputElement ||
    element instanceof HTMLSelectElement ||
    element instanceof HTMLTextAreaElement
  );
}

/**
 * Focus the field of a JSON Pointer, on whichever slab it is.
 * @param {HTMLElement} form
 * @param {Store} store
 * @param {string} pointer
 */
export function goTo(form, store, pointer) {
  const found = pointer.match(/^\/slabs\/(\d+)/);
  if (found && Number(found[1]) !== store.slab) store.lookAt(Number(found[1]));
  const control = findField(form, store, pointer);
  if (!control) return;
  for (let up = control.parentElement; up; up = up.parentElement)
    if (up instanceof HTMLDetailsElement) up.open = true;
  control.focus();
  control.scrollIntoView({ block: "center" });
}
