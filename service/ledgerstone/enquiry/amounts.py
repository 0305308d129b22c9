"""A size as written becomes one length: which unit a bare number has, what its mark means."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable
from fractions import Fraction
from types import MappingProxyType
from typing import Final, cast

from ledgerstone.enquiry.measures import Measure
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.errors import QuantityError
from ledgerstone.quantities import Length, Unit

# What a size of each role may be on a slab cast to order, mm. Common practice, no source: wide
# enough for any piece, close enough to tell 60 cm from 60 mm.
PLAUSIBLE_MM: Final = MappingProxyType(
    {
        "length": (150.0, 9000.0),
        "width": (35.0, 3500.0),
        "deep": (140.0, 3500.0),
        "thickness": (10.0, 200.0),
        "diameter": (200.0, 3500.0),
        "opening": (100.0, 1400.0),
        "hole": (8.0, 1300.0),
        "place": (8.0, 8000.0),
    }
)
_DECLARED: Final = re.compile(
    r"\b(?:all|sizes?|measures|measurements|dimensions|everything|maße|angaben|dims|figures)\b"
    r"[^.\n]{0,24}?\b(mm|millimetres|millimeters|cm|centimetres|centimeters|zentimeter|inches"
    r"|inch|metres)\b"
    r"|\((mm|cm|inches|inch|in)\)",
    re.IGNORECASE,
)
_NAMES: Final = MappingProxyType[str, Unit](
    {
        "mm": "mm",
        "millimetres": "mm",
        "millimeters": "mm",
        "cm": "cm",
        "centimetres": "cm",
        "centimeters": "cm",
        "zentimeter": "cm",
        "inches": "in",
        "inch": "in",
        "in": "in",
        "metres": "m",
    }
)


class Amounts:
    """Turns sizes to lengths by what the whole message says of its units."""

    def __init__(self, text: str, sentences: Iterable[Sentence]) -> None:
        found = _DECLARED.search(text)
        self.declared = _NAMES.get((found[1] or found[2]).lower()) if found and found[1] else None
        counted: Counter[Unit] = Counter(
            atom.size.unit
            for sentence in sentences
            for atom in sentence.atoms
            if atom.size is not None and atom.size.unit is not None
        )
        usual = counted.most_common(1)[0][0] if counted else None
        self.usual: Unit | None = usual if usual in ("cm", "in") and not counted["mm"] else None

    def length(self, measure: Measure, role: str) -> tuple[Length, Length | None] | None:
        """Give the length meant in a role, and another that it may mean; None where none fits."""
        low, high = PLAUSIBLE_MM["width" if role == "deep" and measure.size.unit else role]
        fits: list[Length] = []
        for amount, unit in self._readings(measure):
            try:
                length = Length.of(amount, unit)
            except QuantityError:
                continue
            if low <= length.mm <= high and not any(abs(length.mm - one.mm) < 0.5 for one in fits):
                fits.append(length)
        if not fits:
            return None
        is_written = measure.size.unit is not None and measure.size.grouped is not None
        return fits[0], fits[1] if is_written and len(fits) > 1 else None

    def _readings(self, measure: Measure) -> Iterable[tuple[Fraction, Unit]]:
        size = measure.size
        units: list[Unit] = [size.unit] if size.unit is not None else self._units(measure)
        for unit in units:
            if size.grouped is not None and unit == "mm":
                yield size.grouped, unit
            yield size.amount, unit
            if size.grouped is not None and unit not in ("mm", "m"):
                yield size.grouped, unit

    def _units(self, measure: Measure) -> list[Unit]:
        """Units that a bare number may have, the likeliest first."""
        first: list[Unit | None] = []
        if measure.unit_from_label:
            first.append(_NAMES.get(measure.unit_from_label, cast("Unit", measure.unit_from_label)))
        first += [one.size.unit for one in measure.members[measure.place :] if one.size.unit][-1:]
        first.append(self.declared)
        first.append(self.usual)
        if measure.size.has_fraction:
            first.append("in")
        units: list[Unit] = [unit for unit in first if unit is not None]
        others: tuple[Unit, ...] = ("mm", "cm", "m", "in")
        for unit in others:
            if unit not in units:
                units.append(unit)
        return units
