import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";
import { priceWords } from "../../web/answer/opened.js";
import { messages as deskGerman } from "../../web/desk/messages.de.js";
import { messages as deskEnglish } from "../../web/desk/messages.en.js";
import { messages as workshopGerman } from "../../web/desk/workshop/messages.de.js";
import { messages as workshopEnglish } from "../../web/desk/workshop/messages.en.js";
import { messages as file } from "../../web/messages.en.js";
import { day, lengthWords, marked, money, number, say, setPlace, setWords, sizes, typedMass, weight } from "../../web/show.js";
import { german, messages } from "./said.js";

const web = new URL("../../web/", import.meta.url);
const html = readFileSync(new URL("index.html", web), "utf8");
const sources = readdirSync(web, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".js") && !/(^|\/)messages\./.test(name));
const code = sources.map((name) => readFileSync(new URL(name, web), "utf8")).join("\n");
const plain = (/** @type {string} */ text) => text.replaceAll("&lt;", "<").replaceAll("&amp;", "&");

test("what the page says before any script runs stands in its document alone", () => {
  const [seen = ""] = html.split("<template"); // what comes after is filled from the file of messages
  const said = [...html.matchAll(/<[^<>]*\bdata-says="([^"]+)"[^<>]*>([^<]*)/g)];
  assert.ok(said.length > 150);
  for (const [whole, key = "", text = ""] of said) {
    assert.ok(key in messages, key);
    const scripted = !seen.includes(whole) || /data-do=|data-says="(openings\.none|openings\.add|start|draft|slabs|thickness\.usual|joins|units\.wall|sketch|form\.check)/.test(whole);
    if (!scripted || text !== "") assert.equal(plain(text), messages[key], key);
    if (seen.includes(whole) && text !== "") assert.ok(!(key in file), key);
  }
});

test("every message that the code asks for by name is there", () => {
  const asked = [...code.matchAll(/\bsay\(\s*"([^"]+)"/g), ...code.matchAll(/\? "([a-z_]+\.[a-z-]+)" : "/g)].map(([, key = ""]) => key);
  assert.ok(asked.length > 60);
  for (const key of asked) assert.ok(key in messages || key in deskEnglish || key in workshopEnglish, key);
});

test("every message is asked for, by its name or by how it begins", () => {
  const named = new Set([...`${code} ${html}`.matchAll(/"([a-z_]+\.[\w-]+)"/g)].map(([, key = ""]) => key));
  for (const [, key = ""] of html.matchAll(/data-says(?:-label)?="([^"]+)"/g)) named.add(key);
  const begun = [...code.matchAll(/`([a-z_]+\.[a-z-]*)\$\{/g)].map(([, start = ""]) => start);
  assert.ok(!begun.includes("answer."), "so many messages begin so that this would find nothing");
  const asked = (/** @type {string} */ key) => named.has(key) || begun.some((start) => key.startsWith(start));
  const choices = ["use", "kind", "corner", "profile", "side", "place", "surface", "rim", "finish", "delivery", "size_from"];
  const unasked = Object.keys(messages).filter((key) => !asked(key) && !choices.includes(key.split(".")[0] ?? ""));
  assert.deepEqual(unasked, []);
});

test("no message says what house style leaves out", () => {
  const said = JSON.stringify([messages, german, deskEnglish, deskGerman, workshopEnglish, workshopGerman]).toLowerCase();
  for (const word of [" bitte ", "ungültig", "leider", "unzulässig", "please", "sorry", "invalid", "illegal", "forbidden", "oops", "this field is required"])
    assert.ok(!said.includes(word), word);
});

test("a message of one and of several is chosen by its number", () => {
  setWords(messages, "en-GB");
  assert.equal(say("findings.count", { n: 1 }), "1 thing to know.");
  assert.equal(say("findings.count", { n: 3 }), "3 things to know.");
});

test("money, days, numbers and lengths are written as the page's language writes them", () => {
  setWords(messages, "en-GB");
  assert.equal(money("1481.47", "GBP"), "£1,481.47");
  assert.equal(day("2027-03-25"), "Thursday 25 March 2027");
  assert.equal(number(1800.5, 1), "1,800.5");
  assert.equal(lengthWords("1.45 m"), "1.45 m");
  setWords(german, "de-DE");
  assert.equal(money("1481.47", "EUR"), "1.481,47\u00a0€");
  assert.equal(day("2027-03-25"), "Donnerstag, 25. März 2027");
  assert.equal(day("2026-12-21", "short"), "21. Dez.");
  assert.equal(number(1800.5, 1), "1.800,5");
  assert.equal(lengthWords("1.45 m"), "1,45 m");
  assert.equal(lengthWords("4 ft 9 1/2 in"), "4 Fuß 9 1/2 Zoll");
  assert.equal(marked("9.5 in"), "9,5 in"); // as it was typed
  assert.equal(say("findings.count", { n: 1 }), "1 Hinweis.");
  assert.equal(say("findings.count", { n: 0 }), "0 Hinweise.");
});

test("a workshop in the United States has its own words, inches and pounds", () => {
  const formats = /** @type {const} */ ({ locale: "en-US", lengths: "in", masses: "lb" });
  setWords(messages, "en-GB");
  setPlace(/** @type {any} */ ({ words: { "add.hob": "Cooktop" }, formats }));
  assert.equal(say("add.hob"), "Cooktop");
  assert.equal(say("add.basin"), messages["add.basin"]);
  assert.equal(weight(68.5), "151 lb"); // 0.453 592 37 kg: NIST SP 811, appendix B.8
  assert.deepEqual(sizes(undefined, 1200.15, 609.6, 38.1), ["47 1/4", "24", "1 1/2 in"]);
  assert.equal(typedMass(1000), 453.6);
  assert.equal(typedMass(453.6, true), 1000);
  assert.equal(money("885.63", "USD"), "$885.63");
  assert.equal(day("2027-01-04"), "Monday, January 4, 2027");
  setPlace(/** @type {any} */ ({ words: {}, formats: { locale: "de-DE", lengths: "mm", masses: "kg" } }));
  assert.equal(weight(68.5, 1), "68,5 kg");
  assert.deepEqual(sizes({ kind: "round", diameter: 1200 }, 1200, 600), ["1.200", "600 mm"]);
});

test("a finished size is told in the unit in which the outline was typed, wherever the workshop is", () => {
  for (const lengths of /** @type {const} */ (["mm", "in"])) {
    setPlace(/** @type {any} */ ({ words: {}, formats: { locale: "en-GB", lengths, masses: "kg" } }));
    const said = (/** @type {string} */ length) => sizes({ kind: "rectangle", length, width: length }, 1524, 609.6);
    assert.deepEqual(said("60 in"), ["60", "24 in"]);
    assert.deepEqual(said("5 ft"), ["60", "24 in"]);
    assert.deepEqual(said("152.4 cm"), ["152.4", "61 cm"]);
    assert.deepEqual(said("1.524 m"), ["1.524 m", "609.6 mm"]);
    assert.deepEqual(said("1524 mm"), ["1,524", "609.6 mm"]);
  }
});

test("an offer without tax is told without it", () => {
  setWords(messages, "en-US");
  const price = /** @type {any} */ ({ total: "2134.00", tax: "0.00", currency: "USD" });
  assert.equal(priceWords(price, "sales tax"), "$2,134.00");
  assert.ok(priceWords({ ...price, tax: "170.72" }, "sales tax").includes("$170.72"));
});
