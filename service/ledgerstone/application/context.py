"""The context of an answer: everything it depends on except the request."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import nullcontext
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Self

from ledgerstone.checks import Timed
from ledgerstone.codec.tokens import Tokens
from ledgerstone.containment import Contain, uncontained
from ledgerstone.message import Message
from ledgerstone.price import NO_TERMS, MakerTerms
from ledgerstone.remedies import Budget
from ledgerstone.schedule import Booking
from ledgerstone.stages import StageCache, StageContext
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True)
class QuoteContext:
    """The workshop, the day, the bookings and the keys that an order is answered with.

    Attributes
    ----------
    tokens
        Signs links, and opens the one in an order's ``since``.
    bookings
        The bookings; None if there is no calendar.
    cache
        Cached results of the stages, shared between calls.
    for_maker
        Whether the maker asks: the answer has costs, and is a quotation unless it needs a template.
    terms
        What the maker sets for this offer.
    calendar_fault
        Why the calendar cannot be read: no day is then promised, and every price is an estimate.
    timed
        Context manager entered for each part of an answer, by its name.
    contain
        Context manager entered for each part of an answer that may fail on its own.
    budget
        Units of work that are left to the request. None if the request is for answers only: each
        answer then has a whole budget.
    """

    workshop: Workshop
    today: date
    tokens: Tokens
    bookings: Sequence[Booking] | None = None
    cache: StageCache = field(default_factory=StageCache)
    for_maker: bool = False
    terms: MakerTerms = NO_TERMS
    calendar_fault: Message | None = None
    timed: Timed = nullcontext
    contain: Contain = uncontained
    budget: Budget | None = None

    @property
    def of_stages(self) -> StageContext:
        """What the stages of a quote depend on."""
        return StageContext(self.workshop, self.bookings, self.today, self.cache, terms=self.terms)

    def of_one_request(self) -> Self:
        """Return the context with one budget for everything that one request asks for."""
        return self if self.budget is not None else replace(self, budget=Budget())

    def set_aside(self, units: float, slabs: int) -> None:
        """Reserve units of work for what is made of an answer, before the order is answered.

        Raises
        ------
        TooIntricate
        """
        if self.budget is not None:
            self.budget.set_aside(units, slabs)
