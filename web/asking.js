import { retryS, Trouble } from "./service.js";

const PAUSE_MS = 150;
const FOLLOW_MS = 150;
const REST_MS = 700;
const SLOW_MS = 4000;
const LONGEST_MS = 15_000;

export class Pause {
  /** @type {ReturnType<typeof setTimeout> | null} */
  typing = null;

  /** How long a change waits: the first key not at all, those soon after it for the typing to pause. @param {boolean} typing */
  after(typing) {
    const ms = typing && this.typing ? PAUSE_MS : 0;
    if (!typing) return ms;
    if (this.typing) clearTimeout(this.typing);
    this.typing = setTimeout(() => (this.typing = null), PAUSE_MS);
    return ms;
  }
}

export class Asking extends EventTarget {
  /** @param {{quote: (order: Order, how: {minimal: boolean, signal: AbortSignal}) => Promise<Answer>}} service */
  constructor(service) {
    super();
    this.service = service;
    /** @type {Order | null} */
    this.order = null;
    this.failures = 0;
    this.following = false;
    /** @type {Answered | null} */
    this.shown = null;
    /** @type {AbortController | null} */
    this.flight = null;
    /** @type {ReturnType<typeof setTimeout> | undefined} */
    this.timer = undefined;
    this.pause = new Pause();
    this.followed = 0; // when a drag was last answered
  }

  /** Before this returns, where nothing is waited for; in a drag now and then. @param {Order} order @param {{typing: boolean, moving?: boolean}} how */
  ask(order, { typing, moving = false }) {
    this.order = order;
    if (moving) return this.follow();
    this.following = false;
    this.later(this.pause.after(typing), () => this.go(order, true));
  }

  /** With everything. @param {Order} order */
  now(order) {
    this.order = order;
    clearTimeout(this.timer);
    return this.go(order, false);
  }

  follow() {
    if (this.following) return;
    this.following = true;
    this.later(this.followed + FOLLOW_MS - Date.now(), async () => {
      const asked = this.order;
      if (asked) await this.go(asked, true);
      if (!this.following) return;
      this.following = false;
      this.followed = Date.now();
      if (this.order !== asked) this.follow();
    });
  }

  again() {
    clearTimeout(this.timer);
    return this.order ? this.go(this.order, true) : Promise.resolve(null);
  }

  /** @param {number} ms @param {() => void} what */
  later(ms, what) {
    clearTimeout(this.timer);
    if (ms > 0) this.timer = setTimeout(what, ms);
    else what();
  }

  /** @param {Order} order @param {boolean} minimal */
  async go(order, minimal) {
    this.flight?.abort();
    const flight = new AbortController();
    this.flight = flight;
    const slow = setTimeout(() => this.tell("slow"), SLOW_MS);
    const longest = setTimeout(() => flight.abort(), LONGEST_MS);
    queueMicrotask(() => this.tell("asking")); // nothing is drawn before it is sent
    try {
      const answer = await this.service.quote(order, { minimal, signal: flight.signal });
      return this.isLatest(flight, order) ? this.answered({ answer, order, settled: !minimal }) : null;
    } catch (fault) {
      if (!this.isLatest(flight, order)) return null;
      if (this.shown?.order === order) return this.answered({ ...this.shown, settled: true, partial: true });
      this.failed(flight.signal.aborted ? new Trouble("down") : fault);
      return null;
    } finally {
      clearTimeout(slow);
      clearTimeout(longest);
    }
  }

  /** @param {AbortController} flight @param {Order} order */
  isLatest(flight, order) {
    return flight === this.flight && (order === this.order || this.following);
  }

  /** @param {Answered} answered */
  answered(answered) {
    if (this.failures) this.tell("well");
    this.failures = 0;
    this.shown = answered;
    this.tell("answer", answered);
    if (!answered.settled && answered.order === this.order) this.later(REST_MS, () => this.go(answered.order, false));
    return answered;
  }

  /** @param {unknown} fault */
  failed(fault) {
    const trouble = fault instanceof Trouble ? fault : new Trouble("failed");
    const inS = retryS(this.failures, trouble.afterS);
    this.failures += 1;
    this.tell("trouble", { kind: trouble.kind, inS });
    this.later(inS * 1000, () => this.again());
  }

  /** @param {string} name @param {unknown} [detail] */
  tell(name, detail) {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}
