/** Starts the page: its words, the workshop's choices, then the order. */

import { keepTools } from "./answer/keep.js";
import { defineAnswer, showWorkshop, troubleNotice } from "./answer/panel.js";
import { LOCALES, offerLanguages, spokenOf } from "./language.js";
import { Page } from "./page.js";
import { Service, Trouble } from "./service.js";
import { fillWords, one, setPlace, setWords } from "./show.js";
import { keepChoices, keptChoices } from "./store.js";

const LONGEST_RETRY_S = 30;

/** @param {Service} service */
async function words(service) {
  const asked = new URLSearchParams(location.search).get("lang");
  const language = spokenOf([asked, ...navigator.languages]) ?? (await workshops(service));
  const { messages } = await import(`./messages.${language}.js`);
  setWords(messages, LOCALES[language] ?? language);
  service.language = language;
  document.documentElement.lang = LOCALES[language] ?? language;
  fillWords(document);
  offerLanguages(one("#languages"));
}

/** The workshop's own language, for a visitor who has none of the page's. @param {Service} service */
async function workshops(service) {
  const choices = await service.choices().catch(() => keptChoices());
  return spokenOf([choices?.language, document.documentElement.lang]) ?? "en";
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
const service = new Service(address());
await words(service);
defineAnswer();
const choices = await choicesFrom(service);
setPlace(choices);
document.documentElement.lang = choices.formats.locale;
fillWords(document);
showWorkshop(choices.workshop);
new Page(service, choices, keepTools).begin();
one("#order").inert = false;
