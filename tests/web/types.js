/**
 * Types only, known in every file of the page by name: this file is read by the type check and
 * never loaded. First what goes to the service and comes back (openapi/ has it whole).
 */

/** @typedef {{x: string | number, y: string | number}} Place */
/**
 * @typedef {{label?: string, kind: string, outline: Outline, at: Place, depth: any,
 *   grooves?: any, fall?: any}} Relief
 */
/** @typedef {{slab: any, side: string}} JoinEnd */
/** @typedef {{one: JoinEnd, other: JoinEnd, gap: any}} Join */
/**
 * @typedef {{kind: string, length?: any, width?: any, diameter?: any, points?: Place[],
 *   notch?: {corner: string, length: any, width: any}, corner_radius?: any,
 *   corner_radii?: Record<string, any>}} Outline
 */
/**
 * @typedef {{label?: string, kind: string, centre?: Place, diameter?: any, length?: any,
 *   width?: any, corner_radius?: any, points?: Place[], rim?: string, open_to?: string,
 *   turn_degrees?: number, heat?: boolean, size_from?: string}} Cutout
 */
/**
 * @typedef {{label?: string, quantity?: any, use?: string, size_from?: string, outline: Outline,
 *   thickness: any, cutouts?: Cutout[], reliefs?: Relief[], edges?: Record<string, any>, shade?: {name?: string},
 *   finish?: {surface?: string, sealer?: string}, place?: string,
 *   rests?: {kind: string, [member: string]: any}}} Slab
 */
/**
 * @typedef {{slabs: Slab[], joins?: Join[], delivery?: {kind: string, [member: string]: any},
 *   needed_by?: string, sample_tile?: boolean, templating?: boolean,
 *   heated_curing?: boolean, since?: string}} Order
 */
/** @typedef {{currency: string, amount: string}} Money */
/**
 * @typedef {{says: string | string[], patch: Operation[], settles?: string[],
 *   price_change?: Money, price?: Price,
 *   lighter_by_kg?: number, sooner_by_days?: number}} Remedy
 */
/**
 * @typedef {{id: string, check: string, level: "stops" | "caution" | "note", slab?: number,
 *   at: string[], says: string, source?: string, remedies?: Remedy[],
 *   where_mm?: {type: string, coordinates: any}}} Finding
 */
/** @typedef {{pointer: string, says: string}} Fault */
/** @typedef {{plan?: string, view?: string, assembled?: string, true_size?: string, says?: string[]}} Drawings */
/**
 * @typedef {{currency: string, lines: {label: string, amount: string}[], net: string, tax: string,
 *   tax_percent: number, total: string, deposit: string}} Price
 */
/**
 * @typedef {{ready_on: string, if_ordered_by: string, arrives: {earliest: string, latest: string},
 *   stages: {name: string, starts: string, ends: string, why: string}[]}} LeadTime
 */
/**
 * @typedef {{reference: string, token?: string, link?: string, order: Order, issued: string,
 *   valid_until: string, standing: string, depends_on: string[], price: Price,
 *   lead_time: LeadTime, findings: Finding[], drawings: Drawings,
 *   weight: {slabs: {label: string, slab_kg: number, people_to_lift: number, says: string}[], packed_kg: number},
 *   slabs: {finished_mm: {length_mm: number, width_mm: number, thickness_mm: number}}[],
 *   ways_to_save?: Remedy[], changes?: Changes}} Quote
 */
/**
 * @typedef {{says: string[], since: {reference: string}, revision?: string, price_change: Money,
 *   ready_later_days: number}} Changes
 */
/**
 * @typedef {{title: string, detail: string, order: Order, findings: Finding[],
 *   not_checked: string[], drawings: Drawings, fix_all?: Remedy,
 *   nearest_makeable?: Remedy, why_no_fix?: string}} SentBack
 */
/** @typedef {{title: string, detail: string, faults: Fault[], more_faults?: number}} NotUnderstood */
/**
 * @typedef {{kind: "quote", body: Quote} | {kind: "sent-back", body: SentBack}
 *   | {kind: "not-understood", body: NotUnderstood}} Answer
 */
/**
 * @typedef {{reference: string, token: string, issued: string, valid_until: string, order: Order,
 *   standing: string, stands: boolean, says: string, because: {reason: string, says: string}[],
 *   price: {currency: string, net: string, tax: string, total: string, deposit: string},
 *   lead_time: {ready_on: string, if_ordered_by: string}, today?: Today}} Opened
 */
/**
 * @typedef {{kind: "quote", body: Quote} | {kind: "sent-back", body: SentBack}
 *   | {kind: "not-understood", body: {faults: Fault[]}}} Today
 */
/** @typedef {{says: string, faults?: Fault[]}} Requested */
/**
 * @typedef {{workshop: {name: string, town: string, email: string, telephone: string},
 *   requests?: boolean, currency: string, tax: {name: string, percent: string} | null, uses: string[],
 *   places: string[], corners: string[], thicknesses_mm: number[],
 *   shades: {name: string, hex: string, by_eye: boolean, cement: string}[],
 *   finishes: {surface: string, says: string}[],
 *   sealers: {name: string, says: string, places: string[]}[],
 *   edges: {profile: string, smallest_mm: number, largest_mm: number}[],
 *   limits: Record<string, number>, sample_tile?: {says: string} | null,
 *   templating?: {says: string} | null,
 *   heated_curing?: {says: string} | null,
 *   deliveries: {area: string, postcodes: string[], kinds: string[]}[]}} Choices
 */

// Then the page's own.
/** @typedef {import("../../web/page.js").Page} Page */
/** @typedef {import("../../web/service.js").Service} Service */
/** @typedef {import("../../web/sketch/sketch.js").Sketch} Sketch */
/** @typedef {import("../../web/store.js").Store} Store */
/** @typedef {"view" | "plan" | "assembled"} Drawn */
/** @typedef {Partial<Record<Drawn, {address: string, alt: string}>>} Pictures */
/** @typedef {{name: string, from: number, to: number}} Bar days since the first, ends not included */
/** @typedef {{order: Order, go: (pointer: string) => void, apply: (remedy: Remedy) => void}} Context */
/**
 * @typedef {{choices: Choices, announce: (words: string) => void,
 *   request: (asked: Record<string, string>) => Promise<Requested>}} Keeping
 */
/** @typedef {Context & {slab: number, tax: string, drawing: (link: string) => string, keep: HTMLElement | null}} Showing */
/** @typedef {{answer: Answer, order: Order, settled: boolean, partial?: boolean}} Answered */
/** @typedef {HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement} Control */
/** @typedef {"left" | "right" | "front" | "back"} Side */
/** @typedef {{op: string, path: string, value?: any}} Operation */
/** @typedef {"mm" | "cm" | "m" | "in"} Unit */
/** @typedef {{kind: string, rim?: string, depth?: number, grooves?: number, fall?: number, diameter?: number, length?: number, width?: number, corner_radius?: number, heat?: boolean}} Piece */
/**
 * @typedef {{size: [number, number], use?: string, place?: string, walls?: string[], notch?: string,
 *   round?: boolean, openings?: [name: string, x: number, y: number][], rests?: string,
 *   units?: [width: number, what: string][]}} Sheet
 */
/** @typedef {string | {one: string, other: string}} Message */
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
/** @typedef {"typing" | "choice" | "moving" | "undo" | "load"} Cause */
/** @typedef {{order: Order, slab: number}} Moment */
/** @typedef {{order: Order, slab: number, unit: Unit}} Draft */
