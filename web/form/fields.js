import { read } from "../lib/json.js";
import { shownIn } from "../lib/lengths.js";
import { elements, lengthWords, marked, one, typedMass, write } from "../show.js";

const MOST = 3;

/** @param {Element} element @param {Store} store @param {string} [at] */
export function pointerOf(element, store, at = /** @type {HTMLElement} */ (element).dataset.at ?? "") {
  let pointer = at === "" ? "" : `/${at}`;
  for (let up = element.parentElement; up; up = up.parentElement) {
    const scope = up.dataset.scope;
    if (scope === "slab") return `/slabs/${store.slab}${pointer}`;
    if (scope === "order") return pointer;
    if (scope !== undefined) pointer = `/${scope}${pointer}`;
  }
  return pointer;
}

/** What is typed into is left alone unless `all`. @param {HTMLElement} root @param {Store} store @param {{all: boolean}} how */
export function refill(root, store, { all }) {
  for (const element of elements(root, "[data-at]")) {
    const value = read(store.order, pointerOf(element, store)) ?? element.dataset.default;
    if (element instanceof HTMLFieldSetElement) refillRadios(element, value ?? "");
    else if (all || element !== document.activeElement) refillOne(element, value, store);
  }
  showWhen(root, store);
}

/** @param {HTMLElement} element @param {any} value @param {Store} store */
function refillOne(element, value, store) {
  if (element instanceof HTMLInputElement && element.type === "checkbox") element.checked = element.dataset.as === "unknown" ? value === undefined : value === true || value === "wall";
  else if (isControl(element)) {
    const { as = "text" } = element.dataset;
    const mass = as === "mass" && typeof value === "number" ? typedMass(value, true) : value;
    const plain = as === "length" ? shownIn(value, store.unit) : String(mass ?? "");
    const text = as === "length" || typeof value === "number" ? marked(plain) : plain;
    if (element.value !== text) element.value = text;
  }
}

/** @param {HTMLFieldSetElement} fieldset @param {any} value */
function refillRadios(fieldset, value) {
  for (const radio of /** @type {HTMLInputElement[]} */ (elements(fieldset, "input[type=radio]")))
    radio.checked = radio.value === value;
}

/** @param {HTMLElement} root @param {Store} store */
export function showWhen(root, store) {
  for (const element of elements(root, "[data-when]")) {
    const [at = "", values = ""] = (element.dataset.when ?? "").split("=");
    element.hidden = !values.split(" ").includes(read(store.order, pointerOf(element, store, at)));
    if (element instanceof HTMLOptionElement) element.disabled = element.hidden; // a phone may list it
  }
}

/** Its own, else one inside, else that of what holds it; a whole slab has none. @param {HTMLElement} root @param {Store} store @param {string} pointer @returns {HTMLElement | null} */
export function findField(root, store, pointer) {
  if (/^(\/slabs(\/\d+)?)?$/.test(pointer)) return null;
  const shown = elements(root, "[data-at]:not([data-as=unknown]), [data-scope], [data-list]").filter((element) => !element.closest("[hidden]"));
  const of = (/** @type {(at: string) => boolean} */ wanted) => shown.filter((element) => wanted(placeOf(element, store))).map(firstControl);
  const all = [...of((at) => at === pointer), ...of((at) => at.startsWith(`${pointer}/`))];
  return all.find((control) => control) ?? findField(root, store, pointer.slice(0, pointer.lastIndexOf("/")));
}

/** @param {HTMLElement} element @param {Store} store */
function placeOf(element, store) {
  const { scope, list } = element.dataset;
  if (scope === "slab") return `/slabs/${store.slab}`;
  return pointerOf(element, store, scope ?? list ?? element.dataset.at);
}

/** Of a row that folds, its line: no name to type. @param {HTMLElement} element @returns {HTMLElement | null} */
function firstControl(element) {
  if (isControl(element)) return element;
  const line = element.matches("li") && element.querySelector(":scope > details > summary");
  const inner = elements(element, "input, select, textarea, button").find((e) => !e.closest("[hidden]"));
  const chosen = inner?.matches("[type=radio]") ? element.querySelector("input:checked") : null;
  return /** @type {HTMLElement | null} */ (line || (chosen ?? inner ?? null));
}

/** @param {EventTarget | null} element */
export function isControl(element) {
  return (
    element instanceof HTMLInputElement ||
    element instanceof HTMLSelectElement ||
    element instanceof HTMLTextAreaElement
  );
}

/** @param {HTMLElement} form @param {Store} store @param {string} pointer */
export function goTo(form, store, pointer) {
  const found = pointer.match(/^\/slabs\/(\d+)/);
  if (found && Number(found[1]) !== store.slab) store.lookAt(Number(found[1]));
  const control = findField(form, store, pointer) ?? one("#slabs [aria-current=true]", form);
  if (!control) return;
  for (let up = control.parentElement; up; up = up.parentElement)
    if (up instanceof HTMLDetailsElement) up.open = true;
  control.focus();
  control.scrollIntoView({ block: "center" });
}

/** Whether a link to it leads anywhere. @param {HTMLElement} form @param {Store} store @param {string} pointer */
export function goes(form, store, pointer) {
  return store.order.slabs.length > 1 || findField(form, store, pointer) !== null;
}

/** @param {HTMLElement} root @param {Unit} unit */
export function syncFolds(root, unit) {
  for (const place of elements(root, ".fold > summary > .so")) {
    const fold = /** @type {HTMLElement} */ (place.closest("details"));
    const said = elements(fold, "input, select").flatMap((control) => entryOf(/** @type {Control} */ (control), fold, unit));
    write(place, [...said.slice(0, MOST), ...(said.length > MOST ? ["…"] : [])].join(", "));
  }
}

/** @param {Control} control @param {HTMLElement} fold @param {Unit} unit @returns {string[]} */
function entryOf(control, fold, unit) {
  if (control.closest("[hidden]")) return [];
  const { value, dataset } = control;
  if (value === "" || value === dataset.default || value === dataset.usual || /(^|\/)(label|x|y|slab|side|gap)$/.test(dataset.at ?? "") || dataset.gap) return [];
  if (control instanceof HTMLSelectElement) return [`${rowOf(control, fold)}${control.selectedOptions[0]?.textContent ?? ""}`];
  if (dataset.as === "length" && /^[\d.,/ ]+$/.test(value)) return [lengthWords(`${value} ${unit}`)];
  if (!(control instanceof HTMLInputElement) || !/checkbox|radio/.test(control.type)) return [value];
  const words = control.closest("label")?.querySelector("span:not(.chip)")?.firstChild?.textContent ?? "";
  return control.checked ? [words.trim()] : [];
}

/** @param {Control} control @param {HTMLElement} fold */
function rowOf(control, fold) {
  const row = control.closest("li");
  return row && fold.contains(row) ? `${row.querySelector("[data-row-name]")?.textContent}: ` : "";
}
