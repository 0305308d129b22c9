import { elements, make, mark, one, say } from "../show.js";

const NAME = "ledgerstone.terms.1";

export class TermsForm {
  /** @param {Desk} desk */
  constructor(desk) {
    this.desk = desk;
    this.form = /** @type {HTMLFormElement} */ (document.querySelector("#terms"));
    /** @type {Partial<Terms>} as they go to the service: what is not set is not there */
    this.terms = JSON.parse(sessionStorage.getItem(NAME) ?? "{}");
    this.lines = make("ol", { class: "rows" });
    const { margin_percent: margin } = desk.set;
    this.fields = /** @type {Record<string, Control>} */ ({
      margin_percent: make("input", { id: "term-margin_percent", inputmode: "decimal", placeholder: margin }),
      deposit_round_to: make("input", { id: "term-deposit_round_to", inputmode: "decimal" }),
      standing: make("select", { id: "term-standing" }, ...["", "estimate", "quotation"].map((value) => make("option", { value }, say(`hand.standing-${value || "usual"}`)))),
      valid_until: make("input", { id: "term-valid_until", type: "date", min: desk.set.today }),
      note: make("textarea", { id: "term-note", rows: "2" }),
    });
  }

  listen() {
    const fields = Object.entries(this.fields).map(([name, control]) => field(name, control));
    const add = make("button", { type: "button", class: "quiet", press: () => this.addLine() }, say("hand.add"));
    this.form.replaceChildren(this.lines, make("p", {}, add), make("div", { class: "row" }, ...fields));
    this.form.addEventListener("submit", (event) => event.preventDefault());
    this.form.addEventListener("input", () => this.entered());
    this.desk.page.asking.addEventListener("answer", (event) => this.faults(/** @type {CustomEvent} */ (event).detail.answer));
    this.fill();
  }

  /** @param {Partial<Terms>} terms */
  become(terms) {
    this.terms = terms;
    this.fill();
    this.keep();
  }

  fill() {
    this.lines.replaceChildren();
    for (const { text, amount } of this.terms.adjustments ?? []) this.line(text, amount);
    for (const [name, control] of Object.entries(this.fields)) control.value = String(this.terms[/** @type {keyof Terms} */ (name)] ?? "");
  }

  addLine() {
    this.line("", "");
    one("li:last-child input", this.lines).focus();
  }

  /** @param {string} text @param {string} amount */
  line(text, amount) {
    const what = make("input", { value: text, "data-part": "text" });
    const sum = make("input", { value: amount, inputmode: "decimal", "data-part": "amount" });
    const label = (/** @type {string} */ key, /** @type {HTMLElement} */ control) => make("div", { class: "field" }, make("label", {}, say(key), control));
    const row = make("li", { class: "entry" }, make("div", { class: "row" }, label("hand.text", what), label("hand.amount", sum)));
    row.append(make("button", { type: "button", class: "quiet", press: () => this.remove(row) }, say("row.remove")));
    this.lines.append(row);
  }

  /** @param {HTMLElement} row */
  remove(row) {
    row.remove();
    this.entered();
    one("button", this.form).focus();
  }

  /** Take what is entered; a line without text and amount is none yet. */
  entered() {
    const part = (/** @type {Element} */ row, /** @type {string} */ name) => /** @type {HTMLInputElement} */ (row.querySelector(`[data-part=${name}]`)).value.trim();
    const adjustments = Array.from(this.lines.children, (row) => ({ text: part(row, "text"), amount: plain(part(row, "amount")) })).filter(({ text, amount }) => text || amount);
    const set = Object.entries(this.fields).map(([name, { value }]) => [name, /percent|round/.test(name) ? plain(value.trim()) : value.trim()]);
    this.terms = { ...Object.fromEntries(set.filter(([, value]) => value)), ...(adjustments.length && { adjustments }) };
    this.keep();
    this.desk.changed();
  }

  /** @param {Answer} answer */
  faults(answer) {
    for (const old of elements(this.form, ".fault")) old.remove();
    for (const old of elements(this.form, "[aria-invalid]")) old.removeAttribute("aria-invalid");
    const faults = answer.kind === "not-understood" ? (answer.body.faults ?? []) : [];
    for (const { pointer, says } of faults) {
      const [, name = "", number = "", part = ""] = pointer.split("/");
      const control = this.fields[name] ?? this.lines.children[Number(number)]?.querySelector(`[data-part=${part || "text"}]`);
      if (!(name === "adjustments" || this.fields[name]) || !control) continue;
      control.setAttribute("aria-invalid", "true");
      control.closest(".field")?.append(make("p", { class: "fault" }, says));
    }
  }

  keep() {
    sessionStorage.setItem(NAME, JSON.stringify(this.terms));
  }
}

/** @param {string} text */
function plain(text) {
  const tidy = text.replace(/^[−–]/, "-").replace(/[\s£€$]/g, "");
  return mark() === "," ? tidy.replace(",", ".") : tidy;
}

/** @param {string} name @param {HTMLElement} control */
function field(name, control) {
  const hint = make("p", { class: "hint", id: `term-${name}-hint` }, say(`hand.${name}-hint`));
  control.setAttribute("aria-describedby", hint.id);
  return make("div", { class: "field" }, make("label", { for: control.id }, say(`hand.${name}`)), hint, control);
}
