"""What a quote depends on beside the order: the workshop, its bookings and the day."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date

from ledgerstone.price import NO_TERMS, MakerTerms
from ledgerstone.schedule import Booking
from ledgerstone.stages.cache import StageCache
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True)
class StageContext:
    """What a quote depends on beside the order.

    Attributes
    ----------
    bookings
        All that is booked; None if no calendar is read.
    terms
        The maker's terms for this offer.
    cache
        Results kept from earlier orders and trials.
    """

    workshop: Workshop
    bookings: Sequence[Booking] | None
    today: date
    cache: StageCache = field(default_factory=StageCache, compare=False)
    terms: MakerTerms = field(default=NO_TERMS, kw_only=True)

    def __post_init__(self) -> None:
        self.cache.use_for(self.workshop)
