/** Buttons that do what a drag does, for the thing that is chosen on the plan (WCAG 2.5.7). */

import { goTo } from "../form/fields.js";
import { without } from "../lib/json.js";
import { fineStep, spoken } from "../lib/lengths.js";
import { sizeMm } from "../order/slabs.js";
import { lengthWords, make, one, say } from "../show.js";

export class Moves {
  /** @param {Sketch} sketch @param {HTMLElement} place */
  constructor(sketch, place) {
    this.sketch = sketch;
    this.place = place;
    this.shown = "";
  }

  enter() {
    this.place.querySelector("button")?.focus();
  }

  /** @param {Movable | undefined} movable */
  show(movable) {
    this.place.hidden = movable === undefined;
    const step = fineStep(this.sketch.page.store.unit);
    const shown = movable ? `${movable.key} ${movable.name} ${movable.axes} ${step}` : "";
    if (shown === this.shown) return;
    this.shown = shown;
    if (!movable) return this.place.replaceChildren();
    const name = say("moves.name", { name: movable.name });
    this.place.setAttribute("aria-label", name);
    const buttons = [...this.steps(movable, step), ...(movable.shape ? this.forOpening() : [])];
    const field = this.button("moves.field", {}, (thing) => goTo(this.sketch.page.form, this.sketch.page.store, thing.field));
    this.place.replaceChildren(make("p", { class: "chosen" }, movable.name), ...buttons, field, movable.shape ? this.removal() : "");
  }

  /** @param {Movable} movable @param {number} mm */
  steps({ axes, shape }, mm) {
    const sized = !shape && axes !== "xy";
    const ways = [
      { axis: "x", key: sized ? "moves.less" : "moves.left", by: { x: -mm, y: 0 } },
      { axis: "x", key: sized ? "moves.more" : "moves.right", by: { x: mm, y: 0 } },
      { axis: "y", key: sized ? "moves.less" : "moves.front", by: { x: 0, y: -mm } },
      { axis: "y", key: sized ? "moves.more" : "moves.back", by: { x: 0, y: mm } },
    ];
    const step = lengthWords(spoken(mm, this.sketch.page.store.unit));
    return ways
      .filter(({ axis }) => axes.includes(axis))
      .map(({ key, by }) => this.button(key, { step }, (movable) => this.sketch.drag.nudge(movable, by)));
  }

  forOpening() {
    return /** @type {const} */ (["x", "y"]).map((axis) =>
      this.button(`moves.centre-${axis}`, {}, (movable) => {
        const { lengthMm, widthMm } = sizeMm(this.sketch.page.store.shown.outline);
        const middle = axis === "x" ? lengthMm / 2 : widthMm / 2;
        this.sketch.move(movable, { x: movable.x, y: movable.y, [axis]: middle }, { cause: "choice", group: "" });
        this.sketch.tell(movable.key);
      }),
    );
  }

  removal() {
    return this.button("moves.remove", {}, (movable) => {
      const { store } = this.sketch.page;
      this.sketch.chosen = "";
      store.change(without(store.order, movable.field));
      this.sketch.page.announce(say("openings.removed", { label: movable.name }));
      one("[data-do=add-cutout]")?.focus();
    });
  }

  /** @param {string} key @param {Record<string, string>} values @param {(movable: Movable) => void} does */
  button(key, values, does) {
    const press = () => {
      const movable = this.sketch.find(this.sketch.chosen);
      if (movable) does(movable);
    };
    return make("button", { type: "button", class: "quiet", press }, say(key, values));
  }
}
