import { elements, make, one, say, write } from "../../show.js";
import { capital, named, unitOf } from "./field.js";
import { job, markJobs } from "./job.js";
import { depth, parent } from "./local.js";

/** @typedef {import("./form.js").Form} Form */
/** @typedef {Profile["steps"][number]} Step */

export const FIRST = "first";
const JOB = "job";
const BAG = "/recipe/bag";

/** @param {Form} form */
export function firstQuote(form) {
  return make("div", {}, make("p", { class: "hint" }, say("first.intro")), ...form.profile.steps.map((step) => section(form, step)));
}

/** @param {Form} form @param {Step} step */
function section(form, step) {
  const { name, title, stands } = step;
  /** @type {(Node | string)[]} */
  const all = [...(name === "concrete" ? fromBags(form) : []), fields(form, step.asks, step.labels)];
  if (stands.length) all.push(make("details", { class: "others", "data-pointer": `stands-${name}` }, make("summary", { class: "hint" }), fields(form, stands, step.stands_say)));
  if (name === "lifting") all.push(make("p", {}, make("a", { class: "way", href: "#/handling/ways" }, say("first.way"))));
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
  const values = new Map(form.values("").map((value) => [value.pointer, value]));
  for (const place of elements(form.place, "[data-shows]")) {
    const value = values.get(place.dataset.shows ?? "");
    if (value && value.kind !== "colour") write(place, withUnit(value, form.profile.currency ?? ""));
  }
  const gone = form.place.querySelector("#with-bags");
  if (gone) write(gone, form.profile.also ?? "");
  for (const step of form.profile.steps) {
    const place = form.place.querySelector(`#step-${step.name}`);
    if (!place) continue;
    one(".done", place).textContent = step.done ? say("first.done") : "";
    const stands = place.querySelector(`[data-pointer="stands-${step.name}"] > summary`);
    const what = step.stands.map((pointer, i) => `${step.stands_say[i]}: ${shortly(values.get(pointer), form)}`).join(" · ");
    if (stands) write(stands, say("first.stands", { what }));
    const rest = one(".rest", place);
    if (rest.dataset.shown !== String(step.rest)) rest.replaceChildren(...remaining(form, step));
    rest.dataset.shown = String(step.rest);
  }
  markJobs(form);
}

/** @param {ProfileValue | undefined} value @param {Form} form */
function shortly(value, form) {
  return (value && withUnit(value, form.profile.currency ?? "")) || "–";
}

/** @param {ProfileValue} value @param {string} currency */
function withUnit(value, currency) {
  const text = named(value);
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
