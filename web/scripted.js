/** Where scripts run, the plain form becomes the live one, once it is painted; where that fails it stays plain. */
(() => {
  const { classList } = document.documentElement;
  classList.add("scripted");
  const start = () => void import("./app.js").catch(() => classList.remove("scripted"));
  document.addEventListener("DOMContentLoaded", () => {
    requestAnimationFrame(() => requestAnimationFrame(start));
    setTimeout(start, 1000); // what nobody sees yet is not painted
  });
})();
