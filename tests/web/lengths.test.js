import assert from "node:assert/strict";
import { test } from "node:test";
import { inMm, shownIn, spoken, withUnit } from "../../web/lib/lengths.js";

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
