/** "I'd like this one": the quote and how to answer, carried by the service to the workshop. */

import { make } from "../make.js";
import { say } from "../words.js";

/** @type {Readonly<Record<string, string>>} what was typed, kept while answers come and go */
const kept = { name: "", reach: "", note: "" };
const FIELDS = /** @type {const} */ (["name", "reach", "note"]);

/**
 * @param {string} token
 * @param {(asked: Record<string, string>) => Promise<Requested>} request
 * @param {(words: string) => void} tell
 * @returns {HTMLElement}
 */
export function requestForm(token, request, tell) {
  const typed = /** @type {Record<string, string>} */ (kept);
  const fields = FIELDS.map((name) => field(name, typed));
  const send = make("button", { type: "submit", class: "main", "data-key": "send-now" }, say("request.send"));
  const form = make("form", { novalidate: "", class: "request" }, make("p", { class: "hint" }, say("request.hint")), ...fields, send);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void sent(form, send, () => request({ token, ...typed }), tell);
  });
  return form;
}

/**
 * @param {"name" | "reach" | "note"} name
 * @param {Record<string, string>} typed
 */
function field(name, typed) {
  const id = `request-${name}`;
  const control = make(name === "note" ? "textarea" : "input", { id, "data-key": id, autocomplete: name === "name" ? "name" : "off" });
  if (control instanceof HTMLInputElement) control.type = "text";
  control.value = typed[name] ?? "";
  control.addEventListener("input", () => (typed[name] = control.value));
  return make("div", { class: "field" }, make("label", { for: id }, say(`request.${name}`)), control);
}

/**
 * @param {HTMLElement} form
 * @param {HTMLButtonElement} button
 * @param {() => Promise<Requested>} ask
 * @param {(words: string) => void} tell
 */
async function sent(form, button, ask, tell) {
  for (const old of form.querySelectorAll(".fault")) old.remove();
  for (const control of form.querySelectorAll("[aria-invalid]")) control.removeAttribute("aria-invalid");
  button.disabled = true;
  const answer = await ask();
  button.disabled = false;
  tell(answer.says);
  const faults = answer.faults ?? [];
  for (const { pointer, says } of faults) mark(form, pointer, says);
  /** @type {HTMLElement | null} */ (form.querySelector("[aria-invalid]"))?.focus();
}

/**
 * @param {HTMLElement} form
 * @param {string} pointer
 * @param {string} says
 */
function mark(form, pointer, says) {
  const control = form.querySelector(`#request-${pointer.slice(1) || "none"}`);
  if (!control) return;
  const id = `${control.id}-fault`;
  control.before(make("p", { class: "fault", id }, make("span", { class: "unseen" }, `${say("form.error")} `), says));
  control.setAttribute("aria-invalid", "true");
  control.setAttribute("aria-describedby", id);
}
