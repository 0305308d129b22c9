/** @param {Profile} profile @param {string} pointer @param {string | string[] | null} now @param {boolean} isChange @returns {Profile} */
export function entered(profile, pointer, now, isChange) {
  const typed = Array.isArray(now) ? { value: undefined, values: now } : { value: now ?? undefined, values: undefined };
  const taken = (/** @type {any} */ one) => ({ ...one, ...typed, isTyped: true, before: one.before ?? one.standing, standing: isChange ? "yours" : (one.before ?? one.standing) });
  return { ...profile, values: profile.values?.map((one) => (one.pointer === pointer ? taken(one) : one)) };
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
