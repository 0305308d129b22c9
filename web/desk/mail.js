/** A mail's HTML as elements of this page: its text, tables, pictures and links, and no markup of its own. */

const TAGS = new Set("A B BR DIV EM H1 H2 H3 HR I IMG LI OL P SPAN STRONG TABLE TBODY TD TH THEAD TR UL".split(" "));
const KEPT = ["width", "height", "alt", "colspan", "align", "valign", "role", "cellpadding", "cellspacing"];

/**
 * @param {string} html of our own service
 * @param {(link: string) => string} picture where a picture is, seen from this page
 */
export function mailNodes(html, picture) {
  const parsed = html.replaceAll(' style="', ' data-style="'); // a style that is parsed is against the policy
  const { body } = new DOMParser().parseFromString(parsed, "text/html");
  return Array.from(body.childNodes).flatMap((node) => again(node, picture));
}

/** @param {Node} node @param {(link: string) => string} picture @returns {Node[]} */
function again(node, picture) {
  if (node instanceof Text) return [document.createTextNode(node.data)];
  if (!(node instanceof HTMLElement)) return [];
  const children = Array.from(node.childNodes).flatMap((child) => again(child, picture));
  if (!TAGS.has(node.tagName)) return children;
  const element = document.createElement(node.tagName);
  for (const name of KEPT) if (node.hasAttribute(name)) element.setAttribute(name, node.getAttribute(name) ?? "");
  element.style.cssText = node.dataset.style ?? "";
  if (element instanceof HTMLImageElement) element.src = picture(node.getAttribute("src") ?? "");
  const href = node.getAttribute("href") ?? "";
  if (element instanceof HTMLAnchorElement && /^(https?|mailto|tel):/.test(href)) Object.assign(element, { href, target: "_blank", rel: "noopener" });
  element.append(...children);
  return [element];
}
