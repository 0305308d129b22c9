import { spoken } from "../lib/lengths.js";
import { draw, elements, lengthWords, one, say } from "../show.js";
import { otherArm } from "../form/joins.js";
import { Drag } from "./drag.js";
import { boxOf, dimensions, outlineOf, pathOf } from "./geometry.js";
import { frameFor, Moves, overall, pins } from "./marks.js";
import { comes, movables } from "./movables.js";

const HANDLE_PX = 7;
const TARGET_PX = 23;

export class Sketch {
  /** @param {Page} page */
  constructor(page) {
    this.page = page;
    this.svg = /** @type {SVGSVGElement} */ (/** @type {unknown} */ (document.querySelector("#plan")));
    this.stone = draw("path", { class: "stone" });
    this.other = draw("path", { class: "other" });
    this.notes = draw("g", { class: "notes", "aria-hidden": "true" });
    this.things = draw("g");
    this.marks = draw("g");
    this.ghosts = draw("g", { class: "notes", "aria-hidden": "true" });
    this.svg.append(this.other, this.stone, this.things, this.notes, this.marks, this.ghosts);
    /** @type {Finding[]} */
    this.findings = [];
    /** @type {Frame | undefined} */
    this.frame = undefined;
    this.chosen = "";
    this.pinned = "";
    this.wide = 0;
    this.drag = new Drag(this);
    this.moves = new Moves(this, one("#moves"));
  }

  listen() {
    this.drag.listen();
    const watch = new ResizeObserver(([entry]) => {
      this.wide = entry?.contentRect.width ?? 0;
      this.show();
    });
    watch.observe(/** @type {Element} */ (this.svg.parentElement));
  }

  /** @returns {Movable[]} */
  all() {
    const { store } = this.page;
    return movables(store.order, store.slab, store.unit);
  }

  /** @param {string} key */
  find(key) {
    return this.all().find((movable) => movable.key === key);
  }

  /** @param {string} key "": none */
  choose(key) {
    this.chosen = key;
    this.show();
  }

  /** @param {string} key */
  focus(key) {
    this.choose(key);
    one(`[data-key="${key}"]`, this.things)?.focus({ preventScroll: true });
  }

  /** @param {Finding[]} findings */
  pin(findings) {
    this.findings = findings;
    this.ghosts.replaceChildren();
    if (this.frame) this.showPins(this.frame);
  }

  /** @param {Operation[] | null} patch */
  preview(patch) {
    const { order, slab } = this.page.store;
    const { frame } = this;
    const shapes = frame && patch ? comes(order, patch, slab) : [];
    this.ghosts.replaceChildren(...shapes.map((shape) => draw("path", { class: "comes", d: pathOf(shape, /** @type {Frame} */ (frame).at, /** @type {Frame} */ (frame).scale) })));
  }

  show() {
    const { store } = this.page;
    const slab = store.shown;
    if (this.wide === 0) return;
    const outline = outlineOf(slab.outline);
    const held = this.drag.now?.moved ? this.frame : undefined; // what is dragged must not grow under the hand
    const beside = otherArm(store);
    const frame = held ?? frameFor(boxOf(outline), this.wide, beside);
    this.frame = frame;
    this.svg.setAttribute("viewBox", `0 0 ${frame.wide} ${frame.high}`);
    this.svg.style.height = `${frame.high}px`;
    this.stone.setAttribute("d", pathOf(outline, frame.at, frame.scale));
    this.other.setAttribute("d", pathOf(beside, frame.at, frame.scale));
    const all = this.all();
    const chosen = all.find(({ key }) => key === this.chosen);
    this.showThings(all, frame);
    const line = this.drag.lines;
    this.notes.replaceChildren(...overall(slab.outline, frame));
    if (chosen) this.notes.append(...dimensions(chosen, frame, store.unit, line, this.words()));
    this.showPins(frame);
    this.ghosts.replaceChildren();
    this.moves.show(chosen);
  }

  /** One that is being pressed must not go. @param {Frame} frame */
  showPins(frame) {
    const { slab } = this.page.store;
    const words = this.words(", .hole");
    const shown = JSON.stringify([slab, frame, this.findings.map(({ id }) => id), words]);
    if (shown === this.pinned || this.drag.now?.moved) return;
    this.pinned = shown;
    this.marks.replaceChildren(...pins(this.findings, slab, frame, this.all().map(frame.at), words));
  }

  /** Where its words stand. @param {string} [more] */
  words(more = "") {
    const { left, top } = this.svg.getBoundingClientRect();
    return elements(this.svg, `text:not(.pin text)${more}`).map((text) => {
      const box = text.getBoundingClientRect();
      return new DOMRect(...[box.left - left, box.top - top, box.width, box.height].map(Math.round));
    });
  }

  /** Each thing keeps its element, for focus and drags. @param {Movable[]} all @param {Frame} frame */
  showThings(all, frame) {
    const old = new Map(Array.from(this.things.children, (child) => [/** @type {SVGElement} */ (child).dataset.key, child]));
    const shown = all.map((movable) => {
      const there = old.get(movable.key) ?? draw("g", { "data-key": movable.key, tabindex: 0, role: "button" });
      there.setAttribute("aria-label", this.told(movable));
      there.setAttribute("aria-pressed", String(movable.key === this.chosen));
      there.setAttribute("class", movable.shape ? "opening" : movable.looks);
      there.replaceChildren(...this.pictureOf(movable, frame));
      return there;
    });
    for (const child of Array.from(this.things.children)) if (!shown.includes(child)) child.remove();
    shown.forEach((child, i) => {
      if (this.things.children[i] !== child) this.things.insertBefore(child, this.things.children[i] ?? null);
    });
  }

  /** @param {Movable} movable @param {Frame} frame */
  pictureOf(movable, frame) {
    const { x, y } = frame.at(movable);
    const target = draw("circle", { class: "target", cx: x, cy: y, r: TARGET_PX });
    const { shape } = movable;
    if (!shape) return [target, draw("circle", { class: "dot", cx: x, cy: y, r: HANDLE_PX })];
    const hole = draw("path", { class: movable.looks, d: pathOf(shape, frame.at, frame.scale) });
    const { from, to } = boxOf(shape);
    const roomy = (to.y - from.y) * frame.scale > 24; // else it stands above
    const name = draw("text", { x, y: roomy ? y + 4 : frame.at(to).y - 6, class: "name" }, movable.name);
    return [target, hole, name];
  }

  /** @param {Movable} movable */
  told({ name, x, y, axes, shape }) {
    const { unit } = this.page.store;
    const key = !shape ? `sketch.handle-${axes}` : "sketch.opening";
    return say(key, { name, x: lengthWords(spoken(x, unit)), y: lengthWords(spoken(y, unit)) });
  }

  /** @param {Movable} movable @param {XY} to @param {{cause: Cause, group: string}} how */
  move(movable, to, how) {
    const { store } = this.page;
    const here = { x: movable.axes === "y" ? movable.x : to.x, y: movable.axes === "x" ? movable.y : to.y };
    const order = movable.put(store.order, here);
    if (order !== store.order) store.change(order, how);
  }

  /** @param {string} key */
  tell(key) {
    const movable = this.find(key);
    if (movable) this.page.announce(this.told(movable));
  }
}
