/** The service's drawing, as a picture with a description; the old one stands until the new is here. */

import { make } from "../make.js";
import { number, say } from "../words.js";

/** @typedef {import("../types.js").Order} Order */

/** A figure that shows one drawing at a time. */
export class Drawing {
  constructor() {
    this.picture = make("img", { alt: "", width: "480", height: "360", decoding: "async" });
    this.missing = make("p", { class: "hint", hidden: "" }, say("drawing.missing"));
    this.link = make("a", { target: "_blank", rel: "noopener" }, say("drawing.large"));
    this.element = make("figure", { hidden: "" }, this.picture, this.missing, make("figcaption", {}, this.link));
    this.wanted = "";
  }

  /**
   * Show the drawing at an address once it has come; "" says that there is none.
   * @param {string} address
   * @param {string} alt
   */
  show(address, alt) {
    this.element.hidden = false;
    if (address === this.wanted && address !== "") return;
    this.wanted = address;
    if (address === "") return this.say(false);
    const next = new Image();
    next.onload = () => this.arrived(address, alt);
    next.onerror = () => this.absent(address);
    next.src = address;
  }

  /**
   * @param {string} address
   * @param {string} alt
   */
  arrived(address, alt) {
    if (address !== this.wanted) return;
    this.picture.src = address;
    this.picture.alt = alt;
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
 * Describe a drawing in words: whose, how large, which openings.
 * @param {Order} order
 * @param {number} slab
 * @param {{length_mm: number, width_mm: number} | undefined} size
 */
export function describe(order, slab, size) {
  const asked = order.slabs[slab];
  const label = asked?.label || say("answer.the-slab").toLowerCase();
  const { length, width, diameter } = asked?.outline ?? {};
  const typed = [length ?? diameter, width].filter(Boolean).join(" × ");
  const said = size ? `${number(size.length_mm, 1)} × ${number(size.width_mm, 1)} mm` : typed;
  const openings = (asked?.cutouts ?? []).map((cutout, i) => cutout.label || say("at.opening", { number: i + 1 }));
  const n = openings.length;
  const words = n ? say("drawing.openings", { n, list: openings.join(", ") }) : say("drawing.no-openings");
  return say("drawing.alt", { label, size: said, openings: words });
}
