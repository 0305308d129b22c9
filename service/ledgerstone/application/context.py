"""What the answer to a call depends on beside what was sent."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import nullcontext
from dataclasses import dataclass, field
from datetime import date

from ledgerstone.checks import Timed
from ledgerstone.codec.tokens import Tokens
from ledgerstone.containment import Contain, let_through
from ledgerstone.remedies import Pace, unpaced
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
    calendar_fault
        Why the calendar cannot be read; no day is then promised, and nothing is a quotation.
    timed
        Is entered for each stage of an answer by its name.
    contain
        Is entered for each part of an answer whose fault costs that part alone.
    pace
        Is told before each piece of an answer's work how much it comes to in all.
    """

    workshop: Workshop
    today: date
    tokens: Tokens
    bookings: Sequence[Booking] | None = None
    plates: StageCache = field(default_factory=StageCache)
    for_maker: bool = False
    calendar_fault: str = ""
    timed: Timed = nullcontext
    contain: Contain = let_through
    pace: Pace = unpaced
