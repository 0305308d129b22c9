"""How warm a workshop is by month, of what its maker knows: winter and summer."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from typing import Final

from ledgerstone.workshop.countries import SOUTHERN
from ledgerstone.workshop.keys.numerals import number_of

WARMTH_KEY: Final = "workshop_c"  # the key that has it
_JULY: Final = 6
_NAMED: Final = re.compile(r"\b(?:in |im )?(?:the )?(?:winter|summer|sommer)\b:?", re.IGNORECASE)
_BETWEEN: Final = re.compile(r"\s*(?:–|-|\bto\b|\bbis\b|\band\b|\bund\b|/)\s*", re.IGNORECASE)
_UNIT: Final = re.compile(r"\s*°?\s*[CF]$", re.IGNORECASE)


def by_month(winter: float, summer: float, country: str) -> tuple[float, ...]:
    """Return the temperature of each month from January on, in the unit of the two.

    Source
    ------
    A year's swing as a cosine, coldest in January north of the equator: common practice, no source.
    """
    first = _JULY if country in SOUTHERN else 0
    swing = [(1 - math.cos(math.tau * (month - first) / 12)) / 2 for month in range(12)]
    return tuple(round(winter + (summer - winter) * part, 1) for part in swing)


def months_of(values: Sequence[str], mark: str, country: str) -> list[str]:
    """Return an entry for each month, of one of all the year or of winter and summer.

    ``55 to 70`` and ``winter 55 °F, summer 70 °F`` are two; any other list stays as it is.

    Parameters
    ----------
    mark
        Between whole and tenth in the maker's language: ``.`` or ``,``.
    """
    parts = [part for value in values for part in _BETWEEN.split(_NAMED.sub("", value).strip())]
    units = {found[0] for part in parts if (found := _UNIT.search(part)) is not None}
    numbers = [number_of(_UNIT.sub("", part), mark) for part in parts]
    if len(parts) not in (1, 2) or None in numbers or len(units) > 1:
        return list(values)
    winter, summer = (float(number) for number in (numbers[0], numbers[-1]) if number is not None)
    unit = "".join(units)
    return [f"{warmth:g}".replace(".", mark) + unit for warmth in by_month(winter, summer, country)]
