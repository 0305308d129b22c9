import { Service, sent, Trouble } from "../service.js";

/** @typedef {"application/pdf" | "text/calendar" | "message/rfc822" | "image/vnd.dxf" | "image/svg+xml"} FileKind */

const LONGEST_MS = 30_000; // a worker has twenty seconds for a request
const SAVED = "ledgerstone.saved";
const [IN_A_ROW, PAUSE_MS] = [8, 250]; // each worker looks at its file once a second

export class DeskService extends Service {
  /** @param {string} [address] where the service stands, seen from the page */
  constructor(address = "..") {
    super(address);
    this.key = "";
    /** @type {() => Partial<Terms>} what the maker sets for the offer at hand */
    this.terms = () => ({});
  }

  /** @override @param {string} path @param {RequestInit} options */
  async call(path, options) {
    const headers = { .../** @type {Record<string, string>} */ (options.headers), Authorization: `Bearer ${this.key}` };
    const signal = AbortSignal.any([AbortSignal.timeout(LONGEST_MS), ...(options.signal ? [options.signal] : [])]);
    try {
      return await super.call(path, { ...options, headers, signal });
    } catch (fault) {
      throw fault instanceof DOMException && fault.name === "TimeoutError" ? new Trouble("down") : fault;
    }
  }

  /** @override @param {Order} order @param {{minimal: boolean, signal: AbortSignal}} how */
  quote(order, how) {
    return super.quote({ ...order, ...this.terms() }, how);
  }

  /** @returns {Promise<Contract.Desk>} */
  async desk() {
    return (await this.call("v1/desk", {})).json();
  }

  /** @returns {Promise<Profile>} */
  async workshop() {
    return (await this.call("v1/workshop", {})).json();
  }

  /** What the service answers by. */
  async inUse() {
    const { profile, profile_values: values } = await (await this.call("v1/health/ready", {})).json();
    return JSON.stringify([profile, values]);
  }

  get saved() {
    return sessionStorage.getItem(SAVED);
  }

  /** The desk waits too until another answers. @param {string} was in use before the file was saved */
  noteSaved(was) {
    sessionStorage.setItem(SAVED, was);
  }

  /** Whether the file that was saved is in use. */
  async takenUp() {
    const isInUse = await this.tookUp(this.saved ?? "");
    sessionStorage.removeItem(SAVED);
    return isInUse;
  }

  /** Whether it is seen to answer by another file: so often in a row that few of its workers are left out. @param {string} was @param {number} [pauseMs] */
  async tookUp(was, pauseMs = PAUSE_MS) {
    for (let tries = 40, row = 0; tries; tries -= 1) {
      const now = await this.inUse().catch((/** @type {unknown} */ amiss) => {
        if (amiss instanceof Trouble) return was;
        throw amiss;
      });
      row = now === was ? 0 : row + 1;
      if (row === IN_A_ROW) return true;
      await new Promise((done) => setTimeout(done, pauseMs));
    }
    return false;
  }

  /** @param {Blob} message @returns {Promise<Contract.Enquiry>} */
  async read(message) {
    return this.answered(await this.call("v1/enquiries", { method: "POST", headers: { "Content-Type": message.type }, body: message }));
  }

  /** @param {string} path @param {object} ask @param {AbortSignal} [signal] */
  async ask(path, ask, signal) {
    return this.answered(await this.post(path, ask, "application/json", signal));
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

  /** @param {string} link of a drawing @param {FileKind} kind */
  async picture(link, kind) {
    const at = this.drawing(link).slice(this.base.href.length);
    const response = await this.call(at, { headers: { Accept: `${kind}, application/problem+json;q=0.5` } });
    if (!response.ok) await this.answered(response);
    return response.blob();
  }

  /** @param {string} path @param {object} ask @param {string} kind @param {AbortSignal} [signal] */
  post(path, ask, kind, signal) {
    const headers = { "Content-Type": "application/json", Accept: `${kind}, application/problem+json;q=0.5` };
    return this.call(path, { method: "POST", headers, body: sent(ask), ...(signal && { signal }) });
  }

  /** @param {Response} response */
  async answered(response) {
    const body = await response.json();
    if (!response.ok) throw new Refused(body);
    return body;
  }
}

/** A refusal by the service: in words, and each fault by its pointer. */
export class Refused extends Error {
  /** @param {{detail: string, faults?: Fault[], findings?: Finding[]}} body */
  constructor({ detail, faults = [], findings = [] }) {
    const stops = findings.filter(({ level }) => level === "stops").map(({ says }) => says);
    super([...(faults.length ? faults.map(({ says }) => says) : [detail]), ...stops].join(" "));
    this.faults = faults;
  }
}
