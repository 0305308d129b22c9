import assert from "node:assert/strict";
import { test } from "node:test";
import { changeWords } from "../../web/answer/findings.js";
import { messages } from "./said.js";
import { setWords } from "../../web/show.js";

const slab = { outline: { kind: "rectangle", length: "1.2 m" }, thickness: "50 mm", place: "indoors", finish: { sealer: "satin" } };
const order = { slabs: [slab], delivery: { kind: "own-van" } };
const replaced = (/** @type {string} */ path, /** @type {unknown} */ value) => changeWords(order, { op: "replace", path, value });

test("a choice that changes is named by the words that stand on the form", () => {
  setWords(messages, "en-GB");
  assert.equal(replaced("/delivery/kind", "collect"), "how it comes to you: “By our own van” becomes “I collect it”");
  assert.equal(replaced("/slabs/0/place", "wet-room"), "where it will live: “Indoors” becomes “In a wet room”");
});

test("a length or a name that changes is told from what to what", () => {
  setWords(messages, "en-GB");
  assert.equal(replaced("/slabs/0/thickness", "40 mm"), "thickness: 50 mm to 40 mm");
  assert.equal(replaced("/slabs/0/finish/sealer", "matt"), "sealer: satin to matt");
});

test("what is added, left out or only tested", () => {
  setWords(messages, "en-GB");
  assert.equal(changeWords(order, { op: "add", path: "/slabs/0/place", value: "outdoors" }), "where it will live: “Outdoors”");
  const side = { op: "add", path: "/slabs/0/cutouts/0/open_to", value: "front" };
  assert.ok(changeWords(order, side).endsWith("open to a side: “Front”"));
  assert.equal(changeWords(order, { op: "remove", path: "/slabs/0/rests" }), "what it rests on: left out");
  assert.equal(changeWords(order, { op: "replace", path: "/slabs/0/rests", value: { kind: "full" } }), "");
  assert.equal(changeWords(order, { op: "add", path: "/slabs/0/edges", value: { front: { profile: "square" } } }), "");
  assert.equal(changeWords(order, { op: "add", path: "/needed_by", value: "2027-01-06" }), "needed by: Wednesday 6 January 2027");
  assert.equal(changeWords(order, { op: "test", path: "/slabs/0/place", value: "indoors" }), "");
});

test("one slab that becomes two is named piece by piece", () => {
  setWords(messages, "en-GB");
  const half = { outline: { kind: "rectangle", length: "2000 mm", width: "600 mm" } };
  const whole = { ...order, slabs: [slab, half] };
  assert.equal(changeWords(order, { op: "replace", path: "/slabs/0/outline/length", value: "2000 mm" }, whole), "slab 1, length: 1.2 m to 2000 mm");
  assert.equal(changeWords(order, { op: "add", path: "/slabs/1", value: half }, whole), "slab 2: 2000 mm × 600 mm");
  assert.equal(changeWords(order, { op: "add", path: "/joins", value: [] }, whole), "");
});

test("an opening that goes into a new slab is not left out", () => {
  setWords(messages, "en-GB");
  const basin = { kind: "circle", label: "basin", diameter: "360 mm" };
  const sent = { ...order, slabs: [{ ...slab, cutouts: [basin, { ...basin, label: "bowl" }] }] };
  const whole = { ...sent, slabs: [...sent.slabs, { ...slab, cutouts: [{ ...basin, centre: { x: "300 mm", y: "300 mm" } }] }] };
  const gone = (/** @type {number} */ k) => changeWords(sent, { op: "remove", path: `/slabs/0/cutouts/${k}` }, whole);
  assert.equal(gone(0), "slab 1, basin: goes into slab 2");
  assert.equal(gone(1), "slab 1, bowl: left out");
});
