"""The papers of a quote's token or of an order, by their names, in the form that is asked for."""

from __future__ import annotations

import json
from collections.abc import Mapping
from types import MappingProxyType
from typing import Any, Final

from marshmallow import Schema

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.resolving import ResolvedRequest, Wanted, read_ask, resolve
from ledgerstone.codec.paper_schemas import JOB_SHEET, SHEET
from ledgerstone.codec.request_schemas import AskSchema
from ledgerstone.drawing import paper_effort
from ledgerstone.papers.kinds import JOB, KINDS, Layout
from ledgerstone.papers.paper import Paper, paper_of, paper_page, paper_print
from ledgerstone.papers.records import PaperRecords
from ledgerstone.papers.templates import Templates
from ledgerstone.quote import Quote
from ledgerstone.schedule.plan_ics import plan_ics

_SCHEMA = AskSchema()
JSON_TYPE, HTML, PDF = "application/json", "text/html", "application/pdf"
FORMS: Final = (JSON_TYPE, HTML, PDF)
_SCHEMAS: Final[Mapping[Layout, Schema]] = MappingProxyType(
    {"sheet": SHEET, "cards": SHEET, "job_sheet": JOB_SHEET}
)


def make_paper(kind: str, document: object, context: QuoteContext) -> Paper | ResolvedRequest:
    """Work out a paper; the resolved request, with its send-back, where it cannot be made.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    context = context.of_one_request()
    ask = read_ask(_SCHEMA, document)
    resolved = resolve(ask, context, _wanted(kind))
    if not isinstance(resolved.answer, Quote):
        return resolved
    records = PaperRecords(
        name=resolved.offer.name if resolved.offer is not None else "",
        quote=resolved.answer,
        workshop=context.workshop,
        customer=ask.get("customer", ""),
        whole=resolved.whole,
        contain=context.contain,
    )
    return paper_of(kind, records)


def render(paper: Paper, form: str, templates: Templates) -> str | bytes:
    """Write a paper as JSON, as a page or as a PDF.

    Raises
    ------
    TemplateFault
    """
    if form == PDF:
        return paper_print(paper)
    if form == HTML:
        return paper_page(paper, templates)
    return json.dumps(paper_members(paper))


def paper_members(paper: Paper) -> dict[str, Any]:
    """Write a paper as plain lists and texts, its drawings by their words."""
    members: dict[str, Any] = _SCHEMAS[paper.layout].dump(paper.content)
    return members


def make_plan(document: object, context: QuoteContext) -> str | ResolvedRequest:
    """Write an order's plan as a calendar file; the resolved request where it cannot be made.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    context = context.of_one_request()
    resolved = resolved_for_job(document, context)
    if not isinstance(resolved.answer, Quote):
        return resolved
    return plan_ics(resolved.answer.lead_time, resolved.answer.order, context.workshop)


def resolved_for_job(document: object, context: QuoteContext) -> ResolvedRequest:
    """Answer the order that a file for the workshop is made from.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    return resolve(read_ask(_SCHEMA, document), context, _wanted(JOB))


def _wanted(kind: str) -> Wanted:
    return Wanted(lambda order: paper_effort(order.slabs), search=KINDS[kind].search)
