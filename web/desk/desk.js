import { defineAnswer, showWorkshop } from "../answer/panel.js";
import { Page } from "../page.js";
import { Trouble } from "../service.js";
import { documentIn, elements, fillWords, LOCALES, one, saidIn, say, setPlace, setWords, spokenOf } from "../show.js";
import { keepInTab } from "../store.js";
import { KeyForm } from "./access.js";
import { Enquiry } from "./enquiry.js";
import { TermsForm } from "./terms.js";
import { KeptOffers } from "./kept.js";
import { Letter } from "./letter.js";
import { Offers } from "./offers.js";
import { DeskService, Refused } from "./service.js";
import { CostsPanel } from "./costs.js";
import { Week } from "./week.js";

const VIEWS = ["offer", "offers", "week"];
const SLOW_MS = 700;

export class Desk {
  /** @param {DeskService} service @param {Choices} choices @param {Contract.Desk} set @param {KeyForm} keyForm */
  constructor(service, choices, set, keyForm) {
    this.service = service;
    this.set = set;
    this.keyForm = keyForm;
    this.page = new Page(service, choices, {});
    this.enquiry = new Enquiry(this);
    this.termsForm = new TermsForm(this);
    this.costs = new CostsPanel(this);
    this.letter = new Letter(this);
    this.kept = new KeptOffers();
    this.offers = new Offers(this);
    this.week = new Week(this);
    this.readable = true; // whether the order that was answered last could be meant
    service.terms = () => this.terms();
  }

  async open() {
    this.watch();
    await this.page.begin();
    this.termsForm.listen();
    this.costs.listen();
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
      const { kind } = /** @type {CustomEvent} */ (event).detail.answer;
      this.readable = kind !== "not-understood";
      one("#stopped").hidden = kind !== "sent-back";
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
    if (what === "read") this.enquiry.intake.read();
    if (what === "edit") this.enquiry.edit();
    if (what === "next") this.enquiry.next();
  }

  /**
   * Begin an offer; of the same message, its words changed, what the maker set stays.
   * @param {Contract.Enquiry | null} reading
   * @param {{anew: boolean}} how
   */
  begin(reading, { anew }) {
    this.page.answers.forget();
    if (anew) this.termsForm.become({});
    this.letter.begin(reading?.customer ?? null, { anew });
  }

  /**
   * What the maker set for this offer. It is an estimate where the profile says so or a value is assumed,
   * unless the maker says otherwise, and always while the letter asks anything.
   * @returns {Partial<Terms>}
   */
  terms() {
    const estimate = { standing: /** @type {const} */ ("estimate") };
    const isGuessed = this.set.standing === "estimate" || this.enquiry.open("assumed").length > 0;
    const asks = this.enquiry.questions().length > 0;
    return { ...(isGuessed && estimate), ...this.termsForm.terms, ...(asks && estimate) };
  }

  /** The offer's terms have changed: it is answered again, as an order of its own. */
  changed() {
    const { store } = this.page;
    store.become({ order: { ...store.order }, slab: store.slab }, "typing");
  }

  /** The key is no longer right: ask for it; all that was entered stays. */
  shut() {
    this.keyForm.opened = () => void this.page.asking.again();
    this.keyForm.show(say("door.wrong"));
  }

  /**
   * Run what may fail and show its fault in a place; undefined if it failed.
   * @template Done
   * @param {string} place
   * @param {() => Promise<Done>} does
   * @returns {Promise<Done | undefined>}
   */
  async tried(place, does) {
    one(place).hidden = true;
    const slow = setTimeout(() => this.tell(place, say("desk.asking"), "hint"), SLOW_MS);
    try {
      const done = await does();
      one(place).hidden = true;
      return done;
    } catch (amiss) {
      if (!(amiss instanceof Trouble || amiss instanceof Refused)) throw amiss;
      if (amiss instanceof Trouble && amiss.kind === "refused") this.shut();
      this.tell(place, wordsOf(amiss), "fault");
      return undefined;
    } finally {
      clearTimeout(slow);
    }
  }

  /** Say something in its place, and to whoever listens. @param {string} place @param {string} words @param {"fault" | "hint"} kind */
  tell(place, words, kind) {
    const said = one(place);
    said.className = kind;
    said.textContent = words;
    said.hidden = false;
    this.page.announce(words);
  }
}

/** In the service's own words where it has some for what was asked. @param {Trouble | Refused} amiss */
function wordsOf(amiss) {
  if (amiss instanceof Refused || (amiss.kind === "missing" && amiss.message !== amiss.kind)) return amiss.message;
  return say(`trouble.${amiss.kind}`);
}

/** Speak a language; returns the customers' document. @param {DeskService} service */
async function words(service) {
  const asked = new URLSearchParams(location.search).get("lang");
  const language = spokenOf([asked, ...navigator.languages]) ?? "en";
  const [page, desk, theirs] = await Promise.all([import(`../messages.${language}.js`), import(`./messages.${language}.js`), documentIn(language, "../")]);
  setWords({ ...saidIn(theirs), ...page.messages, ...desk.messages }, LOCALES[language] ?? language);
  service.language = language;
  document.documentElement.lang = LOCALES[language] ?? language;
  return theirs;
}

/** The customers' form, answer and templates, put in place. @param {Document} theirs */
function borrow(theirs) {
  const places = { "#form-place": ["#order"], "#answer-place": ["#bar", "#answer"] };
  one("#picture", theirs).remove();
  for (const [place, selectors] of Object.entries(places))
    one(place).append(...selectors.map((selector) => document.adoptNode(one(selector, theirs))));
  document.body.append(...elements(theirs, "template:not(#form-modules)").map((template) => document.adoptNode(template)));
}

keepInTab();
const service = new DeskService();
const theirs = await words(service);
fillWords(document);
if (service.saved) {
  for (const place of ["#maker", "#status"]) one(place).textContent = say("desk.taking");
  await service.takenUp();
}
const keyForm = new KeyForm(service);
const set = await keyForm.open();
const choices = await service.choices();
borrow(theirs);
setPlace({ ...choices, words: { ...choices.words, ...set.words } });
fillWords(document);
defineAnswer();
showWorkshop(choices.workshop);
one("#made-up").textContent = set.invented;
for (const selector of [".skip", "#views"]) one(selector).hidden = false;
/** @type {HTMLDetailsElement} */ (document.querySelector("#form-fold")).open = matchMedia("(min-width: 60rem)").matches;
await new Desk(service, choices, set, keyForm).open();
if (!one("#view-offer").hidden) one("#message").focus();
