import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";
import { messages } from "../../web/messages.en.js";
import { day, money, say, setWords } from "../../web/show.js";

const web = new URL("../../web/", import.meta.url);
const html = readFileSync(new URL("index.html", web), "utf8");
const sources = readdirSync(web, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".js"));
const code = sources.map((name) => readFileSync(new URL(name, web), "utf8")).join("\n");
const plain = (/** @type {string} */ text) => text.replaceAll("&lt;", "<").replaceAll("&amp;", "&");

test("the page says before any script runs what its file of messages says", () => {
  const [seen = ""] = html.split("<template"); // what comes after is filled from the file of messages
  const said = [...html.matchAll(/<[^<>]*\bdata-says="([^"]+)"[^<>]*>([^<]*)/g)];
  assert.ok(said.length > 150);
  for (const [whole, key = "", text = ""] of said) {
    const message = messages[/** @type {keyof typeof messages} */ (key)];
    assert.ok(message, key);
    const scripted = !seen.includes(whole) || /data-do=|data-says="(openings\.none|openings\.add|reliefs\.add|joins|units\.wall|sketch|form\.check)/.test(whole);
    if (!scripted || text !== "") assert.equal(plain(text), message, key);
  }
});

test("every message that the code asks for by name is there", () => {
  const asked = [...code.matchAll(/\bsay\(\s*"([^"]+)"/g), ...code.matchAll(/\? "([a-z_]+\.[a-z-]+)" : "/g)].map(([, key = ""]) => key);
  assert.ok(asked.length > 60);
  for (const key of asked) assert.ok(key in messages, key);
});

test("no message says what house style leaves out", () => {
  const said = JSON.stringify(messages).toLowerCase();
  for (const word of ["please", "sorry", "invalid", "illegal", "forbidden", "oops", "this field is required"])
    assert.ok(!said.includes(word), word);
});

test("a message of one and of several is chosen by its number", () => {
  setWords(messages, "en-GB");
  assert.equal(say("findings.count", { n: 1 }), "1 thing to know.");
  assert.equal(say("findings.count", { n: 3 }), "3 things to know.");
});

test("money and days are written as the page's language writes them", () => {
  setWords(messages, "en-GB");
  assert.equal(money("1481.47", "GBP"), "£1,481.47");
  assert.equal(day("2027-03-25"), "Thursday 25 March 2027");
});
