import { Pause } from "../asking.js";
import { written } from "../lib/json.js";
import { startingOrder } from "../order/slabs.js";
import { one, say, write } from "../show.js";
import { joinedAlike, withUnitsEntered } from "./entries.js";
import { lOf, withSlabs } from "./joins.js";
import { centred, placeOf } from "./rows.js";

const MOST_FREE = 8;

export class Laying {
  /** @param {Page} page */
  constructor(page) {
    this.page = page;
    this.before = page.store.order;
    /** @type {Map<number, boolean>} slabs to be laid out, else what carries them alone */
    this.due = new Map();
    /** @type {WeakMap<Order, Map<number, boolean>>} undone before it was laid out */
    this.left = new WeakMap();
    /** @type {ReturnType<typeof setTimeout> | undefined} */
    this.timer = undefined;
    this.pause = new Pause();
    /** @type {Map<string, string>} base units that were taken */
    this.taken = new Map();
    this.begun = { order: page.restored ? null : page.store.order, name: "" }; // as it starts
    /** @type {Promise<any>} what was pressed last */
    this.last = Promise.resolve();
  }

  /** @param {string} piece */
  async add(piece) {
    const { store } = this.page;
    const { slab } = store;
    const answer = await this.next({ add: piece });
    if (!answer) return false;
    const { cutouts: was = [] } = /** @type {Slab} */ (store.order.slabs[slab]);
    this.before = this.merged(answer, slab);
    store.change(this.before);
    this.tell(answer.says, was.some((one, i) => placeOf(one) !== placeOf(store.order.slabs[slab]?.cutouts?.[i])));
    return store.slab === slab;
  }

  /** @param {string} name */
  async start(name) {
    const { store } = this.page;
    const { slab } = store;
    const answer = await this.next({ start: name });
    if (!answer || store.slab !== slab) return;
    const { order, shown } = store;
    const l = lOf(store);
    const gone = l ? [l.back, l.arm] : [shown];
    const at = order.slabs.findIndex((slab) => gone.includes(slab));
    const left = order.slabs.filter((slab) => !gone.includes(slab));
    const more = answer.joins.map((join) => ({ ...join, one: { ...join.one, slab: join.one.slab + at }, other: { ...join.other, slab: join.other.slab + at } }));
    this.before = withSlabs({ ...order, own: { ...order.own, start: name } }, [...left.slice(0, at), ...answer.slabs.map((slab) => ({ edges: {}, ...slab })), ...left.slice(at)], more);
    answer.slabs.forEach((slab, i) => this.keep(slab, answer.free[i]));
    store.change(this.before, { slab: at });
    this.begun = { order: store.order, name };
    this.page.announce(say("start.done", { name: say(`start.${name}`) }));
  }

  /** @param {Unit} unit */
  async speak(unit) {
    const { choices, store } = this.page;
    const { order, name } = this.begun;
    store.speak(unit);
    if (store.order !== order) return;
    if (name) return this.start(name);
    store.change(startingOrder(choices, unit));
    this.begun.order = store.order;
  }

  /** Whether it is to be laid out before it is priced. @param {Cause} cause */
  follows(cause) {
    const { order } = this.page.store;
    const { slabs } = this.before;
    this.showTaken();
    if (cause === "undo") this.left.set(this.before, this.due);
    this.before = order;
    clearTimeout(this.timer);
    if (["undo", "load", "fix"].includes(cause) || slabs.length !== order.slabs.length) this.due = new Map(this.left.get(order));
    else order.slabs.forEach((slab, i) => this.note(i, slab, /** @type {Slab} */ (slabs[i])));
    if (this.due.size === 0 || cause === "moving") return false;
    const ms = this.pause.after(cause === "typing");
    if (ms) this.timer = setTimeout(() => void this.follow(cause), ms);
    else void this.follow(cause);
    return true;
  }

  /** Once what is due is laid out. */
  async laid() {
    while (this.due.size) await new Promise((done) => this.page.store.addEventListener("change", done, { once: true }));
  }

  keepCentred() {
    const { before, page: { store } } = this;
    store.order = joinedAlike(store.order, before);
    const slabs = store.order.slabs.map((slab, i) => withUnitsEntered(centred(slab, before.slabs[i], store), before.slabs[i]));
    if (slabs.some((slab, i) => slab !== store.order.slabs[i])) store.order = { ...store.order, slabs };
  }

  showTaken() {
    const place = one("#units-say");
    const says = this.taken.get(JSON.stringify(this.page.store.shown.rests)) ?? "";
    if (place.textContent === says) return;
    write(place, says);
    place.hidden = !says;
  }

