/** Which language the page speaks: the one asked for, else the visitor's, else the workshop's. */

/** Each has its file of messages, and the place whose numbers and days go with it. */
export const LOCALES = /** @type {Readonly<Record<string, string>>} */ ({ en: "en-GB", de: "de-DE" });

/**
 * The first of these that the page speaks; undefined where it speaks none.
 * @param {readonly (string | null | undefined)[]} wanted language tags (RFC 5646), the best first
 */
export function spokenOf(wanted) {
  const primary = wanted.map((tag) => (tag ?? "").toLowerCase().split("-")[0] ?? "");
  return primary.find((language) => Object.hasOwn(LOCALES, language));
}

/** Offer the page's other languages; what the address says beside its language stays. @param {HTMLElement} place */
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
