import { elements, make, one, say } from "../../show.js";
import { Faults, tick } from "./faults.js";
import { FIRST, firstQuote, isLast, markSteps } from "./first.js";
import { capital, field, focusedIn, named, redraw, same, showWhose } from "./field.js";
import { depth, parent } from "./changes.js";

const SUBJECTS = [FIRST, "you", "money", "mould", "concrete", "shades", "hours", "finishes", "delivery", "days"];

export class Form {
  /** @param {Workshop} workshop */
  constructor(workshop) {
    this.workshop = workshop;
    this.place = /** @type {HTMLFormElement} */ (document.querySelector("#subject"));
    this.subject = "";
    this.drawn = "";
    /** @type {Map<string, number>} how far each subject was scrolled */
    this.scrolled = new Map();
    this.faults = new Faults(this);
  }

  get profile() {
    return this.workshop.profile;
  }

  listen() {
    const links = SUBJECTS.map((name) => make("a", { href: `#${name}` }, say(`subject.${name}`), " ", make("span", { class: "amiss" })));
    one("#subjects").replaceChildren(...links);
    this.place.addEventListener("submit", (event) => event.preventDefault());
    document.addEventListener("click", ({ target }) => {
      const link = target instanceof Element && target.closest("a");
      if (link && link.hash === location.hash) this.show(); // no change of the address tells of it
    });
    this.faults.listen();
  }

  /** Show the subject, its step or the place that the address names. */
  show() {
    const at = location.hash.slice(1);
    if (at.startsWith("/") && this.seek(at)) return;
    const [named = "", step] = at.split("-");
    const { changes } = this.workshop;
    const subject = SUBJECTS.includes(named) ? named : this.subject || changes.at || (this.profile.demonstration ? "you" : FIRST);
    if (!location.hash) history.replaceState(null, "", `#${subject}`);
    if (subject !== this.subject) this.turnTo(subject);
    if (step) document.querySelector(`#step-${step}`)?.scrollIntoView({ behavior: "instant" });
  }

  /** @param {string} subject */
  turnTo(subject) {
    this.scrolled.set(this.subject, window.scrollY);
    this.subject = this.workshop.changes.at = subject;
    this.workshop.changes.keep();
    for (const link of elements(one("#subjects"), "a")) link.removeAttribute("aria-current");
    one(`#subjects a[href="#${subject}"]`).setAttribute("aria-current", "page");
    this.build();
    window.scrollTo(0, this.scrolled.get(subject) ?? 0);
  }

  get isDrawn() {
    return this.drawn === drawing(this.profile);
  }

  /** Redraw the subject's tables; what is open stays open, and what has the focus keeps it. */
  build() {
    const focused = focusedIn(this.place);
    this.drawn = drawing(this.profile);
    const open = new Set(elements(this.place, "details[open]").map(({ dataset }) => dataset.pointer));
    const tables = this.tables().filter(({ pointer, subject }) => subject === this.subject && depth(pointer) === 1);
    const first = this.subject === FIRST ? [firstQuote(this)] : [];
    this.place.replaceChildren(make("h2", {}, say(`subject.${this.subject}`)), ...first, ...tables.map((table) => this.table(table)));
    for (const each of elements(this.place, "details")) each.toggleAttribute("open", open.has(each.dataset.pointer));
    this.mark();
    this.workshop.outcome.show(this.profile);
    focused();
  }

  tables() {
    return this.profile.tables ?? [];
  }

  /** @param {ProfileTable} table @returns {HTMLElement} */
  table(table) {
    const { pointer, kind } = table;
    const heading = make(depth(pointer) === 1 ? "h3" : "h4", {}, capital(table.label));
    const place = make("section", { class: depth(pointer) === 1 ? "sheet table" : "table", "data-pointer": pointer }, heading);
    if (table.help && !same(table.help, table.label)) place.append(make("p", { class: "hint" }, table.help));
    place.append(make("p", { class: "fault", "data-fault": pointer, hidden: "" }));
    if (kind === "items") place.append(...this.items(table), tick(this, pointer), this.button("table.add", { op: "add", pointer }, `${pointer}/-`));
    else if (table.there) place.append(this.inside(pointer), tick(this, pointer), ...(table.needed ? [] : [this.button("table.leave-out", { op: "leave-out", pointer }, pointer)]));
    else place.append(this.button("table.begin", { op: "add", pointer }, pointer));
    return place;
  }

  /** @param {string} pointer @param {boolean} yes */
  async confirm(pointer, yes) {
    await this.workshop.made({ op: yes ? "confirm" : "unconfirm", pointer });
  }

