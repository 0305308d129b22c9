"""The context that tests answer orders in: a workshop and a day, and the tests' own keys."""

from datetime import date

from ledgerstone.application.context import QuoteContext
from ledgerstone.codec.tokens import Tokens
from ledgerstone.workshop import Workshop
from support.demonstration import SIGNING_KEYS


def context_of(workshop: Workshop, today: date) -> QuoteContext:
    """Return the context of a customer's order at a workshop on a day."""
    return QuoteContext(workshop, today, Tokens(SIGNING_KEYS))
