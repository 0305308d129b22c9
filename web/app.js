import { askTools, keepTools } from "./answer/ask.js";
import { defineAnswer, showWorkshop, troubleNotice } from "./answer/panel.js";
import { Page } from "./page.js";
import { retryS, Service, Trouble } from "./service.js";
import { documentIn, fillWords, LOCALES, one, saidIn, setPlace, setWords, spokenOf } from "./show.js";
import { keepChoices, keptChoices } from "./store.js";

/** @param {Service} service */
async function languageFor(service) {
  const asked = new URLSearchParams(location.search).get("lang");
  const spoken = spokenOf([asked, ...navigator.languages]);
  if (spoken) return spoken;
  const choices = await service.choices().catch(() => keptChoices());
  return spokenOf([choices?.language, document.documentElement.lang]) ?? "en";
}

/** @param {string} language */
async function words(language) {
  const own = spokenOf([document.documentElement.lang]) === language;
  const [{ messages }, said] = await Promise.all([import(`./messages.${language}.js`), own ? document : documentIn(language)]);
  setWords({ ...saidIn(said), ...messages }, LOCALES[language] ?? language);
  document.documentElement.lang = LOCALES[language] ?? language;
  fillWords(document);
}

/** @param {readonly string[]} offered */
function offerLanguages(offered) {
  for (const link of one("#languages").querySelectorAll("a")) {
    link.hidden = link.lang === service.language || !offered.includes(link.lang);
    link.addEventListener("click", (event) => {
      event.preventDefault();
      const address = new URL(location.href);
      address.searchParams.set("lang", link.lang);
      location.assign(address);
    });
  }
}

function address() {
  const meta = document.querySelector('meta[name="ledgerstone-service"]');
  return meta?.getAttribute("content") ?? "";
}

/** @param {Service} service @param {Promise<Choices>} asked @param {number} tries */
async function choicesFrom(service, asked, tries = 0) {
  try {
    const choices = await asked;
    keepChoices(choices);
    return choices;
  } catch (fault) {
    const known = keptChoices();
    if (known) return known;
    await waited(fault instanceof Trouble ? fault.kind : "failed", retryS(tries));
    return choicesFrom(service, service.choices(), tries + 1);
  }
}

/** @param {string} kind @param {number} inS @returns {Promise<void>} */
function waited(kind, inS) {
  const place = document.querySelector("ledgerstone-answer .trouble");
  return new Promise((resolve) => {
    place?.replaceChildren(troubleNotice({ kind, inS }, resolve));
    setTimeout(resolve, inS * 1000);
  });
}

if (window.parent !== window) void import("./embedded.js").then(({ fitInto }) => fitInto(window.parent));
const service = new Service(address());
service.language = await languageFor(service);
const asked = service.choices();
asked.catch(() => null); // told once there are words for it
await words(service.language);
defineAnswer();
const choices = await choicesFrom(service, asked);
setPlace(choices);
document.documentElement.lang = choices.formats.locale;
fillWords(document);
offerLanguages(choices.languages ?? []);
showWorkshop(choices.workshop);
await new Page(service, choices, { ask: askTools, keep: keepTools }).begin();
one("#order").inert = false;
document.documentElement.classList.remove("starting");
