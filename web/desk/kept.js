const NAME = "ledgerstone.offers.1";
const MOST = 50;
const EXPIRES_DAYS = 5;
const DAY_MS = 86_400_000;
export const STATES = /** @type {const} */ (["draft", "sent", "yes", "no"]);

/** Fires "change" when an offer here or in another tab has changed. */
export class KeptOffers extends EventTarget {
  constructor() {
    super();
    window.addEventListener("storage", ({ key }) => key === NAME && this.tell());
  }

  /** @returns {KeptOffer[]} */
  all() {
    try {
      return JSON.parse(localStorage.getItem(NAME) ?? "[]").filter(isOffer);
    } catch {
      return [];
    }
  }

  /** @param {string} token */
  of(token) {
    return this.all().find((offer) => offer.token === token);
  }

  /** The offer whose reference a text names; of several revisions the one named in full. @param {string} text */
  namedIn(text) {
    const upper = text.toUpperCase();
    const named = this.all().filter(({ reference }) => upper.includes(reference));
    return named.sort((a, b) => b.reference.length - a.reference.length)[0];
  }

  /** Keep an offer; one that is there already stays in its state. @param {KeptOffer} offer */
  put(offer) {
    this.write([{ ...offer, ...this.of(offer.token) }, ...this.all().filter(({ token }) => token !== offer.token)]);
  }

  /** @param {string} token @param {Partial<KeptOffer>} changes */
  set(token, changes) {
    this.write(this.all().map((offer) => (offer.token === token ? { ...offer, ...changes } : offer)));
  }

  /**
   * Add the offers of a file; what is here already stays as it is. How many were added.
   * @param {string} text
   */
  add(text) {
    const known = new Set(this.all().map(({ token }) => token));
    /** @type {unknown} */
    const given = JSON.parse(text);
    const offers = Array.isArray(given) ? given.filter(isOffer).filter(({ token }) => !known.has(token)) : [];
    this.write([...this.all(), ...offers]);
    return offers.length;
  }

  /** @param {KeptOffer[]} offers */
  write(offers) {
    try {
      localStorage.setItem(NAME, JSON.stringify(offers.slice(0, MOST)));
    } catch {
      return; // storage is full or switched off: the offer is in its letter's link
    }
    this.tell();
  }

  tell() {
    this.dispatchEvent(new Event("change"));
  }
}

/** @param {any} offer @returns {offer is KeptOffer} */
function isOffer(offer) {
  const texts = ["token", "reference", "customer", "to", "total", "currency", "until", "on"];
  return Boolean(offer) && texts.every((name) => typeof offer[name] === "string") && STATES.includes(offer.state) && areTerms(offer.terms ?? {});
}

/** @param {any} terms */
function areTerms({ adjustments = [] }) {
  return Array.isArray(adjustments) && adjustments.every((line) => typeof line?.text === "string" && typeof line.amount === "string");
}

/**
 * Why an offer waits for the maker: a yes without its deposit, no answer for so many days, or its
 * last days; null where it does not.
 * @param {KeptOffer} offer
 * @param {string} today
 * @param {number} patienceDays
 * @returns {{why: "unpaid" | "unanswered" | "expires", n: number} | null}
 */
export function waits({ state, paid, on, until }, today, patienceDays) {
  const since = daysFrom(on, today);
  const left = daysFrom(today, until);
  if (state === "yes") return paid ? null : { why: "unpaid", n: since };
  if (state === "no" || left < 0) return null;
  if (state === "sent" && since >= patienceDays) return { why: "unanswered", n: since };
  return left <= EXPIRES_DAYS ? { why: "expires", n: left } : null;
}

/** @param {string} one @param {string} other ISO 8601 */
function daysFrom(one, other) {
  return Math.round((Date.parse(other) - Date.parse(one)) / DAY_MS);
}

/**
 * The token of an offer in a link, or in a mail as it is sent: quoted-printable, or base64.
 * @param {string} text
 */
export function tokenIn(text) {
  const plain = text.replace(/=\r?\n/g, "").replace(/=3D/gi, "=");
  const blocks = text.match(/(?:^[A-Za-z0-9+/]{40,}\r?\n)+[A-Za-z0-9+/]*=*/gm) ?? [];
  for (const part of [plain, ...blocks.map(decoded)]) {
    const found = part.match(/[#&]quote=([\w-]{24,}\.[\w-]{43})/);
    if (found) return found[1] ?? "";
  }
  return /^[\w-]{24,}\.[\w-]{43}$/.test(text.trim()) ? text.trim() : "";
}

/** @param {string} block */
function decoded(block) {
  try {
    return atob(block.replace(/\s/g, ""));
  } catch {
    return "";
  }
}
