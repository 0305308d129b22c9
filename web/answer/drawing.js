import { day, draw, make, number, say } from "../show.js";

/** @type {Drawn[]} */
const KINDS = ["view", "plan", "assembled"];

export class Drawing {
  constructor() {
    this.picture = make("img", { alt: "", width: "800", height: "419", decoding: "async" });
    this.missing = make("p", { class: "hint", hidden: "" }, say("drawing.missing"));
    this.trueSize = make("a", { href: "#plan", target: "_blank", rel: "noopener", hidden: "" }, say("drawing.true-size"));
    this.buttons = KINDS.map((kind) => this.button(kind));
    const choose = make("div", { class: "choose", role: "group", "aria-label": say("drawing.name") }, ...this.buttons);
    this.element = make("figure", { hidden: "" }, this.picture, this.missing, make("figcaption", {}, choose, this.trueSize));
    /** @type {Pictures | undefined} */
    this.pictures = undefined;
    this.wanted = "";
    this.turnTo("view");
  }

  /** @param {Drawn} kind */
  button(kind) {
    const press = () => this.turnTo(kind);
    return make("button", { type: "button", class: "quiet", "data-key": kind, press }, say(`drawing.${kind}`));
  }

  /** @param {Drawn} kind */
  turnTo(kind) {
    this.kind = kind;
    this.element.dataset.kind = kind;
    for (const button of this.buttons) button.setAttribute("aria-pressed", String(button.dataset.key === kind));
    if (this.pictures) this.show(this.pictures);
  }

  /** @param {Pictures} pictures */
  show(pictures) {
    this.pictures = pictures;
    for (const button of this.buttons) button.hidden = button.dataset.key === "assembled" && !pictures.assembled;
    if (this.kind === "assembled" && !pictures.assembled) return this.turnTo("view");
    const { address, alt } = pictures[this.kind ?? "view"] ?? { address: "", alt: "" };
    this.element.hidden = false;
    if (address === this.wanted && address !== "") return;
    this.wanted = address;
    if (address === "") return this.say(false);
    const next = new Image();
    next.onload = () => this.arrived(next, address, alt);
    next.onerror = () => this.absent(address);
    next.src = address;
  }

  /** @param {HTMLImageElement} next @param {string} address @param {string} alt */
  arrived(next, address, alt) {
    if (address !== this.wanted) return;
    this.picture.src = address;
    this.picture.alt = alt;
    if (next.naturalWidth) {
      this.picture.width = next.naturalWidth;
      this.picture.height = next.naturalHeight;
    }
    this.say(true);
  }

  /** @param {string} address */
  absent(address) {
    if (address !== this.wanted) return;
    this.wanted = "";
    this.say(false);
  }

  /** @param {boolean} there */
  say(there) {
    this.picture.hidden = !there;
    this.missing.hidden = there;
  }
}

const DAY_MS = 86_400_000;
const [WIDE, NAMES, ROW, HEAD] = [400, 162, 22, 24];
const NAME_ROOM = 60;

/** @param {LeadTime} lead */
export function weeks({ stages }) {
  const first = stages[0]?.starts;
  if (first === undefined) return null;
  const bars = stages.map(({ name, starts, ends }) => ({ name, from: since(first, starts), to: since(first, ends) + 1 }));
  const days = Math.max(...bars.map(({ to }) => to));
  const last = stages.reduce((late, { ends }) => (ends > late ? ends : late), first);
  const label = say("weeks.alt", { from: day(first), to: day(last), stages: stages.map(stageWords).join("; ") });
  const high = HEAD + bars.length * ROW + 4;
  return draw(
    "svg",
    { class: "weeks", viewBox: `0 0 ${WIDE} ${high}`, role: "img", "aria-label": label },
    ...mondays(first, days, high),
    ...bars.flatMap((bar, i) => row(bar, HEAD + i * ROW, days)),
  );
}

/** @param {string} first @param {string} iso */
export function since(first, iso) {
  return Math.round((Date.parse(`${iso}T00:00:00Z`) - Date.parse(`${first}T00:00:00Z`)) / DAY_MS);
}

/** @param {{name: string, starts: string, ends: string}} stage */
function stageWords({ name, starts, ends }) {
  const key = starts === ends ? "weeks.one" : "weeks.span";
  return say(key, { name, from: day(starts, "short"), to: day(ends, "short") });
}

/** @param {number} at @param {number} days */
function x(at, days) {
  return NAMES + ((WIDE - NAMES - 4) * at) / days;
}

/** @param {string} first @param {number} days @param {number} high */
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

/** @param {Bar} bar @param {number} y @param {number} days */
function row({ name, from, to }, y, days) {
  const wide = Math.max(3, x(to, days) - x(from, days));
  return [
    draw("text", { x: 0, y: y + 16 }, name),
    draw("rect", { x: x(from, days), y: y + 4, width: wide, height: ROW - 8 }),
  ];
}
