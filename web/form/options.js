/** What this workshop offers, put into the form: shades, surfaces, sealers, thicknesses, ways. */

import { make } from "../make.js";
import { inMm, spoken } from "../lib/lengths.js";
import { elements, knows, say } from "../words.js";

/**
 * Fill the form with what is offered, once.
 * @param {HTMLElement} form
 * @param {Choices} choices
 */
export function fillOptions(form, choices) {
  fill(form, "#shade-name", choices.shades.map(({ name, hex }) => pick("shade-name", name, name, "", hex)));
  const surfaces = choices.finishes.map(({ surface, says }) => {
    const name = knows(`surface.${surface}`) ? say(`surface.${surface}`) : surface;
    return pick("finish-surface", surface, name, says);
  });
  fill(form, "#finish-surface", surfaces);
  fill(form, "#finish-sealer", choices.sealers.map(({ name, says }) => pick("finish-sealer", name, name, says)));
  const usual = choices.thicknesses_mm.map((mm) =>
    make("button", { type: "button", "data-do": "quick", "data-mm": String(mm) }, spoken(mm, "mm")),
  );
  fill(form, "[data-quick]", usual);
  const offered = new Set(["collect", ...choices.deliveries.flatMap(({ kinds }) => kinds)]);
  for (const radio of elements(form, "[name=delivery-kind]"))
    if (radio instanceof HTMLInputElement && !offered.has(radio.value)) radio.closest("label")?.remove();
}

/**
 * Show the sealers that suit the place, and which usual thickness is chosen.
 * @param {HTMLElement} form
 * @param {Choices} choices
 * @param {Slab} slab
 */
export function syncOptions(form, choices, slab) {
  for (const radio of elements(form, "[name=finish-sealer]")) {
    const sealer = choices.sealers.find(({ name }) => name === /** @type {HTMLInputElement} */ (radio).value);
    const suits = sealer?.places.includes(slab.place ?? "indoors") || slab.finish?.sealer === sealer?.name;
    /** @type {HTMLElement} */ (radio.closest("label")).hidden = !suits;
  }
  for (const button of elements(form, "[data-mm]"))
    button.setAttribute("aria-pressed", String(Number(button.dataset.mm) === inMm(slab.thickness)));
}

/**
 * @param {HTMLElement} form
 * @param {string} selector
 * @param {HTMLElement[]} picks
 */
function fill(form, selector, picks) {
  const fieldset = form.querySelector(selector);
  for (const old of Array.from(fieldset?.querySelectorAll("label, button") ?? [])) old.remove();
  fieldset?.append(...picks);
}

/**
 * @param {string} group
 * @param {string} value
 * @param {string} name
 * @param {string} says
 * @param {string} [hex]
 */
function pick(group, value, name, says, hex) {
  const chip = hex ? make("span", { class: "chip", "aria-hidden": "true" }) : null;
  if (chip && hex) chip.style.backgroundColor = hex;
  const radio = make("input", { type: "radio", name: group, value });
  const more = says ? make("span", { class: "says" }, says) : null;
  return make("label", { class: "pick" }, radio, chip, make("span", {}, name, more && " ", more));
}
