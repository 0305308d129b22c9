import { make, say } from "../show.js";

/** @param {Blob} content @param {string} name */
export function saved(content, name) {
  const address = URL.createObjectURL(content);
  const link = make("a", { href: address, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/**
 * Copy a text in several forms; false where the browser does not let pages copy. The newer clipboard
 * call takes the styles out of HTML under a strict policy, and is not there without TLS.
 * @param {Record<string, string>} forms by media type
 */
export function copied(forms) {
  let done = false;
  const give = (/** @type {ClipboardEvent} */ event) => {
    for (const [type, text] of Object.entries(forms)) event.clipboardData?.setData(type, text);
    event.preventDefault();
    done = true;
  };
  document.addEventListener("copy", give);
  document.execCommand("copy");
  document.removeEventListener("copy", give);
  return done;
}

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

/**
 * @typedef {{reference: string, ask: object, missing?: {at: string, asks: string}[]}} Of an offer's name, what its
 *   papers are asked by, and what the customer has not answered: for the job sheet
 */

/** @type {readonly [string, string, import("./service.js").FileKind, string][]} what, where, its form, the file's ending */
const PAPERS = [
  ["approval", "v1/sheets/approval", "application/pdf", "pdf"],
  ["fitting", "v1/sheets/fitting", "application/pdf", "pdf"],
  ["care", "v1/sheets/care", "application/pdf", "pdf"],
  ["job", "v1/job-sheets", "application/pdf", "pdf"],
  ["calendar", "v1/job-sheets", "text/calendar", "ics"],
  ["dxf", "v1/job-sheets", "image/vnd.dxf", "dxf"],
  ["svg", "v1/job-sheets", "image/svg+xml", "svg"],
];

/**
 * @param {Desk} desk
 * @param {() => Of & {order: Order}} of
 * @param {string} fault where what is amiss is said
 */
export function paperButtons(desk, of, fault) {
  const button = (/** @type {string} */ name, /** @type {() => void} */ press) => make("button", { type: "button", class: "quiet", press }, say(`papers.${name}`));
  const buttons = PAPERS.map(([name]) => button(name, () => void fetchPaper(desk, name, of(), fault)));
  buttons.splice(4, 0, button("true-size", () => void fetchTrueSize(desk, of(), fault)));
  return make("div", { class: "keep papers", role: "group", "aria-label": say("papers.title") }, ...buttons);
}

/** @param {Desk} desk @param {string} name @param {Of} of @param {string} fault */
export async function fetchPaper(desk, name, { reference, ask, missing = [] }, fault) {
  const [, path = "", kind = "application/pdf", ending = ""] = PAPERS.find(([known]) => known === name) ?? [];
  const file = await desk.tried(fault, () => desk.service.file(path, name === "job" ? { ...ask, missing } : ask, kind));
  if (file) saved(file, `${plain(reference)}-${name}.${ending}`);
}

/** Every opening of every slab at true size, a file each. @param {Desk} desk @param {Of & {order: Order}} of @param {string} fault */
async function fetchTrueSize(desk, { reference, order }, fault) {
  const openings = order.slabs.flatMap(({ cutouts = [] }, slab) => cutouts.map((_, cutout) => `slab=${slab}&cutout=${cutout}`));
  if (!openings.length) return desk.tell(fault, say("papers.no-opening"), "fault");
  const papers = await desk.tried(fault, async () => {
    /** @type {{true_size?: string}} */
    const { true_size: link = "" } = await desk.service.ask("v1/drawings", order);
    return Promise.all(openings.map((opening) => desk.service.picture(`${link}?${opening}`, "application/pdf")));
  });
  for (const [i, paper] of (papers ?? []).entries()) saved(paper, `${plain(reference)}-true-size-${i + 1}.pdf`);
}

/** @param {string} reference */
function plain(reference) {
  return reference.replace(/\s+/g, "-");
}
