/** The weeks until the slab is ready, as a strip: one bar a stage, a line each Monday. */

import { draw, make } from "../make.js";
import { day, say } from "../words.js";

/** @typedef {{name: string, from: number, to: number}} Bar days since the first, ends not included */

const DAY_MS = 86_400_000;
const [WIDE, NAMES, ROW, HEAD] = [400, 162, 22, 24];
const NAME_ROOM = 60;

/**
 * @param {LeadTime} lead
 * @returns {HTMLElement | null}
 */
export function weeks({ stages }) {
  const first = stages[0]?.starts;
  if (first === undefined) return null;
  const bars = stages.map(({ name, starts, ends }) => ({ name, from: since(first, starts), to: since(first, ends) + 1 }));
  const days = Math.max(...bars.map(({ to }) => to));
  const last = stages.reduce((late, { ends }) => (ends > late ? ends : late), first);
  const label = say("weeks.alt", { from: day(first), to: day(last), stages: stages.map(stageWords).join("; ") });
  const high = HEAD + bars.length * ROW + 4;
  const svg = draw(
    "svg",
    { viewBox: `0 0 ${WIDE} ${high}`, role: "img", "aria-label": label },
    ...mondays(first, days, high),
    ...bars.flatMap((bar, i) => row(bar, HEAD + i * ROW, days)),
  );
  return make("section", { class: "weeks" }, make("h3", {}, say("weeks.title")), svg);
}

/**
 * @param {string} first
 * @param {string} iso
 */
export function since(first, iso) {
  return Math.round((Date.parse(`${iso}T00:00:00Z`) - Date.parse(`${first}T00:00:00Z`)) / DAY_MS);
}

/** @param {{name: string, starts: string, ends: string}} stage */
function stageWords({ name, starts, ends }) {
  const key = starts === ends ? "weeks.one" : "weeks.span";
  return say(key, { name, from: day(starts, "short"), to: day(ends, "short") });
}

/**
 * @param {number} at a day
 * @param {number} days
 */
function x(at, days) {
  return NAMES + ((WIDE - NAMES - 4) * at) / days;
}

/**
 * A line for every Monday; its day is written where there is room for it.
 * @param {string} first
 * @param {number} days
 * @param {number} high
 */
function mondays(first, days, high) {
  const start = Date.parse(`${first}T00:00:00Z`);
  const all = Array.from({ length: days }, (_, i) => i).filter((i) => new Date(start + i * DAY_MS).getUTCDay() === 1);
  const every = Math.max(1, Math.ceil(NAME_ROOM / (x(7, days) - x(0, days))));
  return all.flatMap((i, nth) => {
    const line = draw("line", { x1: x(i, days), x2: x(i, days), y1: HEAD - 6, y2: high });
    const written = nth % every === 0 && x(i, days) < WIDE - NAME_ROOM + 12;
    const iso = new Date(start + i * DAY_MS).toISOString().slice(0, 10);
    return written ? [line, draw("text", { x: x(i, days) + 3, y: HEAD - 9 }, day(iso, "short"))] : [line];
  });
}

/**
 * @param {Bar} bar
 * @param {number} y
 * @param {number} days
 */
function row({ name, from, to }, y, days) {
  const wide = Math.max(3, x(to, days) - x(from, days));
  return [
    draw("text", { x: 0, y: y + 16 }, name),
    draw("rect", { x: x(from, days), y: y + 4, width: wide, height: ROW - 8 }),
  ];
}
