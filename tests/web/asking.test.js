import assert from "node:assert/strict";
import { mock, test } from "node:test";
import { Asking } from "../../web/asking.js";
import { Trouble } from "../../web/service.js";

/** A service that answers when it is told to. */
function slowService() {
  /** @type {{order: any, minimal: boolean, answer: (body: any) => void, fail: (fault: Error) => void}[]} */
  const asked = [];
  const quote = (/** @type {any} */ order, /** @type {any} */ { minimal }) =>
    new Promise((resolve, reject) => {
      asked.push({ order, minimal, answer: (body) => resolve({ kind: "quote", body }), fail: reject });
    });
  return { asked, service: /** @type {any} */ ({ quote }) };
}

/** @param {string} name @returns {any} */
const order = (name) => ({ name, slabs: [] });
const turn = () => new Promise((resolve) => setImmediate(resolve));

test("an older answer never takes a newer one's place", async () => {
  const { asked, service } = slowService();
  const asking = new Asking(service);
  /** @type {any[]} */
  const shown = [];
  asking.addEventListener("answer", (event) => shown.push(/** @type {CustomEvent} */ (event).detail.answer.body));
  void asking.now(order("old"));
  void asking.now(order("new"));
  asked[1]?.answer("new");
  await turn();
  asked[0]?.answer("old");
  await turn();
  assert.deepEqual(shown, ["new"]);
});

test("the first key is priced at once and the rest at a pause, for little, and all of it once it rests", async () => {
  mock.timers.enable({ apis: ["setTimeout"] });
  const { asked, service } = slowService();
  const asking = new Asking(service);
  for (const name of ["1", "14", "145"]) {
    asking.ask(order(name), { typing: true });
    mock.timers.tick(100);
  }
  assert.deepEqual(asked.map(({ order }) => order.name), ["1"]);
  mock.timers.tick(50);
  assert.deepEqual(asked.map(({ order, minimal }) => [order.name, minimal]), [["1", true], ["145", true]]);
  asked[0]?.answer({});
  await turn();
  assert.equal(asking.shown, null);
  asked[1]?.answer({});
  await turn();
  mock.timers.tick(700);
  assert.deepEqual(asked.map(({ minimal }) => minimal), [true, true, false]);
  mock.timers.reset();
});

test("what waits for nothing is asked before anything is told of it; so is a drag's first move", async () => {
  mock.timers.enable({ apis: ["setTimeout", "Date"], now: 1000 });
  const { asked, service } = slowService();
  const asking = new Asking(service);
  let told = 0;
  asking.addEventListener("asking", () => (told += 1));
  asking.ask(order("chosen"), { typing: false });
  assert.deepEqual([asked.length, told], [1, 0]);
  await turn();
  assert.equal(told, 1);
  asked[0]?.answer({});
  await turn();
  asking.ask(order("moved"), { typing: false, moving: true });
  assert.equal(asked.length, 2);
  asked[1]?.answer({});
  await turn();
  asking.ask(order("moved on"), { typing: false, moving: true });
  mock.timers.tick(149);
  assert.equal(asked.length, 2);
  mock.timers.tick(1);
  assert.deepEqual(asked.map(({ order }) => order.name), ["chosen", "moved", "moved on"]);
  mock.timers.reset();
});

test("a service that is away is asked again, later each time, until it is back", async () => {
  mock.timers.enable({ apis: ["setTimeout"] });
  const { asked, service } = slowService();
  const asking = new Asking(service);
  /** @type {number[]} */
  const waits = [];
  let well = 0;
  asking.addEventListener("trouble", (event) => waits.push(/** @type {CustomEvent} */ (event).detail.inS));
  asking.addEventListener("well", () => (well += 1));
  void asking.now(order("kept"));
  for (const wait of [2, 4, 8, 16, 30]) {
    asked.at(-1)?.fail(new Trouble("down"));
    await turn();
    assert.equal(waits.at(-1), wait);
    mock.timers.tick(wait * 1000);
  }
  asked.at(-1)?.answer({});
  await turn();
  assert.equal(well, 1);
  assert.ok(asked.every(({ order }) => order.name === "kept"));
  mock.timers.reset();
});

test("a service that says when to come back is not asked before", async () => {
  const { asked, service } = slowService();
  const asking = new Asking(service);
  let wait = 0;
  asking.addEventListener("trouble", (event) => (wait = /** @type {CustomEvent} */ (event).detail.inS));
  void asking.now(order("busy"));
  asked[0]?.fail(new Trouble("busy", 17));
  await turn();
  clearTimeout(asking.timer);
  assert.equal(wait, 17);
});

test("where the search for remedies fails, the answer before it stands and nobody is asked again", async () => {
  mock.timers.enable({ apis: ["setTimeout"] });
  const { asked, service } = slowService();
  const asking = new Asking(service);
  /** @type {any[]} */
  const shown = [];
  let troubles = 0;
  asking.addEventListener("answer", (event) => shown.push(/** @type {CustomEvent} */ (event).detail));
  asking.addEventListener("trouble", () => (troubles += 1));
  asking.ask(order("hard"), { typing: false });
  mock.timers.tick(0);
  asked[0]?.answer("findings alone");
  await turn();
  mock.timers.tick(700);
  asked[1]?.fail(new Trouble("down"));
  await turn();
  mock.timers.tick(120_000);
  assert.deepEqual(shown.map(({ settled, partial }) => [settled, partial]), [[false, undefined], [true, true]]);
  assert.equal(shown[1].answer.body, "findings alone");
  assert.equal(troubles, 0);
  assert.equal(asked.length, 2);
  mock.timers.reset();
});
