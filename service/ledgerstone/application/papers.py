"""Papers of a quote's token or of an order, by name, as JSON, HTML or PDF."""

from __future__ import annotations

import json
from collections.abc import Mapping
from types import MappingProxyType
from typing import Any, Final

from marshmallow import Schema

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.resolving import ResolvedRequest, Wanted, read_ask, resolve
from ledgerstone.codec.paper_schemas import JOB_SHEET, SHEET
from ledgerstone.codec.request_schemas import AskSchema, JobAskSchema
from ledgerstone.drawing import paper_effort
from ledgerstone.media_types import HTML, JSON_TYPE, PDF
from ledgerstone.order import Order
from ledgerstone.papers.descriptions import slab_titles
from ledgerstone.papers.kinds import JOB, PAPER_KINDS, PaperLayout
from ledgerstone.papers.paper import Paper, paper_of, paper_page, paper_print
from ledgerstone.papers.records import PaperRecords
from ledgerstone.papers.templates import Templates
from ledgerstone.quote import Quote
from ledgerstone.schedule.plan_names import PlanNames
from ledgerstone.wording import speech_of

_SCHEMA, _JOB_SCHEMA = AskSchema(), JobAskSchema()
FORMS: Final = (JSON_TYPE, HTML, PDF)
_SCHEMAS: Final[Mapping[PaperLayout, Schema]] = MappingProxyType(
    {"sheet": SHEET, "cards": SHEET, "job_sheet": JOB_SHEET}
)


def make_paper(kind: str, document: object, context: QuoteContext) -> Paper | ResolvedRequest:
    """Make a paper; return the resolved request, with its send-back, if the order is sent back.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    context = context.of_one_request()
    ask = read_ask(_JOB_SCHEMA if kind == JOB else _SCHEMA, document)
    resolved = resolve(ask, context, _wanted(kind))
    if not isinstance(resolved.answer, Quote):
        return resolved
    records = PaperRecords(
        name=resolved.offer.name if resolved.offer is not None else "",
        quote=resolved.answer,
        workshop=context.workshop,
        customer=ask.get("customer", ""),
        unanswered=tuple(question["asks"] for question in ask.get("missing", ())),
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
    """Write a paper as plain lists and texts, with drawings as their descriptions."""
    members: dict[str, Any] = _SCHEMAS[paper.layout].dump(paper.content)
    return members


def make_plan(document: object, context: QuoteContext) -> str | ResolvedRequest:
    """Write an order's work as a calendar file; return the resolved request if it is sent back.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    # Only a maker asks for it, and what writes calendars takes long to load.
    from ledgerstone.schedule.plan_ics import plan_ics  # noqa: PLC0415

    context = context.of_one_request()
    ask = read_ask(_JOB_SCHEMA, document)
    resolved = resolve(ask, context, _wanted(JOB))
    if not isinstance(resolved.answer, Quote):
        return resolved
    lead, order = resolved.answer.lead_time, resolved.answer.order
    return plan_ics(lead, context.workshop, _plan_names(order, ask, resolved, context))


def _plan_names(
    order: Order, ask: Mapping[str, Any], resolved: ResolvedRequest, context: QuoteContext
) -> PlanNames:
    speech = speech_of(order, context.workshop)
    return PlanNames(
        slabs=tuple(map(speech.value, slab_titles(order))),
        speech=speech,
        way=order.delivery.kind,
        customer=ask.get("customer", ""),
        reference=resolved.offer.name if resolved.offer is not None else "",
        arrives_known=resolved.whole,
    )


def resolved_for_job(document: object, context: QuoteContext) -> ResolvedRequest:
    """Resolve the order that a file for the workshop is made from.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    return resolve(read_ask(_JOB_SCHEMA, document), context, _wanted(JOB))


def _wanted(kind: str) -> Wanted:
    return Wanted(lambda order: paper_effort(order.slabs), search=PAPER_KINDS[kind].search)
