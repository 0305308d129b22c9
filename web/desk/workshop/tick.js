/** One tick for a table or a list: it confirms what is seen, and opens what is folded first. */

import { elements, make, say } from "../../show.js";

/** @typedef {import("./form.js").Form} Form */

/** @param {Form} form @param {string} pointer */
export function tick(form, pointer) {
  if (!isInvented(form, pointer)) return make("span");
  const box = make("input", { type: "checkbox" });
  const opened = make("span", { class: "hint", role: "status" });
  box.addEventListener("change", () => {
    const folded = box.checked ? foldedIn(form, pointer) : [];
    opened.textContent = folded.length ? say("whose.opened", { n: folded.length }) : "";
    if (!folded.length) return void form.confirm(pointer, box.checked);
    box.checked = false;
    for (const entry of folded) entry.setAttribute("open", "");
  });
  return make("p", { class: "ticks" }, make("label", { class: "tick" }, box, make("span", {}, say("whose.table"))), opened);
}

/** @param {Form} form @param {string} pointer */
function isInvented(form, pointer) {
  return form.values(pointer).some(({ standing }) => standing === "invented");
}

/** The entries within a table that hold invented values and are not open. @param {Form} form @param {string} pointer */
function foldedIn(form, pointer) {
  const entries = elements(form.place, "details.entry:not([open])");
  return entries.filter(({ dataset: { pointer: own = "" } }) => own.startsWith(`${pointer}/`) && isInvented(form, own));
}
