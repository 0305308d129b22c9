/** Keeps what somebody entered in this browser, where the browser lets it. */

/** @typedef {{order: Order, slab: number, unit: Unit}} Draft */

const DRAFT = "ledgerstone.draft.1";
const CHOICES = "ledgerstone.choices.1";

/**
 * @param {Draft} draft
 * @returns {boolean} whether it is kept
 */
export function keepDraft(draft) {
  return keep(DRAFT, draft);
}

/** @returns {Draft | null} */
export function keptDraft() {
  const draft = kept(DRAFT);
  const whole = Array.isArray(draft?.order?.slabs) && draft.order.slabs.every((/** @type {any} */ slab) => slab?.outline);
  return whole && draft.order.slabs.length ? draft : null;
}

/** Forget the draft. */
export function clearDraft() {
  keep(DRAFT, null);
}

/** @param {Choices} choices */
export function keepChoices(choices) {
  keep(CHOICES, choices);
}

/** @returns {Choices | null} */
export function keptChoices() {
  return kept(CHOICES);
}

/**
 * @param {string} name
 * @param {unknown} value
 */
function keep(name, value) {
  try {
    const here = `${name} ${location.pathname}`;
    if (value === null) localStorage.removeItem(here);
    else localStorage.setItem(here, JSON.stringify(value));
    return true;
  } catch {
    return false; // storage is switched off or full: the page says so
  }
}

/**
 * @param {string} name
 * @returns {any}
 */
function kept(name) {
  try {
    return JSON.parse(localStorage.getItem(`${name} ${location.pathname}`) ?? "null");
  } catch {
    return null;
  }
}
