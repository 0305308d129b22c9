import { Trouble } from "../../service.js";
import { day, make, money, number, one, say } from "../../show.js";
import { saved } from "../files.js";
import { capital } from "./field.js";
import { said } from "./first.js";

export class Outcome {
  /** @param {Workshop} workshop */
  constructor(workshop) {
    this.workshop = workshop;
    this.place = one("#outcome-place");
    this.done = ""; // said of what is saved
  }

  /** @param {string} words */
  busy(words) {
    const place = one("#busy");
    if (place.textContent !== words) place.textContent = words;
    place.hidden = !words;
    this.place.setAttribute("aria-busy", String(words !== ""));
    one("#live").setAttribute("aria-busy", String(words !== ""));
  }

  /** @param {Profile} profile */
  show(profile) {
    one("#file").textContent = profile.file;
    one("#intro").textContent = say(profile.demonstration ? "workshop.demonstration" : "workshop.intro");
    const open = this.workshop.form.faults;
    const wrong = profile.faults.filter(({ pointer }) => !open.isOpen(pointer));
    const amiss = wrong.length ? say("outcome.faults", { n: wrong.length }) : "";
    const faults = amiss ? make("div", { class: "care" }, make("p", {}, amiss), this.list(wrong)) : null;
    const empty = profile.faults.filter(({ pointer }) => open.isOpen(pointer));
    const missing = empty.length ? make("div", {}, make("p", {}, say("outcome.missing")), this.list(empty)) : null;
    const jobs = make("table", {}, make("caption", {}, say("outcome.jobs")), make("tbody", {}, ...this.jobs(profile)));
    const earlier = profile.faults.length && this.workshop.jobs.length ? make("p", { class: "care" }, say("outcome.earlier")) : null;
    const lost = this.workshop.lost ? make("p", { class: "care", role: "alert" }, say("outcome.dropped", { n: this.workshop.lost })) : null;
    const also = profile.also && !this.workshop.form.place.querySelector("#with-bags") ? make("p", { class: "care", role: "status" }, profile.also) : null;
    this.put([lost, also, faults, missing, earlier, jobs, this.share(profile), this.saving(profile)].filter((part) => part !== null));
    const [, basin] = this.workshop.jobs;
    one("#live").textContent = [basin?.total ? `${basin.name}: ${money(basin.total, profile.currency ?? "")}` : "", amiss].filter(Boolean).join(" · ");
    this.parts(this.workshop.jobs, profile.currency ?? "");
  }

  /** A part that is as it was stays, so that a press begun on it is one. @param {HTMLElement[]} parts */
  put(parts) {
    const { children } = this.place;
    parts.forEach((part, i) => children[i]?.isEqualNode(part) || (children[i] ? children[i].replaceWith(part) : this.place.append(part)));
    while (children[parts.length]) children[parts.length].remove();
  }

  /** @param {Profile["faults"]} faults */
  list(faults) {
    return make("ul", {}, ...faults.map((fault) => this.fault(fault)));
  }

  /** @param {Profile["faults"][number]} fault */
  fault({ pointer, says }) {
    const { form } = this.workshop;
    const value = form.value(pointer);
    return make("li", {}, make("a", { href: `#${pointer}` }, value ? capital(pointer.startsWith("/recipe/bag/") ? value.label : said(form, value)) : says));
  }

  /** @param {Profile} profile */
  jobs({ currency }) {
    const { before, jobs } = this.workshop;
    if (!jobs.length) return [make("tr", {}, make("td", {}, say("outcome.working")))];
    return jobs.map((job, i) => {
      const was = before[i];
      const cell = job.total ? make("td", {}, make("strong", {}, money(job.total, currency ?? "")), told(job)) : make("td", {}, job.says ?? "");
      const differs = was?.total && job.total && was.total !== job.total;
      if (differs) cell.append(make("span", { class: "was" }, say("outcome.was", { total: money(was.total ?? "", currency ?? "") })));
      return make("tr", {}, make("th", { scope: "row" }, job.name), cell);
    });
  }

