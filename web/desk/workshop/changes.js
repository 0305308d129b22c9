const NAME = "ledgerstone.workshop.1";
/** @typedef {{values: string[], hours: number[], money?: string[]}} Told */

export class Changes {
  /** @param {Profile} profile the file as it is */
  constructor(profile) {
    /** @type {Map<string, string | string[] | null>} */
    this.was = new Map();
    this.tables = this.ours = /** @type {Set<string>} */ (new Set()); // ours: the values that nobody gave
    this.compare(profile);
    const { list, taken, fitted, at } = kept(profile.file);
    this.list = list;
    this.fitted = fitted;
    this.at = at; // the subject that was looked at last
    this.taken = taken; // the changes that are in the file downloaded last, as JSON
    this.file = profile.file;
  }

  /** @param {Profile} profile */
  compare({ values = [], tables = [] }) {
    this.was = new Map(values.map((one) => [one.pointer, written(one)]));
    this.tables = new Set(tables.map(({ pointer }) => pointer));
    this.ours = new Set(values.filter(({ standing }) => standing === "invented").map(({ pointer }) => pointer));
  }

  /** Null leaves it out; a value as the file has it is no change, but the maker's from then. @param {string} pointer @param {string | string[] | null} value */
  set(pointer, value) {
    const since = this.list.map((one) => this.moves(one)).lastIndexOf(true);
    const at = this.list.findIndex((one, i) => i > since && one.pointer === pointer && !one.op.endsWith("confirm"));
    const change = changeOf(pointer, value);
    const isBack = since < 0 && JSON.stringify(value) === JSON.stringify(this.was.get(pointer));
    if (at >= 0) this.list.splice(at, 1);
    if (!isBack) this.list.push(change);
    else if (this.ours.has(pointer) && !this.has(pointer)) this.list.push({ op: "confirm", pointer });
    this.keep();
  }

  /** Whether pointers mean other places after it. @param {Change} change */
  moves({ op, pointer }) {
    return op === "add" || op === "mix-from-bags" || (op === "leave-out" && (this.tables.has(pointer) || /\/\d+$/.test(pointer)));
  }

  /** Whether others may go with it. @param {Change} change */
  reaches({ op, pointer }) {
    return op === "mix-from-bags" || (op === "leave-out" && /^\/(pigments|shade\/bases)\/\d+$/.test(pointer));
  }

  /** @param {string} at */
  has(at) {
    return this.list.some(({ op, pointer }) => pointer === at && op !== "unconfirm");
  }

  /** One more, or its opposite gone. @param {Change} change */
  push(change) {
    const other = { confirm: "unconfirm", unconfirm: "confirm" }[change.op];
    const at = this.list.map(({ op, pointer }) => op === other && pointer === change.pointer).lastIndexOf(true);
    if (at >= 0) this.list.splice(at, 1);
    else this.list.push(change);
    this.keep();
  }

  /** In the place of its kind. @param {Change} change */
  put(change) {
    this.list = [...this.list.filter(({ op }) => op !== change.op), change];
    this.keep();
  }

  /** @returns {Told} */
  get told() {
    const [fit, paid] = ["fit-hours", "fit-money"].map((name) => this.list.find(({ op }) => op === name));
    const hours = fit ? { values: fit.values ?? [], hours: [] } : this.fitted;
    return { ...hours, money: paid?.values ?? this.fitted.money };
  }

  /** @param {Change["op"]} op @param {string} within */
  without(op, within) {
    this.list = this.list.filter((one) => one.op !== op && !one.pointer.startsWith(within));
    this.keep();
  }

  undo() {
    this.list.pop();
    this.keep();
  }

  /** @param {Profile} profile */
  clear(profile) {
    this.fitted = { ...this.told, hours: profile.jobs.map((job) => job.hands_hours ?? 0) };
    this.compare(profile);
    this.list = [];
    this.keep();
  }

  /** @param {Change[]} since */
  are(since) {
    return this.list.length === since.length && this.list.every((one, i) => one === since[i]);
  }

  /** Drop those that the service can't make; how many they are. @param {string[]} pointers of faults, into the changes */
  drop(pointers) {
    const refused = new Set(pointers.map((pointer) => Number(/^\/changes\/(\d+)/.exec(pointer)?.[1] ?? -1)));
    const count = this.list.length;
    this.list = this.list.filter((_, i) => !refused.has(i));
    this.keep();
    return count - this.list.length;
  }

  take() {
    this.taken = JSON.stringify(this.list);
    this.keep();
  }

  get areTaken() {
    return this.taken === JSON.stringify(this.list);
  }

