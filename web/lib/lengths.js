/** @type {Unit[]} */
export const UNITS = ["mm", "cm", "m", "in"];
const MM_PER = new Map(
  Object.entries({ mm: 1, cm: 10, m: 1000, in: 25.4, inch: 25.4, inches: 25.4, zoll: 25.4, '"': 25.4 }),
);
const BARE = /^[-−]?([\d.,\s/½¼¾⅛⅜⅝⅞⁄-]*|\d{1,3}(['’]\d{3})+(\.\d+)?)$/;
const VULGAR = { "½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8" };

/** A text that carries its own unit is left as it was typed. @param {string} typed @param {Unit} unit */
export function withUnit(typed, unit) {
  const text = typed.trim();
  return /\d|[½¼¾⅛⅜⅝⅞]/.test(text) && BARE.test(text) ? `${text} ${unit}` : text;
}

/** As the service reads it. This language’s mark of thousands goes; of another’s the service asks. @param {string} typed @param {Unit} unit @param {Mark} mark */
export function withPoint(typed, unit, mark) {
  const [, number = "", own = ""] = withUnit(typed, unit).match(/^([-−]?[\d.,'’]*\d)\s*(\S*)$/) ?? [];
  const grouped = mark === "," ? /^[-−]?[1-9]\d{0,2}(\.\d{3})+(,\d+)?$/ : /^[-−]?[1-9]\d{0,2}([,'’]\d{3})+(\.\d+)?$/;
  if (grouped.test(number) && /^(mm|cm)$/i.test(own))
    return typed.replace(number, number.replaceAll(mark === "," ? "." : /[,'’]/g, "").replace(",", "."));
  if (mark === "," && /^[-−]?[1-9]\d{0,2}(,\d{3})+$/.test(number) && /^mm$/i.test(own)) return typed;
  return mark === "," ? typed.replace(/^([^.,]*),(\d[^.,]*)$/, "$1.$2") : typed;
}

/** 1.45, with the language's mark. @param {string} text @param {Mark} mark */
export function withMark(text, mark) {
  return mark === "," && !text.includes(",") ? text.replace(/^([^.]*\d)\.(\d[^.]*)$/, "$1,$2") : text;
}

/** @param {unknown} value @param {Unit} unit */
export function shownIn(value, unit) {
  if (value === undefined || value === null) return "";
  const text = typeof value === "number" ? `${value} mm` : String(value);
  const bare = text.endsWith(` ${unit}`) ? text.slice(0, -unit.length - 1) : text;
  return BARE.test(bare) ? bare : text;
}

/** Null where it is no length. @param {unknown} value */
export function inMm(value) {
  if (typeof value === "number") return Number.isFinite(value) ? value : null;
  const text = plain(String(value ?? ""));
  const feet = text.match(/^(-?)(\d+) ?(?:'|ft\.?|foot|feet) ?-? ?(.*)$/i);
  if (!feet) return amountInMm(text);
  const inches = feet[3] === "" ? 0 : amountInMm(feet[3] ?? "");
  if (inches === null) return null;
  return (feet[1] ? -1 : 1) * (Number(feet[2]) * 304.8 + inches);
}

/** @param {string} text */
function plain(text) {
  let tidy = text.replace(/[′’]/g, "'").replace(/[″”]|''/g, '"').replace(/⁄/g, "/").replace(/−/g, "-");
  for (const [mark, fraction] of Object.entries(VULGAR)) tidy = tidy.replaceAll(mark, ` ${fraction}`);
  return tidy.replace(/\s+/g, " ").trim();
}

/** @param {string} text */
function amountInMm(text) {
  const found = text.match(/^(-?)(?:(\d*\.?\d+|\d+)|(?:(\d+)[ -]+)?(\d+)\/(\d+)) ?(mm|cm|m|in|inch|inches|zoll|")\.?$/i);
  if (!found) return null;
  const [, sign, number, whole, over, under, unit] = found;
  const amount = number ? Number(number) : Number(whole ?? 0) + Number(over) / Number(under);
  const per = MM_PER.get((unit ?? "").toLowerCase()) ?? 1;
  return Number.isFinite(amount) ? (sign ? -1 : 1) * amount * per : null;
}

/** As people write it: whole millimetres, or eighths. @param {number} mm @param {Unit} unit @param {number} [parts] */
export function spoken(mm, unit, parts = 8) {
  if (unit !== "in") return `${trimmed(Math.round(mm) / (MM_PER.get(unit) ?? 1))} ${unit}`;
  const all = Math.round((Math.abs(mm) / 25.4) * parts);
  const whole = Math.floor(all / parts);
  let [over, under] = [all % parts, parts];
  while (over && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const said = [whole || !over ? String(whole) : "", over ? `${over}/${under}` : ""];
  return `${mm < 0 ? "-" : ""}${said.filter(Boolean).join(" ")} in`;
}

/** 5 mm, or a quarter of an inch. @param {Unit} unit */
export function fineStep(unit) {
  return unit === "in" ? 6.35 : 5;
}

/** @param {number} amount */
function trimmed(amount) {
  return String(Number(amount.toFixed(4)));
}
