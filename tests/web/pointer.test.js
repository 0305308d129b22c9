import assert from "node:assert/strict";
import { test } from "node:test";
import { partsOf, read, without, written } from "../../web/lib/pointer.js";

// RFC 6901 §5: the document and what each pointer evaluates to.
const document = { foo: ["bar", "baz"], "": 0, "a/b": 1, "c%d": 2, "e^f": 3, "g|h": 4, "i\\j": 5, 'k"l': 6, " ": 7, "m~n": 8 };
const EVALUATED = [
  ["", document], ["/foo", ["bar", "baz"]], ["/foo/0", "bar"], ["/", 0], ["/a~1b", 1], ["/c%d", 2],
  ["/e^f", 3], ["/g|h", 4], ["/i\\j", 5], ['/k"l', 6], ["/ ", 7], ["/m~0n", 8],
];

test("every pointer of RFC 6901 section 5 reads what the RFC says", () => {
  for (const [pointer, value] of EVALUATED) assert.deepEqual(read(document, /** @type {string} */ (pointer)), value);
});

test("a pointer to nothing, or to something inherited, reads nothing", () => {
  for (const pointer of ["/bar", "/foo/2", "/foo/01", "/foo/-", "/foo/length", "/toString", "/foo/0/0"])
    assert.equal(read(document, pointer), undefined, pointer);
});

test("a pointer that does not begin with a slash is refused", () => {
  assert.throws(() => partsOf("foo"));
});

test("writing a member copies the document and makes what is missing on the way", () => {
  const before = { slabs: [{ outline: { kind: "round" } }] };
  const after = written(before, "/slabs/0/rests/overhang/front", "20 mm");
  assert.deepEqual(before, { slabs: [{ outline: { kind: "round" } }] });
  assert.equal(after.slabs[0].rests.overhang.front, "20 mm");
  assert.equal(after.slabs[0].outline, before.slabs[0]?.outline);
});

test("taking a list's member out moves the later ones up", () => {
  assert.deepEqual(without({ a: [1, 2, 3] }, "/a/1"), { a: [1, 3] });
  assert.deepEqual(without({ a: { b: 1, c: 2 } }, "/a/b"), { a: { c: 2 } });
  assert.deepEqual(without({ a: 1 }, "/b"), { a: 1 });
});