  /** @param {string} pointer */
  values(pointer) {
    return (this.profile.values ?? []).filter((one) => one.pointer.startsWith(`${pointer}/`));
  }

  /** @param {string} pointer */
  value(pointer) {
    return this.values("").find((one) => one.pointer === pointer);
  }

  /** @param {string} pointer */
  inside(pointer) {
    const mine = (/** @type {{pointer: string}} */ one) => parent(one.pointer) === pointer;
    const row = make("div", { class: "row" }, ...this.values(pointer).filter(mine).map((value) => this.field(value)));
    return make("div", {}, row, ...this.tables().filter(mine).map((table) => this.table(table)));
  }

  /** @param {ProfileValue} value */
  field(value) {
    const [currency, { pointer }] = [this.profile.currency ?? "", value];
    return field(value, { currency, entered: (now) => this.workshop.entered(pointer, now), confirmed: (yes) => void this.confirm(pointer, yes) });
  }

  /** @param {ProfileTable} table */
  items({ pointer }) {
    const found = this.itemsOf(pointer);
    const titles = this.titles(found);
    return found.map((item, i) => {
      const remove = isLast(this, item) ? "" : this.button("table.remove", { op: "leave-out", pointer: item.pointer }, pointer);
      const inner = make("div", {}, item.help && make("p", { class: "hint" }, item.help), make("p", { class: "fault", "data-fault": item.pointer, hidden: "" }), this.inside(item.pointer), tick(this, item.pointer), remove);
      return make("details", { class: "entry", "data-pointer": item.pointer }, make("summary", {}, titles[i] || `${i + 1}`, " ", make("span", { class: "amiss" })), inner);
    });
  }

  /** What items are called: their first values, and their second ones where first ones are alike. @param {ProfileTable[]} items */
  titles(items) {
    const own = items.map(({ pointer }) => this.values(pointer).filter((one) => parent(one.pointer) === pointer));
    const first = own.map(([one]) => (one?.value ? named(one) : ""));
    return first.map((title, i) => (first.indexOf(title) === first.lastIndexOf(title) || !own[i]?.[1] ? title : `${title}, ${named(/** @type {ProfileValue} */ (own[i]?.[1]))}`));
  }

  /** A press that changes tables. @param {string} name @param {Change} change @param {string} focus the pointer focused after it */
  button(name, change, focus) {
    const press = async () => {
      const tried = this.workshop.made(change);
      this.build();
      if ((change.op === "add" || this.place.inert) && !(await tried)) return;
      this[change.op === "add" ? "seek" : "focus"]((focus.endsWith("/-") ? this.itemsOf(change.pointer).pop()?.pointer : focus) ?? change.pointer);
    };
    return make("button", { type: "button", class: "quiet", press: () => void press() }, say(name));
  }

  /** @param {string} pointer of a list */
  itemsOf(pointer) {
    return this.tables().filter((one) => one.kind === "item" && parent(one.pointer) === pointer);
  }

  /** @param {string} pointer */
  fieldAt(pointer) {
    return /** @type {HTMLElement | null} */ (this.place.querySelector(`.field[data-pointer="${CSS.escape(pointer)}"]`));
  }

  /** Show a place in its subject, and give it the focus; false if there is none. @param {string} pointer */
  seek(pointer) {
    const table = this.tables().find((one) => pointer.startsWith(one.pointer));
    if (!this.focus(pointer) && table) this.turnTo(table.subject);
    for (let at = pointer; at && !this.focus(at); ) at = parent(at);
    return table !== undefined;
  }

  /** @param {string} pointer */
  focus(pointer) {
    const at = this.place.querySelector(`[data-pointer="${CSS.escape(pointer)}"]`);
    if (!at) return false;
    for (let each = /** @type {Element | null} */ (at); each; each = each.parentElement) each.toggleAttribute("open", each.matches("details") || each.hasAttribute("open"));
    const controls = [...elements(at, ".field :is(input, select, textarea)"), ...elements(at, "summary, input, button")];
    controls.find((each) => each.checkVisibility())?.focus();
    return true;
  }

  mark() {
    this.faults.show();
    for (const value of this.profile.values ?? []) {
      const place = this.fieldAt(value.pointer);
      if (!place) continue;
      showWhose(place, value, () => {});
      redraw(place, value);
    }
    markSteps(this);
  }
}

/** @param {Profile} profile */
function drawing({ tables = [], steps }) {
  return JSON.stringify([tables.map(({ pointer, there }) => [pointer, there]), steps.map(({ asks, stands, shown, open }) => [asks, stands, shown, open])]);
}
