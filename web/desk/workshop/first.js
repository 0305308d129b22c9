import { elements, make, number, one, say, write } from "../../show.js";
import { capital, named, same, unitOf } from "./field.js";
import { depth, parent } from "./local.js";

/** @typedef {import("./form.js").Form} Form */
/** @typedef {Profile["steps"][number]} Step */

export const FIRST = "first";
const HOURS = "hours";
const BAG = "/recipe/bag";
const NEAR = 0.01;

/** @param {Form} form */
export function firstQuote(form) {
  return make("div", {}, make("p", { class: "hint" }, say("first.intro")), ...form.profile.steps.map((step) => section(form, step)));
}

/** @param {Form} form @param {Step} step */
function section(form, step) {
  const asked = step.asks.flatMap((pointer) => form.values("").filter((value) => value.pointer === pointer));
  const row = make("div", { class: "row" }, ...asked.map((value) => form.field({ ...value, label: value.pointer.startsWith(BAG) ? value.label : said(form, value), help: same(value.help, value.label) ? "" : value.help })));
  const bags = step.name === "concrete" ? fromBags(form) : [];
  const title = make("h3", {}, step.title, " ", make("span", { class: "done" }));
  return make("section", { class: "sheet table", id: `step-${step.name}` }, title, ...bags, row, ...(step.name === HOURS ? hours(form) : []), ...others(form, step), ...(step.name === "lifting" ? [make("p", {}, make("a", { class: "way", href: "#/handling/ways" }, say("first.way")))] : []), make("div", { class: "rest" }));
}

/** @param {Form} form @param {ProfileValue} value */
export function said(form, { pointer, label }) {
  const title = titled(form, around(form, pointer));
  return title ? `${title}: ${label}` : label;
}

/** The innermost table or item that a value is in. @param {Form} form @param {string} pointer */
function around(form, pointer) {
  return form.tables().filter((table) => pointer.startsWith(`${table.pointer}/`)).pop();
}

/** @param {Form} form @param {ProfileTable | undefined} table within another one, or an item */
function titled(form, table) {
  if (!table || depth(table.pointer) < 2) return "";
  const [first] = form.values(table.pointer);
  return table.kind === "item" ? (first ? named(first) : "") : table.label;
}

/** What else prices rest on. @param {Form} form @param {Step} step */
function others(form, { shown, open, done }) {
  const groups = new Map();
  for (const pointer of shown) {
    const table = around(form, pointer);
    if (table) groups.set(table, [...(groups.get(table) ?? []), pointer]);
  }
  const all = [...groups].map(([table, pointers]) => group(form, table, pointers, new Set(open)));
  return all.length === 0 ? [] : [done ? make("details", { class: "others" }, make("summary", {}, say("first.behind")), ...all) : make("div", { class: "others" }, make("p", { class: "hint" }, say("first.others")), ...all)];
}

/** @param {Form} form @param {ProfileTable} table @param {string[]} pointers @param {Set<string>} open */
function group(form, table, pointers, open) {
  const values = pointers.flatMap((pointer) => form.values(table.pointer).filter((value) => value.pointer === pointer));
  const out = { op: /** @type {const} */ ("leave-out"), pointer: table.pointer };
  const goes = isLast(form, table) ? [] : [form.button(table.kind === "item" ? "table.remove" : "table.leave-out", out, table.kind === "item" ? parent(table.pointer) : table.pointer)];
  const title = make("h4", {}, make("a", { href: `#${table.pointer}` }, capital(titled(form, table) || table.label)));
  const asked = values.filter(({ pointer }) => open.has(pointer)).map((value) => form.field({ ...value, help: "" }));
  const read = values.filter((value) => !open.has(value.pointer) && named(value) !== titled(form, table)).map(({ pointer, label }) => make("li", {}, `${capital(label)}: `, make("b", { "data-shows": pointer })));
  return make("div", { class: "group" }, title, asked.length > 0 && make("div", { class: "row" }, ...asked), read.length > 0 && make("ul", {}, ...read), ...goes);
}

/** Whether a file needs it: a table, or the last item of a list. @param {Form} form @param {ProfileTable} table */
export function isLast(form, { pointer, kind, needed }) {
  const items = form.tables().filter((one) => one.kind === "item" && parent(one.pointer) === parent(pointer));
  return kind === "item" ? items.length < 2 && form.tables().some((one) => one.pointer === parent(pointer) && one.needed) : needed;
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
  return [make("p", { class: "ticks" }, make("label", { class: "tick" }, box, make("span", {}, say("first.bags")))), ...trust];
}

