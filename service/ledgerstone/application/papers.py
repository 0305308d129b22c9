"""The papers of a quote's token or of an order: every sheet, and the job sheet, by their names."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any, Final

from marshmallow import Schema

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.drawings import Annotations, Drawer, drawing_content
from ledgerstone.application.resolving import ResolvedRequest, Wanted, read_ask, resolve
from ledgerstone.codec.paper_schemas import JOB_SHEET, SHEET
from ledgerstone.codec.request_schemas import AskSchema
from ledgerstone.drawing import paper_effort
from ledgerstone.papers import QuoteView
from ledgerstone.papers.approval import approval_sheet
from ledgerstone.papers.care import care_sheet
from ledgerstone.papers.fitting import fitting_sheet
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_sheet import job_paper
from ledgerstone.papers.paper import Paper
from ledgerstone.papers.sheet import sheet_paper
from ledgerstone.quote import Quote
from ledgerstone.schedule.plan_ics import plan_ics

_SCHEMA = AskSchema()
JOB: Final = "job-sheet"


@dataclass(frozen=True, slots=True)
class PaperKind:
    """How one kind of paper is worked out, and the schema that writes it as JSON.

    Attributes
    ----------
    search
        Whether remedies are searched for where the order is sent back.
    """

    work_out: Callable[[QuoteView, QuoteContext, str], Paper]
    schema: Schema
    search: bool = False


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
    view = _view(resolved, resolved.answer)
    return PAPERS[kind].work_out(view, context, ask.get("customer", ""))


def write_paper(kind: str, paper: Paper) -> dict[str, Any]:
    """Write a paper as plain lists and texts, its drawings by their words."""
    written: dict[str, Any] = PAPERS[kind].schema.dump(paper.content)
    return written


def make_plan(document: object, context: QuoteContext) -> str | ResolvedRequest:
    """Write an order's plan as a calendar file; the resolved request where it cannot be made.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    context = context.of_one_request()
    resolved = resolve(read_ask(_SCHEMA, document), context, _wanted(JOB))
    if not isinstance(resolved.answer, Quote):
        return resolved
    return plan_ics(resolved.answer.lead_time, resolved.answer.order, context.workshop)


def _wanted(kind: str) -> Wanted:
    return Wanted(lambda order: paper_effort(order.slabs), search=PAPERS[kind].search)


def _view(resolved: ResolvedRequest, quote: Quote) -> QuoteView:
    name = resolved.offer.name if resolved.offer is not None else ""
    return QuoteView(quote=quote, name=name, link=resolved.link, whole=resolved.whole)


def _approval(view: QuoteView, context: QuoteContext, customer: str) -> Paper:
    sheet = approval_sheet(view, context.workshop, _plans(view, context), customer)
    return sheet_paper(sheet, context.workshop)


def _fitting(view: QuoteView, context: QuoteContext, customer: str) -> Paper:
    return sheet_paper(fitting_sheet(view, context.workshop, customer), context.workshop)


def _care(view: QuoteView, context: QuoteContext, customer: str) -> Paper:
    return sheet_paper(care_sheet(view, context.workshop, customer), context.workshop)


def _job(view: QuoteView, context: QuoteContext, _customer: str) -> Paper:
    return job_paper(Job(view.name, view.quote, context.workshop, context.contain))


def _plans(view: QuoteView, context: QuoteContext) -> list[str]:
    """Draw each slab's plan; nothing that the sheet does not number is pinned on it."""
    order = view.quote.order
    annotations = Annotations(reference=view.name, issued=view.quote.issued)
    drawer = Drawer(drawing_content(order, annotations), context.workshop, context.contain)
    return [drawer.drawn("plan", i) for i in range(len(order.slabs))]


PAPERS: Final[Mapping[str, PaperKind]] = MappingProxyType(
    {
        "approval": PaperKind(_approval, SHEET),
        "fitting": PaperKind(_fitting, SHEET),
        "care": PaperKind(_care, SHEET),
        JOB: PaperKind(_job, JOB_SHEET, search=True),
    }
)
SHEETS: Final = tuple(kind for kind in PAPERS if kind != JOB)
