import assert from "node:assert/strict";
import { test } from "node:test";
import { boxOf, cutoutOf, keyStep, outlineOf, pathOf, snapped } from "../../web/sketch/geometry.js";
import { anchorOf, frameFor, pins } from "../../web/sketch/marks.js";
import { handles, placed } from "../../web/sketch/movables.js";


/** Twice the area of a polygon, positive anticlockwise: the shoelace formula. */
const shoelace = (points) =>
  points.reduce((sum, p, i) => sum + p.x * points[(i + 1) % points.length].y - points[(i + 1) % points.length].x * p.y, 0);

test("an L runs anticlockwise and leaves out its notch, whichever corner it is", () => {
  for (const corner of ["front-left", "front-right", "back-right", "back-left"]) {
    const points = outlineOf({ kind: "l-shape", length: "2 m", width: "1 m", notch: { corner, length: "50 cm", width: "400 mm" } });
    assert.equal(points.length, 6);
    assert.equal(shoelace(points) / 2, 2000 * 1000 - 500 * 400, corner);
  }
});

test("an opening turned by ninety degrees is as long to the back as it was to the right", () => {
  const { from, to } = boxOf(cutoutOf({ kind: "rectangle", length: 300, width: 100, centre: { x: "500 mm", y: "200 mm" }, turn_degrees: 90 }));
  assert.deepEqual([from.x, from.y, to.x, to.y].map(Math.round), [450, 50, 550, 350]);
});

test("the screen leads back to the millimetre that it came from, with the front at the foot", () => {
  const frame = frameFor({ from: { x: 0, y: 0 }, to: { x: 1450, y: 560 } }, 360);
  const there = frame.from(frame.at({ x: 123, y: 456 }));
  assert.ok(Math.abs(there.x - 123) < 1e-9 && Math.abs(there.y - 456) < 1e-9);
  assert.ok(frame.at({ x: 0, y: 0 }).y > frame.at({ x: 0, y: 560 }).y);
  assert.ok(frame.at({ x: 1450, y: 0 }).x < 360);
});

test("a radius bends a corner and no more", () => {
  const at = (/** @type {any} */ point) => point;
  const square = [{ x: 0, y: 0, r: 10 }, { x: 100, y: 0 }, { x: 100, y: 100 }, { x: 0, y: 100 }];
  assert.equal(pathOf(square, at, 1), "M0 10Q0 0 10 0L100 0L100 100L0 100z");
});

test("a dragged thing rests on a line within reach, else on the step of its unit", () => {
  assert.deepEqual(snapped(727, [725], 6, "mm"), { mm: 725, line: 725 });
  assert.deepEqual(snapped(738, [725], 6, "mm"), { mm: 740, line: null });
  assert.deepEqual(snapped(26, [], 6, "in"), { mm: 25.4, line: null });
});

test("an arrow key moves a millimetre, with Shift ten; other keys do not", () => {
  assert.deepEqual(keyStep("ArrowUp", false, "mm"), { x: 0, y: 1 });
  assert.deepEqual(keyStep("ArrowLeft", true, "cm"), { x: -10, y: 0 });
  assert.deepEqual(keyStep("ArrowRight", false, "in"), { x: 3.175, y: 0 });
  assert.equal(keyStep("a", false, "mm"), null);
  assert.equal(keyStep("toString", false, "mm"), null);
});

test("a coordinate that did not move stays as it was typed", () => {
  const order = { slabs: [], centre: { x: "9 13/16 in", y: "300 mm" } };
  const moved = /** @type {any} */ (placed(order, "/centre", { x: 249.24, y: 300 }, { x: 249.24, y: 320 }, "mm"));
  assert.deepEqual(moved.centre, { x: "9 13/16 in", y: "320 mm" });
});

test("each handle of an L lies on its outline, and draws its own size", () => {
  const notch = { corner: "back-right", length: "800 mm", width: "300 mm" };
  const outline = { kind: "l-shape", length: "2000 mm", width: "900 mm", notch };
  const [length, width, inside] = handles(outline, "/o", "mm");
  assert.deepEqual([length?.x, length?.y, width?.x, width?.y], [2000, 300, 600, 900]);
  assert.deepEqual([inside?.x, inside?.y], [1200, 600]);
  const order = /** @type {any} */ ({ o: outline });
  const drawn = /** @type {any} */ (inside?.put(order, { x: 1100, y: 600 }));
  assert.deepEqual(drawn.o.notch, { corner: "back-right", length: "900 mm", width: "300 mm" });
  const longer = /** @type {any} */ (length?.put(order, { x: 2105, y: 0 }));
  assert.equal(longer.o.length, "2105 mm");
});

test("a pin stands in the middle of its place, whatever shape the place has", () => {
  assert.deepEqual(anchorOf({ coordinates: [3, 4] }), { x: 3, y: 4 });
  assert.deepEqual(anchorOf({ coordinates: [[0, 0], [10, 20]] }), { x: 5, y: 10 });
  assert.equal(anchorOf(undefined), null);
});

test("a pin stands beside what is drawn by hand, beside words and other pins, on the paper", () => {
  const frame = frameFor({ from: { x: 0, y: 0 }, to: { x: 1000, y: 500 } }, 400);
  const drawn = [];
  globalThis.document = /** @type {any} */ ({
    createElementNS: (_, name) => ({ name, setAttribute(key, value) { this[key] = value; }, append(...inner) { drawn.push([this, inner]); } }),
  });
  const finding = (/** @type {number} */ x) => ({ id: String(x), says: "", level: "note", slab: 0, at: [], where_mm: { type: "Point", coordinates: [x, 250] } });
  const handles = [{ x: 1000, y: 250 }, { x: 0, y: 250 }].map(frame.at);
  const all = [1000, 1000, 0].map(finding);
  const [left, foot] = [frame.at({ x: 0, y: 250 }).x, frame.at({ x: 0, y: 250 }).y];
  const word = { left: left + 5, right: left + 60, top: foot - 8, bottom: foot + 8 };
  pins(/** @type {any} */ (all), 0, frame, [...handles], [/** @type {any} */ (word)]);
  const circles = drawn.map(([, inner]) => inner[0]).filter((each) => each?.name === "circle");
  assert.equal(circles.length, 3);
  const places = [...handles, ...circles.map(({ cx, cy }) => ({ x: Number(cx), y: Number(cy) }))];
  places.forEach((one, i) => places.slice(i + 1).forEach((other) => assert.ok(Math.hypot(one.x - other.x, one.y - other.y) >= 28)));
  assert.ok(places.every(({ x }) => x >= 13 && x <= 400 - 13));
  const off = (/** @type {number} */ n, /** @type {number} */ from, /** @type {number} */ to) => Math.max(from - n, n - to, 0);
  for (const { x, y } of places.slice(2)) assert.ok(Math.hypot(off(x, word.left, word.right), off(y, word.top, word.bottom)) >= 13);
});
