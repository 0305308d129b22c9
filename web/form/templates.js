/** Rows of the form, made from the templates of the page. */

import { elements, fillWords } from "../show.js";

let made = 0;

/** Make a row from a template: words filled in, every label tied to its control. @param {string} id */
export function fromTemplate(id) {
  const template = document.getElementById(id);
  if (!(template instanceof HTMLTemplateElement)) throw new Error(`There is no template ${id}.`);
  const row = template.content.firstElementChild?.cloneNode(true);
  if (!(row instanceof HTMLElement)) throw new Error(`The template ${id} is empty.`);
  fillWords(row);
  for (const field of elements(row, ".field")) tie(field);
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
