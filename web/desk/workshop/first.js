import { elements, make, money, number, one, say, write } from "../../show.js";
import { capital, named, unitOf } from "./field.js";
import { depth, parent } from "./changes.js";

/** @typedef {import("./form.js").Form} Form */
/** @typedef {Profile["steps"][number]} Step */

export const FIRST = "first";
const JOB = "job";
const BAG = "/recipe/bag";
const [KNOWN, NEAR] = [1, 0.01];

/** @param {Form} form */
export function firstQuote(form) {
  return make("div", { class: "first" }, make("p", { class: "hint" }, say("first.intro")), ...form.profile.steps.map((step) => section(form, step)));
}

/** @param {Form} form @param {Step} step */
function section(form, step) {
  const { name, title, stands } = step;
  /** @type {(Node | string)[]} */
  const all = [...(name === "concrete" ? fromBags(form) : []), fields(form, step.asks, step.labels)];
  if (stands.length) all.push(make("details", { class: "others", "data-pointer": `stands-${name}` }, make("summary", { class: "hint" }), fields(form, stands, step.stands_say)));
  if (name === "lifting") all.push(make("a", { class: "way", href: "#/handling/ways" }, say("first.way")), " ", form.button("first.hoist", { op: "add", pointer: "/handling/ways" }, "/handling/ways/-"));
  if (name === JOB) all.push(...job(form));
  const rest = [...others(form, step), make("div", { class: "rest" })];
  all.push(...(name === JOB ? [make("details", { class: "others", "data-pointer": JOB }, make("summary", {}, say("first.follows")), ...rest)] : rest));
  return make("section", { class: "sheet table", id: `step-${name}` }, make("h3", {}, title, " ", make("span", { class: "done" })), ...all);
}

/** @param {Form} form @param {string[]} pointers @param {string[]} labels */
function fields(form, pointers, labels) {
  const values = pointers.map((pointer) => form.value(pointer));
  return make("div", { class: "row" }, ...values.map((value, i) => value && form.field({ ...value, label: labels[i] ?? value.label, help: "" })));
}

/** @param {Form} form @param {ProfileValue} value */
export function said(form, { pointer, label }) {
  const title = titled(form, around(form, pointer));
  return title ? `${title}: ${label}` : label;
}

/** @param {Form} form @param {string} pointer */
function around(form, pointer) {
  return form.tables().filter((table) => pointer.startsWith(`${table.pointer}/`)).pop();
}

/** @param {Form} form @param {ProfileTable | undefined} table within another one, or an item */
function titled(form, table) {
  if (!table || depth(table.pointer) < 2) return "";
  const [first] = form.values(table.pointer);
  return table.kind === "item" ? (first ? named(first) : "") : table.label;
}

/** @param {Form} form @param {Step} step */
function others(form, { shown, open }) {
  const groups = new Map();
  for (const pointer of shown) {
    const table = around(form, pointer);
    if (table) groups.set(table, [...(groups.get(table) ?? []), pointer]);
  }
  return [...groups].map(([table, pointers]) => group(form, table, pointers, new Set(open)));
}

/** @param {Form} form @param {ProfileTable} table @param {string[]} pointers @param {Set<string>} open */
function group(form, table, pointers, open) {
  const values = form.values(table.pointer).filter(({ pointer }) => pointers.includes(pointer));
  const asked = values.filter(({ pointer }) => open.has(pointer)).map((value) => form.field({ ...value, help: "" }));
  const read = values.filter((value) => !open.has(value.pointer) && named(value) !== titled(form, table)).map(shown);
  const goes = asked.length || isLast(form, table) ? "" : form.button("table.remove", { op: "leave-out", pointer: table.pointer }, parent(table.pointer));
  return make("div", { class: "group" }, make("h4", {}, make("a", { href: `#${table.pointer}` }, capital(titled(form, table) || table.label)), ...read, goes), asked.length > 0 && make("div", { class: "row" }, ...asked));
}

/** @param {ProfileValue} value */
function shown(value) {
  const mark = make("span", { class: value.kind === "colour" ? "swatch" : "hint", "data-shows": value.pointer });
  if (value.kind === "colour") mark.style.background = named(value);
  return mark;
}

