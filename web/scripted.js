/** Where scripts run, the plain form becomes the live one, once it is painted; where that fails it stays plain. */
(() => {
  const { classList } = document.documentElement;
  classList.add("scripted");
  document.addEventListener("DOMContentLoaded", () => {
    const form = /** @type {HTMLElement} */ (document.querySelector("#order"));
    form.inert = true; // until it is known what the workshop offers, an entry would be lost
    const start = () =>
      import("./app.js").catch(() => {
        classList.remove("scripted");
        form.inert = false;
      });
    requestAnimationFrame(() => requestAnimationFrame(start));
    setTimeout(start, 1000); // what nobody sees yet is not painted
  });
})();
