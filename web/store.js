const TOGETHER_MS = 1500;
const MOST_MOMENTS = 200;

export class Store extends EventTarget {
  /** @param {Order} order */
  constructor(order) {
    super();
    /** @type {Order} */
    this.order = order;
    this.slab = 0;
    /** @type {Set<string>} where the service put things */
    this.placed = new Set();
    /** @type {Unit} */
    this.unit = "mm";
    /** @type {Moment[]} */
    this.past = [];
    /** @type {Moment[]} */
    this.future = [];
    this.group = "";
    this.changedAt = 0;
  }

  /** Those of one group close together are undone as one. @param {Order} order @param {{cause?: Cause, group?: string, slab?: number}} [how] */
  change(order, { cause = "choice", group = "", slab = this.slab } = {}) {
    const now = Date.now();
    const close = cause === "moving" || now - this.changedAt < TOGETHER_MS;
    const goesOn = group !== "" && group === this.group && close;
    if (!goesOn) this.past = [...this.past.slice(1 - MOST_MOMENTS), this.moment()];
    this.future = [];
    [this.group, this.changedAt] = [group, now];
    this.become({ order, slab }, cause);
  }

  undo() {
    const moment = this.past.pop();
    if (!moment) return;
    this.future.push(this.moment());
    this.group = "";
    this.become(moment, "undo");
  }

  redo() {
    const moment = this.future.pop();
    if (!moment) return;
    this.past.push(this.moment());
    this.group = "";
    this.become(moment, "undo");
  }

  /** @param {number} slab */
  lookAt(slab) {
    this.slab = Math.max(0, Math.min(slab, this.order.slabs.length - 1));
    this.dispatchEvent(new Event("slab"));
  }

  /** @param {Unit} unit */
  speak(unit) {
    this.unit = unit;
    this.dispatchEvent(new Event("slab"));
  }

  get shown() {
    return /** @type {Slab} */ (this.order.slabs[this.slab]);
  }

  /** @returns {Moment} */
  moment() {
    return { order: this.order, slab: this.slab };
  }

  /** @param {Moment} moment @param {Cause} cause */
  become({ order, slab }, cause) {
    this.order = order;
    this.slab = Math.max(0, Math.min(slab, order.slabs.length - 1));
    this.dispatchEvent(new CustomEvent("change", { detail: { cause } }));
  }
}

/** @type {"localStorage" | "sessionStorage"} */
let shelf = "localStorage";

export function keepInTab() {
  shelf = "sessionStorage";
}

const DRAFT = "ledgerstone.draft.1";
const CHOICES = "ledgerstone.choices.1";

/** @param {Draft} draft */
export function keepDraft(draft) {
  return keep(DRAFT, draft);
}

/** @returns {Draft | null} */
export function keptDraft() {
  const draft = kept(DRAFT);
  const whole = Array.isArray(draft?.order?.slabs) && draft.order.slabs.every((/** @type {any} */ slab) => slab?.outline);
  return whole && draft.order.slabs.length ? draft : null;
}

export const canKeep = () => keep("tried", true);

export function clearDraft() {
  keep(DRAFT, null);
}

/** @param {Choices} choices */
export function keepChoices(choices) {
  keep(CHOICES, choices);
}

/** @returns {Choices | null} */
export function keptChoices() {
  return kept(CHOICES);
}

/** @param {string} name @param {unknown} value */
function keep(name, value) {
  try {
    const here = `${name} ${location.pathname}`;
    if (value === null) window[shelf].removeItem(here);
    else window[shelf].setItem(here, JSON.stringify(value));
    return true;
  } catch {
    return false; // the page says so
  }
}

/** @param {string} name */
function kept(name) {
  try {
    return JSON.parse(window[shelf].getItem(`${name} ${location.pathname}`) ?? "null");
  } catch {
    return null;
  }
}
