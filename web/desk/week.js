import { day, make, number, one, say } from "../show.js";

export class Week {
  /** @param {Desk} desk */
  constructor(desk) {
    this.desk = desk;
    this.choices = make("fieldset", { class: "picks" });
    this.sheet = make("div", { id: "week-sheet", tabindex: "-1" });
  }

  listen() {
    const press = () => void this.work();
    one("#view-week").replaceChildren(
      make("section", { class: "sheet no-print" }, make("h2", {}, say("week.title")), this.choices, make("p", {}, make("button", { type: "button", class: "main", press }, say("week.make"))), make("p", { class: "fault", id: "week-fault", hidden: "" })),
      this.sheet,
    );
    this.desk.kept.addEventListener("change", () => this.show());
    this.show();
  }

  show() {
    const offers = this.desk.kept.all().filter(({ state }) => state !== "no");
    const boxes = offers.map(({ token, reference, customer, state }) =>
      make("label", { class: "pick" }, make("input", { type: "checkbox", value: token, ...(state === "yes" && { checked: "" }) }), make("span", {}, `${reference} ${customer}`.trim())),
    );
    const none = boxes.length ? null : make("p", { class: "hint" }, say("offers.none"));
    this.choices.replaceChildren(make("legend", {}, say("week.choose")), ...boxes, none ?? "");
  }

  async work() {
    const chosen = /** @type {HTMLInputElement[]} */ (Array.from(this.choices.querySelectorAll("input:checked")));
    /** @type {Contract.JobSheet[]} */
    const jobs = [];
    for (const { value: token } of chosen) {
      const job = await this.desk.tried("#week-fault", () => this.desk.service.ask("v1/job-sheets", { token }));
      if (!job) return;
      jobs.push(job);
    }
    const print = make("button", { type: "button", class: "quiet no-print", press: () => window.print() }, say("week.print"));
    const alone = jobs.length > 1 ? make("p", { class: "hint" }, say("week.alone")) : "";
    this.sheet.replaceChildren(make("h3", {}, say("week.days")), alone, days(jobs), make("h3", {}, say("week.buy")), materials(jobs), make("p", {}, print));
    this.sheet.focus({ preventScroll: true });
    this.sheet.scrollIntoView({ block: "start" });
  }
}

/** @param {Contract.JobSheet[]} jobs */
function days(jobs) {
  const all = jobs.flatMap(({ reference, days: each }) => each.map((one) => ({ ...one, reference })));
  all.sort((a, b) => `${a.day} ${a.hours ?? "~"}`.localeCompare(`${b.day} ${b.hours ?? "~"}`));
  const rows = all.map(({ day: iso, reference, label, says, hours }, i) => [iso === all[i - 1]?.day ? "" : day(iso), `${says}${label ? `: ${label}` : ""}`, reference, hours ?? ""]);
  return table(["week.day", "week.what", "week.offer", "week.when"], rows);
}

/** What all jobs use of each material, and the whole packs that hold it. @param {Contract.JobSheet[]} jobs */
function materials(jobs) {
  /** @type {Map<string, Contract.Material>} */
  const sums = new Map();
  for (const material of jobs.flatMap(({ materials: each }) => each)) {
    const key = `${material.name} ${material.unit}`;
    sums.set(key, { ...material, used: material.used + (sums.get(key)?.used ?? 0) });
  }
  const rows = [...sums.values()].map(({ name, used, unit, pack }) => [name, `${number(used, 2)} ${unit}`, pack ? packs(used, pack, unit) : say("week.loose")]);
  return table(["week.material", "week.used", "week.packs"], rows);
}

/** @param {number} used @param {number} pack @param {string} unit */
function packs(used, pack, unit) {
  const count = Math.ceil(used / pack - 1e-9);
  return pack === 1 ? number(count) : say("week.of-packs", { n: count, pack: `${number(pack, 2)} ${unit}` });
}

/** @param {string[]} heads @param {string[][]} rows */
function table(heads, rows) {
  const head = make("tr", {}, ...heads.map((key) => make("th", { scope: "col" }, say(key))));
  return make("table", {}, make("thead", {}, head), make("tbody", {}, ...rows.map((row) => make("tr", {}, ...row.map((cell) => make("td", {}, cell))))));
}