/** What an untested mix is trusted with, where no strip was broken yet. @param {Form} form */
function untested(form) {
  const values = form.values("/concrete");
  const percent = values.find(({ pointer }) => pointer === "/concrete/untested_percent");
  const isTested = values.some(({ pointer }) => pointer.startsWith("/concrete/tested/"));
  return percent && Number(percent.value) < 100 && !isTested ? [make("p", { class: "hint" }, say("first.bag-trust", { percent: named(percent) }))] : [];
}

/** @param {Form} form */
function hours(form) {
  const { values: told } = form.workshop.changes.told;
  const fields = form.workshop.jobs.map((job, i) => {
    const input = make("input", { id: `job-${i}`, inputmode: "decimal", "aria-describedby": `job-${i}-fault` });
    input.value = told[i] ?? "";
    input.addEventListener("input", () => fit(form));
    return make("div", { class: "field", "data-kind": "number" }, make("label", { for: `job-${i}` }, say("first.job", { job: job.name })), make("p", { class: "hint", "data-job": `${i}` }), input, make("p", { class: "fault", id: `job-${i}-fault` }));
  });
  const again = make("button", { type: "button", class: "quiet", id: "refit", hidden: "", press: () => fit(form) }, say("first.refit"));
  return [make("p", { class: "hint" }, say("first.hours")), make("div", { class: "row jobs" }, ...fields), again];
}

/** Fit every rate to the hours as they stand, after all that was changed before. @param {Form} form */
function fit(form) {
  const inputs = /** @type {HTMLInputElement[]} */ (elements(form.place, ".jobs input"));
  form.workshop.changes.put({ op: "fit-hours", pointer: "/hours", values: inputs.map(({ value }) => value.trim()) });
  form.workshop.trying.later(true);
}

/** What was told of each job, beside what it takes by now. @param {Form} form */
function markJobs(form) {
  const { values, hours: took } = form.workshop.changes.told;
  let stale = false;
  form.workshop.jobs.forEach(({ hands_hours: now = 0, told_hours, fitted_hours }, i) => {
    const hint = form.place.querySelector(`[data-job="${i}"]`);
    const then = took[i] ?? fitted_hours;
    if (!hint) return;
    const isStale = Boolean(values[i] && then && Math.abs(now - then) > NEAR * then);
    stale ||= isStale;
    write(hint, isStale ? say("first.stale", { told: values[i] ?? "", hours: number(now, 1) }) : now ? say("first.now", { hours: number(now, 1) }) : "");
    hint.classList.toggle("care", isStale);
    const unread = Boolean(values[i]) && took[i] === undefined && fitted_hours !== undefined && !told_hours;
    write(one(`#job-${i}-fault`), unread ? say("first.no-hours", { like: number(9.5, 1) }) : "");
    one(`#job-${i}`).setAttribute("aria-invalid", String(unread));
  });
  form.place.querySelector("#refit")?.toggleAttribute("hidden", !stale);
}

/** @param {Form} form */
export function markSteps(form) {
  const values = new Map(form.values("").map((value) => [value.pointer, value]));
  for (const place of elements(form.place, "[data-shows]")) {
    const value = values.get(place.dataset.shows ?? "");
    if (value) write(place, inUnit(value, form.profile.currency ?? ""));
    place.classList.toggle("plain", value?.standing !== "invented");
  }
  for (const step of form.profile.steps) {
    const place = form.place.querySelector(`#step-${step.name}`);
    if (!place) continue;
    one(".done", place).textContent = step.done ? say("first.done") : "";
    const rest = one(".rest", place);
    if (rest.dataset.shown !== String(step.rest)) rest.replaceChildren(...remaining(form, step));
    rest.dataset.shown = String(step.rest);
  }
  markJobs(form);
}

/** A value with its unit, unless it stands with another one. @param {ProfileValue} value @param {string} currency */
function inUnit(value, currency) {
  const text = named(value);
  return /\d$/.test(text) ? `${text} ${unitOf(value, currency)}`.trimEnd() : text;
}

/** @param {Form} form @param {Step} step */
function remaining(form, { name, rest }) {
  if (!rest.length) return [];
  const box = make("input", { type: "checkbox", id: `rest-${name}` });
  box.addEventListener("change", () => void form.workshop.made({ op: "confirm", pointer: "", values: rest }));
  return [make("p", { class: "ticks" }, make("label", { class: "tick" }, box, make("span", {}, say("first.rest", { n: rest.length }))))];
}
