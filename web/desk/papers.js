/** The papers of an offer, each one press. */

import { make, say } from "../show.js";
import { saved } from "./files.js";

/** @type {readonly [string, string, import("./service.js").FileKind, string][]} what, where, its form, the file's ending */
const PAPERS = [
  ["approval", "v1/sheets/approval", "application/pdf", "pdf"],
  ["fitting", "v1/sheets/fitting", "application/pdf", "pdf"],
  ["care", "v1/sheets/care", "application/pdf", "pdf"],
  ["job", "v1/job-sheets", "application/pdf", "pdf"],
  ["calendar", "v1/job-sheets", "text/calendar", "ics"],
  ["dxf", "v1/job-sheets", "image/vnd.dxf", "dxf"],
  ["svg", "v1/job-sheets", "image/svg+xml", "svg"],
];

/**
 * @param {Desk} desk
 * @param {() => {reference: string, ask: object}} of the offer's name, and what its papers are asked by
 * @param {string} fault where what is amiss is said
 */
export function paperButtons(desk, of, fault) {
  const buttons = PAPERS.map(([name]) => make("button", { type: "button", class: "quiet", press: () => void fetchPaper(desk, name, of(), fault) }, say(`papers.${name}`)));
  return make("div", { class: "keep papers", role: "group", "aria-label": say("papers.title") }, ...buttons);
}

/** @param {Desk} desk @param {string} name @param {{reference: string, ask: object}} of @param {string} fault */
export async function fetchPaper(desk, name, { reference, ask }, fault) {
  const [, path = "", kind = "application/pdf", ending = ""] = PAPERS.find(([known]) => known === name) ?? [];
  const file = await desk.tried(fault, () => desk.service.file(path, ask, kind));
  if (file) saved(file, `${reference.replace(/\s+/g, "-")}-${name}.${ending}`);
}
