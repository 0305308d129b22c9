import { patched, StalePatch, written } from "../lib/json.js";
import { spoken } from "../lib/lengths.js";
import { sizeMm } from "../order/slabs.js";
import { draw, say } from "../show.js";
import { boxOf, cutoutOf, mm, outlineOf, pathOf, reliefOf } from "./geometry.js";

/** @param {Order} order @param {number} number @param {Unit} unit */
export function movables(order, number, unit) {
  const slab = order.slabs[number];
  if (!slab) return [];
  const at = `/slabs/${number}`;
  const openings = (slab.cutouts ?? []).map((cutout, i) => opening(cutout, i, at, unit));
  const reliefs = (slab.reliefs ?? []).map((each, i) => relief(each, i, at, unit));
  return [...openings, ...reliefs, ...handles(slab.outline, `${at}/outline`, unit)];
}

/** @param {Cutout} cutout @param {number} i @param {string} slab @param {Unit} unit @returns {Movable} */
function opening(cutout, i, slab, unit) {
  const at = `${slab}/cutouts/${i}`;
  const name = cutout.label || say("at.opening", { number: i + 1 });
  const shape = cutoutOf(cutout);
  const here = middleOf(shape);
  const put = (/** @type {Order} */ order, /** @type {XY} */ there) =>
    cutout.points ? shifted(order, at, cutout, there.x - here.x, there.y - here.y, unit) : placed(order, `${at}/centre`, here, there, unit);
  return { key: `opening-${i}`, name, ...here, axes: "xy", opening: i, shape, looks: cutout.heat ? "hole hot" : "hole", field: at, put };
}

/** @type {(relief: Relief, i: number, slab: string, unit: Unit) => Movable} */
function relief(relief, i, slab, unit) {
  const field = `${slab}/reliefs/${i}`;
  const shape = reliefOf(relief);
  const here = middleOf(shape);
  const [x, y] = [mm(relief.at.x), mm(relief.at.y)];
  /** @type {Put} */
  const put = (order, to) => placed(order, `${field}/at`, { x, y }, { x: x + to.x - here.x, y: y + to.y - here.y }, unit);
  const name = relief.label || say("at.relief", { number: i + 1 });
  return { key: `relief-${i}`, name, ...here, axes: "xy", opening: -1, shape, looks: "hole thin", field, put };
}

/** @type {(shape: Shape) => XY} */
function middleOf(shape) {
  const { from, to } = boxOf(shape);
  return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
}

/** @param {Order} order @param {string} at @param {Cutout} cutout @param {number} dx @param {number} dy @param {Unit} unit */
function shifted(order, at, cutout, dx, dy, unit) {
  const points = (cutout.points ?? []).map(({ x, y }) => ({ x: spoken(mm(x) + dx, unit), y: spoken(mm(y) + dy, unit) }));
  return written(order, `${at}/points`, points);
}

const SMALLEST_MM = 50;

/** @param {Outline} outline @param {string} at @param {Unit} unit */
export function handles(outline, at, unit) {
  const { lengthMm: length, widthMm: width } = sizeMm(outline);
  if (outline.kind === "polygon") return corners(outline, at, unit);
  const size = (/** @type {string} */ name, /** @type {"x" | "y"} */ axis) => (/** @type {Order} */ order, /** @type {XY} */ to) =>
    written(order, `${at}/${name}`, spoken(Math.max(SMALLEST_MM, to[axis]), unit));
  if (outline.kind === "round") return [handle("diameter", at, { x: length, y: length / 2 }, "x", size("diameter", "x"))];
  const { right, back, cutX, cutY } = cutOf(outline);
  const middleY = right ? (back ? (width - cutY) / 2 : (width + cutY) / 2) : width / 2;
  const middleX = back ? (right ? (length - cutX) / 2 : (length + cutX) / 2) : (length * 3) / 4; // in the middle are taps
  const edges = [
    handle("length", at, { x: length, y: middleY }, "x", size("length", "x")),
    handle("width", at, { x: middleX, y: width }, "y", size("width", "y")),
  ];
  return outline.kind === "l-shape" ? [...edges, insideCorner(outline, at, unit)] : edges;
}

/** @param {string} name @param {string} at @param {XY} here @param {Axes} axes @param {Put} put @returns {Movable} */
function handle(name, at, here, axes, put) {
  return { key: `handle-${name}`, name: say(`at.outline-${name}`), ...here, axes, opening: -1, looks: `handle along-${axes}`, field: `${at}/${name}`, put };
}

/** @param {Outline} outline */
function cutOf({ kind, notch }) {
  if (kind !== "l-shape" || !notch) return { right: false, back: false, cutX: 0, cutY: 0 };
  const { corner, length, width } = notch;
  return { right: corner.endsWith("right"), back: corner.startsWith("back"), cutX: mm(length), cutY: mm(width) };
}

