/** Runs before anything is drawn: where scripts run, the form is the live one; else the plain one. */
(() => {
  const { classList } = document.documentElement;
  if (!("noModule" in HTMLScriptElement.prototype)) return;
  classList.add("scripted");
  const plain = (/** @type {Event} */ { target }) => {
    if (target instanceof HTMLScriptElement) classList.remove("scripted");
  };
  window.addEventListener("error", plain, true);
})();
