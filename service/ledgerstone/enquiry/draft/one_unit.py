"""A proposal speaks one unit, the one that the customer writes: not metres beside millimetres."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from typing import Final

from ledgerstone.errors import QuantityError
from ledgerstone.json_types import Members
from ledgerstone.quantities import Length, UnitName
from ledgerstone.workshop.countries import LengthUnit

_IMPERIAL: Final = frozenset({"in", "ft"})
_INCH: Final = Length.of(Fraction(1), "in")
_LENGTHS: Final = frozenset({"length", "width", "diameter", "thickness", "x", "y", "size", "gap"})


class OneUnit:
    """Turns the lengths of a proposal to one unit.

    In metric it is the one of centimetres and millimetres that the customer writes more often, and
    the turn is exact; metres, in which a tap hole is 0.035, give way to them. Where all that is
    said is in inches or feet, what is taken beside it is said in inches, to a sixteenth. A mixture
    is left as it is, for inches are no whole millimetres; what is taken beside it, or where no size
    is said, is in the workshop's own unit.
    """

    def __init__(self, order: object, lengths: LengthUnit) -> None:
        counted = Counter(length.unit for length in _lengths(order))
        imperial = counted.keys() & _IMPERIAL
        usual: UnitName = "cm" if counted["cm"] > counted["mm"] else "mm"
        self.unit: UnitName | None = usual if counted and not imperial else None
        self.is_imperial = bool(imperial) and not counted.keys() - _IMPERIAL
        self.is_ours_imperial = self.unit is None and lengths == "in"

    def ours(self, mm: float) -> str:
        """Give a length that is taken and that nobody said."""
        length = Length.of_mm(mm)
        return (_INCH.like(mm) if self.is_ours_imperial else length).text()

    def of(self, value: object) -> object:
        """Give a text that is a length in the unit, or all lengths of a member; the rest as is."""
        if isinstance(value, str):
            length = _length(value)
            if length is not None and self.is_imperial and length.unit not in _IMPERIAL:
                return _INCH.like(length.mm).text()
            if length is None or self.unit is None or length.unit == self.unit:
                return value
            return replace(length, unit=self.unit).text()
        if isinstance(value, list):
            return [self.of(one) for one in value]
        return self.members(value) if isinstance(value, dict) else value

    def members(self, made: Members) -> Members:
        """Return members of an order, those lengths in the unit that a length's name has."""
        return {
            key: one if isinstance(one, str) and key not in _LENGTHS else self.of(one)
            for key, one in made.items()
        }


def _length(text: str) -> Length | None:
    try:
        return Length.parse(text)
    except QuantityError:
        return None


def _lengths(node: object) -> Iterator[Length]:
    """Yield every length of an order's member, however deep."""
    if isinstance(node, list):
        for one in node:
            yield from _lengths(one)
    elif isinstance(node, dict):
        for key, one in node.items():
            length = _length(one) if key in _LENGTHS and isinstance(one, str) else None
            if length is not None:
                yield length
            else:
                yield from _lengths(one)
