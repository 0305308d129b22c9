import assert from "node:assert/strict";
import { test } from "node:test";
import { patched, same, StalePatch } from "../../web/lib/patch.js";

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
