import assert from "node:assert/strict";
import { readdirSync } from "node:fs";
import { test } from "node:test";
import { LOCALES, spokenOf } from "../../web/show.js";

test("the page speaks each language that has its file of messages, and no other", () => {
  const files = readdirSync(new URL("../../web/", import.meta.url)).filter((name) => name.startsWith("messages."));
  assert.deepEqual(files.sort(), Object.keys(LOCALES).map((language) => `messages.${language}.js`).sort());
});

test("of the languages wanted the first is spoken that the page has, whatever its region", () => {
  assert.equal(spokenOf(["de-AT", "en"]), "de");
  assert.equal(spokenOf([null, "fr", "nl-BE", "EN-us", "de"]), "en");
  assert.equal(spokenOf(["de", "en-GB"]), "de");
});

test("where no language wanted is had there is none, whatever it is called", () => {
  for (const wanted of [[], [null, undefined], ["fr"], ["constructor"], ["../x"], ["d"]]) assert.equal(spokenOf(wanted), undefined);
});
