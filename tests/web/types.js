/**
 * Types only, known in every file of the page by name: this file is read by the type check and
 * never loaded. First what goes to the service and comes back, which
 * contract.d.ts has from the contract.
 */

/** @typedef {Contract.Changes} Changes */
/** @typedef {Contract.Choices} Choices */
/** @typedef {Contract.Cutout} Cutout */
/** @typedef {Contract.Drawings} Drawings */
/** @typedef {Contract.Fault} Fault */
/** @typedef {Contract.Finding} Finding */
/** @typedef {Contract.Join} Join */
/** @typedef {Contract.JoinEnd} JoinEnd */
/** @typedef {Contract.LeadTime} LeadTime */
/** @typedef {Contract.Money} Money */
/** @typedef {Contract.NotUnderstood} NotUnderstood */
/** @typedef {Contract.Order & {own?: {start?: string, wanted?: string}}} Order what is its own, the service is not sent */
/** @typedef {Contract.Outline} Outline */
/** @typedef {Contract.Price} Price */
/** @typedef {Contract.Quote} Quote */
/** @typedef {Contract.Relief} Relief */
/** @typedef {Contract.SentBack} SentBack */
/** @typedef {Contract.Slab} Slab */
/** @typedef {Contract.Placing} Placing */
/** @typedef {Contract.Point} Place */
/** @typedef {Contract.OpenedQuote} Opened */
/** @typedef {Contract.Remedy | (Contract.Fix & {price_change?: undefined, lighter_by_kg?: undefined, sooner_by_days?: undefined})} Remedy */
/**
 * @typedef {{kind: "quote", body: Quote} | {kind: "sent-back", body: SentBack}
 *   | {kind: "not-understood", body: NotUnderstood}} Answer
 */

// Then the page's own.
/** @typedef {{says: string, faults?: Fault[]}} Requested what became of a request */
/** @typedef {import("../../web/desk/desk.js").Desk} Desk */
/** @typedef {import("../../web/desk/access.js").KeyForm} KeyForm */
/** @typedef {import("../../web/desk/workshop/workshop.js").Workshop} Workshop */
/** @typedef {Contract.WorkshopForm} Profile */
/** @typedef {Contract.ProfileTable} ProfileTable */
/** @typedef {Contract.ProfileValue} ProfileValue */
/** @typedef {Contract.TypicalJob} TypicalJob */
/** @typedef {Contract.Change} Change */
/** @typedef {import("../../web/desk/service.js").DeskService} DeskService */
/** @typedef {Pick<Contract.ReplyAsk, "adjustments" | "margin_percent" | "deposit_round_to" | "note" | "standing" | "valid_until">} Terms */
/**
 * @typedef {{kind: "said" | "assumed" | "doubtful" | "missing" | "unread", at: string, says: string, asks?: string,
 *   readings: Contract.Reading[], from: Contract.Span[], was: any, settled: boolean}} Point
 * what an enquiry said or left open of one place in the order, and the value there when it was read
 */
/**
 * @typedef {{token: string, reference: string, customer: string, to: string, total: string, currency: string,
 *   until: string, on: string, state: "draft" | "sent" | "yes" | "no", paid?: boolean,
 *   asked?: {at: string, asks: string}[], terms?: Partial<Terms>}} KeptOffer what its letter asked and is not
 * answered, and the terms that the maker set; an offer that the desk keeps, in its state since the day `on`
 */
/** @typedef {import("../../web/page.js").Page} Page */
/** @typedef {import("../../web/service.js").Service} Service */
/** @typedef {import("../../web/sketch/sketch.js").Sketch} Sketch */
/** @typedef {import("../../web/store.js").Store} Store */
/** @typedef {"view" | "plan" | "assembled"} Drawn */
/** @typedef {Partial<Record<Drawn, {address: string, alt: string}>>} Pictures */
/** @typedef {{name: string, from: number, to: number}} Bar days since the first, ends not included */
/** @typedef {{order: Order, go: (pointer: string, note?: string) => void, goes: (pointer: string) => boolean, apply: (remedy: Remedy) => void, preview: (patch: Operation[] | null) => void}} Context */
/**
 * @typedef {{choices: Choices, wanted: string, announce: (words: string) => void,
 *   request: (asked: Record<string, string>) => Promise<Requested>}} Keeping
 */
/** @typedef {Partial<Record<"ask" | "keep", (quote: Quote, keeping: Keeping) => HTMLElement>>} Tools */
/** @typedef {Context & {slab: number, tax: string, drawing: (link: string) => string, ask: HTMLElement | null, keep: HTMLElement | null, look: (view: {address: string, alt: string} | undefined) => void, pictured: boolean}} Showing */
/** @typedef {{answer: Answer, order: Order, settled: boolean, partial?: boolean}} Answered */
/** @typedef {HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement} Control */
/** @typedef {"left" | "right" | "front" | "back"} Side */
/** @typedef {{op: string, path: string, value?: any}} Operation */
/** @typedef {"mm" | "cm" | "m" | "in"} Unit */
/** @typedef {"." | ","} Mark between whole and tenth */
/** @typedef {string | ({other: string} & Record<string, string>)} Message one text, or one for each plural category */
/** @typedef {Readonly<Record<string, Message>>} Messages */
/** @typedef {Node | string | null | undefined | false} Child */
/** @typedef {{x: number, y: number}} XY */
/** @typedef {XY & {r?: number}} Corner */
/** @typedef {{from: XY, to: XY}} Box */
/** @typedef {Corner[] | {x: number, y: number, radius: number}} Shape a circle, or corners anticlockwise */
/** @typedef {{wide: number, high: number, scale: number, box: Box, at: (point: XY) => XY, from: (point: XY) => XY}} Frame
 * `at` leads from mm to the screen's units, `from` back */
/** @typedef {"x" | "y" | "xy"} Axes */
/**
 * @typedef {{key: string, name: string, x: number, y: number, axes: Axes, opening: number, shape?: Shape,
 *   looks: string, field: string, put: (order: Order, to: XY) => Order}} Movable
 * its place in mm; a handle has no shape, and only a cut-out its number as `opening`; `field` and `put`
 * are where it stands in the order
 */
/** @typedef {Movable["put"]} Put */
/** @typedef {"typing" | "choice" | "moving" | "undo" | "load" | "fix"} Cause */
/** @typedef {{order: Order, slab: number}} Moment */
/** @typedef {{order: Order, slab: number, unit: Unit, placed?: string[]}} Draft */
