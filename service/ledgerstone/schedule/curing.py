"""How long concrete stays damp and when it has the age it needs, by the workshop's temperature."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from types import MappingProxyType

from ledgerstone.schedule.booking import MINUTES_A_DAY, day_at, minute_at
from ledgerstone.schedule.days import NoWorkingDay
from ledgerstone.strength.concrete import CementClass, ageing_rate

# Days of damp cover of EN 13670's class 2 (table F.1) by the warmth of the face: at 25 °C and
# over, at 15, at 10 and at 5. FROM MEMORY: look them up in the standard. Classes R and N grow
# rapidly (r >= 0.5), class S at a middling rate, by EN 1992-1-1 3.1.2(6).
_RAPID = ((25.0, 1.0), (15.0, 1.0), (10.0, 1.5), (5.0, 2.0))
_MEDIUM = ((25.0, 1.5), (15.0, 2.5), (10.0, 4.0), (5.0, 5.0))
CLASS_2: Mapping[CementClass, tuple[tuple[float, float], ...]] = MappingProxyType(
    {"R": _RAPID, "N": _RAPID, "S": _MEDIUM}
)
Rate = Callable[[float], float]


def damp_days(celsius: float, cement: CementClass) -> float | None:
    """Return the days of damp cover that class 2 requires at a temperature; None below 5 °C.

    Source
    ------
    EN 13670 8.5 and table F.1, class 2, values from memory. Time below 5 °C does not count.
    """
    return next((days for least, days in CLASS_2[cement] if celsius >= least), None)


@dataclass(frozen=True, slots=True)
class Warmth:
    """A piece's temperature, °C: the workshop's by month, or a heated tent's while it is in it.

    ``tent_until`` is the minute at which it leaves the tent; None if it stays there.
    """

    by_month: Sequence[float]
    tent_c: float | None = None
    tent_until: int | None = None

    def at(self, minute: int) -> tuple[float, int]:
        """Return the temperature, °C, at a minute, and the minute at which it next changes."""
        day = day_at(minute)
        celsius, end = self.by_month[day.month - 1], _next_month(day)
        if self.tent_c is None or (self.tent_until is not None and minute >= self.tent_until):
            return celsius, end
        until = end if self.tent_until is None else min(end, self.tent_until)
        return max(celsius, self.tent_c), until


def damp_until(poured: int, own_days: float | None, cement: CementClass, warmth: Warmth) -> int:
    """Return the minute until which a slab is kept damp: the maker's own days, else class 2's.

    Source
    ------
    EN 13670 8.5, class 2, as ``damp_days``: each day takes its share of the days wanted.
    """
    if own_days is not None:
        return poured + math.ceil(own_days * MINUTES_A_DAY - 1e-6)

    def share(celsius: float) -> float:
        days = damp_days(celsius, cement)
        return 0.0 if days is None else 1.0 / days

    return _gained(poured, 1.0, share, warmth)


def aged_by(poured: int, age_days: float, warmth: Warmth) -> int:
    """Return the minute, from year 1, at which concrete has an age in days, adjusted to 20 °C.

    Raises
    ------
    NoWorkingDay
        It is too cold in every month for it to age.

    Source
    ------
    EN 1992-1-1 (B.10).
    """
    return _gained(poured, age_days, ageing_rate, warmth)


def _gained(start: int, wanted: float, rate: Rate, warmth: Warmth) -> int:
    """Return the minute at which ``wanted`` is gained, at each temperature's own rate per day.

    Raises
    ------
    NoWorkingDay
        Nothing is gained in a whole year.
    """
    at, still, idle = start, wanted, 0
    while still > 0.0:
        celsius, end = warmth.at(at)
        gain = rate(celsius)
        idle = 0 if gain > 0.0 else idle + 1
        if idle > len(warmth.by_month):
            raise NoWorkingDay("the workshop is too cold for concrete to cure in any month")
        within = gain * (end - at) / MINUTES_A_DAY
        if within >= still:
            return at + math.ceil(still / gain * MINUTES_A_DAY - 1e-6)
        at, still = end, still - within
    return at


def _next_month(day: date) -> int:
    later = date(day.year + day.month // 12, day.month % 12 + 1, 1)
    return minute_at(later)
