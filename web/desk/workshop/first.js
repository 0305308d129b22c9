/** The shortest way to a first quote: what is asked, step by step, and one tick for the rest of a step. */

import { elements, make, number, one, say } from "../../show.js";
import { capital, named, same } from "./field.js";

/** @typedef {import("./form.js").Form} Form */
/** @typedef {Profile["steps"][number]} Step */

export const FIRST = "first";
const HOURS = "hours";
const BAG = "/recipe/bag";
const A_NUMBER = /^(?:(\d+(?:[.,]\d+)?)\s*(?:h|hrs?\.?|hours?|std\.?|stunden?)?)?$/i;

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
  return make("section", { class: "sheet table", id: `step-${step.name}` }, title, ...bags, row, ...(step.name === HOURS ? hours(form) : []), make("div", { class: "rest" }));
}

/** A value's label, with the name of the item that it belongs to. @param {Form} form @param {ProfileValue} value */
function said(form, { pointer, label }) {
  const at = form.tables().filter((table) => pointer.startsWith(`${table.pointer}/`)).pop();
  if (!at || at.pointer.split("/").length < 3) return label;
  const [first] = form.values(at.pointer);
  const title = at.kind === "item" ? first && named(first) : at.label;
  return title ? `${title}: ${label}` : label;
}

/** One tick puts a bag, whose fields are then asked, in the place of the parts of a recipe by volume. @param {Form} form */
function fromBags(form) {
  const ticked = form.workshop.changes.list.some(({ op }) => op === "mix-from-bags");
  if (!ticked && form.tables().some(({ pointer, there }) => pointer === BAG && there)) return [];
  const box = make("input", { type: "checkbox", id: "from-bags" });
  box.checked = ticked;
  box.addEventListener("change", () => void (box.checked ? form.workshop.made({ op: "mix-from-bags", pointer: BAG }) : form.workshop.unmade("mix-from-bags", BAG)));
  return [make("p", { class: "ticks" }, make("label", { class: "tick" }, box, make("span", {}, say("first.bags"))))];
}

/** How long each typical job takes, from which every rate of hours follows. @param {Form} form */
function hours(form) {
  const told = form.workshop.changes.list.find(({ op }) => op === "fit-hours")?.values ?? [];
  const fields = form.workshop.jobs.map((job, i) => {
    const input = make("input", { id: `job-${i}`, inputmode: "decimal", "aria-describedby": `job-${i}-fault` });
    input.value = told[i] ?? "";
    input.addEventListener("input", () => entered(form));
    return make("div", { class: "field", "data-kind": "number" }, make("label", { for: `job-${i}` }, say("first.job", { job: job.name })), make("p", { class: "hint", "data-job": `${i}` }), input);
  });
  return [make("p", { class: "hint" }, say("first.hours")), make("div", { class: "row jobs" }, ...fields)];
}

/** @param {Form} form */
function entered(form) {
  const values = markJobs(form);
  if (!values) return;
  form.workshop.changes.put({ op: "fit-hours", pointer: "/hours", values });
  form.workshop.trying.later();
}

/** The hours of jobs as they stand, each with its fault; null where one does not read. @param {Form} form */
function markJobs(form) {
  const inputs = /** @type {HTMLInputElement[]} */ (elements(form.place, ".jobs input"));
  const found = inputs.map((input) => A_NUMBER.exec(input.value.trim()));
  found.forEach((read, i) => {
    const input = inputs[i];
    input?.parentElement?.querySelector(".fault")?.remove();
    input?.setAttribute("aria-invalid", String(!read));
    if (!read) input?.after(make("p", { class: "fault", id: `job-${i}-fault` }, say("first.no-hours", { like: number(9.5, 1) })));
  });
  return found.every(Boolean) ? found.map((read) => read?.[1] ?? "") : null;
}

/** What is done by now, and what one tick confirms. @param {Form} form */
export function markSteps(form) {
  for (const step of form.profile.steps) {
    const place = form.place.querySelector(`#step-${step.name}`);
    if (!place) continue;
    one(".done", place).textContent = step.done ? say("first.done") : "";
    const rest = one(".rest", place);
    if (rest.dataset.shown !== String(step.rest)) rest.replaceChildren(...remaining(form, step));
    rest.dataset.shown = String(step.rest);
  }
  for (const hint of elements(form.place, "[data-job]")) {
    const takes = form.workshop.jobs[Number(hint.dataset.job)]?.hands_hours;
    hint.textContent = takes ? say("first.now", { hours: number(takes, 1) }) : "";
  }
  markJobs(form);
}

/** @param {Form} form @param {Step} step */
function remaining(form, { name, rest }) {
  if (!rest.length) return [];
  const shown = new Set(rest);
  const rows = form.values("").filter(({ pointer }) => shown.has(pointer)).map((value) => make("li", {}, `${capital(said(form, value))}: `, make("b", {}, `${named(value)}${value.unit && ` ${value.unit}`}`)));
  const roots = new Set(rest.map((pointer) => `/${pointer.split("/")[1]}`));
  const subjects = new Set(form.tables().filter(({ pointer }) => roots.has(pointer)).map((table) => table.subject));
  const links = [...subjects].flatMap((subject) => [" ", make("a", { href: `#${subject}` }, `${say("first.change")}: ${say(`subject.${subject}`)}`)]);
  const box = make("input", { type: "checkbox", id: `rest-${name}` });
  box.addEventListener("change", () => void form.workshop.made({ op: "confirm", pointer: "", values: rest }));
  const tick = make("p", { class: "ticks" }, make("label", { class: "tick" }, box, make("span", {}, say("first.rest", { n: rest.length }))));
  return [make("p", { class: "hint" }, say("first.others"), ...links), make("ul", { tabindex: "0", "aria-label": say("first.others") }, ...rows), tick];
}
