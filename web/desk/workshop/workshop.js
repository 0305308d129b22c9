import { Trouble } from "../../service.js";
import { documentIn, fillWords, LOCALES, one, saidIn, say, setPlace, setWords, spokenOf } from "../../show.js";
import { KeyForm } from "../access.js";
import { DeskService, Refused } from "../service.js";
import { applied, Changes, entered } from "./changes.js";
import { focusedIn } from "./field.js";
import { Form } from "./form.js";
import { Outcome } from "./outcome.js";
import { Trying } from "./trying.js";

export class Workshop {
  /** @param {DeskService} service @param {KeyForm} keyForm @param {Profile} profile */
  constructor(service, keyForm, profile) {
    this.service = service;
    this.keyForm = keyForm;
    this.profile = profile;
    this.changes = new Changes(profile);
    /** @type {TypicalJob[]} what the file as it is comes to */
    this.before = [];
    /** @type {TypicalJob[]} what the last state without a fault came to */
    this.sound = [];
    this.held = 0; // what is under way during which nothing is entered
    this.lost = 0; // changes that the service could not make, since the last one that was made here
    this.outcome = new Outcome(this);
    this.form = new Form(this);
    this.trying = new Trying(this);
  }

  /** What typical jobs come to: with a fault those of the last state without one. */
  get jobs() {
    return this.profile.jobs.length ? this.profile.jobs : this.sound;
  }

  async open() {
    one("#profile").hidden = false;
    this.form.listen();
    this.form.show();
    window.addEventListener("hashchange", () => this.form.show());
    await this.tried(async () => {
      this.before = this.sound = (await this.ask([], {})).jobs;
    });
    this.form.build();
    if (this.changes.list.length) await this.again();
    else this.outcome.show(this.profile);
  }

  /** @param {Change[]} changes @param {{save?: boolean, described?: boolean}} how @param {AbortSignal} [signal] @returns {Promise<Profile>} */
  ask(changes, how, signal) {
    return this.service.ask("v1/workshop", { version: this.profile.version, changes, ...how }, signal);
  }

  /** A value was entered: it is tried once the typing rests. @param {string} pointer @param {string | string[] | null} value */
  entered(pointer, value) {
    this.lost = 0;
    this.changes.set(pointer, value);
    const { faults } = this.profile;
    this.profile = entered(this.profile, pointer, value, this.changes.has(pointer));
    if (this.profile.faults.length < faults.length) this.form.faults.show();
    this.outcome.show(this.profile);
    this.trying.later();
  }

  /** @param {Change} change of tables, items or whose they are; true once it was tried */
  made(change) {
    this.lost = 0;
    this.changes.push(change);
    this.profile = applied(this.profile, change);
    this.outcome.show(this.profile);
    return this.changes.reaches(change) ? this.hold(() => this.trying.now()) : this.trying.now();
  }

  /** Take a change back, with those that only follow from it. @param {Change["op"]} op @param {string} within */
  unmade(op, within) {
    this.changes.without(op, within);
    return this.hold(() => this.again());
  }

  /** Let nothing be entered while places move or a file is written. @template Done @param {() => Promise<Done>} does */
  async hold(does) {
    const { place } = this.form;
    const back = focusedIn(place);
    this.held += 1;
    place.inert = true;
    try {
      return await does();
    } finally {
      this.held -= 1;
      place.inert = this.held > 0;
      if (!this.held) back();
    }
  }

  async again() {
    if (await this.trying.now()) this.form.build();
  }

  /** @param {Profile} profile */
  take(profile) {
    const { tables, values } = profile;
    this.profile = { ...this.profile, also: undefined, ...profile, tables: tables ?? this.profile.tables, values: values ?? this.profile.values };
    if (profile.jobs.length) this.sound = profile.jobs;
    if (tables && (this.lost || !this.form.isDrawn)) this.form.build();
    this.form.mark();
    this.outcome.show(this.profile);
  }

  save() {
    return this.hold(() => this.written());
  }

  async written() {
    await this.trying.rest();
    this.outcome.busy(say("outcome.working"));
    const done = await this.tried(async () => {
      const was = await this.service.inUse();
      const profile = await this.ask(this.changes.list, { save: true, described: true });
      if (profile.saved) {
        this.service.noteSaved(was);
        this.changes.clear(profile);
        this.before = profile.jobs;
      }
      this.take(profile);
    });
    this.outcome.busy("");
    if (!done || !this.profile.saved) return;
    this.outcome.announce(say("desk.taking"));
    this.outcome.announce(say((await this.service.takenUp()) ? "outcome.saved" : "outcome.kept"));
  }

  /** Read the file as it is now; what was entered goes in on top. */
  async reload() {
    await this.tried(async () => {
      this.profile = await this.service.workshop();
      this.changes.compare(this.profile);
      this.before = (await this.ask([], {})).jobs;
    });
    await this.again();
  }

  /** Do what may fail, and say what is amiss. @param {() => Promise<void>} does */
  async tried(does) {
    const fault = one("#trouble");
    try {
      await does();
      fault.hidden = true;
      return true;
    } catch (amiss) {
      if (!(amiss instanceof Trouble || amiss instanceof Refused)) throw amiss;
      if (amiss instanceof Trouble && amiss.kind === "refused") this.shut();
      fault.textContent = amiss instanceof Trouble ? `${say(`trouble.${amiss.kind}`)} ${say("trouble.kept")}` : amiss.message;
      fault.hidden = false;
      if (amiss instanceof Refused) this.dropped(amiss);
      this.outcome.amiss(amiss);
      return false;
    }
  }

  /** What the service can't make is no change any more, and is told; how many they are. @param {Refused} amiss */
  dropped({ faults }) {
    const gone = this.changes.drop(faults.map(({ pointer }) => pointer));
    this.lost += gone;
    return gone;
  }

  shut() {
    this.keyForm.opened = () => void this.again();
    this.keyForm.show(say("door.wrong"));
  }
}

/** @param {DeskService} service @returns {Promise<void>} */
async function words(service) {
  const asked = new URLSearchParams(location.search).get("lang");
  const language = spokenOf([asked, ...navigator.languages]) ?? "en";
  const files = [`../../messages.${language}.js`, `../messages.${language}.js`, `./messages.${language}.js`];
  const [said, ...read] = await Promise.all([documentIn(language, "../../"), ...files.map((file) => import(file))]);
  setWords(Object.assign(saidIn(said), ...read.map(({ messages }) => messages)), LOCALES[language] ?? language);
  service.language = language;
  document.documentElement.lang = LOCALES[language] ?? language;
}

const service = new DeskService("../..");
await words(service);
fillWords(document);
const keyForm = new KeyForm(service);
await keyForm.open();
const [choices, profile] = await Promise.all([service.choices(), service.workshop()]);
setPlace({ ...choices, words: { ...choices.words, ...profile.words } });
fillWords(document);
void new Workshop(service, keyForm, profile).open();
