export const LOCALES = /** @type {Readonly<Record<string, string>>} */ ({ en: "en-GB", de: "de-DE" });

/** @param {readonly (string | null | undefined)[]} wanted language tags (RFC 5646), the best first */
export function spokenOf(wanted) {
  const primary = wanted.map((tag) => (tag ?? "").toLowerCase().split("-")[0] ?? "");
  return primary.find((language) => Object.hasOwn(LOCALES, language));
}

/** What a document says before any script runs. @param {Document} said @returns {Messages} */
export function saidIn(said) {
  const parts = [said, ...Array.from(said.querySelectorAll("template"), ({ content }) => content)];
  const all = (/** @type {string} */ name) => parts.flatMap((part) => Array.from(part.querySelectorAll(`[${name}]`), (each) => /** @type {const} */ ([each.getAttribute(name), each])));
  const texts = all("data-says").map(([name, { textContent }]) => [name, textContent]);
  const names = all("data-says-label").map(([name, each]) => [name, each.getAttribute("aria-label")]);
  return Object.fromEntries([...texts, ...names]);
}

/** @param {string} language @param {string} [from] */
export async function documentIn(language, from = "") {
  const answer = await fetch(`${from}index.${language === "en" ? "" : `${language}.`}html`);
  return new DOMParser().parseFromString(await answer.text(), "text/html");
}

/** @param {HTMLElement} place */
export function offerLanguages(place) {
  for (const link of place.querySelectorAll("a")) {
    link.hidden = link.lang === spokenOf([document.documentElement.lang]);
    link.addEventListener("click", (event) => {
      event.preventDefault();
      const address = new URL(location.href);
      address.searchParams.set("lang", link.lang);
      location.assign(address);
    });
  }
}
