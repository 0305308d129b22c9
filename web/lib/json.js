/** @param {string} pointer */
export function partsOf(pointer) {
  if (pointer === "") return [];
  if (!pointer.startsWith("/")) throw new Error(`"${pointer}" does not begin with a slash.`);
  return pointer.slice(1).split("/").map(unescaped);
}

/** @param {string} part */
function unescaped(part) {
  return part.replaceAll("~1", "/").replaceAll("~0", "~");
}

/** Nothing inherited counts. @param {any} holder @param {string} part */
export function holds(holder, part) {
  if (Array.isArray(holder)) return /^(0|[1-9]\d*)$/.test(part) && Number(part) < holder.length;
  return typeof holder === "object" && holder !== null && Object.hasOwn(holder, part);
}

/** @param {any} document @param {string} pointer */
export function read(document, pointer) {
  let here = document;
  for (const part of partsOf(pointer)) {
    if (!holds(here, part)) return undefined;
    here = here[part];
  }
  return here;
}

/** A copy with one member set. @param {any} document @param {string} pointer @param {any} value */
export function written(document, pointer, value) {
  return put(document, partsOf(pointer), value);
}

/** @param {any} here @param {string[]} parts @param {any} value @returns {any} */
function put(here, parts, value) {
  const [part, ...rest] = parts;
  if (part === undefined) return value;
  const inner = put(holds(here, part) ? here[part] : undefined, rest, value);
  if (Array.isArray(here)) return Object.assign([...here], { [part]: inner });
  return { ...here, [part]: inner };
}

/** @param {any} document @param {string} pointer */
export function without(document, pointer) {
  const parts = partsOf(pointer);
  const last = parts.pop();
  const parent = "/" + parts.map(escaped).join("/");
  const holder = read(document, parts.length ? parent : "");
  if (last === undefined || !holds(holder, last)) return document;
  const left = Array.isArray(holder)
    ? holder.filter((_, i) => i !== Number(last))
    : Object.fromEntries(Object.entries(holder).filter(([name]) => name !== last));
  return put(document, parts, left);
}

/** @param {string} part */
export function escaped(part) {
  return part.replaceAll("~", "~0").replaceAll("/", "~1");
}

export class StalePatch extends Error {}

/** All of it or, by throwing, nothing. @param {any} document @param {Operation[]} patch @throws {StalePatch} */
export function patched(document, patch) {
  return patch.reduce(applied, structuredClone(document));
}

/** @param {any} document @param {Operation} operation */
function applied(document, { op, path, value }) {
  if (!["test", "add", "remove", "replace"].includes(op)) throw new StalePatch(`"${op}" is not done here`);
  if (op === "test") return tested(document, path, value);
  const parts = partsOf(path);
  const last = parts.pop();
  if (last === undefined) return op === "remove" ? null : structuredClone(value);
  const holder = read(document, path.slice(0, path.lastIndexOf("/")));
  if (op !== "add" && !holds(holder, last)) throw new StalePatch(`nothing is at ${path}`);
  if (Array.isArray(holder)) changeList(holder, op, last, value, path);
  else if (typeof holder !== "object" || holder === null) throw new StalePatch(`nothing holds ${path}`);
  else if (op === "remove") delete holder[last];
  else define(holder, last, structuredClone(value));
  return document;
}

/** @type {(holder: any[], op: string, at: string, value: any, path: string) => void} */
function changeList(holder, op, at, value, path) {
  const index = at === "-" ? holder.length : Number(at);
  const written = at === "-" || /^(0|[1-9]\d*)$/.test(at);
  if (!written || index > holder.length) throw new StalePatch(`${path} is past the list's end`);
  if (op === "remove") holder.splice(index, 1);
  else holder.splice(index, op === "add" ? 0 : 1, structuredClone(value));
}

/** @type {(holder: any, name: string, value: any) => void} */
function define(holder, name, value) {
  const property = { value, writable: true, enumerable: true, configurable: true };
  Object.defineProperty(holder, name, property); // "__proto__" is a name like any other
}

/** @type {(document: any, path: string, value: any) => any} */
function tested(document, path, value) {
  const there = read(document, path);
  if (there === undefined || !same(there, value)) throw new StalePatch(`${path} has changed`);
  return document;
}

/** RFC 6902 §4.6: the order of members does not count. @param {any} one @param {any} other @returns {boolean} */
export function same(one, other) {
  if (typeof one !== "object" || typeof other !== "object" || !one || !other) return one === other;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const names = Object.keys(one);
  if (names.length !== Object.keys(other).length) return false;
  return names.every((name) => Object.hasOwn(other, name) && same(one[name], other[name]));
}
