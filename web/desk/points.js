import { read, same } from "../lib/json.js";
import { startingSlab } from "../order/slabs.js";
import { say } from "../show.js";

/**
 * What the form begins with: the proposal, or what was read, on a slab without sizes.
 * @param {Contract.Enquiry} reading
 * @param {Choices} choices
 * @returns {Order}
 */
export function orderOf({ proposal, order, customer }, choices) {
  const language = customer.language;
  if (proposal) return { ...proposal, language };
  const slabs = (order.slabs?.length ? order.slabs : [{}]).map((/** @type {Partial<Slab>} */ slab) => ({
    ...startingSlab(choices, "mm"),
    ...slab,
    outline: sized(slab.outline ?? { kind: "rectangle" }),
  }));
  const kind = order.delivery?.postcode ? "pallet" : "collect";
  return { ...order, delivery: { kind, ...order.delivery }, slabs, language };
}

/** @param {Outline} outline */
function sized(outline) {
  if (outline.kind === "polygon") return outline;
  return outline.kind === "round" ? { diameter: "", ...outline } : { length: "", width: "", ...outline };
}

/** @param {Contract.Enquiry} reading @param {Order} order as the form began @returns {Point[]} */
export function pointsOf({ unread, doubtful, missing, assumed, read: taken }, order) {
  const was = (/** @type {string} */ at) => read(order, at);
  return [
    ...unread.map((span) => ({ kind: /** @type {const} */ ("unread"), at: `${span.start}`, says: say("points.quoted", { text: span.text }), readings: [], from: [span] })),
    ...doubtful.map(({ at, says, asks, readings }) => ({ kind: readings.some(({ value }) => value) ? /** @type {const} */ ("doubtful") : /** @type {const} */ ("missing"), at, says, asks, readings: readings.filter(({ value }) => value), from: readings.flatMap(({ from }) => from) })),
    ...missing.map(({ at, asks }) => ({ kind: /** @type {const} */ ("missing"), at, says: asks, asks, readings: [], from: [] })),
    ...assumed.map(({ at, says }) => ({ kind: /** @type {const} */ ("assumed"), at, says, readings: [], from: [] })),
    ...taken.map(({ at, from }) => ({ kind: /** @type {const} */ ("said"), at, says: from.map(({ text }) => text).join(" … "), readings: [], from })),
  ].map((point) => ({ ...point, was: point.kind === "unread" ? null : was(point.at), settled: false }));
}

/** @param {Point[]} points @param {Order} order */
export function openPoints(points, order) {
  return points.filter(({ kind, at, was, settled }) => !settled && (kind === "unread" || same(read(order, at), was)));
}

/**
 * A text in pieces, each with the points that rest on it; places are counted in code points.
 * @param {string} text
 * @param {Point[]} points
 * @returns {{text: string, points: Point[]}[]}
 */
export function pieces(text, points) {
  const letters = Array.from(text);
  const spans = points.flatMap((point) => point.from.map(({ start, end }) => ({ start, end, point })));
  const ends = [...new Set([0, letters.length, ...spans.flatMap(({ start, end }) => [start, end])])].sort((a, b) => a - b);
  return ends.slice(1).map((end, i) => {
    const start = ends[i] ?? 0;
    const on = spans.filter((span) => span.start <= start && span.end >= end).map(({ point }) => point);
    return { text: letters.slice(start, end).join(""), points: [...new Set(on)] };
  });
}

/** What the maker enters goes into it too, a fix that is taken does not. */
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
