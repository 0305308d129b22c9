import { Trouble } from "../service.js";
import { one, say } from "../show.js";

const NAME = "ledgerstone.key";

export class KeyForm {
  /** @param {DeskService} service */
  constructor(service) {
    this.service = service;
    this.section = one("#door");
    this.field = /** @type {HTMLInputElement} */ (document.querySelector("#key"));
    this.stays = /** @type {HTMLInputElement} */ (document.querySelector("#key-stays"));
    this.fault = one("#key-fault");
    /** @type {(set: Contract.Desk) => void} */
    this.opened = () => {};
    one("#key-form").addEventListener("submit", (event) => {
      event.preventDefault();
      void this.enter(this.field.value.trim());
    });
  }

  /** What the workshop has set, once a key is right: the kept one, or one that is typed. */
  async open() {
    const key = kept();
    const set = key ? await this.tried(key) : null;
    if (set) return set;
    this.field.value = kept(); // still there where the service is away: Enter tries it again
    this.show(this.fault.textContent ?? "");
    return new Promise((resolve) => (this.opened = resolve));
  }

  /** @param {string} says what is amiss; "" where nothing is */
  show(says) {
    this.section.hidden = false;
    this.tell(says);
    this.field.focus();
  }

  /** @param {string} key */
  async enter(key) {
    const set = await this.tried(key);
    if (!set) return this.field.focus();
    keep(key, this.stays.checked);
    this.field.value = "";
    this.section.hidden = true;
    this.opened(set);
  }

  /** @param {string} key @returns {Promise<Contract.Desk | null>} */
  async tried(key) {
    this.tell("");
    if (!/^[\x20-\x7e]+$/.test(key)) return this.refused(say("door.wrong"));
    this.service.key = key;
    try {
      return await this.service.desk();
    } catch (fault) {
      if (!(fault instanceof Trouble)) throw fault;
      if (fault.kind === "refused") forget();
      return this.refused(fault.kind === "refused" ? say("door.wrong") : fault.afterS ? say("door.wait", { n: fault.afterS }) : say(`trouble.${fault.kind}`));
    }
  }

  /** @param {string} says */
  refused(says) {
    this.tell(says);
    return null;
  }

  /** @param {string} says */
  tell(says) {
    this.fault.textContent = says;
    this.fault.hidden = says === "";
    this.field.toggleAttribute("aria-invalid", says !== "");
    if (says) this.field.setAttribute("aria-invalid", "true");
  }
}

function kept() {
  return sessionStorage.getItem(NAME) ?? localStorage.getItem(NAME) ?? "";
}

/** @param {string} key @param {boolean} onDevice */
function keep(key, onDevice) {
  (onDevice ? localStorage : sessionStorage).setItem(NAME, key);
}

export function forget() {
  sessionStorage.removeItem(NAME);
  localStorage.removeItem(NAME);
}