/** @param {Form} form @param {ProfileTable} table */
export function isLast(form, { pointer, kind, needed }) {
  return kind === "item" ? form.itemsOf(parent(pointer)).length < 2 && form.tables().some((one) => one.pointer === parent(pointer) && one.needed) : needed;
}

/** @param {Form} form */
function fromBags(form) {
  const ticked = form.workshop.changes.list.some(({ op }) => op === "mix-from-bags");
  const isBag = form.tables().some(({ pointer, there }) => pointer === BAG && there);
  const trust = isBag ? untested(form) : [];
  if (!ticked && isBag) return trust;
  const box = make("input", { type: "checkbox", id: "from-bags" });
  box.checked = ticked;
  box.addEventListener("change", () => void (box.checked ? form.workshop.made({ op: "mix-from-bags", pointer: BAG }) : form.workshop.unmade("mix-from-bags", BAG)));
  return [make("p", { class: "ticks" }, make("label", { class: "tick" }, box, make("span", {}, say("first.bags")))), make("p", { class: "hint", id: "with-bags", role: "status" }), ...trust];
}

/** @param {Form} form */
function untested(form) {
  const values = form.values("/concrete");
  const percent = values.find(({ pointer }) => pointer === "/concrete/untested_percent");
  const isTested = values.some(({ pointer }) => pointer.startsWith("/concrete/tested/"));
  return percent && Number(percent.value) < 100 && !isTested ? [make("p", { class: "hint" }, say("first.bag-trust", { percent: named(percent) }))] : [];
}

/** @param {Form} form */
export function markSteps(form) {
  const [values, { currency = "" }] = [new Map(form.values("").map((value) => [value.pointer, value])), form.profile];
  for (const place of elements(form.place, "[data-shows]")) {
    const value = values.get(place.dataset.shows ?? "");
    if (value && value.kind !== "colour") write(place, withUnit(value, currency));
  }
  form.place.querySelector("#with-bags")?.replaceChildren(form.profile.also ?? "");
  for (const step of form.profile.steps) {
    const place = form.place.querySelector(`#step-${step.name}`);
    if (!place) continue;
    one(".done", place).textContent = step.done ? say("first.done") : "";
    const stands = place.querySelector(`[data-pointer="stands-${step.name}"] > summary`);
    const what = step.stands.map((pointer, i) => `${step.stands_say[i]}: ${withUnit(values.get(pointer), currency)}`).join(" · ");
    if (stands) write(stands, say("first.stands", { what }));
    const rest = one(".rest", place);
    if (rest.dataset.shown !== String(step.rest)) rest.replaceChildren(...remaining(form, step));
    rest.dataset.shown = String(step.rest);
    if (step.rest.length && form.workshop.jobs[KNOWN]?.told_asked) rest.closest("details")?.setAttribute("open", "");
  }
  markJobs(form);
}

/** @param {ProfileValue | undefined} value @param {string} currency */
function withUnit(value, currency) {
  const text = value ? named(value) : "";
  if (!value || !text) return "–";
  const now = /\d$/.test(text) ? `${text} ${unitOf(value, currency)}` : text;
  return value.pointer.endsWith("heat_limit_c") ? say("first.heat", { now }) : now;
}

/** @param {Form} form @param {Step} step */
function remaining(form, { name, rest }) {
  if (!rest.length) return [];
  const box = make("input", { type: "checkbox", id: `rest-${name}` });
  box.addEventListener("change", () => void form.workshop.made({ op: "confirm", pointer: "", values: rest }));
  return [make("p", { class: "ticks" }, make("label", { class: "tick" }, box, make("span", {}, say("first.rest", { n: rest.length }))))];
}

