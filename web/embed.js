/** Puts the page into a maker’s own site, at this script; see examples/workshop.html. */
(() => {
  const LOOKS = ["accent", "accent-dark", "ground", "ground-dark", "type", "radius"];
  const [LEAST_PX, MOST_PX, PATIENCE_MS] = [200, 30_000, 4000];
  const script = /** @type {HTMLScriptElement} */ (document.currentScript ?? document.querySelector("script[src*='/embed.js']"));
  const { into, lang, scheme, title = "Price a slab" } = script.dataset;
  const page = new URL("./", script.src);
  const frame = document.createElement("iframe");
  let there = false;

  const place = () => {
    const round = (into && document.querySelector(into)) || (script.closest("body") ? script.parentElement : null) || document.body;
    for (const look of LOOKS) {
      const value = getComputedStyle(round).getPropertyValue(`--slab-${look}`).trim();
      if (value) page.searchParams.set(look, value);
    }
    if (lang) page.searchParams.set("lang", lang);
    if (scheme) page.searchParams.set("scheme", scheme);
    frame.title = title;
    frame.allow = "clipboard-write";
    frame.src = page.href;
    frame.style.cssText = "display: block; width: 100%; height: 60rem; border: 0";
    frame.addEventListener("load", () => setTimeout(refused, PATIENCE_MS), { once: true });
    if (round === script.parentElement) script.after(frame);
    else round.append(frame);
  };

  /** Not a site of the profile: a link. */
  const refused = () => {
    if (there) return;
    const note = document.createElement("p");
    const german = (lang ?? document.documentElement.lang).startsWith("de");
    const link = Object.assign(document.createElement("a"), { href: page.href, target: "_blank", textContent: title });
    note.append(german ? "Das öffnet sich auf einer eigenen Seite: " : "This opens on a page of its own: ", link);
    frame.replaceWith(note);
    console.warn(`${page.origin} shows itself only where its profile says: add "${location.origin}" to origins, under [web].`);
  };

  const seen = () => {
    if (!there) return;
    const bottom = window.innerHeight - frame.getBoundingClientRect().top;
    frame.contentWindow?.postMessage({ type: "ledgerstone:seen", v: 1, bottom }, page.origin);
  };
  window.addEventListener("message", ({ origin, source, data }) => {
    if (origin !== page.origin || source !== frame.contentWindow || data?.v !== 1 || typeof data.px !== "number") return;
    if (data.type === "ledgerstone:go") window.scrollBy({ top: frame.getBoundingClientRect().top + data.px - 16 });
    if (data.type !== "ledgerstone:height") return;
    there = true;
    frame.title = script.dataset.title ?? String(data.title);
    frame.style.height = `${Math.max(LEAST_PX, Math.min(Math.ceil(data.px), MOST_PX))}px`;
    seen();
  });
  window.addEventListener("scroll", seen, { passive: true });
  window.addEventListener("resize", seen);
  if (document.body) place();
  else document.addEventListener("DOMContentLoaded", place);
})();
