"""The job of a quote's token or of an order, and its sheet as members."""

from __future__ import annotations

from typing import Any

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.resolving import ResolvedRequest, read_ask, resolve
from ledgerstone.codec.paper_schemas import JOB_SHEET
from ledgerstone.codec.request_schemas import AskSchema
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_sheet import job_content
from ledgerstone.quote import SentBack

_SCHEMA = AskSchema()


def make_job(document: object, context: QuoteContext) -> Job | ResolvedRequest:
    """Work out a job; the resolved request, with its send-back, where it cannot be made.

    Raises
    ------
    NotUnderstood
    """
    resolved = resolve(read_ask(_SCHEMA, document), context, search=True)
    if isinstance(resolved.answer, SentBack):
        return resolved
    name = resolved.offer.name if resolved.offer is not None else ""
    return Job(name, resolved.answer, context.workshop, context.contain)


def write_job(job: Job) -> dict[str, Any]:
    """Write a job sheet as plain lists and texts, its drawings left out, with what it costs."""
    written: dict[str, Any] = JOB_SHEET.dump(job_content(job))
    return written
