"""The job of a quote's token or of an order."""

from __future__ import annotations

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.resolving import AskSchema, ResolvedRequest, read_ask, resolve
from ledgerstone.papers.job import Job
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
