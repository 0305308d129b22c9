"""When casting tables are booked, and when enough of them are free."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable
from itertools import pairwise

from ledgerstone.schedule.booking import Booking
from ledgerstone.schedule.days import MinuteSpan


class Tables:
    """The casting tables, each of which a booking may hold for a time.

    Parameters
    ----------
    count
        How many there are.
    bookings
        Those that hold a table take one each.
    """

    def __init__(self, count: int, bookings: Iterable[Booking]) -> None:
        self._count = count
        held = [booking.minutes for booking in bookings if booking.holds != "people"]
        edges = sorted(
            [(start, 1) for start, end in held if start < end]
            + [(end, -1) for start, end in held if start < end]
        )
        self._taken: list[tuple[int, int, int]] = []  # (start, end, tables held)
        taken = 0
        for (at, change), (later, _) in pairwise(edges):
            taken += change
            if taken and at < later:
                self._taken.append((at, later, taken))
        self._ends = [end for _, end, _ in self._taken]

    def clash(self, span: MinuteSpan, tables: int) -> int | None:
        """Return the minute at which the first booking ends that leaves too few tables.

        None where enough are left all through ``span``, its first minute and the one after it.
        """
        for at in range(bisect_right(self._ends, span[0]), len(self._taken)):
            start, end, taken = self._taken[at]
            if start >= span[1]:
                return None
            if taken + tables > self._count:
                return end
        return None

    def free_for(self, at: int, minutes: int, tables: int) -> int:
        """Return the first minute from ``at`` on when tables are free for ``minutes``."""
        while (clash := self.clash((at, at + minutes), tables)) is not None:
            at = clash
        return at
