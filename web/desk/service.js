/** The pricing service as the maker asks it: with the key, which goes to this page's own origin alone. */

import { Service } from "../service.js";

/** @typedef {"application/pdf" | "text/calendar" | "message/rfc822" | "image/vnd.dxf" | "image/svg+xml"} FileKind */

export class DeskService extends Service {
  constructor() {
    super("..");
    this.key = "";
    /** @type {() => Partial<Terms>} what the maker sets for the offer at hand */
    this.terms = () => ({});
  }

  /** @override @param {string} path @param {RequestInit} options */
  call(path, options) {
    const headers = { .../** @type {Record<string, string>} */ (options.headers), Authorization: `Bearer ${this.key}` };
    return super.call(path, { ...options, headers });
  }

  /** @override @param {Order} order @param {{minimal: boolean, signal: AbortSignal}} how */
  quote(order, how) {
    return super.quote({ ...order, ...this.terms() }, how);
  }

  /** @returns {Promise<Contract.Desk>} */
  async desk() {
    return (await this.call("v1/desk", {})).json();
  }

  /** @param {Blob} message @returns {Promise<Contract.Enquiry>} */
  async read(message) {
    return this.answered(await this.call("v1/enquiries", { method: "POST", headers: { "Content-Type": message.type }, body: message }));
  }

  /** @param {string} path @param {object} ask */
  async ask(path, ask) {
    return this.answered(await this.post(path, ask, "application/json"));
  }

  /**
   * What is asked for as a file.
   * @param {string} path
   * @param {object} ask
   * @param {FileKind} kind
   */
  async file(path, ask, kind) {
    const response = await this.post(path, ask, kind);
    if (!response.ok) await this.answered(response);
    return response.blob();
  }

  /** @param {string} link of a drawing that is the maker's alone */
  async picture(link) {
    const at = this.drawing(link).slice(this.base.href.length);
    return (await this.call(at, { headers: { Accept: "image/svg+xml" } })).blob();
  }

  /** @param {string} path @param {object} ask @param {string} kind */
  post(path, ask, kind) {
    const headers = { "Content-Type": "application/json", Accept: `${kind}, application/problem+json;q=0.5` };
    return this.call(path, { method: "POST", headers, body: JSON.stringify(ask) });
  }

  /** @param {Response} response */
  async answered(response) {
    const body = await response.json();
    if (!response.ok) throw new Refused(body);
    return body;
  }
}

/** The service says why it cannot: in words, and each fault by its pointer. */
export class Refused extends Error {
  /** @param {{detail: string, faults?: Fault[], findings?: Finding[]}} body */
  constructor({ detail, faults = [], findings = [] }) {
    const stops = findings.filter(({ level }) => level === "stops").map(({ says }) => says);
    super([...(faults.length ? faults.map(({ says }) => says) : [detail]), ...stops].join(" "));
    this.faults = faults;
  }
}
