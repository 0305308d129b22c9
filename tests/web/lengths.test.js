import assert from "node:assert/strict";
import { test } from "node:test";
import { inMm, shownIn, spoken, withMark, withPoint, withUnit } from "../../web/lib/lengths.js";

test("a bare number takes the chosen unit; a text with its own keeps it", () => {
  assert.equal(withUnit("1450", "mm"), "1450 mm");
  assert.equal(withUnit(" 22 1/16 ", "in"), "22 1/16 in");
  assert.equal(withUnit("22½", "in"), "22½ in");
  assert.equal(withUnit("1,5", "m"), "1,5 m");
  for (const typed of ["1.45 m", `4' 9"`, "4 ft 9 in", "560mm", "nonsense", ""]) assert.equal(withUnit(typed, "mm"), typed);
});

test("a length is shown without the chosen unit and with any other", () => {
  assert.equal(shownIn("1450 mm", "mm"), "1450");
  assert.equal(shownIn("1450 mm", "in"), "1450 mm");
  assert.equal(shownIn("4 ft 9 in", "in"), "4 ft 9 in");
  assert.equal(shownIn(1450, "mm"), "1450");
  assert.equal(shownIn(undefined, "mm"), "");
});

test("what is shown for a typed length goes back to the service as it came", () => {
  for (const unit of /** @type {const} */ (["mm", "cm", "m", "in"]))
    for (const value of ["1450 mm", "22 1/16 in", "1.45 m", "4 ft 9 in", "56 cm", `4' 9"`])
      assert.equal(withUnit(shownIn(value, unit), unit), value);
});

// An inch is 25.4 mm exactly (US Federal Register 24 FR 5348, 1 July 1959).
const MM = /** @type {const} */ ([
  ["1450 mm", 1450], ["145cm", 1450], ["1.45 m", 1450], ["1 in", 25.4], ["22 1/16 in", 560.3875],
  ["1/2 in", 12.7], ['57"', 1447.8], ["4' 9\"", 1447.8], ["4 ft 9 in", 1447.8], ["4 ft", 1219.2],
  ["22½ in", 571.5], ["-5 mm", -5], [12, 12],
]);

test("lengths come to millimetres by exact inches", () => {
  for (const [text, mm] of MM) assert.ok(Math.abs((inMm(text) ?? NaN) - mm) < 1e-9, String(text));
});

test("what does not read as a length places nothing", () => {
  for (const text of ["", "nonsense", "1450", "1e9 mm", "mm", "1,5 m", "NaN", null, undefined, "1/0 in"]) assert.equal(inMm(text), null, String(text));
});

test("a worked-out length is spoken in whole millimetres or eighths of an inch", () => {
  assert.equal(spoken(980, "mm"), "980 mm");
  assert.equal(spoken(980, "cm"), "98 cm");
  assert.equal(spoken(980, "m"), "0.98 m");
  assert.equal(spoken(0, "in"), "0 in");
  assert.equal(spoken(3.175, "in"), "1/8 in");
  assert.equal(spoken(38.1, "in"), "1 1/2 in");
  assert.equal(spoken(-38.1, "in"), "-1 1/2 in");
});

// The marks are CLDR's: "," and "." in Germany, "." and "," in Britain, "." and "’" in Switzerland.
const TYPED = /** @type {const} */ ([
  ["1,5", "m", ",", "1.5"], ["1,5 m", "mm", ",", "1.5 m"], [",5", "cm", ",", ".5"], ["56,25cm", "mm", ",", "56.25cm"],
  ["1.450", "mm", ",", "1450"], ["1.450 mm", "m", ",", "1450 mm"], ["1.450,5", "mm", ",", "1450.5"], ["-1,5", "mm", ",", "-1.5"],
  ["1,450", "mm", ".", "1450"], ["1,450 mm", "m", ".", "1450 mm"], ["1,450.5", "mm", ".", "1450.5"],
  ["1’450", "mm", ".", "1450"], ["1'450 mm", "m", ".", "1450 mm"], ["1'450.5", "mm", ".", "1450.5"], ["4' 9\"", "mm", ".", "4' 9\""],
]);

test("a number typed with its language's marks goes to the service with a point and no mark of thousands", () => {
  for (const [typed, unit, mark, wire] of TYPED) assert.equal(withPoint(typed, unit, mark), wire, typed);
});

test("what a mark could mean in two ways, or means nothing, goes as it was typed", () => {
  for (const typed of ["1.45 m", "1.450 m", "1,450,5 mm", "1.45.2 mm", "22 1/16 in", "4' 9\"", "4 ft 9 in", "Küche", "1,5,2", "1,800 mm", "1,800", ""])
    assert.equal(withPoint(typed, "mm", ","), typed);
  for (const typed of ["1,5 m", "1,450 m", "1,45", "1.450 mm", "1.5"]) assert.equal(withPoint(typed, "mm", "."), typed);
});

test("what is shown with the language's mark goes back to the service as it came", () => {
  for (const wire of ["1.45 m", "1450 mm", "0.5 cm", "22 1/16 in", "4 ft 9.5 in", "1.5.2", "12.5"])
    for (const mark of /** @type {const} */ ([".", ","])) assert.equal(withPoint(withMark(wire, mark), "m", mark), wire);
  assert.equal(withMark("1.45 m", ","), "1,45 m");
  assert.equal(withMark("nonsense 1.5.2", ","), "nonsense 1.5.2");
});
