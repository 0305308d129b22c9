import { make, money, number, one, say, write } from "../../show.js";

/** @typedef {import("./form.js").Form} Form */

const KNOWN = 1;
const NEAR = 0.01;

/** @param {Form} form */
export function job(form) {
  const { changes, jobs } = form.workshop;
  const { values: hours, money: paid = [] } = changes.told;
  const entry = (/** @type {string} */ id, /** @type {string} */ label, now = "") => {
    const input = make("input", { id, inputmode: "decimal", "aria-describedby": `${id}-fault` });
    input.value = now;
    input.addEventListener("input", () => fit(form));
    return make("div", { class: "field", "data-kind": "number" }, make("label", { for: id }, label), make("p", { class: "hint", id: `${id}-now` }), input, make("p", { class: "fault", id: `${id}-fault` }));
  };
  const known = jobs[KNOWN];
  if (!known) return [];
  const unit = form.profile.currency ?? "";
  const asked = [entry("job-1", say("first.takes"), hours[KNOWN]), entry("job-materials", `${say("first.buys")}, ${unit}`, paid[0]), entry("job-asked", `${say("first.asks")}, ${unit}`, paid[1])];
  const more = jobs.map(({ name }, i) => (i === KNOWN ? "" : entry(`job-${i}`, say("first.job", { job: name }), hours[i])));
  const again = make("button", { type: "button", class: "quiet", id: "refit", hidden: "", press: () => fit(form) }, say("first.refit"));
  return [make("p", { class: "known" }, known.name), make("div", { class: "row jobs" }, ...asked), make("details", { class: "others", "data-pointer": "jobs" }, make("summary", {}, say("first.more")), make("div", { class: "row jobs" }, ...more)), again];
}

/** @param {Form} form */
function fit(form) {
  const typed = (/** @type {string[]} */ ids) => ids.map((id) => /** @type {HTMLInputElement | null} */ (form.place.querySelector(`#${id}`))?.value.trim() ?? "");
  form.workshop.changes.put({ op: "fit-hours", pointer: "/hours", values: typed(["job-0", "job-1", "job-2"]) });
  form.workshop.changes.put({ op: "fit-money", pointer: "/rates", values: typed(["job-materials", "job-asked"]) });
  form.workshop.trying.later();
}

/** @param {Form} form */
export function markJobs(form) {
  const { changes, jobs } = form.workshop;
  const { values, hours: took, money: paid = [] } = changes.told;
  const hours = (/** @type {number} */ now) => `${number(now, 1)} h`;
  const amount = (/** @type {number} */ now) => money(String(Math.round(now)), form.profile.currency ?? "");
  const stale = jobs.map(({ hands_hours: now = 0, told_hours, fitted_hours }, i) => {
    const unread = took[i] === undefined && fitted_hours !== undefined && !told_hours;
    return mark(form, `job-${i}`, values[i], now, took[i] ?? fitted_hours, hours, unread);
  });
  const { materials = 0, asked = 0, told_materials: bought, told_asked: wanted, below_cost: below, not_met: unmet } = jobs[KNOWN] ?? {};
  const isTold = changes.list.some(({ op }) => op === "fit-money");
  stale.push(mark(form, "job-materials", paid[0], Number(materials), bought && !unmet ? Number(bought) : undefined, amount, isTold && !bought, unmet));
  stale.push(mark(form, "job-asked", paid[1], Number(asked), wanted && !below ? Number(wanted) : undefined, amount, isTold && !wanted, below));
  form.place.querySelector("#refit")?.toggleAttribute("hidden", !stale.includes(true));
}

/**
 * Whether it is by now another than was told.
 * @param {Form} form @param {string} id @param {string | undefined} told @param {number} now @param {number | "" | undefined} then
 * @param {(now: number) => string} shows @param {boolean} unread @param {string} [amiss]
 */
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
