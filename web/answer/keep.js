/** Ways to keep a quote: its link and reference, paper, and sending it to the workshop. */

import { day, make, one, say } from "../show.js";
import { asText, named } from "./sentences.js";

/** @param {Quote} quote @param {Keeping} keeping */
export function keepTools(quote, keeping) {
  const said = make("p", { class: "hint said" });
  const tell = (/** @type {string} */ words) => {
    said.textContent = words;
    keeping.announce(words);
  };
  const { link } = quote;
  const until = say(link ? "keep.link" : "keep.no-link", { reference: named(quote), day: day(quote.valid_until) });
  const copied = link && button("copy", "answer.copy", () => void copy(link, "answer.copied", tell));
  const text = asText(quote, keeping.choices.tax?.name ?? say("answer.tax"));
  return make(
    "section",
    { class: "keeping" },
    make("h3", {}, say("keep.title")),
    make("p", {}, until),
    make(
      "div",
      { class: "keep" },
      copied,
      button("copy-text", "answer.copy-text", () => void copy(text, "answer.text-copied", tell)),
      button("print", "answer.print", () => window.print()),
    ),
    sending(quote, text, keeping, tell),
    said,
  );
}

/** @param {Quote} quote @param {string} text @param {Keeping} keeping @param {(words: string) => void} tell */
function sending(quote, text, { choices, request }, tell) {
  const { name, email, telephone } = choices.workshop;
  const subject = say("keep.subject", { reference: named(quote) });
  const mail = `mailto:${email}?subject=${encodeURIComponent(subject)}&body=${encodeURIComponent(text)}`;
  const call = make("a", { href: `tel:${telephone.replace(/[^\d+]/g, "")}` }, say("keep.call", { telephone }));
  const write = make("a", { href: mail, class: "button" }, say("keep.mail"));
  const relayed = make("div", {});
  const { token } = quote;
  if (choices.requests && token)
    void import("./keep.js").then(({ requestForm }) => relayed.append(requestForm(token, request, tell)));
  const inner = make("div", { class: "sending" }, relayed, make("p", { class: "ways-to-send" }, write, " ", call));
  return make("details", { "data-key": "send" }, make("summary", { "data-key": "send-summary" }, say("keep.send", { name })), inner);
}

/** @param {string} name @param {string} key @param {() => void} press */
function button(name, key, press) {
  return make("button", { type: "button", class: "quiet", "data-key": name, press }, say(key));
}

/** @param {string} words @param {string} done @param {(words: string) => void} tell */
async function copy(words, done, tell) {
  try {
    await navigator.clipboard.writeText(words);
    tell(say(done));
  } catch {
    tell(say("answer.not-copied", { link: words }));
  }
}

/** @type {Readonly<Record<string, string>>} what was typed, kept while answers come and go */
const kept = { name: "", reach: "", note: "" };
const FIELDS = /** @type {const} */ (["name", "reach", "note"]);

/**
 * @param {string} token
 * @param {(asked: Record<string, string>) => Promise<Requested>} request
 * @param {(words: string) => void} tell
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

/** @param {"name" | "reach" | "note"} name @param {Record<string, string>} typed */
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
  one("[aria-invalid]", form)?.focus();
}

/** @param {HTMLElement} form @param {string} pointer @param {string} says */
function mark(form, pointer, says) {
  const control = form.querySelector(`#request-${pointer.slice(1) || "none"}`);
  if (!control) return;
  const id = `${control.id}-fault`;
  control.before(make("p", { class: "fault", id }, make("span", { class: "unseen" }, `${say("form.error")} `), says));
  control.setAttribute("aria-invalid", "true");
  control.setAttribute("aria-describedby", id);
}