  /** @param {Profile} profile */
  share(profile) {
    const { share, invented } = profile;
    const every = share.yours + share.usual + share.invented;
    const open = profile.steps.filter((step) => !step.done).map(({ name, title }) => make("li", {}, make("a", { href: `#first-${name}` }, title)));
    const left = share.trial && open.length ? [make("ul", {}, ...open)] : [];
    const trial = make("p", {}, say(share.trial ? "outcome.trial" : "outcome.honest"));
    const rows = invented.filter(({ holds }) => !holds).map((table) => this.invented(table));
    if (!rows.length) return make("div", {}, trial, ...left);
    const isOpen = this.place.querySelector("details[open]") !== null;
    return make("div", {}, trial, ...left, make("details", { ...(isOpen && { open: "" }) }, make("summary", {}, say(share.trial ? "outcome.share" : "outcome.may-stay", { invented: share.invented, every })), make("ul", {}, ...rows)));
  }

  /** @param {Profile["invented"][number]} told */
  invented({ pointer, values, says }) {
    const table = this.workshop.form.tables().find((one) => one.pointer === pointer);
    return make("li", {}, make("a", { href: `#${pointer}` }, capital(table?.label ?? pointer)), " ", say("outcome.table", { n: values, says }));
  }

  /** @param {Profile} profile */
  saving({ file, writable, faults }) {
    const { changes } = this.workshop;
    const count = changes.list.length;
    const download = make("button", { type: "button", class: writable ? "quiet" : "main", press: () => void this.download(file) }, say("outcome.download", { file }));
    const save = make("button", { type: "button", class: "main", press: () => void this.workshop.save() }, say("outcome.save"));
    save.disabled = faults.length > 0 || count === 0;
    const undo = make("button", { type: "button", class: "quiet", press: () => this.undo() }, say("outcome.undo"));
    undo.disabled = count === 0;
    const where = changes.areTaken ? "outcome.downloaded" : "outcome.changes";
    const counted = make("p", { class: count || !this.done ? "hint" : "done" }, count ? say(where, { n: count }) : this.done || say("outcome.unchanged"), !writable && ` ${say("outcome.take-up")}`);
    return make("div", {}, counted, make("div", { class: "keep" }, writable && save, download, undo));
  }

  /** @param {string} file */
  async download(file) {
    if (!(await this.workshop.trying.newest())) return;
    saved(new Blob([this.workshop.profile.text], { type: "application/toml" }), file);
    this.workshop.changes.take();
    this.show(this.workshop.profile);
  }

  undo() {
    this.workshop.changes.undo();
    void this.workshop.again();
  }

  /** @param {TypicalJob[]} jobs @param {string} currency */
  parts(jobs, currency) {
    const job = jobs.find(({ parts }) => parts);
    for (const { pointer, hands_hours: hours, amount } of job?.parts ?? []) {
      const place = this.workshop.form.fieldAt(pointer);
      if (!place) continue;
      const words = say("outcome.part", { hours: number(hours, 2), amount: money(amount, currency), total: money(job?.total ?? "", currency) });
      const line = place.querySelector(".part") ?? place.appendChild(make("p", { class: "hint part" }));
      line.textContent = words;
    }
  }

  /** @param {Trouble | import("../service.js").Refused} amiss */
  amiss(amiss) {
    const stale = !(amiss instanceof Trouble) && amiss.faults.some(({ pointer }) => pointer === "/version");
    const again = make("button", { type: "button", class: "quiet", press: () => void (stale ? this.workshop.reload() : this.workshop.again()) }, say(stale ? "outcome.reload" : "outcome.again"));
    one("#trouble").append(" ", again);
  }

  /** @param {string} words */
  announce(words) {
    one("#status").textContent = this.done = words;
    this.show(this.workshop.profile);
  }
}

/** @param {TypicalJob} job */
function told({ hands_hours: hours, ready_on: ready }) {
  return make("span", { class: "hint" }, say("outcome.hours", { hours: number(hours ?? 0, 1), ready: ready ? day(ready, "short") : "" }));
}
