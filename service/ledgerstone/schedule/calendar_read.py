"""What a reading of the maker's calendar file comes to, and how large a file may be."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from ledgerstone.message import Message
from ledgerstone.schedule.booking import Booking

LARGEST_TEXT: Final = 4_000_000


@dataclass(frozen=True, slots=True)
class CalendarRead:
    """What became of a calendar file: its bookings, or in ``why_not`` why there are none to trust.

    ``fingerprint`` is of the bookings only: a file exported again without a change has the same.
    """

    bookings: tuple[Booking, ...] = ()
    why_not: Message | None = None
    fingerprint: str = ""

    @property
    def known(self) -> tuple[Booking, ...] | None:
        """All that is booked; None if no calendar was read."""
        return self.bookings if self.fingerprint else None
