import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";

const web = new URL("../../web/", import.meta.url);
const files = readdirSync(web, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".js"));
const text = (/** @type {string} */ name) => readFileSync(new URL(name, web), "utf8");

test("no module of the page is long; the words are a table", () => {
  assert.ok(files.length > 25);
  const long = files.filter((name) => !name.startsWith("messages.") && text(name).split("\n").length > 200);
  assert.deepEqual(long, []);
});

test("no module declares a name twice, which the type check lets pass", () => {
  for (const name of files) {
    const declared = [...text(name).matchAll(/^(?:export )?(?:async )?(?:function|const|let|class) (\w+)/gm)].map(([, each]) => each);
    assert.equal(new Set(declared).size, declared.length, name);
  }
});

test("no module imports itself by way of others", () => {
  const imports = new Map(files.map((name) => [
    name,
    [...text(name).matchAll(/^(?:import|export) .*?"(\.[^"]+)";$/gms)].map(([, path]) => new URL(path ?? "", new URL(name, web)).href),
  ]));
  const address = (/** @type {string} */ name) => new URL(name, web).href;
  const named = new Map(files.map((name) => [address(name), name]));
  /** @param {string} name @param {string[]} path @returns {string[]} */
  const circle = (name, path) => {
    if (path.includes(name)) return [...path, name];
    for (const each of imports.get(name) ?? []) {
      const found = circle(named.get(each) ?? "", [...path, name]);
      if (found.length) return found;
    }
    return [];
  };
  for (const name of files) assert.deepEqual(circle(name, []), []);
});

test("what comes from a service never becomes markup", () => {
  for (const name of files) assert.doesNotMatch(text(name), /innerHTML|outerHTML|insertAdjacentHTML|document\.write|\beval\(/, name);
});
