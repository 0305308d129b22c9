import { one } from "./show.js";

/** @type {Record<string, string>} */
const LOOKS = { accent: "color", "accent-dark": "color", ground: "color", "ground-dark": "color", type: "font-family", radius: "border-radius" };
const LONGEST = 120;

/** @param {Window} site */
export function fitInto(site) {
  const root = document.documentElement;
  root.classList.add("embedded");
  const asked = new URLSearchParams(location.search);
  for (const [look, property] of Object.entries(LOOKS)) {
    const value = asked.get(look) ?? "";
    if (value.length <= LONGEST && CSS.supports(property, value)) root.style.setProperty(`--slab-${look}`, value);
  }
  const scheme = asked.get("scheme") ?? "";
  if (/^(light|dark)$/.test(scheme)) force(scheme);
  // No secret: the service's policy decides who may frame the page.
  const tell = (/** @type {object} */ told) => site.postMessage({ v: 1, ...told }, "*");
  const high = () => tell({ type: "ledgerstone:height", px: document.body.offsetHeight, title: document.title });
  new ResizeObserver(high).observe(document.body);
  window.addEventListener("message", ({ source, data }) => {
    if (source === site && data?.type === "ledgerstone:seen" && Number.isFinite(data.bottom)) seen(data.bottom);
  });
  document.addEventListener("click", (event) => {
    const link = event.target instanceof Element ? event.target.closest("a[href^='#']") : null;
    const target = event.defaultPrevented ? null : document.getElementById(link?.getAttribute("href")?.slice(1) ?? "");
    if (target) tell({ type: "ledgerstone:go", px: target.getBoundingClientRect().top + window.scrollY });
  });
}

/** @param {string} scheme */
function force(scheme) {
  document.documentElement.style.colorScheme = scheme;
  for (const rule of Array.from(document.styleSheets).flatMap((sheet) => Array.from(sheet.cssRules)))
    if (rule instanceof CSSMediaRule && /dark/.test(rule.media.mediaText)) rule.media.mediaText = scheme === "dark" ? "all" : "not all";
}

/** @param {number} bottomPx */
function seen(bottomPx) {
  const bar = one("#bar");
  const high = bar.offsetHeight;
  const most = document.body.offsetHeight - high;
  bar.style.top = `${Math.max(0, Math.min(bottomPx - high, most))}px`;
}
