import { pointerOf } from "./form/fields.js";
import { addJoin, inOnePiece, lOf } from "./form/joins.js";
import { addSlab, centredOnUnit, copySlab, numberOf, removeSlab, withoutRow, withRow } from "./form/rows.js";
import { read, written } from "./lib/json.js";
import { spoken } from "./lib/lengths.js";
import { elements, one, say } from "./show.js";
import { unitMiddles } from "./sketch/geometry.js";

export class Actions {
  /** @param {import("./form/live.js").LiveForm} live */
  constructor(live) {
    const { page } = live;
    this.live = live;
    this.page = page;
    /** @type {Record<string, (button: HTMLElement) => void>} */
    this.does = {
      undo: () => this.step("undo"),
      redo: () => this.step("redo"),
      "add-cutout": (button) => void this.add(button, "cutouts"),
      "add-relief": (button) => void this.add(button, "reliefs"),
      "add-join": () => this.addJoin(),
      start: (button) => void live.laying.start(button.dataset.start ?? ""),
      "one-piece": () => this.onePiece(),
      "on-unit": (button) => void this.onUnit(button),
      "add-row": (button) => this.addRow(button),
      "remove-row": (button) => this.removeRow(button),
      "add-slab": () => this.slab(() => addSlab(page.store, page.choices), "slabs.added"),
      "copy-slab": () => this.slab(() => copySlab(page.store), "slabs.added"),
      "remove-slab": () => this.slab(() => removeSlab(page.store), "slabs.removed"),
      "clear-draft": () => page.clear(),
    };
  }

  listen() {
    for (const place of [this.page.form, one("#bar")]) place.addEventListener("click", (event) => this.press(event));
    document.addEventListener("keydown", (event) => this.key(event));
    elements(this.page.form, "[role=toolbar]").forEach(rove);
  }

  /** @param {Event} event */
  press({ target }) {
    const button = target instanceof Element ? target.closest("[data-do]") : null;
    if (button instanceof HTMLElement) this.does[button.dataset.do ?? ""]?.(button);
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
    const { store, choices } = this.page;
    const full = (store.shown.cutouts?.length ?? 0) >= (choices.limits.cutouts ?? 20);
    const barred = { undo: store.past.length === 0, redo: store.future.length === 0, "add-cutout": full };
    for (const [action, bar] of Object.entries(barred))
      for (const button of elements(document, `[data-do=${action}]`)) button.setAttribute("aria-disabled", String(bar));
  }

  /** @param {Control} list */
  quick(list) {
    const { store } = this.page;
    const mm = Number(list.value); // 0: not known yet
    store.change(written(store.order, `/slabs/${store.slab}/thickness`, mm ? spoken(mm, store.unit, 16) : undefined));
  }

  /** @param {HTMLElement} button @param {"cutouts" | "reliefs"} list */
  async add(button, list) {
    const { form, store } = this.page;
    if (button.getAttribute("aria-disabled") === "true") return;
    const there = store.shown[list]?.length ?? 0;
    if (!(await this.live.laying.add(button.dataset.piece ?? ""))) return;
    /** @type {HTMLDetailsElement} */ (one(`[data-list=${list}] > li:last-child > details`, form)).open = true;
    this.live.sketch?.focus(`${list === "cutouts" ? "opening" : "relief"}-${there}`);
  }

  addJoin() {
    addJoin(this.page.store);
    focusLast(this.page.form.querySelector("[data-list=joins]"));
  }

  onePiece() {
    const { store } = this.page;
    const l = lOf(store);
    if (l) store.change(inOnePiece(store.order, l, store.unit), { cause: "load", slab: store.order.slabs.indexOf(l.back) });
  }

  /** @param {HTMLElement} button */
  async onUnit(button) {
    const { store } = this.page;
    const { slab } = store;
    const pressed = unitMiddles(store.shown)[Number(button.dataset.unitNumber)] ?? 0;
    const number = numberOf(button, store); // it may be gone then
    await this.live.laying.laid();
    const order = centredOnUnit(number, store, pressed);
    if (order && store.slab === slab) store.change(order);
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
    const i = Array.from(list?.children ?? []).indexOf(row);
    store.change(withoutRow(row, store));
    if (label) this.page.announce(say("openings.removed", { label }));
    const next = list?.children[Math.min(i, list.children.length - 1)];
    if (!next) return this.focusAfter(list);
    /** @type {HTMLElement | null} */ (next.querySelector("summary, [data-do=remove-row]"))?.focus({ preventScroll: true });
  }

  /** @param {HTMLElement | null} list */
  focusAfter(list) {
    const next = list?.parentElement?.querySelector("[data-do^=add]");
    if (next instanceof HTMLElement) next.focus({ preventScroll: true });
  }

  /** @param {() => void} does @param {string} key */
  slab(does, key) {
    does();
    this.page.announce(say(key, { number: this.page.store.order.slabs.length }));
    one("#slabs [aria-current=true]", this.page.form)?.focus();
  }

  /** @param {HTMLInputElement} box */
  tickSide(box) {
    const { store } = this.page;
    const boxes = /** @type {HTMLInputElement[]} */ (elements(/** @type {HTMLElement} */ (box.closest("fieldset")), "[data-side]"));
    const sides = boxes.filter(({ checked }) => checked).map(({ value }) => value);
    store.change(written(store.order, `/slabs/${store.slab}/rests/sides`, sides));
  }
}

/** Tab comes to one of a row of buttons, arrows to the others. @param {HTMLElement} row */
function rove(row) {
  const buttons = elements(row, "button");
  const enter = (/** @type {HTMLElement | undefined} */ one) => buttons.forEach((each) => (each.tabIndex = each === one ? 0 : -1));
  enter(buttons[0]);
  row.addEventListener("keydown", (event) => {
    const step = /^Arrow(Right|Down)$/.test(event.key) ? 1 : /^Arrow(Left|Up)$/.test(event.key) ? buttons.length - 1 : 0;
    if (!step) return;
    event.preventDefault();
    const next = buttons[(buttons.indexOf(/** @type {HTMLElement} */ (event.target)) + step) % buttons.length];
    enter(next);
    next?.focus();
  });
}

/** @param {Element | null} list */
function focusLast(list) {
  const control = list?.lastElementChild?.querySelector("input, select");
  if (control instanceof HTMLElement) control.focus();
}
