/** Starts the page: its words, the workshop's choices, then the order. */

import { defineAnswer, showWorkshop, troubleNotice } from "./answer/panel.js";
import { Page } from "./page.js";
import { Service, Trouble } from "./service.js";
import { fillWords, one, setWords } from "./show.js";
import { keepChoices, keptChoices } from "./store.js";

const LONGEST_RETRY_S = 30;

async function words() {
  const { lang } = document.documentElement;
  const { messages } = await import(`./messages.${lang.split("-")[0]}.js`);
  setWords(messages, lang);
  fillWords(document);
}

function address() {
  const meta = document.querySelector('meta[name="ledgerstone-service"]');
  return meta?.getAttribute("content") ?? "";
}

/**
 * What the workshop offers; while the service is away, as it was last heard.
 * @param {Service} service
 * @param {number} tries
 */
async function choicesFrom(service, tries = 0) {
  try {
    const choices = await service.choices();
    keepChoices(choices);
    return choices;
  } catch (fault) {
    const known = keptChoices();
    if (known) return known;
    const inS = Math.min(2 ** (tries + 1), LONGEST_RETRY_S);
    await waited(fault instanceof Trouble ? fault.kind : "failed", inS);
    return choicesFrom(service, tries + 1);
  }
}

/**
 * Say that the service is away, and wait: so long, or until somebody presses.
 * @param {string} kind
 * @param {number} inS
 * @returns {Promise<void>}
 */
function waited(kind, inS) {
  const place = document.querySelector("ledgerstone-answer .trouble");
  return new Promise((resolve) => {
    place?.replaceChildren(troubleNotice({ kind, inS }, resolve));
    setTimeout(resolve, inS * 1000);
  });
}

if (window.parent !== window) void import("./embedded.js").then(({ fitInto }) => fitInto(window.parent));
await words();
defineAnswer();
const service = new Service(address());
const choices = await choicesFrom(service);
showWorkshop(choices.workshop);
new Page(service, choices).begin();
one("#order").inert = false;
