/** JSON Pointers (RFC 6901) into plain JSON, and changes that leave the original as it was. */

/**
 * Take a pointer apart.
 * @param {string} pointer
 * @returns {string[]}
 */
export function partsOf(pointer) {
  if (pointer === "") return [];
  if (!pointer.startsWith("/")) throw new Error(`"${pointer}" does not begin with a slash.`);
  return pointer.slice(1).split("/").map(unescaped);
}

/** @param {string} part */
function unescaped(part) {
  return part.replaceAll("~1", "/").replaceAll("~0", "~");
}

/**
 * Say whether a part names a member that is there; nothing inherited counts.
 * @param {any} holder
 * @param {string} part
 */
export function holds(holder, part) {
  if (Array.isArray(holder)) return /^(0|[1-9]\d*)$/.test(part) && Number(part) < holder.length;
  return typeof holder === "object" && holder !== null && Object.hasOwn(holder, part);
}

/**
 * Read what a pointer leads to; undefined where it leads nowhere.
 * @param {any} document
 * @param {string} pointer
 * @returns {any}
 */
export function read(document, pointer) {
  let here = document;
  for (const part of partsOf(pointer)) {
    if (!holds(here, part)) return undefined;
    here = here[part];
  }
  return here;
}

/**
 * Copy a document with one member set; objects on the way are made where they are missing.
 * @param {any} document
 * @param {string} pointer
 * @param {any} value
 * @returns {any}
 */
export function written(document, pointer, value) {
  return put(document, partsOf(pointer), value);
}

/**
 * @param {any} here
 * @param {string[]} parts
 * @param {any} value
 * @returns {any}
 */
function put(here, parts, value) {
  const [part, ...rest] = parts;
  if (part === undefined) return value;
  const inner = put(holds(here, part) ? here[part] : undefined, rest, value);
  if (Array.isArray(here)) return Object.assign([...here], { [part]: inner });
  return { ...here, [part]: inner };
}

/**
 * Copy a document without one member; the members of a list behind it move up.
 * @param {any} document
 * @param {string} pointer
 * @returns {any}
 */
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

/**
 * Write one part of a pointer.
 * @param {string} part
 */
export function escaped(part) {
  return part.replaceAll("~", "~0").replaceAll("/", "~1");
}
