/** What the page says when the service gives no answer, and how to reach people instead. */

import { make } from "../make.js";
import { say } from "../words.js";

/**
 * @param {{kind: string, inS: number}} trouble
 * @param {() => void} again
 * @returns {HTMLElement}
 */
export function troubleNotice({ kind, inS }, again) {
  return make(
    "div",
    { class: "notice" },
    make("p", {}, `${say(`trouble.${kind}`)} ${say("trouble.kept")} ${say("trouble.retry", { n: Math.round(inS) })}`),
    make("p", {}, make("button", { type: "button", "data-key": "again", press: again }, say("trouble.now"))),
    reach(),
  );
}

/** How to reach the workshop: what the page's own address says. */
function reach() {
  const [email, telephone] = Array.from(document.querySelectorAll("#reach a"), (link) => /** @type {Element} */ (link.cloneNode(true)));
  const words = say("page.reach", { email: "\u0000", telephone: "\u0000" }).split("\u0000");
  return make("p", {}, words[0] ?? "", email, words[1] ?? "", telephone, words[2] ?? "");
}

/**
 * Put the workshop's own name and address on the page.
 * @param {{name: string, town: string, email: string, telephone: string}} workshop
 */
export function showWorkshop(workshop) {
  const [email, telephone] = document.querySelectorAll("#reach a");
  if (email instanceof HTMLAnchorElement) {
    email.textContent = workshop.email;
    email.href = `mailto:${workshop.email}`;
  }
  if (telephone instanceof HTMLAnchorElement) {
    telephone.textContent = workshop.telephone;
    telephone.href = `tel:${workshop.telephone.replace(/[^\d+]/g, "")}`;
  }
  const maker = document.querySelector("#maker");
  if (maker) maker.textContent = say("page.made-by", { name: workshop.name, town: workshop.town });
}
