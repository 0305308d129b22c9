/** Makes the plain form live once it is painted. */
(() => {
  const { classList } = document.documentElement;
  classList.add("scripted", "starting");
  document.addEventListener("DOMContentLoaded", () => {
    const form = /** @type {HTMLElement} */ (document.querySelector("#order"));
    form.inert = true; // else an entry would be lost
    const start = () =>
      import("./app.js").catch(() => {
        classList.remove("scripted", "starting");
        form.inert = false;
      });
    requestAnimationFrame(() => requestAnimationFrame(start));
    setTimeout(start, 1000);
  });
})();
