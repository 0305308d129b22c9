/** Starts the desk: its words, the maker's key, the customers' own form; then one offer after the other. */

import { defineAnswer, showWorkshop } from "../answer/panel.js";
import { LOCALES, spokenOf } from "../language.js";
import { Page } from "../page.js";
import { Trouble } from "../service.js";
import { elements, fillWords, one, say, setPlace, setWords } from "../show.js";
import { keepInTab } from "../store.js";
import { Door } from "./door.js";
import { Enquiry } from "./enquiry.js";
import { Hand } from "./hand.js";
import { Kept } from "./kept.js";
import { Letter } from "./letter.js";
import { Offers } from "./offers.js";
import { DeskService, Refused } from "./service.js";
import { Side } from "./side.js";
import { Week } from "./week.js";

const VIEWS = ["offer", "offers", "week"];

export class Desk {
  /** @param {DeskService} service @param {Choices} choices @param {Contract.Desk} set @param {Door} door */
  constructor(service, choices, set, door) {
    this.service = service;
    this.set = set;
    this.door = door;
    this.page = new Page(service, choices, () => null);
    this.enquiry = new Enquiry(this);
    this.hand = new Hand(this);
    this.side = new Side(this);
    this.letter = new Letter(this);
    this.kept = new Kept();
    this.offers = new Offers(this);
    this.week = new Week(this);
    this.readable = true; // whether the order that was answered last could be meant
    service.terms = () => this.terms();
  }

  open() {
    this.page.begin();
    this.watch();
    this.hand.listen();
    this.side.listen();
    this.letter.listen();
    this.enquiry.listen();
    this.offers.listen();
    this.week.listen();
    window.addEventListener("hashchange", () => this.view());
    this.view();
    for (const button of elements(document.body, "[data-desk]"))
      button.addEventListener("click", () => this.press(button.dataset.desk ?? ""));
  }

  watch() {
    const { asking } = this.page;
    asking.addEventListener("answer", (event) => {
      this.readable = /** @type {CustomEvent} */ (event).detail.answer.kind !== "not-understood";
    });
    asking.addEventListener("trouble", (event) => {
      if (/** @type {CustomEvent} */ (event).detail.kind === "refused") this.shut();
    });
  }

  /** Show the view that the address names; a place within the offer's view is in that. */
  view() {
    const named = location.hash.slice(1);
    const shown = VIEWS.includes(named) ? named : "offer";
    if (!one(`#view-${shown}`).hidden) return;
    for (const view of VIEWS) {
      one(`#view-${view}`).hidden = view !== shown;
      one(`#views a[href="#${view}"]`).removeAttribute("aria-current");
    }
    one(`#views a[href="#${shown}"]`).setAttribute("aria-current", "page");
    window.scrollTo(0, 0);
  }

  /** @param {string} what */
  press(what) {
    if (what === "read") void this.enquiry.read();
    if (what === "edit") this.enquiry.edit();
    if (what === "next") this.enquiry.next();
  }

  /** Begin an offer: nothing of the one before it is set. @param {Contract.Enquiry | null} reading */
  begin(reading) {
    this.page.answers.forget();
    this.hand.clear();
    this.letter.begin(reading?.customer ?? null);
  }

  /** What the maker set for this offer; while something is open it is an estimate. @returns {Partial<Terms>} */
  terms() {
    const guessed = this.enquiry.open("assumed").length + this.enquiry.open("missing").length > 0;
    return { ...(guessed && { standing: "estimate" }), ...this.hand.terms };
  }

  /** What is set for the offer has changed: it is answered anew, as an order of its own. */
  changed() {
    const { store } = this.page;
    store.become({ order: { ...store.order }, slab: store.slab }, "typing");
  }

  /** The key is no longer right: ask for it; all that was entered stays. */
  shut() {
    this.door.opened = () => void this.page.asking.again();
    this.door.show(say("door.wrong"));
  }

  /**
   * Do what may fail, and say in a place what is amiss; undefined where it failed.
   * @template Done
   * @param {string} place
   * @param {() => Promise<Done>} does
   * @returns {Promise<Done | undefined>}
   */
  async tried(place, does) {
    const fault = one(place);
    fault.hidden = true;
    try {
      return await does();
    } catch (amiss) {
      if (!(amiss instanceof Trouble || amiss instanceof Refused)) throw amiss;
      if (amiss instanceof Trouble && amiss.kind === "refused") this.shut();
      fault.textContent = amiss instanceof Trouble ? say(`trouble.${amiss.kind}`) : amiss.message;
      fault.hidden = false;
      this.page.announce(fault.textContent);
      return undefined;
    }
  }
}

/** @param {DeskService} service @returns {Promise<void>} */
async function words(service) {
  const asked = new URLSearchParams(location.search).get("lang");
  const language = spokenOf([asked, ...navigator.languages]) ?? "en";
  const [page, desk] = await Promise.all([import(`../messages.${language}.js`), import(`./messages.${language}.js`)]);
  setWords({ ...page.messages, ...desk.messages }, LOCALES[language] ?? language);
  service.language = language;
  document.documentElement.lang = LOCALES[language] ?? language;
}

/** The customers' own form, answer and templates, put into their places here. */
async function borrowed() {
  const theirs = new DOMParser().parseFromString(await (await fetch("../index.html")).text(), "text/html");
  const places = { "#form-place": ["#order"], "#answer-place": ["#answer", "#glance"] };
  for (const [place, selectors] of Object.entries(places))
    one(place).append(...selectors.map((selector) => document.adoptNode(one(selector, theirs))));
  document.body.append(...elements(theirs, "template").map((template) => document.adoptNode(template)));
}

keepInTab();
const service = new DeskService();
await words(service);
fillWords(document);
const door = new Door(service);
const set = await door.open();
const [choices] = await Promise.all([service.choices(), borrowed()]);
setPlace(choices);
fillWords(document);
defineAnswer();
showWorkshop(choices.workshop);
for (const selector of [".skip", "#views"]) one(selector).hidden = false;
/** @type {HTMLDetailsElement} */ (document.querySelector("#form-fold")).open = matchMedia("(min-width: 60rem)").matches;
new Desk(service, choices, set, door).open();
if (!one("#view-offer").hidden) one("#message").focus();
