/** The enquiry: read, its phrases marked, each tied to the field that it filled; and what it left open. */

import { findField, goTo } from "../form/fields.js";
import { elements, make, one, say, write } from "../show.js";
import { kindOf, markFields, phrase } from "./marks.js";
import { openPoints, orderOf, pieces, pointsOf } from "./points.js";

const MOST_BYTES = 500_000; // the text of a message stands before what is attached to it
const NAME = "ledgerstone.enquiry.1";

export class Enquiry {
  /** @param {Desk} desk */
  constructor(desk) {
    this.desk = desk;
    this.message = /** @type {HTMLTextAreaElement} */ (document.querySelector("#message"));
    /** @type {Contract.Enquiry | null} */
    this.reading = null;
    /** @type {Point[]} */
    this.points = [];
  }

  listen() {
    const section = one("#enquiry");
    this.message.addEventListener("paste", () => this.message.value === "" && setTimeout(() => void this.read()));
    this.message.addEventListener("input", () => this.keep());
    section.addEventListener("dragover", (event) => event.preventDefault());
    section.addEventListener("drop", (event) => this.dropped(event));
    one("#file").addEventListener("change", ({ target }) => {
      const input = /** @type {HTMLInputElement} */ (target);
      if (input.files?.[0]) void this.readFile(input.files[0]);
      input.value = "";
    });
    const { store } = this.desk.page;
    for (const name of ["change", "slab"]) store.addEventListener(name, () => this.show());
    this.restore();
  }

  /** @param {DragEvent} event */
  dropped(event) {
    event.preventDefault();
    const [file] = event.dataTransfer?.files ?? [];
    if (file) return void this.readFile(file);
    this.message.value = event.dataTransfer?.getData("text/plain") ?? "";
    void this.read();
  }

  /** @param {File} file */
  readFile(file) {
    return this.take(new Blob([file.slice(0, MOST_BYTES)], { type: /\.txt$/i.test(file.name) ? "text/plain; charset=utf-8" : "message/rfc822" }));
  }

  read() {
    return this.take(new Blob([this.message.value], { type: "text/plain; charset=utf-8" }));
  }

  /** Read a message; where that fails, what was pasted stays. @param {Blob} message */
  async take(message) {
    const reading = await this.desk.tried("#enquiry-fault", () => this.desk.service.read(message));
    if (!reading) return;
    this.reading = reading;
    this.message.value = reading.text;
    const { page } = this.desk;
    const order = orderOf(reading, page.choices);
    const unit = String(order.slabs[0]?.outline.length ?? "").match(/\b(cm|m|in)$/)?.[1];
    page.store.unit = /** @type {Unit} */ (unit ?? "mm");
    this.points = pointsOf(reading, order);
    this.desk.begin(reading);
    page.store.change(order, { cause: "load", slab: 0 });
    this.keep();
    one("#points").focus({ preventScroll: true });
    page.announce(one("#points-title").textContent ?? "");
  }

  /** Back to an empty field: what was read, and all that was set for it, goes. */
  next() {
    this.clear();
    this.desk.page.actions.clear();
    this.message.focus();
  }

  clear() {
    this.message.value = "";
    this.reading = null;
    this.points = [];
    this.desk.begin(null);
    this.keep();
  }

  /** The text again, to change it; the order stays as it is until it is read again. */
  edit() {
    this.reading = null;
    this.show();
    this.message.focus();
  }

  /** What is open of this kind. @param {Point["kind"]} kind */
  open(kind) {
    return openPoints(this.points, this.desk.page.store.order).filter((point) => point.kind === kind);
  }

  /** @param {Point} point */
  settle(point) {
    point.settled = true;
    const within = one("#points-list").contains(document.activeElement);
    this.show();
    if (within) one("#points").focus({ preventScroll: true });
    this.keep();
    this.desk.changed();
  }

  /** Enter one reading of what is doubtful, as if it were typed or chosen. @param {Point} point @param {string} value */
  choose(point, value) {
    const { form, store } = this.desk.page;
    const control = findField(form, store, point.at);
    const radio = elements(form, `input[type=radio][value="${CSS.escape(value)}"]`).find((each) => control?.closest("fieldset")?.contains(each));
    if (radio instanceof HTMLInputElement) radio.click();
    else if (control instanceof HTMLInputElement || control instanceof HTMLSelectElement) {
      control.value = value;
      control.dispatchEvent(new Event("input", { bubbles: true }));
    }
    this.settle(point);
  }

  show() {
    const { reading } = this;
    const { form, store } = this.desk.page;
    one("#unread").hidden = reading !== null;
    one("#reading").hidden = reading === null;
    if (reading) {
      write(one("#reading-says"), this.about(reading));
      this.showText(reading);
      this.showPoints();
    }
    markFields(form, store, openPoints(this.points, store.order));
  }

  /** @param {Contract.Enquiry} reading */
  about({ is_enquiry: is, customer, rests_on_attachment: rests, attachments }) {
    const from = customer.name ?? customer.reply_to;
    const says = [is ? "" : say("enquiry.none"), from ? say("enquiry.from", { name: from }) : ""];
    if (rests || attachments.length) says.push(say("enquiry.attached"));
    if (customer.reply_to_differs) says.push(say("enquiry.reply-to", { address: customer.reply_to ?? "" }));
    return says.filter(Boolean).join(" ");
  }

  /** @param {Contract.Enquiry} reading */
  showText({ text }) {
    const open = openPoints(this.points, this.desk.page.store.order);
    const children = pieces(text, open).map((piece) => (piece.points.length ? phrase(piece, (point) => this.go(point)) : piece.text));
    one("#marked").replaceChildren(...children);
  }

  /** To the field of a point. @param {Point} point */
  go({ at }) {
    const { form, store } = this.desk.page;
    goTo(form, store, at);
  }

  showPoints() {
    const open = ["doubtful", "missing", "assumed"].flatMap((kind) => this.open(/** @type {Point["kind"]} */ (kind)));
    write(one("#points-title"), open.length ? say("points.title", { n: open.length }) : say("points.none"));
    one("#points-list").replaceChildren(...open.map((point) => this.item(point)));
  }

  /** @param {Point} point */
  item(point) {
    const link = make("a", { href: "#order", press: () => this.go(point) }, say("points.go"));
    return make("li", { class: point.kind }, kindOf(point), " ", point.says, " ", link, this.buttons(point));
  }

  /** @param {Point} point */
  buttons(point) {
    const confirm = { assumed: "points.right", missing: "points.not-asked", doubtful: "points.as-it-is", said: "" }[point.kind];
    return make(
      "span",
      { class: "choices" },
      ...point.readings.map(({ value }) => make("button", { type: "button", class: "quiet", press: () => this.choose(point, value) }, value)),
      make("button", { type: "button", class: "quiet", press: () => this.settle(point) }, say(confirm)),
    );
  }

  keep() {
    sessionStorage.setItem(NAME, JSON.stringify({ message: this.message.value, reading: this.reading, points: this.points }));
  }

  restore() {
    const { message = "", reading = null, points = [] } = JSON.parse(sessionStorage.getItem(NAME) ?? "{}");
    this.message.value = message;
    this.reading = reading;
    this.points = points;
    this.show();
  }
}
