/** The service's drawings, as pictures with descriptions: the view first, the plan a press away. */

import { make } from "../make.js";
import { number, say } from "../words.js";

/** @typedef {"view" | "plan"} Kind */
/** @typedef {Record<Kind, {address: string, alt: string}>} Pictures */

/** @type {Kind[]} */
const KINDS = ["view", "plan"];
/** @type {Pictures} */
const NONE = { view: { address: "", alt: "" }, plan: { address: "", alt: "" } };

/** A figure that shows one drawing at a time; the old one stands until the new is here. */
export class Drawing {
  constructor() {
    this.picture = make("img", { alt: "", width: "960", height: "720", decoding: "async" });
    this.missing = make("p", { class: "hint", hidden: "" }, say("drawing.missing"));
    this.link = make("a", { target: "_blank", rel: "noopener" }, say("drawing.large"));
    this.buttons = KINDS.map((kind) => this.button(kind));
    const choose = make("div", { class: "choose", role: "group", "aria-label": say("drawing.name") }, ...this.buttons);
    this.element = make("figure", { hidden: "" }, this.picture, this.missing, make("figcaption", {}, choose, this.link));
    this.pictures = NONE;
    this.wanted = "";
    this.turnTo("view");
  }

  /** @param {Kind} kind */
  button(kind) {
    const press = () => this.turnTo(kind);
    return make("button", { type: "button", class: "quiet", "data-key": kind, press }, say(`drawing.${kind}`));
  }

  /** @param {Kind} kind */
  turnTo(kind) {
    this.kind = kind;
    this.element.dataset.kind = kind;
    for (const button of this.buttons) button.setAttribute("aria-pressed", String(button.dataset.key === kind));
    if (this.pictures !== NONE) this.show(this.pictures);
  }

  /**
   * Show the drawing that is chosen once it has come; "" says that there is none.
   * @param {Pictures} pictures
   */
  show(pictures) {
    this.pictures = pictures;
    const { address, alt } = pictures[this.kind ?? "view"];
    this.element.hidden = false;
    if (address === this.wanted && address !== "") return;
    this.wanted = address;
    if (address === "") return this.say(false);
    const next = new Image();
    next.onload = () => this.arrived(next, address, alt);
    next.onerror = () => this.absent(address);
    next.src = address;
  }

  /**
   * @param {HTMLImageElement} next
   * @param {string} address
   * @param {string} alt
   */
  arrived(next, address, alt) {
    if (address !== this.wanted) return;
    this.picture.src = address;
    this.picture.alt = alt;
    if (next.naturalWidth) {
      this.picture.width = next.naturalWidth;
      this.picture.height = next.naturalHeight;
    }
    this.link.href = address;
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
    this.link.hidden = !there;
    this.missing.hidden = there;
  }
}

/**
 * Describe a slab in the page's own words: whose, how large, which openings.
 * @param {Order} order
 * @param {number} slab
 * @param {{length_mm: number, width_mm: number} | undefined} size
 */
export function describe(order, slab, size) {
  const asked = order.slabs[slab];
  const label = asked?.label || say("answer.the-slab");
  const { length, width, diameter } = asked?.outline ?? {};
  const typed = [length ?? diameter, width].filter(Boolean).join(" × ");
  const said = size ? `${number(size.length_mm, 1)} × ${number(size.width_mm, 1)} mm` : typed;
  const openings = (asked?.cutouts ?? []).map((cutout, i) => cutout.label || say("at.opening", { number: i + 1 }));
  const n = openings.length;
  const words = n ? say("drawing.openings", { n, list: openings.join(", ") }) : say("drawing.no-openings");
  return say("drawing.alt", { label, size: said, openings: words });
}
