/**
 * One line puts the page into a maker's own site:
 *
 *   <script src="https://prices.example/embed.js" defer></script>
 *
 * The page stands where the script stands, as high as it needs to be. Its looks follow four custom
 * properties of the element round the script: --slab-accent, --slab-accent-dark, --slab-type and
 * --slab-radius. It speaks the visitor's language, or the one of data-lang on the script. Under a strict policy the site allows this service in script-src and frame-src;
 * the service allows the site by the origins in its profile.
 */
(() => {
  const LOOKS = ["accent", "accent-dark", "type", "radius"];
  const [LEAST_PX, MOST_PX] = [200, 30_000];
  const script = /** @type {HTMLScriptElement} */ (document.currentScript);
  const page = new URL("./", script.src);
  const style = getComputedStyle(script.parentElement ?? document.body);
  for (const look of LOOKS) {
    const value = style.getPropertyValue(`--slab-${look}`).trim();
    if (value) page.searchParams.set(look, value);
  }
  if (script.dataset.lang) page.searchParams.set("lang", script.dataset.lang);
  const frame = document.createElement("iframe");
  frame.title = script.dataset.title ?? "Price a slab";
  frame.src = page.href;
  frame.style.cssText = "display: block; width: 100%; height: 60rem; border: 0";
  script.after(frame);

  /** Tell the page how far down it is seen, so that its price stays in sight. */
  let there = false;
  const seen = () => {
    if (!there) return;
    const bottom = window.innerHeight - frame.getBoundingClientRect().top;
    frame.contentWindow?.postMessage({ type: "ledgerstone:seen", v: 1, bottom }, page.origin);
  };
  window.addEventListener("message", ({ origin, source, data }) => {
    if (origin !== page.origin || source !== frame.contentWindow) return;
    if (data?.type !== "ledgerstone:height" || data.v !== 1 || typeof data.px !== "number") return;
    there = true;
    frame.title = script.dataset.title ?? String(data.title);
    frame.style.height = `${Math.max(LEAST_PX, Math.min(Math.ceil(data.px), MOST_PX))}px`;
    seen();
  });
  window.addEventListener("scroll", seen, { passive: true });
  window.addEventListener("resize", seen);
})();
