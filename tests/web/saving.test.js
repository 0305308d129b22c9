/** What the profile's form says once it has saved: that the new file is in use only where it is. */

import assert from "node:assert/strict";
import { test } from "node:test";

import { DeskService } from "../../web/desk/service.js";
import { Trouble } from "../../web/service.js";

globalThis.document = /** @type {any} */ ({ documentElement: { lang: "en" }, baseURI: "http://shop.test/desk/" });

/** @param {(string | Error)[]} answers one each time it is asked, the last for good */
function tookUp(...answers) {
  const service = new DeskService("http://shop.test/");
  service.inUse = async () => {
    const next = answers.length > 1 ? answers.shift() : answers[0];
    if (next instanceof Error) throw next;
    return next ?? "";
  };
  return service.tookUp("old", 0);
}

test("a new file is in use once every answer in a row is by it", async () => {
  assert.equal(await tookUp("old", "old", "new"), true);
});

test("a file that the service does not take up in time is not said to be in use", async () => {
  assert.equal(await tookUp("old"), false);
});

test("one worker of several that answers by it is not all of them", async () => {
  const turns = Array.from({ length: 200 }, (_, i) => (i % 4 ? "new" : "old"));
  assert.equal(await tookUp(...turns), false);
});

test("a service that is away for a moment is asked again, and away for good it is not in use", async () => {
  assert.equal(await tookUp(new Trouble("down"), "new"), true);
  assert.equal(await tookUp(new Trouble("down")), false);
});

test("a fault of our own is thrown", async () => {
  await assert.rejects(tookUp(new TypeError("ours")), TypeError);
});
