/** The control that has the focus, given it back once the form is redrawn. */

/** @param {HTMLElement} place @returns {() => void} gives the focus to the control of the same id */
export function focusedIn(place) {
  const active = /** @type {HTMLInputElement | null} */ (place.contains(document.activeElement) ? document.activeElement : null);
  const { id, selectionStart: at } = active ?? { id: "", selectionStart: null };
  return () => {
    const again = id ? /** @type {HTMLInputElement | null} */ (place.querySelector(`#${CSS.escape(id)}`)) : null;
    again?.focus();
    if (at !== null) again?.setSelectionRange(at, at);
  };
}
