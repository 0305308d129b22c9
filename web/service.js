/** @typedef {"down" | "busy" | "failed" | "missing" | "refused"} Kind */

export class Trouble extends Error {
  /** @param {Kind} kind @param {number} [afterS] @param {string} [detail] */
  constructor(kind, afterS, detail) {
    super(detail ?? kind);
    this.kind = kind;
    this.afterS = afterS;
  }
}

const [FIRST_S, LONGEST_S] = [2, 30];

/** @param {number} tries @param {number} [atLeastS] */
export function retryS(tries, atLeastS = 0) {
  return Math.max(atLeastS, Math.min(FIRST_S * 2 ** tries, LONGEST_S));
}

export class Service {
  /** @param {string} address "": the page's own */
  constructor(address) {
    this.language = document.documentElement.lang;
    this.base = new URL(address === "" ? "./" : `${address.replace(/\/$/, "")}/`, document.baseURI);
  }

  async choices() {
    return (await this.call("v1/choices", {})).json();
  }

  /** @param {Order} order @param {{minimal: boolean, signal: AbortSignal}} how */
  async quote(order, { minimal, signal }) {
    const headers = { "Content-Type": "application/json", ...(minimal && { Prefer: "return=minimal" }) };
    const response = await this.call("v1/quotes", { method: "POST", headers, body: sent(order), signal });
    const kinds = /** @type {const} */ ({ 200: "quote", 422: "sent-back" });
    const kind = kinds[/** @type {200 | 422} */ (response.status)] ?? "not-understood";
    const answer = await response.json();
    const isOrders = kind !== "sent-back" || "findings" in answer; // else it is too intricate
    return { kind: isOrders ? kind : /** @type {const} */ ("not-understood"), body: answer };
  }

  /** @param {object} asked @returns {Promise<Placing | {detail: string}>} */
  async placing(asked) {
    const headers = { "Content-Type": "application/json" };
    return (await this.call("v1/placings", { method: "POST", headers, body: JSON.stringify(asked) })).json();
  }

  /** @param {string} token */
  async earlier(token) {
    return (await this.call(`v1/quotes/${encodeURIComponent(token)}`, {})).json();
  }

  /** @param {Record<string, string>} asked */
  async request(asked) {
    const body = JSON.stringify(asked);
    const response = await this.call("v1/requests", { method: "POST", headers: { "Content-Type": "application/json" }, body });
    const { says, detail, faults } = await response.json();
    return { says: says ?? detail, faults: response.ok ? [] : (faults ?? []) };
  }

  /** The service may call itself by another name. @param {string} link */
  drawing(link) {
    const at = link.indexOf("v1/drawings/");
    return at < 0 ? link : new URL(link.slice(at), this.base).href;
  }

  /** @param {string} path @param {RequestInit} options */
  async call(path, options) {
    const response = await fetch(new URL(path, this.base), {
      ...options,
      headers: { Accept: "application/json, application/problem+json", "Accept-Language": this.language, ...options.headers },
      credentials: "omit",
    }).catch((fault) => {
      throw options.signal?.aborted ? fault : new Trouble("down");
    });
    if (response.ok || response.status === 422 || response.status === 400) return response;
    throw await troubleOf(response);
  }
}

/** As JSON, without what only the page knows of an order. @param {object} asked */
export function sent(asked) {
  return JSON.stringify(asked, (name, value) => (name === "own" ? undefined : value));
}

/** @param {Response} response */
async function troubleOf(response) {
  const wait = Number(response.headers.get("Retry-After"));
  const afterS = wait > 0 ? wait : undefined;
  if (response.status === 429 || response.status === 503) return new Trouble("busy", afterS);
  const body = await response.json().catch(() => ({}));
  if (response.status === 401) return new Trouble("refused", afterS, body.detail);
  return new Trouble(response.status >= 500 ? "failed" : "missing", afterS, body.detail);
}
