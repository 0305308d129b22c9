/** The profile's form before the service has answered: what is typed, ticked and taken out. */

import assert from "node:assert/strict";
import { test } from "node:test";

import { applied, Changes, entered } from "../../web/desk/workshop/changes.js";

/** @param {number[]} names @returns {any} a profile of areas with these prices */
function profile(...names) {
  const items = names.map((_, i) => ({ pointer: `/areas/${i}`, kind: "item", there: true }));
  const values = names.map((price, i) => ({ pointer: `/areas/${i}/own_van`, value: String(price), standing: "invented" }));
  const steps = [{ name: "delivery", asks: names.length ? ["/areas/0/postcodes"] : [], stands: [], shown: values.map(({ pointer }) => pointer), open: [], rest: values.map(({ pointer }) => pointer) }];
  return { steps, faults: [], tables: [{ pointer: "/areas", kind: "items", there: true }, ...items, { pointer: "/bench", kind: "table", there: true }], values: [...values, { pointer: "/bench/price", value: "9", standing: "invented" }] };
}

test("a value that was typed stands in the profile as it was typed", () => {
  const { values } = entered(profile(10), "/bench/price", "9,50");
  assert.deepEqual(values?.map(({ value }) => value), ["10", "9,50"]);
});

test("an invented value that is typed as it stands is the maker's own, and one that is theirs is no change", () => {
  const changes = new Changes({ ...profile(10), file: "shop.toml" });
  changes.set("/bench/price", "95");
  changes.set("/bench/price", "9");
  changes.set("/bench/price", "9");
  assert.deepEqual(changes.list, [{ op: "confirm", pointer: "/bench/price" }]);
  const theirs = profile(10);
  theirs.values[1].standing = "yours";
  const none = new Changes({ ...theirs, file: "shop.toml" });
  none.set("/bench/price", "9");
  assert.deepEqual(none.list, []);
});

test("an item that is taken out is gone, and those after it move up", () => {
  const many = profile(...Array.from({ length: 12 }, (_, i) => i));
  const { tables, values } = applied(many, { op: "leave-out", pointer: "/areas/1" });
  assert.deepEqual(values?.map(({ value }) => value), ["0", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "9"]);
  assert.deepEqual(values?.map(({ pointer }) => pointer).slice(0, 11), Array.from({ length: 11 }, (_, i) => `/areas/${i}/own_van`));
  assert.equal(tables?.filter(({ kind }) => kind === "item").length, 11);
});

test("a table that is left out stays as a place to add it", () => {
  const { tables, values } = applied(profile(10), { op: "leave-out", pointer: "/bench" });
  assert.equal(tables?.find(({ pointer }) => pointer === "/bench")?.there, false);
  assert.equal(values?.length, 1);
});

test("a tick makes what is within a table the maker's own", () => {
  const { values } = applied(profile(10, 20), { op: "confirm", pointer: "/areas" });
  assert.deepEqual(values?.map(({ standing }) => standing), ["yours", "yours", "invented"]);
});

test("a step's tick speaks of the items as they stand once one was taken out", () => {
  const { steps } = applied(profile(10, 20, 30), { op: "leave-out", pointer: "/areas/0" });
  assert.deepEqual(steps.map(({ asks, rest }) => [asks, rest]), [[[], ["/areas/0/own_van", "/areas/1/own_van"]]]);
});

test("what was ticked is in no step's rest any more", () => {
  const { steps } = applied(profile(10, 20), { op: "confirm", pointer: "", values: ["/areas/1/own_van"] });
  assert.deepEqual(steps[0]?.rest, ["/areas/0/own_van"]);
});
