import { read } from "../lib/json.js";
import { inMm, spoken } from "../lib/lengths.js";
import { sidesOf } from "../order/slabs.js";
import { elements, fillWords, knows, lengthWords, make, masses, one, say, write } from "../show.js";

let made = 0;

/** @param {HTMLElement} form @param {Choices} choices */
export function fillOptions(form, choices) {
  const own = one("[for=shade-hex]", form).textContent ?? "";
  fill(form, "#shade-name", [...choices.shades.map(({ name, hex }) => pick("shade-name", name, name, "", hex)), pick("shade-name", "#", own, "", "#")]);
  const surfaces = choices.finishes.map(({ surface, says }) => {
    const name = knows(`surface.${surface}`) ? say(`surface.${surface}`) : surface;
    return pick("finish-surface", surface, name, says);
  });
  fill(form, "#finish-surface", surfaces);
  one("#shade-match", form).hidden = !choices.matching;
  one("#shade-ask", form).hidden = choices.matching;
  fill(form, "#finish-sealer", choices.sealers.map(({ name, says }) => pick("finish-sealer", name, name, says)));
  const usual = choices.thicknesses_mm.map((mm) => make("option", { value: String(mm) }));
  offer(one("[data-quick]", form), [make("option", { value: "", disabled: "" }, say("thickness.other")), ...usual, make("option", { value: "0" }, say("rests.unknown"))]);
  if (masses() === "lb") write(one("[for=delivery-lift-rated-kg]", form), say("delivery.lift-rated-lb"));
  for (const field of elements(form, "[data-offer]")) {
    const offer = read(choices, `/${field.dataset.offer}`);
    field.hidden = !offer;
    one("span", field).textContent = offer?.says ?? "";
  }
  const offered = new Set(["", "collect", ...choices.deliveries.flatMap(({ kinds }) => kinds)]);
  for (const option of elements(form, "#delivery-kind option"))
    if (option instanceof HTMLOptionElement && !offered.has(option.value)) option.remove();
}

/** @param {HTMLElement} form @param {Choices} choices @param {Slab} slab @param {Unit} unit */
export function syncOptions(form, choices, slab, unit) {
  for (const radio of elements(form, "[name=finish-sealer]")) {
    const sealer = choices.sealers.find(({ name }) => name === /** @type {HTMLInputElement} */ (radio).value);
    const suits = !sealer || sealer.places.includes(slab.place ?? "indoors") || slab.finish?.sealer === sealer.name;
    /** @type {HTMLElement} */ (radio.closest("label")).hidden = !suits;
  }
  const own = one("#shade-name label:has([value='#'])", form);
  const { match } = slab.shade ?? {};
  own.hidden = match === undefined;
  /** @type {HTMLInputElement} */ (one("input", own)).checked = !own.hidden;
  one(".chip", own).style.backgroundColor = match ?? "";
  const thick = choices.thicknesses_mm.find((mm) => Math.abs(mm - (inMm(slab.thickness) ?? 0)) < 0.5);
  const quick = /** @type {HTMLSelectElement} */ (form.querySelector("[data-quick]"));
  for (const option of quick.options) if (Number(option.value)) write(option, lengthWords(spoken(Number(option.value), unit, 16)));
  quick.value = String(thick ?? (slab.thickness === undefined ? 0 : ""));
}

/** @param {HTMLElement} form @param {string} selector @param {HTMLElement[]} picks */
function fill(form, selector, picks) {
  const fieldset = form.querySelector(selector);
  for (const old of Array.from(fieldset?.querySelectorAll("label, button") ?? [])) old.remove();
  fieldset?.append(...picks, pick(selector.slice(1), "", say("rests.unknown"), ""));
}

/** @param {string} group @param {string} value @param {string} name @param {string} says @param {string} [hex] */
function pick(group, value, name, says, hex) {
  const chip = hex ? make("span", { class: "chip", "aria-hidden": "true" }) : null;
  if (chip && hex) chip.style.backgroundColor = hex;
  const radio = make("input", { type: "radio", name: group, value });
  const more = says ? make("span", { class: "says" }, says) : null;
  return make("label", { class: "pick" }, radio, chip, make("span", {}, name, more && " ", more));
}

/** @param {string} side */
export function sideName(side) {
  return knows(`side.${side}`) ? say(`side.${side}`) : say("side.number", { number: side });
}

/** @param {string} side */
export function sideOption(side) {
  return make("option", { value: side }, sideName(side));
}

/** @param {HTMLElement} select @param {HTMLElement[]} options */
export function offer(select, options) {
  const said = options.map(({ textContent }) => textContent).join();
  if (select.dataset.shown === said) return;
  select.dataset.shown = said;
  select.replaceChildren(...options.map((option) => option.cloneNode(true)));
}

/** @param {HTMLElement} root @param {Store} store @param {Choices} choices */
export function syncSides(root, store, choices) {
  const slab = store.shown;
  const sides = sidesOf(slab.outline);
  const said = sides.join(" ");
  for (const list of elements(root, "[data-sides]")) {
    if (list.dataset.shown === said) continue;
    list.dataset.shown = said;
    if (list.dataset.sides === "edges") list.replaceChildren(...sides.map((side) => edgeRow(side, choices)));
    else showBoxes(list, sides);
  }
  const closed = make("option", { value: "" }, say("cutout.not-open"));
  for (const select of elements(root, "[data-options=sides]")) offer(select, [closed, ...sides.map(sideOption)]);
  tickSides(root, slab.rests?.sides ?? []);
}

/** @param {string} side @param {Choices} choices */
function edgeRow(side, choices) {
  const row = fromTemplate("edge-row");
  row.dataset.scope = `edges/${side}`;
  const legend = row.querySelector("[data-row-name]");
  if (legend) legend.textContent = sideName(side);
  const offered = choices.edges.map(({ profile }) => make("option", { value: profile }, say(`profile.${profile}`)));
  row.querySelector("[data-options=profiles]")?.replaceChildren(...offered);
  return row;
}

/** @param {HTMLElement} fieldset @param {string[]} sides */
function showBoxes(fieldset, sides) {
  const boxes = sides.map((side) =>
    make("label", { class: "pick" }, make("input", { type: "checkbox", value: side, "data-side": "" }), sideName(side)),
  );
  const legend = fieldset.querySelector("legend");
  fieldset.replaceChildren(...(legend ? [legend] : []), ...boxes);
}

/** @param {HTMLElement} root @param {string[]} ticked */
function tickSides(root, ticked) {
  for (const box of elements(root, "[data-side]"))
    if (box instanceof HTMLInputElement) box.checked = ticked.includes(box.value);
}

/** @param {string} id */
export function fromTemplate(id) {
  const template = document.getElementById(id);
  if (!(template instanceof HTMLTemplateElement)) throw new Error(`There is no template ${id}.`);
  const row = template.content.firstElementChild?.cloneNode(true);
  if (!(row instanceof HTMLElement)) throw new Error(`The template ${id} is empty.`);
  fillWords(row);
  for (const field of elements(row, ".field")) tie(field);
  for (const radio of elements(row, "[type=radio]")) radio.setAttribute("name", `rim-${made}`); // each row's choice is its own
  return row;
}

/** @param {HTMLElement} field */
function tie(field) {
  const control = field.querySelector("input, select");
  const label = field.querySelector("label");
  const hint = field.querySelector(".hint");
  if (!control || !label) return;
  made += 1;
  control.id = `field-${made}`;
  if (!label.contains(control)) label.htmlFor = control.id;
  if (!hint) return;
  hint.id = `${control.id}-hint`;
  control.setAttribute("aria-describedby", hint.id);
}
