import { goTo } from "../form/fields.js";
import { without } from "../lib/json.js";
import { fineStep, spoken } from "../lib/lengths.js";
import { sizeMm } from "../order/slabs.js";
import { draw, lengthWords, make, one, say } from "../show.js";
import { boxOf } from "./geometry.js";

const LEFT = 40;
const RIGHT = 24;
const TOP = 30;
const FOOT = 40;
const HIGHEST = 340;

/** @param {Box} box of the slab, in mm @param {number} wide @param {Corner[]} [more] beside it @returns {Frame} */
export function frameFor(box, wide, more = []) {
  const { from, to } = boxOf([box.from, box.to, ...more]);
  const [length, width] = [Math.max(1, to.x - from.x), Math.max(1, to.y - from.y)];
  const scale = Math.min((wide - LEFT - RIGHT) / length, HIGHEST / width);
  const left = LEFT + (wide - LEFT - RIGHT - length * scale) / 2;
  const foot = TOP + width * scale;
  return {
    wide,
    high: foot + FOOT,
    scale,
    box,
    at: ({ x, y }) => ({ x: left + (x - from.x) * scale, y: foot - (y - from.y) * scale }),
    from: ({ x, y }) => ({ x: from.x + (x - left) / scale, y: from.y + (foot - y) / scale }),
  };
}

/** @param {Outline} outline @param {Frame} frame */
export function overall({ kind, length, width, diameter }, { at, box }) {
  const [foot, far] = [at(box.from), at(box.to)];
  const [middleX, middleY] = [(foot.x + far.x) / 2, (foot.y + far.y) / 2];
  const front = kind === "round" ? lengthWords(diameter) : say("sketch.front", { length: lengthWords(length) });
  const parts = [draw("text", { x: middleX, y: foot.y + 30, class: "size" }, front.trim())];
  if (width !== undefined && kind !== "round")
    parts.push(draw("text", { transform: `translate(${foot.x - 24} ${middleY}) rotate(-90)`, class: "size" }, lengthWords(width)));
  return parts;
}

const RADIUS = 13;
const APART = 2 * RADIUS + 2;

/** @param {Finding[]} findings @param {number} slab @param {Frame} frame @param {XY[]} taken @param {DOMRect[]} words */
export function pins(findings, slab, frame, taken, words) {
  return findings.flatMap((finding, i) => {
    const place = finding.slab === slab ? anchorOf(finding.where_mm) : null;
    if (!place) return [];
    const there = free(frame.at(place), taken, words, frame);
    taken.push(there);
    return [pin(finding, i + 1, there)];
  });
}

/** @param {{coordinates: any} | undefined} where */
export function anchorOf(where) {
  const points = flat(where?.coordinates ?? []);
  if (points.length === 0) return null;
  const mean = (/** @type {0 | 1} */ i) => points.reduce((sum, point) => sum + (point[i] ?? 0), 0) / points.length;
  return { x: mean(0), y: mean(1) };
}

/** @param {any} coordinates @returns {number[][]} */
function flat(coordinates) {
  return typeof coordinates[0] === "number" ? [coordinates] : coordinates.flatMap(flat);
}

/** Kept on the paper. @param {XY} point @param {Frame} frame */
function kept({ x, y }, { wide, high }) {
  const inside = (/** @type {number} */ n, /** @type {number} */ most) => Math.max(RADIUS + 2, Math.min(n, most - RADIUS - 2));
  return { x: inside(x, wide), y: inside(y, high) };
}

/** As near as it covers nothing. @param {XY} point @param {XY[]} taken @param {DOMRect[]} words @param {Frame} frame */
function free(point, taken, words, frame) {
  for (let i = 0; i < 2000; i += 1) {
    const [turn, far] = [2.4 * i, 4 * Math.sqrt(i)]; // a spiral
    const { x, y } = kept({ x: point.x + far * Math.cos(turn), y: point.y + far * Math.sin(turn) }, frame);
    const met = taken.some((other) => Math.hypot(other.x - x, other.y - y) < APART);
    if (!met && !words.some(({ left, right, top, bottom }) => x > left - RADIUS && x < right + RADIUS && y > top - RADIUS && y < bottom + RADIUS)) return { x, y };
  }
  return point;
}

/** @param {Finding} finding @param {number} number @param {XY} at */
function pin({ says, level }, number, { x, y }) {
  const label = say("sketch.pin", { number, says });
  const link = draw("a", { href: `#finding-${number}`, class: `pin ${level}`, "aria-label": label, "data-pin": number });
  link.append(draw("circle", { cx: x, cy: y, r: RADIUS }), draw("text", { x, y: y + 5 }, String(number)));
  return link;
}

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