  /** @param {number} i @param {Slab} slab @param {Slab} old */
  note(i, slab, old) {
    const places = (/** @type {Slab} */ { cutouts = [] }) => String(cutouts.map(placeOf));
    if (this.isNew(slab, old)) this.due.set(i, true);
    else if (/units|ledges/.test(slab.rests?.kind ?? "") && this.free(slab).rests && places(slab) !== places(old)) this.due.set(i, this.due.get(i) ?? false);
  }

  /** @param {Slab} slab @param {Slab} old */
  isNew(slab, old) {
    const { cutouts, reliefs, rests } = this.free(slab);
    const any = cutouts.length + reliefs.length > 0 || rests;
    return any && slab.cutouts?.length === old.cutouts?.length && this.frame(slab) !== this.frame(old);
  }

  /** @param {Cause} cause */
  async follow(cause) {
    const { store } = this.page;
    for (const [number, all] of this.due) {
      const { order } = store;
      const answer = await this.ask({}, number, all);
      if (store.order !== order) return; // what changed it follows by itself
      this.due.delete(number);
      if (!answer) continue;
      store.order = this.before = this.merged(answer, number);
      this.taken.set(JSON.stringify(answer.slabs[0]?.rests), answer.says);
    }
    store.become({ order: store.order, slab: store.slab }, cause);
  }

  /** What is pressed is answered in turn. @param {{add?: string, start?: string}} wanted @returns {Promise<Placing | null>} */
  next(wanted) {
    const { slab } = this.page.store; // another may be chosen by then
    return (this.last = this.last.catch(() => null).then(() => this.ask(wanted, slab)));
  }

  /** Null on failure, which is announced. @param {{add?: string, start?: string}} wanted @param {number} number @param {boolean} [all] @returns {Promise<Placing | null>} */
  async ask(wanted, number, all = true) {
    const { service, store } = this.page;
    const { order, unit } = store;
    const slab = order.slabs[number];
    if (!slab) return null; // it was removed
    const pressed = wanted.add ?? wanted.start;
    if (pressed) this.page.answers.outdated();
    const answer = await service.placing({ slab, ...wanted, free: { ...this.free(slab), ...(!all && { cutouts: [], reliefs: [] }) }, unit }).catch(() => ({ detail: say("trouble.down") }));
    if (store.order !== order) return pressed ? this.ask(wanted, number) : null;
    const laid = "slabs" in answer ? answer : null;
    if (pressed) this.tell("detail" in answer ? answer.detail : answer.fits ? "" : answer.says);
    if (pressed && !laid?.fits) this.page.asking.ask(order, { typing: false });
    return laid?.fits ? laid : null;
  }

  /** @param {string} words @param {boolean} [seen] */
  tell(words, seen = words !== "") {
    const place = one("#adds-say");
    write(place, words);
    place.hidden = !seen;
    this.page.announce(words);
  }

  /** What the service put there, or has no place yet. @param {Slab} slab */
  free({ cutouts = [], reliefs = [], rests }) {
    const those = (/** @type {object[]} */ all) => all.flatMap((each, i) => (this.page.store.placed.has(placeOf(each)) ? [i] : [])).slice(-MOST_FREE);
    const bare = rests !== undefined && rests.kind !== "full" && Object.keys(rests).length === 1;
    return { cutouts: those(cutouts), reliefs: those(reliefs), rests: bare || rests?.assumed || this.page.store.placed.has(JSON.stringify(rests)) };
  }

  /** What a layout goes by. @param {Slab} slab */
  frame(slab) {
    const { outline, size_from: from, use, cutouts = [], reliefs = [], rests } = slab;
    const sizes = [...cutouts, ...reliefs].map((each) => ({ ...each, label: null, centre: null, at: null }));
    return JSON.stringify([outline, from, use, sizes, this.free(slab).rests ? [rests?.kind, rests?.overhang] : rests]);
  }

  /** @param {Placing} answer @param {number} number @returns {Order} */
  merged({ slabs: [slab], free: [free] }, number) {
    this.keep(/** @type {Slab} */ (slab), free);
    return written(this.page.store.order, `/slabs/${number}`, slab);
  }

  /** @param {Slab} slab @param {Placing["free"][number] | undefined} free */
  keep({ cutouts, reliefs, rests }, free) {
    for (const i of free?.cutouts ?? []) this.page.store.placed.add(placeOf(cutouts?.[i]));
    for (const i of free?.reliefs ?? []) this.page.store.placed.add(placeOf(reliefs?.[i]));
    if (free?.rests) this.page.store.placed.add(JSON.stringify(rests));
  }
}
