"""What the answer to a call depends on beside what was sent."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import nullcontext
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Self

from ledgerstone.checks import Timed
from ledgerstone.codec.tokens import Tokens
from ledgerstone.containment import Contain, let_through
from ledgerstone.price import NO_TERMS, MakerTerms
from ledgerstone.remedies import Budget
from ledgerstone.schedule import Booking
from ledgerstone.stages import StageCache
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True)
class QuoteContext:
    """The workshop, the day, the bookings and the keys that an order is answered with.

    Attributes
    ----------
    tokens
        Signs links, and opens the one that an order names as its ``since``.
    bookings
        All that is booked; None where no calendar is read.
    plates
        What stages worked out before, shared between calls.
    for_maker
        Whether the maker asks: what needs no template is then a quotation, and costs are told.
    terms
        What the maker sets for the offer that is asked for.
    calendar_fault
        Why the calendar cannot be read; no day is then promised, and nothing is a quotation.
    timed
        Is entered for each stage of an answer by its name.
    contain
        Is entered for each part of an answer whose fault costs that part alone.
    budget
        What the request may still have worked out. None where an answer is all that is asked for:
        each has then a whole one.
    """

    workshop: Workshop
    today: date
    tokens: Tokens
    bookings: Sequence[Booking] | None = None
    plates: StageCache = field(default_factory=StageCache)
    for_maker: bool = False
    terms: MakerTerms = NO_TERMS
    calendar_fault: str = ""
    timed: Timed = nullcontext
    contain: Contain = let_through
    budget: Budget | None = None

    def of_one_request(self) -> Self:
        """Return what gives all that one request asks for one budget together."""
        return self if self.budget is not None else replace(self, budget=Budget())

    def set_aside(self, units: float, slabs: int) -> None:
        """Pay, before an order is answered, for what is made of its answer.

        Raises
        ------
        TooIntricate
        """
        if self.budget is not None:
            self.budget.set_aside(units, slabs)