/** @param {Outline} outline @param {string} at @param {Unit} unit */
function insideCorner(outline, at, unit) {
  const { lengthMm: length, widthMm: width } = sizeMm(outline);
  const { right, back, cutX, cutY } = cutOf(outline);
  const room = (/** @type {number} */ cut, /** @type {number} */ whole) => Math.max(SMALLEST_MM, Math.min(cut, whole - SMALLEST_MM));
  /** @type {Put} */
  const put = (order, to) => {
    const there = { x: room(right ? length - to.x : to.x, length), y: room(back ? width - to.y : to.y, width) };
    return placed(order, `${at}/notch`, { x: cutX, y: cutY }, there, unit, "length", "width");
  };
  return handle("notch", at, { x: right ? length - cutX : cutX, y: back ? width - cutY : cutY }, "xy", put);
}

/** @param {Outline} outline @param {string} at @param {Unit} unit */
function corners(outline, at, unit) {
  return (outline.points ?? []).map((point, i) => {
    const here = { x: mm(point.x), y: mm(point.y) };
    const field = `${at}/points/${i}`;
    /** @type {Put} */
    const put = (order, to) => placed(order, field, here, to, unit);
    return { ...handle(String(i), at, here, "xy", put), name: say("outline.point", { number: i + 1 }), field };
  });
}

/** What has not moved stays as it was typed. @param {Order} order @param {string} at @param {XY} here @param {XY} there @param {Unit} unit @param {string} [inX] @param {string} [inY] */
export function placed(order, at, here, there, unit, inX = "x", inY = "y") {
  const first = Math.abs(there.x - here.x) < 0.01 ? order : written(order, `${at}/${inX}`, spoken(there.x, unit));
  return Math.abs(there.y - here.y) < 0.01 ? first : written(first, `${at}/${inY}`, spoken(there.y, unit));
}

const [WIDE, HIGH, ROOM, APART_MM] = [240, 110, 6, 60];

/** Of the first slab that a change draws otherwise. @param {Order} order @param {Operation[]} patch */
export function ghost(order, patch) {
  const after = slabsAfter(order, patch);
  const number = after.findIndex((slab, i) => !alike(shapesOf(slab), shapesOf(order.slabs[i])));
  if (number < 0) return null;
  const pieces = after.slice(number, after.length > order.slabs.length ? undefined : number + 1);
  return picture(shapesOf(order.slabs[number]), besideOneAnother(pieces));
}

/** @param {Order} order @param {Operation[]} patch @param {number} number */
export function comes(order, patch, number) {
  return others(shapesOf(slabsAfter(order, patch)[number]), shapesOf(order.slabs[number]));
}

/** As they are where it no longer fits. @param {Order} order @param {Operation[]} patch @returns {Slab[]} */
function slabsAfter(order, patch) {
  try {
    return patched(order, patch).slabs;
  } catch (fault) {
    if (!(fault instanceof StalePatch)) throw fault;
    return order.slabs;
  }
}

/** The outline first. @param {Slab | undefined} slab @returns {Shape[]} */
function shapesOf(slab) {
  if (!slab) return [];
  const { outline, cutouts = [], reliefs = [], rests } = slab;
  const legs = (rests?.at ?? []).map((/** @type {Place} */ { x, y }) => ({ x: mm(x), y: mm(y), radius: mm(rests?.pad) / 2 }));
  return [outlineOf(outline), ...cutouts.map(cutoutOf), ...reliefs.map(reliefOf), ...legs];
}

/** @param {Slab[]} slabs @returns {Shape[]} */
function besideOneAnother(slabs) {
  let from = 0;
  return slabs.flatMap((slab) => {
    const shapes = shapesOf(slab);
    const x = from;
    from += boxOf(/** @type {Shape} */ (shapes[0])).to.x + APART_MM;
    return shapes.map((shape) => (Array.isArray(shape) ? shape.map((point) => ({ ...point, x: point.x + x })) : { ...shape, x: shape.x + x }));
  });
}

/** @param {Shape[]} old @param {Shape[]} made */
function picture(old, made) {
  const boxes = [...old, ...made].map(boxOf);
  const [right, back] = [Math.max(...boxes.map(({ to }) => to.x)), Math.max(...boxes.map(({ to }) => to.y))];
  const scale = Math.min(WIDE / right, HIGH / back);
  const at = (/** @type {XY} */ { x, y }) => ({ x: x * scale, y: (back - y) * scale });
  const path = (/** @type {string} */ look) => (/** @type {Shape} */ shape) => draw("path", { class: look, d: pathOf(shape, at, scale) });
  const [width, height] = [right * scale + 2 * ROOM, back * scale + 2 * ROOM];
  const gone = others(old, made);
  const stays = old.filter((shape) => !gone.includes(shape));
  return draw(
    "svg",
    { class: "ghost", viewBox: `${-ROOM} ${-ROOM} ${width} ${height}`, width, height, role: "img", "aria-label": say("remedy.ghost") },
    ...stays.map(path("stays")),
    ...gone.map(path("goes")),
    ...others(made, old).map(path("comes")),
  );
}

/** @param {Shape[]} some @param {Shape[]} there */
function others(some, there) {
  return some.filter((shape) => !there.some((each) => alike(each, shape)));
}

/** @param {unknown} one @param {unknown} other */
function alike(one, other) {
  return JSON.stringify(one) === JSON.stringify(other);
}
