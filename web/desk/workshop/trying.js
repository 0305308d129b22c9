import { Trouble } from "../../service.js";
import { say } from "../../show.js";
import { Refused } from "../service.js";

const REST_MS = 400;

export class Trying {
  /** @param {Workshop} workshop */
  constructor(workshop) {
    this.workshop = workshop;
    this.timer = 0;
    this.isWanted = false;
    this.flight = new AbortController();
    /** @type {Promise<boolean> | null} */
    this.running = null;
  }

  /** Once the typing rests. */
  later() {
    window.clearTimeout(this.timer);
    this.timer = window.setTimeout(() => void this.now(), REST_MS);
  }

  /** In place of what is asked at the moment; true once the newest state was answered. */
  now() {
    window.clearTimeout(this.timer);
    this.timer = 0;
    this.isWanted = true;
    this.flight.abort();
    return (this.running ??= this.run());
  }

  async run() {
    let done = true;
    try {
      while (this.isWanted && done) {
        this.isWanted = false;
        this.workshop.outcome.busy(say("outcome.working"));
        done = await this.workshop.tried(() => this.once());
      }
      return done;
    } finally {
      this.running = null;
      this.workshop.outcome.busy("");
    }
  }

  async once() {
    const { workshop } = this;
    const changes = [...workshop.changes.list];
    this.flight = new AbortController();
    const { signal } = this.flight;
    try {
      const profile = await workshop.ask(changes, { described: true }, signal);
      if (workshop.changes.are(changes)) workshop.take(profile);
      else this.isWanted = true;
    } catch (amiss) {
      if (signal.aborted) return;
      if (amiss instanceof Refused && workshop.dropped(amiss)) {
        this.isWanted = true;
        return;
      }
      if (!(amiss instanceof Trouble) || !amiss.afterS) throw amiss;
      await this.wait(amiss.afterS);
    }
  }

  /** @param {number} seconds */
  async wait(seconds) {
    this.workshop.outcome.busy(`${say("trouble.busy")} ${say("trouble.kept")} ${say("trouble.retry", { n: seconds })}`);
    await new Promise((done) => window.setTimeout(done, seconds * 1000));
    this.isWanted = true;
  }

  /** True once the newest state is answered, typed a moment ago or not. @returns {Promise<boolean>} */
  async newest() {
    return this.timer ? this.now() : (this.running ?? true);
  }

  async rest() {
    window.clearTimeout(this.timer);
    this.timer = 0;
    await this.running;
  }
}
