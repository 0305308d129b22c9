import { sizeMm } from "../order/slabs.js";
import { keyStep, mm, snapped, unitMiddles } from "./geometry.js";

const SLACK_PX = 4;
const REACH_PX = 8;

export class Drag {
  /** @param {Sketch} sketch */
  constructor(sketch) {
    this.sketch = sketch;
    this.count = 0;
    /** @type {{key: string, from: XY, grip: XY, moved: boolean} | null} */
    this.now = null;
    /** @type {{x: number | null, y: number | null}} */
    this.lines = { x: null, y: null };
  }

  listen() {
    const { svg } = this.sketch;
    svg.addEventListener("pointerdown", (event) => this.down(event));
    svg.addEventListener("pointermove", (event) => this.move(event));
    svg.addEventListener("pointerup", () => this.up());
    svg.addEventListener("pointercancel", () => this.cancel());
    svg.addEventListener("keydown", (event) => this.key(event));
    svg.addEventListener("click", (event) => this.press(event));
    svg.addEventListener("focusin", (event) => this.focused(event));
  }

  /** @param {PointerEvent} event */
  down(event) {
    const movable = this.at(event.target);
    if (!movable || event.button !== 0) return;
    const point = this.point(event);
    const { frame } = this.sketch;
    const grip = frame ? frame.at(movable) : point;
    this.count += 1;
    this.now = { key: movable.key, from: point, grip: { x: grip.x - point.x, y: grip.y - point.y }, moved: false };
    this.sketch.svg.setPointerCapture(event.pointerId);
    this.sketch.choose(movable.key);
  }

  /** @param {PointerEvent} event */
  move(event) {
    const { now, sketch } = this;
    const movable = now && sketch.find(now.key);
    if (!now || !movable || !sketch.frame) return;
    const point = this.point(event);
    now.moved ||= Math.hypot(point.x - now.from.x, point.y - now.from.y) > SLACK_PX;
    if (!now.moved) return;
    const to = sketch.frame.from({ x: point.x + now.grip.x, y: point.y + now.grip.y });
    sketch.move(movable, this.rest(movable, to), { cause: "moving", group: `drag ${this.count}` });
  }

  cancel() {
    const moved = this.now?.moved;
    this.now = null;
    if (moved) this.sketch.page.store.undo();
    this.up();
  }

  up() {
    const { now, sketch } = this;
    this.now = null;
    this.lines = { x: null, y: null };
    sketch.show();
    if (!now?.moved) return;
    sketch.page.price("choice");
    sketch.tell(now.key);
  }

  /** @param {Movable} movable @param {XY} to */
  rest(movable, to) {
    const { store } = this.sketch.page;
    const slab = store.shown;
    const reach = REACH_PX / (this.sketch.frame?.scale ?? 1);
    const lines = movable.shape ? linesOf(slab, movable.opening) : { x: [], y: [] };
    const [x, y] = [snapped(to.x, lines.x, reach, store.unit), snapped(to.y, lines.y, reach, store.unit)];
    this.lines = { x: x.line, y: y.line };
    if (!movable.shape) return { x: x.mm, y: y.mm };
    const { lengthMm, widthMm } = sizeMm(slab.outline);
    return { x: Math.max(0, Math.min(x.mm, lengthMm)), y: Math.max(0, Math.min(y.mm, widthMm)) };
  }

  /** @param {KeyboardEvent} event */
  key(event) {
    const movable = this.at(event.target);
    if (!movable) return;
    if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      return this.sketch.moves.enter();
    }
    const step = keyStep(event.key, event.shiftKey, this.sketch.page.store.unit);
    if (!step) return;
    event.preventDefault();
    this.nudge(movable, step);
  }

  /** Presses close together are undone as one. @param {Movable} movable @param {XY} step */
  nudge(movable, step) {
    const to = { x: movable.x + step.x, y: movable.y + step.y };
    this.sketch.move(movable, to, { cause: "typing", group: `nudge ${movable.key}` });
    this.sketch.tell(movable.key);
  }

  /** @param {MouseEvent} event */
  press(event) {
    const pin = event.target instanceof Element ? event.target.closest("[data-pin]") : null;
    if (!(pin instanceof SVGElement)) return;
    event.preventDefault();
    const found = document.querySelector(`#finding-${pin.dataset.pin}`);
    found?.closest("details")?.setAttribute("open", "");
    if (found instanceof HTMLElement) found.focus();
  }

  /** @param {FocusEvent} event */
  focused({ target }) {
    const movable = this.at(target);
    if (movable && movable.key !== this.sketch.chosen) this.sketch.choose(movable.key);
  }

  /** @param {EventTarget | null} target */
  at(target) {
    const thing = target instanceof Element ? target.closest("[data-key]") : null;
    return thing instanceof SVGElement ? this.sketch.find(thing.dataset.key ?? "") : undefined;
  }

  /** @param {PointerEvent} event */
  point(event) {
    const { left, top } = this.sketch.svg.getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  }
}

/** @param {Slab} slab @param {number} opening */
export function linesOf(slab, opening) {
  const { lengthMm, widthMm } = sizeMm(slab.outline);
  const others = (slab.cutouts ?? []).filter((cutout, i) => i !== opening && cutout.centre);
  const placed = (/** @type {"x" | "y"} */ axis) => others.map(({ centre }) => mm(centre?.[axis]));
  return { x: [lengthMm / 2, ...unitMiddles(slab), ...placed("x")], y: [widthMm / 2, ...placed("y")] };
}
