import { day, elements, make, mark, one, say } from "../../show.js";
import { withMark } from "../../lib/lengths.js";
import { written } from "./changes.js";

const NUMBERS = ["number", "whole", "money"];
const LISTS = ["numbers", "wholes", "words"];

/**
 * @param {ProfileValue} value
 * @param {{currency: string, entered: (value: string | string[] | null) => void, confirmed: (yes: boolean) => void}} told
 */
export function field(value, told) {
  const id = idOf(value.pointer);
  const control = controlOf(value, id, told.entered);
  const help = value.help && !same(value.help, value.label) ? make("p", { class: "hint", id: `${id}-help` }, value.help) : null;
  const unit = unitOf(value, told.currency);
  const name = `${capital(value.label)}${unit && `, ${unit}`}`;
  const grouped = control.tagName === "FIELDSET";
  if (grouped) control.prepend(make("legend", {}, name), ...(help ? [help] : []));
  else if (help) describe(control, help.id);
  const place = make("div", { class: "field", "data-pointer": value.pointer, "data-kind": value.kind }, !grouped && make("label", { for: control.id || id }, name), !grouped && help, control, make("div", { class: "whose" }));
  showWhose(place, value, told.confirmed);
  return place;
}

/** @param {string} pointer */
export function idOf(pointer) {
  return `v${pointer.replace(/[^\w]/g, "-")}`;
}

