import assert from "node:assert/strict";
import { test } from "node:test";
import { partsOf, patched, read, same, StalePatch, without, written } from "../../web/lib/json.js";

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

// RFC 6902 Appendix A, those of the four operations that this page does: [section, document, patch, result].
const DONE = [
  ["A.1", { foo: "bar" }, [{ op: "add", path: "/baz", value: "qux" }], { baz: "qux", foo: "bar" }],
  ["A.2", { foo: ["bar", "baz"] }, [{ op: "add", path: "/foo/1", value: "qux" }], { foo: ["bar", "qux", "baz"] }],
  ["A.3", { baz: "qux", foo: "bar" }, [{ op: "remove", path: "/baz" }], { foo: "bar" }],
  ["A.4", { foo: ["bar", "qux", "baz"] }, [{ op: "remove", path: "/foo/1" }], { foo: ["bar", "baz"] }],
  ["A.5", { baz: "qux", foo: "bar" }, [{ op: "replace", path: "/baz", value: "boo" }], { baz: "boo", foo: "bar" }],
  ["A.8", { baz: "qux", foo: ["a", 2, "c"] }, [{ op: "test", path: "/baz", value: "qux" }, { op: "test", path: "/foo/1", value: 2 }], { baz: "qux", foo: ["a", 2, "c"] }],
  ["A.10", { foo: "bar" }, [{ op: "add", path: "/child", value: { grandchild: {} } }], { foo: "bar", child: { grandchild: {} } }],
  ["A.11", { foo: "bar" }, [{ op: "add", path: "/baz", value: "qux", xyz: 123 }], { foo: "bar", baz: "qux" }],
  ["A.14", { "/": 9, "~1": 10 }, [{ op: "test", path: "/~01", value: 10 }], { "/": 9, "~1": 10 }],
  ["A.16", { foo: ["bar"] }, [{ op: "add", path: "/foo/-", value: ["abc", "def"] }], { foo: ["bar", ["abc", "def"]] }],
];
const REFUSED = [
  ["A.9", { baz: "qux" }, [{ op: "test", path: "/baz", value: "bar" }]],
  ["A.12", { foo: "bar" }, [{ op: "add", path: "/baz/bat", value: "qux" }]],
  ["A.15", { "/": 9, "~1": 10 }, [{ op: "test", path: "/~01", value: "10" }]],
  ["§4.2", { foo: "bar" }, [{ op: "remove", path: "/baz" }]],
  ["§4.3", { foo: "bar" }, [{ op: "replace", path: "/baz", value: 1 }]],
  ["§4.1", { foo: ["bar"] }, [{ op: "add", path: "/foo/2", value: 1 }]],
  ["§4.1", { foo: ["bar"] }, [{ op: "add", path: "/foo/01", value: 1 }]],
  ["ours", { foo: "bar" }, [{ op: "move", from: "/foo", path: "/baz" }]],
];

test("the examples of RFC 6902 appendix A come out as the RFC says", () => {
  for (const [section, document, patch, result] of /** @type {any[]} */ (DONE))
    assert.deepEqual(patched(document, patch), result, section);
});

test("a patch that does not fit is refused, and so is an operation that remedies never use", () => {
  for (const [section, document, patch] of /** @type {any[]} */ (REFUSED))
    assert.throws(() => patched(document, patch), StalePatch, section);
});

test("a patch that fails half-way leaves the document as it was", () => {
  const document = { a: 1, b: 2 };
  const patch = [{ op: "replace", path: "/a", value: 9 }, { op: "test", path: "/b", value: 3 }];
  assert.throws(() => patched(document, patch), StalePatch);
  assert.deepEqual(document, { a: 1, b: 2 });
});

test("a member called __proto__ is a member and changes no prototype", () => {
  const after = patched({ a: {} }, [{ op: "add", path: "/a/__proto__", value: { stained: true } }]);
  assert.equal(Object.getPrototypeOf(after.a), Object.prototype);
  assert.equal(/** @type {any} */ ({}).stained, undefined);
});

test("equality is JSON's: the order of members does not count, the order of lists does", () => {
  assert.ok(same({ a: 1, b: [1, 2] }, { b: [1, 2], a: 1 }));
  assert.ok(!same([1, 2], [2, 1]) && !same({ a: 1 }, { a: 1, b: 2 }) && !same([], {}) && !same(1, "1"));
});