/** @param {Form} form */
function job(form) {
  const { currency = "" } = form.profile;
  const { jobs, changes: { told: { values: hours, money: paid = [] } } } = form.workshop;
  const entry = (/** @type {string} */ id, /** @type {string} */ label, now = "") => {
    const [input, fault] = [make("input", { id, inputmode: "decimal", "aria-describedby": `${id}-fault` }), make("p", { class: "fault", id: `${id}-fault` })];
    input.value = now;
    input.addEventListener("input", () => (write(fault, ""), fit(form)));
    return make("div", { class: "field", "data-kind": "number" }, make("label", { for: id }, label), make("p", { class: "hint", id: `${id}-now` }), input, fault);
  };
  const known = jobs[KNOWN];
  if (!known) return [];
  const asked = [entry("job-1", say("first.takes"), hours[KNOWN]), entry("job-materials", `${say("first.buys")}, ${currency}`, paid[0]), entry("job-asked", `${say("first.asks")}, ${currency}`, paid[1])];
  const more = jobs.map(({ name }, i) => (i === KNOWN ? "" : entry(`job-${i}`, say("first.job", { job: name }), hours[i])));
  const again = make("button", { type: "button", class: "quiet", id: "refit", hidden: "", press: () => fit(form) }, say("first.refit"));
  return [make("p", { class: "known" }), make("div", { class: "row jobs" }, ...asked), make("details", { class: "others", "data-pointer": "jobs" }, make("summary", {}, say("first.more")), make("div", { class: "row jobs" }, ...more)), again];
}

/** @param {Form} form */
function fit(form) {
  const typed = (/** @type {string[]} */ ids) => ids.map((id) => /** @type {HTMLInputElement | null} */ (form.place.querySelector(`#${id}`))?.value.trim() ?? "");
  form.workshop.changes.put({ op: "fit-hours", pointer: "/hours", values: typed(["job-0", "job-1", "job-2"]) });
  form.workshop.changes.put({ op: "fit-money", pointer: "/rates", values: typed(["job-materials", "job-asked"]) });
  form.workshop.trying.later();
}

/** @param {Form} form */
function markJobs(form) {
  const { changes, changes: { told: { values, hours: took, money: paid = [] } }, jobs } = form.workshop;
  const hours = (/** @type {number} */ now) => `${number(now, 1)} h`;
  const amount = (/** @type {number} */ now) => money(`${Math.round(now)}`, form.profile.currency ?? "");
  const stale = jobs.map(({ hands_hours: now = 0, told_hours, fitted_hours }, i) => {
    const unread = took[i] === undefined && fitted_hours !== undefined && !told_hours;
    return mark(form, `job-${i}`, values[i], now, took[i] ?? fitted_hours, hours, unread);
  });
  const { name = "", says = "", total, materials = 0, asked = 0, told_materials: bought, told_asked: wanted, below_cost: below, not_met: unmet } = jobs[KNOWN] ?? {};
  for (const place of elements(form.place, ".known")) write(place, `${name}. ${says}`);
  const isTold = Boolean(total) && changes.list.some(({ op }) => op === "fit-money");
  stale.push(mark(form, "job-materials", paid[0], Number(materials), bought && !unmet ? Number(bought) : undefined, amount, isTold && !bought, unmet));
  stale.push(mark(form, "job-asked", paid[1], Number(asked), wanted && !below ? Number(wanted) : undefined, amount, isTold && !wanted, below));
  form.place.querySelector("#refit")?.toggleAttribute("hidden", !stale.includes(true));
}

/** Whether it is by now another than was told. @param {Form} form @param {string} id @param {string | undefined} told @param {number} now @param {number | "" | undefined} then @param {(now: number) => string} shows @param {boolean} unread @param {string} [amiss] */
function mark(form, id, told, now, then, shows, unread, amiss) {
  const hint = form.place.querySelector(`#${id}-now`);
  if (!hint) return false;
  const isStale = Boolean(told && then && Math.abs(now - then) > NEAR * then);
  write(hint, isStale ? say("first.stale", { told: told ?? "", now: shows(now) }) : now ? say("first.now", { now: shows(now) }) : "");
  hint.classList.toggle("care", isStale);
  const fault = told && unread ? say("first.no-hours", { like: number(9.5, 1) }) : (amiss ?? "");
  write(one(`#${id}-fault`), fault);
  one(`#${id}`).setAttribute("aria-invalid", String(fault !== ""));
  return isStale;
}
