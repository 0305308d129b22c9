"""Time that is taken already: by other work, by people away, by what lies on a table."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, time
from typing import Literal

BookedResource = Literal["people", "table", "both"]
MINUTES_A_DAY = 1440


@dataclass(frozen=True, slots=True)
class Booking:
    """Days already taken, both ends included, in a word by what, and what they hold.

    ``starts`` is the time of the first day from which it holds, ``ends`` the time of the last one
    until which it does; None is that day's end. People held are all hands; a table held is one.
    """

    first: date
    last: date
    why: str
    holds: BookedResource = "people"
    starts: time = time.min
    ends: time | None = None

    @property
    def minutes(self) -> tuple[int, int]:
        """First minute and the one after the last, local time, counted from year 1."""
        end = MINUTES_A_DAY if self.ends is None else minute_of(self.ends)
        return minute_at(self.first) + minute_of(self.starts), minute_at(self.last) + end


def minute_at(day: date) -> int:
    """Return a day's first minute, counted from year 1."""
    return day.toordinal() * MINUTES_A_DAY


def minute_of(at: time) -> int:
    """Return the minute of a day at a time of day."""
    return at.hour * 60 + at.minute


def day_at(minute: int) -> date:
    """Return the day in which a minute lies."""
    return date.fromordinal(minute // MINUTES_A_DAY)


def last_day(end: int) -> date:
    """Return the day on which something ends: midnight belongs to the day before."""
    return day_at(end - 1)
