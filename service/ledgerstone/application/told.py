"""An answer as whoever asks is told it: a customer without what the workshop alone acts on."""

from __future__ import annotations

from dataclasses import replace
from typing import TypeVar

from ledgerstone.application.context import QuoteContext
from ledgerstone.checks import for_customers
from ledgerstone.quote import Quote, SentBack
from ledgerstone.terms import MAKERS_CONDITIONS

A = TypeVar("A", Quote, SentBack, Quote | SentBack)


def told(answer: A, context: QuoteContext) -> A:
    """Return an answer as it is told: to the maker all of it."""
    if context.for_maker:
        return answer
    findings = for_customers(answer.findings, answer.order.delivery)
    if isinstance(answer, SentBack):
        return replace(answer, findings=findings)
    depends_on = tuple(one for one in answer.depends_on if one.name not in MAKERS_CONDITIONS)
    return replace(answer, findings=findings, depends_on=depends_on)
