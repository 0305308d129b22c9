"""A size as written becomes one length: which unit a bare number has, what its mark means."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable
from dataclasses import replace
from fractions import Fraction
from types import MappingProxyType
from typing import Final, cast

from ledgerstone.enquiry.measures import Measure
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.sizes import Size
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
# Of several units that a bare number may have, the first that gives a usual size is taken.
LIKELY_MM: Final = MappingProxyType(
    {
        "length": (250.0, 4500.0),
        "width": (60.0, 1600.0),
        "deep": (150.0, 1600.0),
        "thickness": (15.0, 120.0),
        "diameter": (250.0, 2000.0),
        "opening": (150.0, 1100.0),
        "hole": (15.0, 900.0),
        "place": (15.0, 4500.0),
    }
)
_USUAL: Final = {key: LIKELY_MM[key] for key in ("length", "width", "thickness")}
_NARROWEST_MM: Final = 15.0  # of a pair, a socket's or a slot's: common practice, no source
_RULING_SHARE: Final = 0.7
_DECLARED: Final = re.compile(
    r"\b(?:all|sizes?|measures|measurements|dimensions|everything|maße|angaben|dims|figures)\b"
    r"[^.\n]{0,24}?\b(mm|millimetres|millimeters|cm|centimetres|centimeters|zentimeter|inches"
    r"|inch|metres)\b"
    r"|(?<=\()(centimetres|centimeters|millimetres|millimeters|zentimeter)(?=\))",
    re.IGNORECASE,
)
_BY: Final = frozenset({"x", "×", "by", "mal", "*"})
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


def _told_unit(size: Size) -> Unit | None:
    """Give the unit that a size tells: its own, or inches where it has a fraction."""
    return size.unit or ("in" if size.has_fraction else None)


def _written(sentences: Iterable[Sentence]) -> dict[Fraction, set[Unit]]:
    """Give the units with which each amount is written: said again, it has the same."""
    found: dict[Fraction, set[Unit]] = {}
    for sentence in sentences:
        unit: Unit | None = None
        for atom in reversed(sentence.atoms):
            if atom.kind == "size" and atom.size is not None:
                unit = atom.size.unit or unit
                if unit is not None:
                    found.setdefault(atom.size.amount, set()).add(unit)
            elif atom.word not in _BY:
                unit = None
    return found


class Amounts:
    """Turns sizes to lengths by what the whole message says of its units."""

    def __init__(self, text: str, sentences: Iterable[Sentence]) -> None:
        every = list(sentences)
        found = _DECLARED.search(text)
        self.declared = _NAMES.get((found[1] or found[2]).lower()) if found else None
        counted: Counter[Unit] = Counter(
            unit
            for sentence in every
            for atom in sentence.atoms
            if atom.size is not None and (unit := _told_unit(atom.size)) is not None
        )
        usual, count = counted.most_common(1)[0] if counted else (None, 0)
        is_rule = count >= _RULING_SHARE * counted.total()
        self.usual: Unit | None = usual if usual in ("cm", "in") and is_rule else None
        self.written = _written(every)

    def length(self, measure: Measure, role: str) -> tuple[Length, Length | None] | None:
        """Give the length meant in a role, and another that it may mean; None where none fits."""
        size = measure.size
        if size.unit is not None:
            fits = self._fitting(measure, [size.unit], "width" if role == "deep" else role)
            other = fits[1] if size.grouped is not None and len(fits) > 1 else None
            return (fits[0], other) if fits else None
        coherent = self._coherent(measure, role)
        if coherent is not None:
            return coherent, None
        least, most = LIKELY_MM[role]
        as_said = "width" if role == "deep" else role
        said = self._fitting(measure, self._said_units(measure), as_said)
        guessed = self._fitting(measure, self._guessed_units(measure), role)
        likely = [one for one in guessed if least <= one.mm <= most]
        ruled = [one for one in guessed if one.unit == self.usual == "in"]
        return next(((one, None) for one in (*said, *ruled, *likely, *guessed)), None)

    def _coherent(self, measure: Measure, role: str) -> Length | None:
        """Read bare numbers of a group in the one unit in which they make a usual slab."""
        group = measure.members
        if any(one.size.unit is not None for one in group):
            return None
        if len(group) == 2:
            return self._as_pair(measure, role)
        if len(group) != 3:
            return None
        if self._said_units(measure) or role not in ("length", "width", "deep", "thickness"):
            return None
        for unit in self._guessed_units(measure):
            lengths = [Length.of(one.size.amount, unit) for one in group]
            across, along = sorted(one.mm for one in lengths[:2])
            sizes = {"length": along, "width": across, "thickness": lengths[2].mm}
            if all(low <= sizes[key] <= high for key, (low, high) in _USUAL.items()):
                return lengths[measure.place - 1]
        return None

    def _as_pair(self, measure: Measure, role: str) -> Length | None:
        """Read a pair's smaller number in the unit of its larger: "150 x 90" is no 90 cm."""
        larger = max(measure.members, key=lambda one: one.size.amount)
        if larger is measure or role not in ("opening", "hole", "length", "width", "deep"):
            return None
        found = self.length(replace(larger, members=[]), "deep" if role == "deep" else role)
        if found is None or found[1] is not None:
            return None
        length = Length.of(measure.size.amount, found[0].unit)
        return length if length.mm >= _NARROWEST_MM else None

    def _fitting(self, measure: Measure, units: Iterable[Unit], role: str) -> list[Length]:
        """Give the lengths that a number may mean in these units and that a slab may have."""
        low, high = PLAUSIBLE_MM[role]
        fits: list[Length] = []
        for amount, unit in self._readings(measure, units):
            try:
                length = Length.of(amount, unit)
            except QuantityError:
                continue
            if low <= length.mm <= high and not any(abs(length.mm - one.mm) < 0.5 for one in fits):
                fits.append(length)
        return fits

    @staticmethod
    def _readings(measure: Measure, units: Iterable[Unit]) -> Iterable[tuple[Fraction, Unit]]:
        size = measure.size
        for unit in units:
            if size.grouped is not None and unit == "mm":
                yield size.grouped, unit
            yield size.amount, unit
            if size.grouped is not None and unit not in ("mm", "m"):
                yield size.grouped, unit

    def _said_units(self, measure: Measure) -> list[Unit]:
        """Units that a label, the end of the group or the message as a whole gives a number."""
        said: list[Unit | None] = []
        if measure.unit_from_label:
            said.append(_NAMES.get(measure.unit_from_label, cast("Unit", measure.unit_from_label)))
        said += [one.size.unit for one in measure.members[measure.place :] if one.size.unit][-1:]
        said.append(self.declared)
        return [unit for unit in said if unit is not None]

    def _guessed_units(self, measure: Measure) -> list[Unit]:
        """Units that a bare number may have, the likeliest first."""
        known = self.written.get(measure.size.amount, set())
        again = next(iter(known)) if len(known) == 1 and measure.of == 1 else None
        first: list[Unit | None] = [again, self.usual, "in" if measure.size.has_fraction else None]
        others: tuple[Unit, ...] = ("mm", "cm", "m", "in")
        if measure.size.amount.denominator != 1:  # nobody writes 42.5 mm without its unit
            others = ("cm", "m", "in", "mm")
        return list(dict.fromkeys(unit for unit in (*first, *others) if unit is not None))
