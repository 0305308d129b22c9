import { make, money, number, one, say } from "../show.js";

export class CostsPanel {
  /** @param {Desk} desk */
  constructor(desk) {
    this.desk = desk;
    this.section = one("#side");
    this.place = one("#side-place");
    /** @type {Record<string, boolean>} which parts are opened */
    this.opened = {};
  }

  listen() {
    this.desk.page.asking.addEventListener("answer", (event) => this.show(/** @type {CustomEvent} */ (event).detail));
  }

  /** @param {Answered} answered */
  show({ answer, settled }) {
    const quote = answer.kind === "quote" ? answer.body : null;
    this.section.hidden = !quote?.costs;
    if (!quote?.costs || !settled) return;
    this.place.replaceChildren(
      this.margin(quote, quote.costs),
      this.part("costs", () => costTable(/** @type {Contract.Costs} */ (quote.costs))),
      this.part("hours", () => this.hours(quote)),
      this.part("strength", () => this.strength(quote)),
    );
  }

  /** @param {Quote} quote @param {Contract.Costs} costs */
  margin({ price }, { total, margin_percent: percent, currency }) {
    const amounts = { cost: money(total, currency), net: money(price.net, currency), percent: number(Number(percent), 2) };
    return make("p", { id: "margin" }, say("side.margin", amounts));
  }

  /** A part that is worked out when it is opened. @param {string} name @param {() => Node | Promise<Node>} fill */
  part(name, fill) {
    const inner = make("div", {});
    const details = make("details", { "data-key": name }, make("summary", {}, say(`side.${name}`)), inner);
    const filled = async () => inner.replaceChildren((await this.desk.tried("#side-fault", async () => fill())) ?? "");
    details.addEventListener("toggle", () => {
      this.opened[name] = details.open;
      if (details.open && !inner.hasChildNodes()) void filled();
    });
    details.open = this.opened[name] ?? false;
    return details;
  }

  /** @param {Quote} quote */
  async hours({ token, order }) {
    const ask = token ? { token } : { order, ...this.desk.terms() };
    /** @type {Contract.JobSheet} */
    const { operations } = await this.desk.service.ask("v1/job-sheets", ask);
    const rows = operations.map(({ name, hands_minutes: hands, wait_hours: wait }) => [name, hands ? hoursOf(hands) : say("side.waits", { hours: number(wait, 1) })]);
    const all = operations.reduce((sum, { hands_minutes: hands }) => sum + hands, 0);
    return table([...rows, [say("side.hours-all"), hoursOf(all)]]);
  }

  /** @param {Quote} quote */
  async strength({ slabs, drawings, order }) {
    const parts = await Promise.all(
      slabs.map(async ({ strength }, i) => {
        const facts = governing(strength);
        const link = drawings.plan?.replace(/plan\.svg.*$/, `stress.svg?slab=${i}`);
        const picture = link ? await this.desk.service.picture(link, "image/svg+xml") : null;
        const label = order.slabs[i]?.label || say("slabs.one", { number: i + 1 });
        const image = picture && make("img", { src: URL.createObjectURL(picture), alt: say("side.stress", { label }) });
        return make("div", {}, slabs.length > 1 ? make("h3", {}, label) : null, table(facts), image && make("figure", {}, image));
      }),
    );
    return make("div", {}, ...parts);
  }
}

/** @param {Contract.Costs} costs */
function costTable({ lines, currency, total }) {
  const rows = lines.map(({ label, amount }) => [label, money(amount, currency)]);
  return table([...rows, [say("side.costs-all"), money(total, currency)]]);
}

/** @param {Contract.Strength} strength */
function governing({ worst_case: worst, utilisation, governing: numbers, says }) {
  if (worst === undefined || !numbers) return [[say("side.no-stress"), ""]];
  const rows = [
    [says ?? "", ""],
    [say("side.utilisation"), number((utilisation ?? 0) * 100) + " %"],
    [say("side.stress-is"), numbers.stress_says],
    [say("side.limit"), numbers.limit_says],
    [say("side.age"), number(numbers.age_days, 1)],
  ];
  if (numbers.cracks_at_says) rows.push([say("side.cracks"), numbers.cracks_at_says]);
  return rows;
}

/** @param {number} minutes */
function hoursOf(minutes) {
  return `${number(minutes / 60, 1)} h`;
}

/** @param {string[][]} rows */
export function table(rows) {
  return make("table", {}, make("tbody", {}, ...rows.map(([what = "", value = ""]) => make("tr", {}, make("td", {}, what), make("td", {}, value)))));
}
