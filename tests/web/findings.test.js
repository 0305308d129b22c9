import assert from "node:assert/strict";
import { test } from "node:test";
import { costWords } from "../../web/answer/findings.js";
import { brief } from "../../web/answer/sentences.js";
import { joinedAlike } from "../../web/form/entries.js";
import { messages } from "./said.js";
import { setWords } from "../../web/show.js";

const price = /** @type {any} */ ({ total: "521.00", currency: "GBP" });

test("a fix says what it adds to the price, or what it then is", () => {
  setWords(messages, "en-GB");
  assert.equal(costWords({ price }), "It is then £521.00");
  assert.equal(costWords({ price_change: { amount: "-24.00", currency: "GBP" } }), "£24.00 less");
  assert.equal(costWords({ price_change: { amount: "0.00", currency: "GBP" } }), "The price stays");
  assert.equal(costWords({}), null);
});

test("what waits for its postcode alone has the price of collecting it, once that is known", () => {
  setWords(messages, "en-GB");
  /** @param {any[]} findings */
  const first = (findings) => brief(/** @type {any} */ ({ answer: { kind: "sent-back", body: { findings } } })).first;
  const asked = { check: "postcode-needed", level: "stops", says: "Enter the postcode." };
  assert.equal(first([asked]), "No price yet");
  assert.equal(first([{ ...asked, remedies: [{ price }] }]), "£521.00");
  assert.equal(first([{ ...asked, remedies: [{ price }] }, { check: "too-thin", level: "stops" }]), "2 things to change");
});

test("what joined slabs have alike they go on having, and nothing else of them", () => {
  const slab = (/** @type {object} */ more) => /** @type {any} */ ({ outline: {}, thickness: "40 mm", place: "indoors", ...more });
  const join = (/** @type {number} */ one, /** @type {number} */ other) => ({ one: { slab: one, side: "front" }, other: { slab: other, side: "left" } });
  const before = { slabs: [slab({}), slab({}), slab({}), slab({ thickness: "30 mm" }), slab({})], joins: [join(0, 1), join(1, 2), join(2, 3)] };
  const changed = (/** @type {number} */ k, /** @type {object} */ more) => joinedAlike({ ...before, slabs: before.slabs.map((one, i) => (i === k ? { ...one, ...more } : one)) }, before).slabs;
  assert.deepEqual(changed(0, { thickness: "50 mm" }).map(({ thickness }) => thickness), ["50 mm", "50 mm", "50 mm", "30 mm", "40 mm"]);
  assert.deepEqual(changed(2, { thickness: "50 mm" }).map(({ thickness }) => thickness), ["50 mm", "50 mm", "50 mm", "30 mm", "40 mm"]);
  assert.deepEqual(changed(3, { place: "outdoors" }).map(({ place }) => place), ["outdoors", "outdoors", "outdoors", "outdoors", "indoors"]);
  assert.deepEqual(changed(1, { label: "Left" }), before.slabs.map((one, i) => (i === 1 ? { ...one, label: "Left" } : one)));
  const row = { slabs: Array.from({ length: 5 }, () => slab({})), joins: [join(1, 2), join(3, 4), join(0, 1), join(2, 3)] };
  const thicker = row.slabs.map((one, i) => (i === 0 ? { ...one, thickness: "50 mm" } : one));
  assert.deepEqual(joinedAlike({ ...row, slabs: thicker }, row).slabs.map(({ thickness }) => thickness), Array(5).fill("50 mm"));
  assert.deepEqual(joinedAlike({ ...before, slabs: before.slabs.slice(1) }, before).slabs, before.slabs.slice(1));
});
