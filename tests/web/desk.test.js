import assert from "node:assert/strict";
import { test } from "node:test";
import { openPoints, OriginalOrder, orderOf, pieces, pointsOf } from "../../web/desk/points.js";

globalThis.window = /** @type {any} */ ({ addEventListener() {} });
const { KeptOffers, tokenIn, waits } = await import("../../web/desk/kept.js");

/** @type {any} */
const reading = {
  order: { slabs: [{ thickness: "40 mm" }], delivery: { postcode: "HR0 4XX" } },
  proposal: null,
  customer: { language: "de" },
  read: [{ at: "/slabs/0/thickness", mm: 40, how: "said", from: [{ start: 2, end: 6, text: "40mm" }] }],
  assumed: [{ at: "/slabs/0/place", value: "indoors", says: "We took it that it is for indoors." }],
  unread: [{ kind: "size", start: 7, end: 8, text: "🙂" }],
  doubtful: [],
  missing: [{ at: "/slabs/0/outline/length", asks: "How long is it?" }],
};
/** @type {any} */
const choices = { start: { length_mm: 1524, width_mm: 609.6, thickness_mm: 40 }, shades: [], finishes: [], sealers: [], formats: { lengths: "mm" } };

test("what was said stands on a plain slab whose sizes are left empty, in the customer's language", () => {
  const order = orderOf(reading, choices);
  assert.equal(order.slabs[0]?.thickness, "40 mm");
  assert.deepEqual(order.slabs[0]?.outline, { length: "", width: "", kind: "rectangle" });
  assert.deepEqual(order.delivery, { kind: "pallet", postcode: "HR0 4XX" });
  assert.equal(order.language, "de");
});

test("a point stands until it is confirmed or its value is another, and stands again when that is undone", () => {
  const order = orderOf(reading, choices);
  const points = pointsOf(reading, order);
  const kinds = (/** @type {any} */ at) => openPoints(points, at).map(({ kind }) => kind);
  assert.deepEqual(kinds(order), ["unread", "missing", "assumed", "said"]);
  const changed = { ...order, slabs: [{ ...order.slabs[0], place: "outdoors" }] };
  assert.deepEqual(kinds(changed), ["unread", "missing", "said"]);
  assert.deepEqual(kinds(order), ["unread", "missing", "assumed", "said"]);
  for (const point of points) point.settled = point.kind === "missing" || point.kind === "unread";
  assert.deepEqual(kinds(order), ["assumed", "said"]);
});

test("what is doubtful and has no reading is asked, and its words stay marked", () => {
  const from = [{ start: 0, end: 9, text: "by spring" }];
  const vague = { at: "/needed_by", says: "“by spring” names no day.", asks: "By which day?", readings: [{ value: "", from }] };
  const points = pointsOf({ ...reading, doubtful: [vague] }, orderOf(reading, choices));
  const day = points.find(({ at }) => at === "/needed_by");
  assert.deepEqual([day?.kind, day?.asks, day?.from], ["missing", "By which day?", from]);
});

test("a text falls into pieces by code points, however wide a letter is", () => {
  const order = orderOf(reading, choices);
  const cut = pieces("🙂 40mm 🙂", pointsOf(reading, order));
  assert.deepEqual(
    cut.map(({ text, points }) => [text, points.length]),
    [
      ["🙂 ", 0],
      ["40mm", 1],
      [" ", 0],
      ["🙂", 1],
    ],
  );
});

/** @type {any} */
const offer = { token: "t", reference: "A", customer: "", to: "", total: "1", currency: "GBP", until: "2026-12-25", on: "2026-11-25", state: "sent" };

test("an offer waits when nobody answers, when its last days come, and as a yes without its deposit", () => {
  const on = (/** @type {any} */ more, /** @type {string} */ day) => waits({ ...offer, ...more }, day, 7)?.why ?? null;
  assert.equal(on({}, "2026-12-01"), null);
  assert.equal(on({}, "2026-12-02"), "unanswered");
  assert.equal(on({ state: "draft" }, "2026-12-19"), null);
  assert.equal(on({ state: "draft" }, "2026-12-20"), "expires");
  assert.equal(on({}, "2026-12-26"), null);
  assert.equal(on({ state: "yes" }, "2026-11-25"), "unpaid");
  assert.equal(on({ state: "yes", paid: true }, "2026-11-25"), null);
  assert.equal(on({ state: "no" }, "2026-12-24"), null);
});

test("a token is found in a link, in a quoted-printable mail and in one in base64", () => {
  const token = `${"x".repeat(30)}-y_.${"z".repeat(43)}`;
  const link = `https://prices.example/#quote=${token}`;
  const folded = `<a href=3D"https://prices.example/#quote=3D${token.slice(0, 9)}=\r\n${token.slice(9)}">`;
  const packed = btoa(`Hello, see ${link} and tell us.`).replace(/.{60}/g, "$&\r\n");
  for (const text of [link, `see ${link}.\n`, folded, `Content-Transfer-Encoding: base64\r\n\r\n${packed}\r\n`, token])
    assert.equal(tokenIn(text), token, text);
  assert.equal(tokenIn("nothing here"), "");
});

test("the last fifty are kept, what is there stays in its state, and a file adds only what is new", () => {
  /** @type {Map<string, string>} */
  const shelf = new Map();
  globalThis.localStorage = /** @type {any} */ ({ getItem: (/** @type {string} */ k) => shelf.get(k) ?? null, setItem: (/** @type {string} */ k, /** @type {string} */ v) => shelf.set(k, v) });
  const kept = new KeptOffers();
  for (let i = 0; i < 60; i += 1) kept.put({ ...offer, token: `t${i}` });
  assert.equal(kept.all().length, 50);
  assert.equal(kept.all()[0]?.token, "t59");
  kept.set("t59", { state: "yes" });
  kept.put({ ...offer, token: "t59", state: "draft" });
  assert.equal(kept.of("t59")?.state, "yes");
  const file = JSON.stringify([{ ...offer, token: "t59" }, { ...offer, token: "new" }, { token: 1 }, null]);
  kept.write(kept.all().slice(0, 10));
  assert.equal(kept.add(file), 1);
  assert.equal(kept.all().length, 11);
  assert.throws(() => kept.add("no json"));
});

test("a fix is what the customer did not ask for; what the maker enters is the customer's, and what is undone never was", () => {
  const slab = { thickness: "30 mm", outline: { kind: "rectangle", length: "2 m", width: "60 cm" }, cutouts: [{ centre: { x: "40 cm" } }] };
  /** @type {any} */
  const store = { order: { slabs: [slab] } };
  const asked = new OriginalOrder(store);
  const become = (/** @type {any} */ change, /** @type {any} */ cause) => {
    store.order = { ...store.order, ...change };
    asked.follow(cause);
  };
  become({ needed_by: "2027-01-04" }, "typing");
  assert.equal(asked.sent(""), null);
  const typed = store.order;
  become({ slabs: [{ ...slab, thickness: "40 mm" }] }, "fix");
  assert.deepEqual(asked.sent(""), typed);
  become({ slabs: [{ ...slab, thickness: "40 mm", cutouts: [{ centre: { x: "50 cm" } }] }] }, "moving");
  become({ needed_by: "2027-02-01" }, "fix");
  const theirs = { slabs: [{ ...slab, cutouts: [{ centre: { x: "50 cm" } }] }], needed_by: "2027-01-04" };
  assert.deepEqual(asked.sent(""), theirs);
  assert.deepEqual(asked.sent("2027-01-03"), { ...theirs, needed_by: "2027-01-03" });
  become(theirs, "undo");
  assert.equal(asked.sent(""), null);
});
