/** The order as the customer asked for it: what the maker enters goes into it too, a fix that is taken does not. */

import { same } from "../lib/json.js";

export class OriginalOrder {
  /** @param {import("../store.js").Store} store */
  constructor(store) {
    this.store = store;
    /** @type {Order | null} null where the order is as it was asked for */
    this.order = null;
    this.before = store.order;
  }

  /** @param {Cause} cause */
  follow(cause) {
    const { order } = this.store;
    const asked = this.order ?? this.before;
    const now = cause === "fix" ? asked : carried(asked, this.before, order);
    this.order = (this.order || cause === "fix") && !same(now, order) ? now : null;
    this.before = order;
  }

  /** As it is sent, by the day that the customer wished for; null where nothing is another. @param {string} wished */
  sent(wished) {
    const { order } = this.store;
    const asked = { ...(this.order ?? order), ...(wished && { needed_by: wished }) };
    return same(asked, order) ? null : asked;
  }
}

/**
 * A document with the change between two others made in it, wherever it holds what the first of them holds.
 * @param {any} into @param {any} was @param {any} now @returns {any}
 */
export function carried(into, was, now) {
  if (same(was, now)) return into;
  if (same(into, was)) return now;
  const all = [into, was, now];
  if (all.some((one) => typeof one !== "object" || !one)) return into;
  if (all.every(Array.isArray)) {
    const alike = was.length === now.length && was.length === into.length;
    return alike ? into.map((/** @type {any} */ one, /** @type {number} */ i) => carried(one, was[i], now[i])) : into;
  }
  if (all.some(Array.isArray)) return into;
  const names = [...new Set([...Object.keys(into), ...Object.keys(now)])];
  return Object.fromEntries(names.map((name) => [name, carried(into[name], was[name], now[name])]).filter(([, value]) => value !== undefined));
}
