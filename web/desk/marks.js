import { findField } from "../form/fields.js";
import { day, elements, make, one, say } from "../show.js";

/**
 * A phrase that was taken: each press goes to the next of the fields that it filled.
 * @param {{text: string, points: Point[]}} piece
 * @param {(point: Point) => void} go
 */
function phrase({ text, points }, go) {
  let next = 0;
  const press = () => {
    const point = points[next % points.length];
    next += 1;
    if (point) go(point);
  };
  const kinds = points.map(({ kind }) => kind).join(" ");
  return make("button", { type: "button", class: `phrase ${kinds}`, "data-at": points.map(({ at }) => at).join(" "), press }, text);
}

/**
 * A text as it is shown: a phrase over a line's end is a button on each, what is only between words is in none,
 * and what ends a clause stays on the line of its last word.
 * @param {{text: string, points: Point[]}[]} pieces
 * @param {(point: Point) => void} go
 */
export function marked(pieces, go) {
  /** @type {(string | HTMLElement)[]} */
  const shown = [];
  for (const { text, points } of pieces) {
    const [, mark = "", rest = ""] = text.match(/^([.,;:!?]?)(.*)$/s) ?? [];
    const last = shown.at(-1);
    if (points.length) shown.push(...text.split(/(\n)/).flatMap((line) => onLine({ text: line, points }, go)));
    else if (last instanceof HTMLElement) {
      last.append(mark);
      shown.push(rest);
    } else shown.push(text);
  }
  return shown;
}

/** @param {{text: string, points: Point[]}} piece @param {(point: Point) => void} go */
function onLine({ text, points }, go) {
  const [, before = "", words = "", after = ""] = text.match(/^([\s,;]*)(.*?)([\s,;.]*)$/) ?? [];
  return words ? [before, make("span", { class: "held" }, phrase({ text: words, points }, go), after)] : [text];
}

/** @param {HTMLElement} form @param {Store} store @param {Point[]} open */
export function markFields(form, store, open) {
  for (const old of elements(form, ".mark")) old.remove();
  for (const point of open) {
    const slab = point.at.match(/^\/slabs\/(\d+)/)?.[1];
    if (point.kind === "unread" || (slab !== undefined && Number(slab) !== store.slab)) continue;
    const field = findField(form, store, point.at)?.closest(".field, fieldset");
    field?.append(point.kind === "said" ? back(point) : make("p", { class: `mark ${point.kind}` }, kindOf(point), " ", point.says));
  }
}

/** @param {Point} point */
export function toPhrase(point) {
  const found = elements(one("#marked"), ".phrase").find(({ dataset }) => dataset.at?.split(" ").includes(point.at));
  found?.focus();
  found?.scrollIntoView({ block: "center" });
}

/** @param {Point} point */
function back(point) {
  const press = () => toPhrase(point);
  return make("p", { class: "mark said" }, make("button", { type: "button", class: "link", press }, say("points.said", { text: point.says })));
}

/** @param {Point} point */
export function kindOf({ kind }) {
  return make("strong", { class: "level" }, say(`points.${kind}`));
}

/** @param {HTMLFormElement} form @param {Store} store @param {string} at @param {string} value */
export function enter(form, store, at, value) {
  const control = findField(form, store, at);
  const radio = elements(form, `input[type=radio][value="${CSS.escape(value)}"]`).find((each) => control?.closest("fieldset")?.contains(each));
  if (radio instanceof HTMLInputElement) radio.click();
  else if (control instanceof HTMLInputElement || control instanceof HTMLSelectElement) {
    control.value = value;
    control.dispatchEvent(new Event("input", { bubbles: true }));
  }
}

/** A reading as its field says it. @param {{form: HTMLFormElement, store: Store}} page @param {Point} point @param {string} value */
export function spoken({ form, store }, { at }, value) {
  const control = findField(form, store, at);
  if (control instanceof HTMLSelectElement) return Array.from(control.options).find((option) => option.value === value)?.text ?? value;
  return control instanceof HTMLInputElement && control.type === "date" ? day(value) : value;
}

/** Whom a message is from, and what of it was not read. @param {Contract.Enquiry} reading */
export function aboutWords({ is_enquiry: is, customer, rests_on_attachment: rests, attachments }) {
  const from = customer.name ?? customer.reply_to;
  const says = [is ? "" : say("enquiry.none"), from ? say("enquiry.from", { name: from }) : ""];
  if (rests || attachments.length) says.push(say("enquiry.attached"));
  if (customer.reply_to_differs) says.push(say("enquiry.reply-to", { address: customer.reply_to ?? "" }));
  return says.filter(Boolean).join(" ");
}
