import assert from "node:assert/strict";
import { test } from "node:test";
import { Store } from "../../web/store.js";

/** @param {string} thickness @returns {any} */
const order = (thickness) => ({ slabs: [{ outline: { kind: "round" }, thickness }] });

test("every change can be undone and done again", () => {
  const store = new Store(order("20 mm"));
  store.change(order("30 mm"));
  store.change(order("40 mm"));
  store.undo();
  assert.deepEqual(store.order, order("30 mm"));
  store.undo();
  assert.deepEqual(store.order, order("20 mm"));
  store.undo();
  store.redo();
  store.redo();
  store.redo();
  assert.deepEqual(store.order, order("40 mm"));
});

test("keys typed one after another into one field are undone as one entry", () => {
  const store = new Store(order("40 mm"));
  for (const typed of ["5", "50", "50 m", "50 mm"]) store.change(order(typed), { cause: "typing", group: "/thickness" });
  store.change(order("6"), { cause: "typing", group: "/other" });
  store.undo();
  assert.deepEqual(store.order, order("50 mm"));
  store.undo();
  assert.deepEqual(store.order, order("40 mm"));
});

test("a new change after an undo leaves nothing to do again", () => {
  const store = new Store(order("20 mm"));
  store.change(order("30 mm"));
  store.undo();
  store.change(order("60 mm"));
  store.redo();
  assert.deepEqual(store.order, order("60 mm"));
});

test("the slab that is looked at is always one that there is", () => {
  const store = new Store(order("20 mm"));
  store.lookAt(7);
  assert.equal(store.slab, 0);
});
