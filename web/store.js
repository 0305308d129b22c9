/** The one place where the order is kept: what it is, what it was, which slab is looked at. */

/** @typedef {"typing" | "choice" | "moving" | "undo" | "load"} Cause */
/** @typedef {{order: Order, slab: number}} Moment */

const TOGETHER_MS = 1500;
const MOST_MOMENTS = 200;

/**
 * Holds the order. Every change makes a new order, so an earlier one can be put back as it was.
 * Fires "change" with the cause, and "slab" when another slab is looked at.
 */
export class Store extends EventTarget {
  /** @param {Order} order */
  constructor(order) {
    super();
    /** @type {Order} */
    this.order = order;
    this.slab = 0;
    /** @type {Unit} */
    this.unit = "mm";
    /** @type {Moment[]} */
    this.past = [];
    /** @type {Moment[]} */
    this.future = [];
    this.group = "";
    this.changedAt = 0;
  }

  /**
   * Put a new order in place of this one. Changes of one group close together are undone as one;
   * so is one drag, however long it takes.
   * @param {Order} order
   * @param {{cause?: Cause, group?: string, slab?: number}} [how]
   */
  change(order, { cause = "choice", group = "", slab = this.slab } = {}) {
    const now = Date.now();
    const close = cause === "moving" || now - this.changedAt < TOGETHER_MS;
    const goesOn = group !== "" && group === this.group && close;
    if (!goesOn) this.past = [...this.past.slice(1 - MOST_MOMENTS), this.moment()];
    this.future = [];
    [this.group, this.changedAt] = [group, now];
    this.become({ order, slab }, cause);
  }

  /** Put back what was before the last change. */
  undo() {
    const moment = this.past.pop();
    if (!moment) return;
    this.future.push(this.moment());
    this.group = "";
    this.become(moment, "undo");
  }

  /** Do again what was undone. */
  redo() {
    const moment = this.future.pop();
    if (!moment) return;
    this.past.push(this.moment());
    this.group = "";
    this.become(moment, "undo");
  }

  /**
   * Look at another slab.
   * @param {number} slab
   */
  lookAt(slab) {
    this.slab = Math.max(0, Math.min(slab, this.order.slabs.length - 1));
    this.dispatchEvent(new Event("slab"));
  }

  /** @param {Unit} unit */
  speak(unit) {
    this.unit = unit;
    this.dispatchEvent(new Event("slab"));
  }

  /** @returns {Moment} */
  moment() {
    return { order: this.order, slab: this.slab };
  }

  /**
   * @param {Moment} moment
   * @param {Cause} cause
   */
  become({ order, slab }, cause) {
    this.order = order;
    this.slab = Math.max(0, Math.min(slab, order.slabs.length - 1));
    this.dispatchEvent(new CustomEvent("change", { detail: { cause } }));
  }
}
