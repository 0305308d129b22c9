import { elements, make, one, say, write } from "../show.js";
import { brief, orderWords } from "./sentences.js";

const WIDE = "(min-width: 60rem)";
const [STEP, MOST] = [1.5, 8];

export class Bar {
  constructor() {
    this.element = one("#bar");
    this.first = one("#glance strong");
    this.more = one("#glance span");
    this.picture = make("img", { alt: "", width: "72", height: "54" });
    this.thumb = make("a", { class: "thumb", href: "#answer", target: "_blank", rel: "noopener", "aria-label": say("bar.picture") }, this.picture);
    this.element.prepend(this.thumb);
    this.wanted = "";
    this.says = "";
    this.thumb.addEventListener("click", (event) => this.enlarge(event));
    this.clear();
  }

  /** In a frame its link opens it alone. @param {Event} event */
  enlarge(event) {
    if (window.parent !== window) return;
    event.preventDefault();
    openLarge(this.thumb.href, this.says);
  }

  clear() {
    this.write(say("answer.no-price"), say("answer.asking"));
    this.look(undefined);
  }

  /** @param {Answered} answered */
  show(answered) {
    const { first, more, long, stopped } = brief(answered);
    this.write(first, more);
    for (const [name, is] of Object.entries({ long, stopped })) this.element.classList.toggle(name, is);
  }

  waiting() {
    this.write(this.first.textContent ?? "", say("answer.asking"), "stale");
  }

  /** @param {Answered | null} last @param {number} inS */
  away(last, inS) {
    const n = Math.round(inS);
    if (!last) return this.write(say("answer.no-price"), say("bar.again", { n }), "away");
    const answer = brief(last).first;
    this.write(say("bar.last", { answer }), say("bar.last-for", { what: orderWords(last.order), n }), "away");
  }

  /** @param {string} first @param {string} more @param {"" | "stale" | "away"} [how] */
  write(first, more, how = "") {
    write(this.first, first);
    write(this.more, more);
    for (const one of ["stale", "away"]) this.element.classList.toggle(one, one === how);
  }

  /** @param {{address: string, alt: string} | undefined} view */
  look(view) {
    const address = view?.address ?? "";
    const none = () => this.thumb.classList.add("none");
    if (address !== "" && address === this.wanted) return;
    this.wanted = address;
    if (address === "") return none();
    const next = new Image();
    next.onload = () => {
      if (address !== this.wanted) return;
      this.picture.src = address;
      this.thumb.classList.remove("none");
      this.thumb.href = address;
      this.says = view?.alt ?? "";
    };
    next.onerror = () => address === this.wanted && none();
    next.src = address;
  }
}

/** On paper nothing is folded. @param {import("./panel.js").AnswerPanel} panel */
export function keepRoom(panel) {
  const narrow = document.querySelector("#picture");
  const wide = matchMedia(WIDE);
  const place = (/** @type {boolean} */ withAnswer) => (withAnswer || !narrow ? panel.pictured : narrow).append(panel.drawing.element);
  wide.addEventListener("change", () => place(wide.matches));
  place(wide.matches);
  /** @type {HTMLElement[]} */
  let folded = [];
  window.addEventListener("beforeprint", () => {
    place(true);
    folded = elements(document, "#answer details:not([open])");
    for (const details of folded) details.setAttribute("open", "");
  });
  window.addEventListener("afterprint", () => {
    for (const details of folded) details.removeAttribute("open");
    place(wide.matches);
  });
}

/** @param {string} address @param {string} alt */
function openLarge(address, alt) {
  const picture = make("img", { src: address, alt });
  const paper = make("div", { class: "paper", tabindex: "0", role: "group", "aria-label": alt }, picture);
  let scale = 1;
  const zoom = (/** @type {number} */ by) => {
    scale = Math.min(MOST, Math.max(1, scale * by));
    picture.style.width = `${100 * scale}%`;
  };
  const button = (/** @type {string} */ key, /** @type {() => void} */ press) => make("button", { type: "button", press }, say(key));
  const tools = make(
    "div",
    { class: "keep" },
    button("large.closer", () => zoom(STEP)),
    button("large.further", () => zoom(1 / STEP)),
    button("large.close", () => dialog.close()),
  );
  const dialog = make("dialog", { class: "large", "aria-label": alt }, tools, paper);
  dialog.addEventListener("close", () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
  one("button", dialog).focus();
  const fill = () => {
    zoom(paper.clientHeight / picture.clientHeight);
    paper.scrollLeft = (paper.scrollWidth - paper.clientWidth) / 2;
  };
  void picture.decode().then(fill, () => null);
}
