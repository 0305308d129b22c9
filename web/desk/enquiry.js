import { goTo } from "../form/fields.js";
import { without } from "../lib/json.js";
import { make, one, say, write } from "../show.js";
import { Intake } from "./intake.js";
import { aboutWords, enter, kindOf, marked, markFields, spoken, toPhrase } from "./marks.js";
import { openPoints, OriginalOrder, orderOf, pieces, pointsOf } from "./points.js";

const NAME = "ledgerstone.enquiry.1";

export class Enquiry {
  /** @param {Desk} desk */
  constructor(desk) {
    this.desk = desk;
    this.intake = new Intake();
    this.message = this.intake.field;
    /** @type {Contract.Enquiry | null} */
    this.reading = null;
    /** @type {Point[]} */
    this.points = [];
    this.original = new OriginalOrder(desk.page.store);
    this.wished = ""; // the day that the customer asked for, whatever the order has since
    this.turn = 0;
  }

  listen() {
    this.intake.addEventListener("message", (event) => void this.take(/** @type {CustomEvent<Blob>} */ (event).detail));
    this.intake.addEventListener("typed", () => this.keep());
    this.intake.listen(one("#enquiry"));
    const { store } = this.desk.page;
    store.addEventListener("change", (event) => this.follow(/** @type {CustomEvent} */ (event).detail.cause));
    for (const name of ["change", "slab"]) store.addEventListener(name, () => this.show());
    this.restore();
  }

  /** Read a message; where that fails, what was pasted stays. @param {Blob} message */
  async take(message) {
    const turn = ++this.turn;
    this.message.readOnly = true; // what is typed meanwhile would not be read
    const reading = await this.desk.tried("#enquiry-fault", () => this.desk.service.read(message));
    if (turn !== this.turn) return;
    this.message.readOnly = false;
    if (!reading) return;
    this.reading = reading;
    this.message.value = reading.text;
    const { page } = this.desk;
    const order = orderOf(reading, page.choices);
    const unit = String(order.slabs[0]?.outline.length ?? "").match(/\b(cm|m|in)$/)?.[1];
    page.store.unit = /** @type {Unit} */ (unit ?? "mm");
    this.points = pointsOf(reading, order);
    this.wished = order.needed_by ?? "";
    this.original.order = null;
    this.desk.begin(reading, { anew: !this.intake.edited });
    this.intake.edited = false;
    page.store.change(order, { cause: "load", slab: 0 });
    this.keep();
    one(".right").scrollTop = 0; // beside the message stands its answer
    one("#points").focus({ preventScroll: true });
    page.announce(one("#points-title").textContent ?? "");
  }

  next() {
    this.clear();
    this.desk.page.clear();
    this.message.focus();
  }

  clear() {
    this.message.value = "";
    [this.wished, this.original.order, this.reading] = ["", null, null];
    this.points = [];
    this.intake.edited = false;
    this.turn++; // of what is being read
    this.message.readOnly = false;
    this.desk.begin(null, { anew: true });
    this.keep();
  }

  /** The text again, to change it; the order stays until it is read. */
  edit() {
    this.reading = null;
    this.intake.edited = true;
    this.show();
    this.message.focus();
  }

  /** @param {Point["kind"]} kind */
  open(kind) {
    return openPoints(this.points, this.desk.page.store.order).filter((point) => point.kind === kind);
  }

  /** What the letter asks: what is missing, and what is doubtful and not told. @returns {{at: string, asks: string}[]} */
  questions() {
    return [...this.open("missing"), ...this.open("doubtful")].flatMap(({ at, asks }) => (asks ? [{ at, asks }] : []));
  }

  /** A day that the maker enters where the customer's was doubtful is the one that was meant. @param {Cause} cause */
  follow(cause) {
    this.original.follow(cause);
    const { needed_by: day } = this.desk.page.store.order;
    const doubt = this.points.find(({ kind, at }) => kind === "doubtful" && at === "/needed_by");
    if (day && !this.wished && doubt && (cause === "typing" || cause === "choice")) this.wished = day;
    this.keep();
  }

  /** @param {Point} point */
  settle(point) {
    point.settled = true;
    const { store } = this.desk.page;
    if (point.at.endsWith("/rests/units")) store.change(without(store.order, point.at.replace(/units$/, "assumed")));
    const within = one("#points-list").contains(document.activeElement);
    this.show();
    if (within) one("#points").focus({ preventScroll: true });
    this.keep();
    this.desk.changed();
  }

  /** Enter one reading of what is doubtful, as if it were typed or chosen. @param {Point} point @param {string} value */
  choose(point, value) {
    if (point.at === "/needed_by") this.wished = value;
    const { form, store } = this.desk.page;
    enter(form, store, point.at, value);
    this.settle(point);
  }

  show() {
    const { reading } = this;
    const { form, store } = this.desk.page;
    one("#unread").hidden = reading !== null;
    one("#reading").hidden = reading === null;
    if (reading) {
      write(one("#reading-says"), aboutWords(reading));
      this.showText(reading);
      this.showPoints();
    }
    markFields(form, store, openPoints(this.points, store.order));
  }

  /** @param {Contract.Enquiry} reading */
  showText({ text }) {
    const open = openPoints(this.points, this.desk.page.store.order);
    one("#marked").replaceChildren(...marked(pieces(text, open), (point) => this.go(point)));
  }

  /** @param {Point} point */
  go({ kind, at }) {
    const { form, store } = this.desk.page;
    if (kind === "unread") one("#points").focus();
    else goTo(form, store, at);
  }

  showPoints() {
    const open = ["unread", "doubtful", "missing", "assumed"].flatMap((kind) => this.open(/** @type {Point["kind"]} */ (kind)));
    const { page, set } = this.desk;
    const none = !set.invented && this.desk.terms().standing === "estimate" ? "points.estimate" : "points.none"; // a trial always is
    const name = open.length ? "points.title" : page.store.order.slabs.some(({ rests }) => rests?.assumed) ? "points.units-taken" : none;
    write(one("#points-title"), say(name, { n: open.length }));
    one("#points-list").replaceChildren(...open.map((point) => this.item(point)));
  }

  /** @param {Point} point */
  item(point) {
    const link =
      point.kind === "unread"
        ? make("a", { href: "#marked", press: () => toPhrase(point) }, say("points.there"))
        : make("a", { href: "#order", press: () => this.go(point) }, say("points.go"));
    return make("li", { class: point.kind }, kindOf(point), " ", point.says, " ", link, " ", this.buttons(point));
  }

  /** @param {Point} point */
  buttons(point) {
    const doubtful = point.asks ? "points.not-asked" : "points.as-it-is";
    const confirm = { unread: "points.seen", assumed: "points.right", missing: "points.not-asked", doubtful, said: "" }[point.kind];
    return make(
      "span",
      { class: "choices" },
      ...point.readings.map(({ value }) => make("button", { type: "button", class: "quiet", press: () => this.choose(point, value) }, spoken(this.desk.page, point, value))),
      make("button", { type: "button", class: "quiet", press: () => this.settle(point) }, say(confirm)),
    );
  }

  keep() {
    sessionStorage.setItem(NAME, JSON.stringify({ message: this.message.value, reading: this.reading, points: this.points, wished: this.wished, asked: this.original.order, edited: this.intake.edited }));
  }

  restore() {
    const { message = "", reading = null, points = [], wished = "", asked = null, edited = false } = JSON.parse(sessionStorage.getItem(NAME) ?? "{}");
    this.message.value = message;
    this.reading = reading;
    this.points = points;
    this.wished = wished;
    this.original.order = asked;
    this.intake.edited = edited;
    this.show();
  }
}
