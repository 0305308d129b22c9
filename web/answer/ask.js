import { day, make, one, say, telAddress } from "../show.js";
import { asText, named } from "./sentences.js";

/** @type {Map<string, {says: string, how: "sent" | "letter"}>} by its quote */
const gone = new Map();

/** @param {Quote} quote @param {Keeping} keeping */
export function askTools(quote, keeping) {
  const place = make("section", { class: "ask" });
  const text = asText(quote, keeping);
  /** @param {"sent" | "letter"} how @param {string} says */
  const went = (how, says) => {
    gone.set(keyOf(quote), { how, says });
    show();
    keeping.announce(`${says} ${keeping.choices.answering}`);
    one(".went", place).focus();
  };
  const show = () => {
    const was = gone.get(keyOf(quote));
    const relays = keeping.choices.requests && quote.token !== undefined;
    const body = relays ? text : `${say("ask.letter")}\n\n${text}`;
    const way = was?.how === "sent" ? null : relays ? sending(quote, keeping, went) : letter(quote, body, keeping, went);
    place.replaceChildren(...[was ? confirmed(was.says, body, keeping) : null, way].filter((part) => part !== null));
  };
  show();
  return place;
}

/** @param {Quote} quote */
function keyOf({ token, reference }) {
  return token ?? reference;
}

/** @param {string} says @param {string} text @param {Keeping} keeping */
function confirmed(says, text, keeping) {
  return make(
    "div",
    { class: "notice went", tabindex: "-1", "data-key": "went" },
    make("p", {}, make("strong", {}, says)),
    make("p", {}, keeping.choices.answering, " ", call(keeping.choices.workshop)),
    make("details", { class: "fold", "data-key": "copy-of" }, make("summary", {}, say("ask.copy")), make("p", { class: "copied" }, text)),
    make("p", {}, copyButton("copy-asked", "answer.copy-text", text, "answer.text-copied", keeping.announce)),
  );
}

/** @param {Choices["workshop"]} workshop */
function call({ telephone, ring }) {
  return make("a", { href: telAddress(telephone) }, say("keep.call", { telephone: ring }));
}

/** @param {Quote} quote @param {string} body @param {Keeping} keeping @param {(how: "letter", says: string) => void} went */
function letter(quote, body, { choices }, went) {
  const { email } = choices.workshop;
  const subject = say("keep.subject", { reference: named(quote) });
  const href = `mailto:${email}?subject=${encodeURIComponent(subject)}&body=${encodeURIComponent(body)}`;
  const write = make("a", { href, class: "button main", "data-key": "ask" }, say("ask.make"));
  write.addEventListener("click", () => setTimeout(() => went("letter", say("ask.opened", { email })))); // once the letter is on its way
  return write;
}

/** @param {Quote} quote @param {Keeping} keeping @param {(how: "sent", says: string) => void} went */
function sending(quote, keeping, went) {
  const form = requestForm(quote.token ?? "", keeping, went);
  return make("details", { class: "asking", "data-key": "ask" }, make("summary", { class: "button main", "data-key": "ask-summary" }, say("ask.make")), form);
}

/** @type {Record<string, string>} kept while answers come and go */
const typed = { name: "", reach: "", note: "" };

/** @param {string} token @param {Keeping} keeping @param {(how: "sent", says: string) => void} went */
function requestForm(token, keeping, went) {
  const send = make("button", { type: "submit", class: "main", "data-key": "send-now" }, say("request.send"));
  const said = make("p", { class: "hint said" });
  const form = make("form", { novalidate: "", class: "request" }, make("p", { class: "hint" }, say("request.hint")), ...Object.keys(typed).map(field), send, said);
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    send.disabled = true;
    const [{ clearFaults, mark }, { says, faults }] = await Promise.all([import("../form/live.js"), keeping.request({ token, ...typed, note: [keeping.wanted, typed.note].filter(Boolean).join("\n") })]);
    send.disabled = false;
    if (faults?.length === 0) return went("sent", says);
    said.textContent = says;
    keeping.announce(says);
    clearFaults(form);
    for (const fault of faults ?? []) {
      const control = form.querySelector(`#request-${fault.pointer.slice(1) || "none"}`);
      if (control instanceof HTMLElement) mark(control, fault.says);
    }
    one("[aria-invalid]", form)?.focus();
  });
  return form;
}

/** @param {string} name */
function field(name) {
  const id = `request-${name}`;
  const control = make(name === "note" ? "textarea" : "input", { id, "data-key": id, autocomplete: name === "name" ? "name" : "off" });
  if (control instanceof HTMLInputElement) control.type = "text";
  control.value = typed[name] ?? "";
  control.addEventListener("input", () => (typed[name] = control.value));
  return make("div", { class: "field" }, make("label", { for: id }, say(`request.${name}`)), control);
}

/** @param {Quote} quote @param {Keeping} keeping */
export function keepTools(quote, keeping) {
  const said = make("p", { class: "hint said" });
  const tell = (/** @type {string} */ words) => {
    said.textContent = words;
    keeping.announce(words);
  };
  const { link } = quote;
  const until = say(link ? "keep.link" : "keep.no-link", { reference: named(quote), day: day(quote.valid_until) });
  const text = asText(quote, keeping);
  const ways = make(
    "div",
    { class: "keep" },
    link && copyButton("copy", "answer.copy", link, "answer.copied", tell),
    copyButton("copy-text", "answer.copy-text", text, "answer.text-copied", tell),
    make("button", { type: "button", class: "quiet", "data-key": "print", press: () => window.print() }, say("answer.print")),
  );
  return make("details", { class: "fold keeping", "data-key": "keep" }, make("summary", { "data-key": "keep-summary" }, say("keep.title")), make("p", {}, until), ways, said);
}

/** Where it can't copy, it shows the text. @param {string} name @param {string} key @param {string} words @param {string} done @param {(words: string) => void} tell */
function copyButton(name, key, words, done, tell) {
  const copy = () => navigator.clipboard.writeText(words).then(
    () => tell(say(done)),
    () => tell(say("answer.not-copied", { link: words })),
  );
  return make("button", { type: "button", class: "quiet", "data-key": name, press: () => void copy() }, say(key));
}