  keep() {
    const { file, list, taken, fitted, at } = this;
    try {
      localStorage.setItem(NAME, JSON.stringify({ file, list, taken, fitted, at }));
    } catch {
      return; // no storage: what was entered is on the page
    }
  }
}

/** @param {ProfileValue} value @returns {string | string[] | null} */
export function written({ value, values }) {
  return values ?? value ?? null;
}

/** @param {string} pointer @param {string | string[] | null} value @returns {Change} */
function changeOf(pointer, value) {
  if (value === null) return { op: "leave-out", pointer };
  return Array.isArray(value) ? { op: "set", pointer, values: value } : { op: "set", pointer, value };
}

/** @param {string} file @returns {{list: Change[], taken: string, fitted: Told, at: string}} */
function kept(file) {
  const none = { list: [], taken: "", fitted: { values: [], hours: [] }, at: "" };
  try {
    const found = JSON.parse(localStorage.getItem(NAME) ?? "{}");
    return found.file === file && Array.isArray(found.list) ? { ...none, ...found } : none;
  } catch {
    return none; // what is kept there is no list of ours
  }
}

/** @param {Profile} profile @param {string} pointer @param {string | string[] | null} now @param {boolean} isChange @returns {Profile} */
export function entered(profile, pointer, now, isChange) {
  const typed = Array.isArray(now) ? { value: undefined, values: now } : { value: now ?? undefined, values: undefined };
  const taken = (/** @type {any} */ one) => ({ ...one, ...typed, isTyped: true, before: one.before ?? one.standing, standing: isChange ? "yours" : (one.before ?? one.standing) });
  return { ...profile, faults: profile.faults.filter((fault) => !isWithin(fault, pointer)), values: profile.values?.map((one) => (one.pointer === pointer ? taken(one) : one)) };
}

/** What is taken out or ticked; what a new table holds the service alone knows. @param {Profile} profile @param {Change} change @returns {Profile} */
export function applied(profile, { op, pointer, values: pointers }) {
  if (op === "confirm") return (pointers ?? [pointer]).reduce(confirmed, profile);
  return op === "leave-out" ? without(profile, pointer) : profile;
}

/** @param {Profile} profile @param {string} pointer @returns {Profile} */
function confirmed(profile, pointer) {
  const values = profile.values?.map((one) => (isWithin(one, pointer) && one.standing === "invented" ? { ...one, standing: /** @type {const} */ ("yours") } : one));
  return { ...profile, values, steps: profile.steps.map((step) => ({ ...step, rest: step.rest.filter((each) => !isWithin({ pointer: each }, pointer)) })) };
}

/** Without a table, or without an item: those after it move up. @param {Profile} profile @param {string} pointer @returns {Profile} */
function without({ tables = [], values = [], steps, ...others }, pointer) {
  const isItem = /\/\d+$/.test(pointer);
  const stays = (/** @type {{pointer: string}} */ one) => !isWithin(one, pointer);
  const kept = isItem ? tables.filter(stays) : tables.filter((one) => one.pointer === pointer || stays(one)).map((one) => (one.pointer === pointer ? { ...one, there: false } : one));
  const moved = (/** @type {any} */ one) => (isItem ? { ...one, pointer: movedUp(one.pointer, pointer) } : one);
  const left = (/** @type {string[]} */ pointers) => pointers.map((each) => ({ pointer: each })).filter(stays).map((each) => moved(each).pointer);
  const now = steps.map(({ asks, stands, shown, open, rest, ...step }) => ({ ...step, asks: left(asks), stands: left(stands), shown: left(shown), open: left(open), rest: left(rest) }));
  return { ...others, steps: now, tables: kept.map(moved), values: values.filter(stays).map(moved) };
}

/** @param {{pointer: string}} one @param {string} pointer */
function isWithin(one, pointer) {
  return one.pointer === pointer || one.pointer.startsWith(`${pointer}/`);
}

/** @param {string} pointer @param {string} gone the pointer of an item that is taken out */
function movedUp(pointer, gone) {
  const list = gone.slice(0, gone.lastIndexOf("/") + 1);
  const [index = "", ...inner] = pointer.startsWith(list) ? pointer.slice(list.length).split("/") : [];
  return Number(index) > Number(gone.slice(list.length)) ? [list + (Number(index) - 1), ...inner].join("/") : pointer;
}

/** @param {string} pointer */
export function depth(pointer) {
  return pointer.split("/").length - 1;
}

/** @param {string} pointer */
export function parent(pointer) {
  return pointer.slice(0, pointer.lastIndexOf("/"));
}
