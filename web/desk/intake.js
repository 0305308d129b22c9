import { one } from "../show.js";

const MOST_BYTES = 500_000; // the text of a message stands before what is attached to it

/** Fires "message" with the message as a Blob, and "typed". */
export class Intake extends EventTarget {
  constructor() {
    super();
    this.field = /** @type {HTMLTextAreaElement} */ (document.querySelector("#message"));
    this.edited = false; // whether what is read next is the same message, its words changed
  }

  /** @param {HTMLElement} section where files may be dropped */
  listen(section) {
    this.field.addEventListener("paste", () => this.pasted());
    this.field.addEventListener("input", () => this.dispatchEvent(new Event("typed")));
    section.addEventListener("dragover", (event) => event.preventDefault());
    section.addEventListener("drop", (event) => this.dropped(event));
    one("#file").addEventListener("change", ({ target }) => {
      const input = /** @type {HTMLInputElement} */ (target);
      if (input.files?.[0]) this.readFile(input.files[0]);
      input.value = "";
    });
  }

  /** What is pasted in the place of everything is another message, and read at once. */
  pasted() {
    const { value, selectionStart, selectionEnd } = this.field;
    if (selectionStart !== 0 || selectionEnd !== value.length) return;
    this.edited = false;
    setTimeout(() => this.read());
  }

  /** A file is read; so is a text, where none stands there yet. @param {DragEvent} event */
  dropped(event) {
    const [file] = event.dataTransfer?.files ?? [];
    if (!file && event.target === this.field && this.field.value) return; // put where it was dropped
    event.preventDefault();
    if (file) return this.readFile(file);
    if (this.field.value) return;
    this.field.value = event.dataTransfer?.getData("text/plain") ?? "";
    this.read();
  }

  /** @param {File} file */
  readFile(file) {
    this.edited = false;
    this.give([file.slice(0, MOST_BYTES)], /\.txt$/i.test(file.name) ? "text/plain; charset=utf-8" : "message/rfc822");
  }

  read() {
    this.give([this.field.value], "text/plain; charset=utf-8");
  }

  /** @param {BlobPart[]} parts @param {string} type */
  give(parts, type) {
    this.dispatchEvent(new CustomEvent("message", { detail: new Blob(parts, { type }) }));
  }
}
