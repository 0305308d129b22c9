/** What each button of the form does. */

import { pointerOf } from "./form/fields.js";
import { centredOnUnit } from "./form/places.js";
import { addJoin, addSlab, copySlab, removeSlab, withoutRow, withRow } from "./form/rows.js";
import { read, written } from "./lib/json.js";
import { spoken } from "./lib/lengths.js";
import { newCutout, newRelief, pieceFrom } from "./order/pieces.js";
import { startingOrder } from "./order/slabs.js";
import { elements, one, say, usualUnit } from "./show.js";
import { clearDraft } from "./store.js";

export class Actions {
  /** @param {Page} page */
  constructor(page) {
    this.page = page;
    /** @type {Record<string, (button: HTMLElement) => void>} */
    this.does = {
      undo: () => this.step("undo"),
      redo: () => this.step("redo"),
      quick: (button) => this.quick(button),
      "add-cutout": (button) => this.add(button, "cutouts", newCutout),
      "add-relief": (button) => this.add(button, "reliefs", newRelief),
      "add-join": () => this.addJoin(),
      start: (button) => this.start(button),
      "on-unit": (button) => this.onUnit(button),
      "add-row": (button) => this.addRow(button),
      "remove-row": (button) => this.removeRow(button),
      "add-slab": () => this.slab(() => addSlab(page.store, page.choices), "slabs.added"),
      "copy-slab": () => this.slab(() => copySlab(page.store), "slabs.added"),
      "remove-slab": () => this.slab(() => removeSlab(page.store), "slabs.removed"),
      "clear-draft": () => this.clear(),
    };
  }

  listen() {
    this.page.form.addEventListener("click", ({ target }) => {
      const button = target instanceof Element ? target.closest("[data-do]") : null;
      if (button instanceof HTMLElement) this.does[button.dataset.do ?? ""]?.(button);
    });
    document.addEventListener("keydown", (event) => this.key(event));
  }

  /** @param {KeyboardEvent} event */
  key(event) {
    const typing = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
    if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z" || typing) return;
    event.preventDefault();
    this.step(event.shiftKey ? "redo" : "undo");
  }

  /** @param {"undo" | "redo"} way */
  step(way) {
    this.page.store[way]();
    this.page.announce(say(way === "undo" ? "history.undone" : "history.redone"));
  }

  allow() {
    const { form, store, choices } = this.page;
    const full = (store.shown.cutouts?.length ?? 0) >= (choices.limits.cutouts ?? 20);
    const barred = { undo: store.past.length === 0, redo: store.future.length === 0, "add-cutout": full };
    for (const [action, bar] of Object.entries(barred))
      for (const button of elements(form, `[data-do=${action}]`)) button.setAttribute("aria-disabled", String(bar));
  }

  /** @param {HTMLElement} button */
  quick(button) {
    const { store } = this.page;
    store.change(written(store.order, `/slabs/${store.slab}/thickness`, spoken(Number(button.dataset.mm), usualUnit(), 16)));
  }

  /**
   * @param {HTMLElement} button
   * @param {"cutouts" | "reliefs"} list
   * @param {(piece: string, label: string, slab: Slab, unit: Unit) => any} make
   */
  add(button, list, make) {
    const { store } = this.page;
    const slab = store.shown;
    if (button.getAttribute("aria-disabled") === "true") return;
    const piece = button.dataset.piece ?? "";
    const there = slab[list] ?? [];
    const label = freeName(say(`piece.${piece}`), there.map((each) => each.label ?? ""));
    store.change(written(store.order, `/slabs/${store.slab}/${list}`, [...there, make(piece, label, slab, store.unit)]));
    this.page.announce(say("openings.added", { label }));
    this.page.sketch.focus(`${list === "cutouts" ? "opening" : "relief"}-${there.length}`);
  }

  addJoin() {
    addJoin(this.page.store);
    focusLast(this.page.form.querySelector("[data-list=joins]"));
  }

  /** @param {HTMLElement} button */
  start(button) {
    const { store, choices } = this.page;
    const name = button.dataset.start ?? "";
    const slab = pieceFrom(name, store.shown, choices, store.unit);
    store.change(written(store.order, `/slabs/${store.slab}`, slab));
    this.page.announce(say("start.done", { name: say(`start.${name}`) }));
  }

  /** @param {HTMLElement} button */
  onUnit(button) {
    const order = centredOnUnit(button, this.page.store);
    if (order) this.page.store.change(order);
  }

  /** @param {HTMLElement} button */
  addRow(button) {
    this.page.store.change(withRow(button, this.page.store));
    focusLast(button.previousElementSibling);
  }

  /** @param {HTMLElement} button */
  removeRow(button) {
    const { store } = this.page;
    const row = /** @type {HTMLElement} */ (button.closest("[data-scope]"));
    const list = row.parentElement;
    const label = read(store.order, pointerOf(row, store, row.dataset.scope))?.label;
    store.change(withoutRow(row, store));
    if (label) this.page.announce(say("openings.removed", { label }));
    if (!focusLast(list)) this.focusAfter(list);
  }

  /** @param {HTMLElement | null} list */
  focusAfter(list) {
    const next = list?.parentElement?.querySelector("[data-do^=add]");
    if (next instanceof HTMLElement) next.focus();
  }

  /** @param {() => void} does @param {string} key */
  slab(does, key) {
    does();
    this.page.announce(say(key, { number: this.page.store.order.slabs.length }));
    one("#slabs [aria-current=true]", this.page.form)?.focus();
  }

  clear() {
    const { page } = this;
    page.store.change(startingOrder(page.choices, page.store.unit), { slab: 0 });
    clearDraft();
    page.draftSays(say("draft.cleared"));
    page.announce(say("draft.cleared"));
  }

  /** @param {HTMLInputElement} box */
  tickSide(box) {
    const { store } = this.page;
    const boxes = /** @type {HTMLInputElement[]} */ (elements(/** @type {HTMLElement} */ (box.closest("fieldset")), "[data-side]"));
    const sides = boxes.filter(({ checked }) => checked).map(({ value }) => value);
    store.change(written(store.order, `/slabs/${store.slab}/rests/sides`, sides));
  }
}

/** @param {string} name @param {string[]} taken */
function freeName(name, taken) {
  let free = name;
  for (let i = 2; taken.includes(free); i += 1) free = `${name} ${i}`;
  return free;
}

/** Focus the first control of a list's last row; false where the list is empty. @param {Element | null} list */
function focusLast(list) {
  const control = list?.lastElementChild?.querySelector("input, select");
  if (control instanceof HTMLElement) control.focus();
  return control instanceof HTMLElement;
}
