/** The page inside another site: its height is told, its looks follow the site's. */

import { one } from "./show.js";

/** @type {Readonly<Record<string, string>>} what each look must be good for */
const LOOKS = { accent: "color", "accent-dark": "color", type: "font-family", radius: "border-radius" };
const LONGEST = 120;

/** @param {Window} site the window that the page stands in */
export function fitInto(site) {
  const root = document.documentElement;
  root.classList.add("embedded");
  const asked = new URLSearchParams(location.search);
  for (const [look, property] of Object.entries(LOOKS)) {
    const value = asked.get(look) ?? "";
    if (value.length <= LONGEST && CSS.supports(property, value)) root.style.setProperty(`--slab-${look}`, value);
  }
  // A height is no secret: whoever may frame the page is settled by the service's policy.
  const tell = () => site.postMessage({ type: "ledgerstone:height", v: 1, px: document.body.offsetHeight, title: document.title }, "*");
  new ResizeObserver(tell).observe(document.body);
  window.addEventListener("message", ({ source, data }) => {
    if (source === site && data?.type === "ledgerstone:seen" && Number.isFinite(data.bottom)) seen(data.bottom);
  });
}

/**
 * Keep the price at the foot of what is seen of the page.
 * @param {number} bottomPx of what is seen, from the page's top
 */
function seen(bottomPx) {
  const glance = one("#glance");
  const high = glance.offsetHeight;
  const most = document.body.offsetHeight - high;
  glance.style.top = `${Math.max(0, Math.min(bottomPx - high, most))}px`;
}