/** @param {string} text */
export function capital(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** @param {string} help @param {string} label */
export function same(help, label) {
  const plain = (/** @type {string} */ text) => text.replace(/\(.*\)|[.\s]/g, "").toLowerCase();
  return plain(help) === plain(label);
}

/** @param {HTMLElement} control @param {string} id */
function describe(control, id) {
  for (const each of control.matches("input, select, textarea") ? [control] : elements(control, "input")) each.setAttribute("aria-describedby", id);
}

/** @param {ProfileValue} value @param {string} currency */
export function unitOf({ kind, unit, label }, currency) {
  if (kind === "money") return unit === "%" ? unit : `${currency}${unit}`;
  if (unit !== "d") return unit;
  const days = say("measure.days");
  return label.toLowerCase().includes(days.toLowerCase()) ? "" : days;
}

/** @param {ProfileValue} value @param {string} id @param {(value: string | string[] | null) => void} entered */
function controlOf(value, id, entered) {
  if (value.kind === "choices") return choices(value, id, entered);
  if (value.kind === "colour") return colour(value, id, entered);
  const control = plainControl(value, id);
  control.addEventListener("input", () => entered(value.values || isList(value.kind) ? listOf(value.kind, control.value) : control.value.trim() || (value.needed ? "" : null)));
  return control;
}

/** @param {ProfileValue} value @param {string} id @returns {HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement} */
function plainControl(value, id) {
  const now = shown(value);
  if (value.kind === "yes-no") return select(id, ["true", "false"], now, value.needed, (word) => say(`yesno.${word}`));
  if (value.kind === "choice") return select(id, value.choices ?? [], now, value.needed, (word) => chosen(value, word));
  if (value.kind === "lines" || LISTS.includes(value.kind)) {
    const area = make("textarea", { id, rows: value.kind === "lines" ? "3" : (value.values?.length ?? 0) > 6 ? "2" : "1" });
    area.value = now;
    return area;
  }
  const input = make("input", { id, ...(value.kind === "day" && { type: "date" }), ...(NUMBERS.includes(value.kind) && { inputmode: "decimal", "data-as": "number" }) });
  input.value = now;
  return input;
}

/** What stands in the control. @param {ProfileValue} value */
function shown(value) {
  const now = written(value);
  const marked = "isTyped" in value ? (/** @type {string} */ _, /** @type {string} */ text) => text : withMarks;
  if (Array.isArray(now)) return now.map((each) => marked(value.kind, each)).join(value.kind === "lines" ? "\n" : value.kind === "words" ? ", " : "; ");
  return marked(value.kind, now ?? "");
}

/** @param {string} kind @param {string} text */
function withMarks(kind, text) {
  return NUMBERS.includes(kind) || kind === "numbers" ? withMark(text, mark()) : text;
}

/** @param {string} kind */
function isList(kind) {
  return kind === "lines" || LISTS.includes(kind);
}

/** @param {string} kind @param {string} text */
function listOf(kind, text) {
  const between = { lines: /\n/, words: /[\n,;]/ }[kind] ?? /[\n;]|,\s+/;
  return text.split(between).map((each) => each.trim()).filter(Boolean);
}

/**
 * @param {string} id @param {string[]} words @param {string} now @param {boolean} needed
 * @param {(word: string) => string} said
 */
function select(id, words, now, needed, said) {
  const options = words.map((word) => make("option", { value: word }, said(word)));
  const list = make("select", { id }, ...(needed ? [] : [make("option", { value: "" }, say("yesno.left-out"))]), ...options);
  list.value = now;
  return list;
}

/** @param {ProfileValue} value @param {string} id @param {(value: string[]) => void} entered */
function choices(value, id, entered) {
  const boxes = (value.choices ?? []).map((word) => {
    const box = make("input", { type: "checkbox", value: word });
    box.checked = value.values?.includes(word) ?? false;
    return box;
  });
  const group = make("fieldset", { class: "picks", id }, ...boxes.map((box) => make("label", { class: "tick" }, box, make("span", {}, chosen(value, box.value)))));
  group.addEventListener("change", () => entered(boxes.filter((box) => box.checked).map((box) => box.value)));
  return group;
}

/** What the file has by now stands in the control, but where somebody types. @param {Element} place @param {ProfileValue} value */
export function redraw(place, value) {
  if (place.contains(document.activeElement)) return;
  for (const control of /** @type {NodeListOf<HTMLInputElement>} */ (place.querySelectorAll(":scope > :is(input, select, textarea), .picks input, .colour input"))) {
    if (value.kind === "choices") control.checked = value.values?.includes(control.value) ?? false;
    else if (control.value !== shown(value)) control.value = shown(value);
  }
}

/** In words. @param {ProfileValue} value */
export function named(value) {
  if (value.kind === "day" && !Number.isNaN(Date.parse(value.value ?? ""))) return day(value.value ?? "");
  if (value.kind === "yes-no" && value.value) return say(`yesno.${value.value}`);
  if (value.kind === "choices") return (value.values ?? []).map((word) => chosen(value, word)).join(", ");
  return value.kind === "choice" ? chosen(value, value.value ?? "") : shown(value);
}

/** @param {ProfileValue} value @param {string} word */
function chosen({ choices, choices_say: says }, word) {
  return says?.[choices?.indexOf(word) ?? -1] ?? word;
}

/** The picker beside the colour as it is written: either sets the other. @param {ProfileValue} value @param {string} id @param {(value: string) => void} entered */
function colour(value, id, entered) {
  const text = make("input", { id: `${id}-text`, "aria-label": say("colour.text", { label: value.label }) });
  const picker = make("input", { id, type: "color", "aria-label": say("colour.picker", { label: value.label }) });
  const take = (/** @type {string} */ now) => {
    text.value = now;
    if (/^#[\da-f]{6}$/i.test(now)) picker.value = now;
  };
  take(value.value ?? "");
  picker.addEventListener("input", () => (take(picker.value), entered(picker.value)));
  text.addEventListener("input", () => {
    if (/^#[\da-f]{6}$/i.test(text.value)) picker.value = text.value;
    entered(text.value.trim());
  });
  return make("div", { class: "colour" }, picker, text);
}

/**
 * Show a value's standing; an invented one can be ticked as right.
 * @param {HTMLElement} place @param {ProfileValue} value @param {(yes: boolean) => void} confirmed
 */
export function showWhose(place, value, confirmed) {
  const whose = one(":scope > .whose", place);
  const box = /** @type {HTMLInputElement | null} */ (whose.querySelector("input"));
  place.dataset.standing = value.standing ?? "";
  whose.hidden = !value.standing;
  if (box) {
    box.checked = value.standing === "yours";
  } else if (value.standing === "invented") {
    const tick = make("input", { type: "checkbox", "aria-label": say("whose.right"), "aria-describedby": idOf(value.pointer) });
    tick.addEventListener("change", () => confirmed(tick.checked));
    whose.append(make("label", { class: "tick" }, tick, make("span", {}, say("whose.right"))));
  }
}

/** @param {HTMLElement} place @returns {() => void} gives the focus to the control of the same id */
export function focusedIn(place) {
  const active = /** @type {HTMLInputElement | null} */ (place.contains(document.activeElement) ? document.activeElement : null);
  const { id, selectionStart: at } = active ?? { id: "", selectionStart: null };
  return () => {
    const again = id ? /** @type {HTMLInputElement | null} */ (place.querySelector(`#${CSS.escape(id)}`)) : null;
    again?.focus();
    if (at !== null) again?.setSelectionRange(at, at);
  };
}
