"""A measure written with its unit, at a key whose name has another: ``length_mm = "96 in"``.

A number alone is in the unit of its key; a text carries its own, as things are sold there.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from decimal import ROUND_HALF_EVEN, Decimal
from fractions import Fraction
from types import MappingProxyType
from typing import Final

_INCH: Final = Fraction("25.4")
_POUND: Final = Fraction("0.45359237")
_GALLON: Final = Fraction("3.785411784")
_GRAVITY: Final = Fraction("9.80665")
# A US gauge's number says nothing of its size, so none is read. Sources: 24 FR 5348 (inch, pound);
# NIST SP 811 appendix B.8 (the others).
_UNITS: Final[Mapping[str, Mapping[str, Fraction]]] = MappingProxyType(
    {
        "_mm": {
            "mm": Fraction(1),
            "cm": Fraction(10),
            "m": Fraction(1000),
            "in": _INCH,
            '"': _INCH,
            "ft": 12 * _INCH,
            "'": 12 * _INCH,
        },
        "_kg": {"kg": Fraction(1), "lb": _POUND, "oz": _POUND / 16},
        "_l": {"l": Fraction(1), "gal": _GALLON, "qt": _GALLON / 4, "fl oz": _GALLON / 128},
        "_mpa": {
            "mpa": Fraction(1),
            "n/mm²": Fraction(1),
            "psi": _POUND * _GRAVITY / _INCH**2,
            "ksi": 1000 * _POUND * _GRAVITY / _INCH**2,
        },
        "_kg_per_m3": {
            "kg/m³": Fraction(1),
            "kg/m3": Fraction(1),
            "lb/yd³": _POUND / Fraction("0.764554857984"),
            "lb/yd3": _POUND / Fraction("0.764554857984"),
            "lb/ft³": _POUND / Fraction("0.028316846592"),
            "lb/ft3": _POUND / Fraction("0.028316846592"),
        },
    }
)
_PLACES: Final = Decimal("0.0001")
_AMOUNT: Final = re.compile(r"(?:(\d+)[ -])?(\d+)/(\d+)|(\d+(?:\.\d+)?)", re.ASCII)
# By cubes of 150 mm: the cylinder's strength, MPa. EN 206 table 12 (from memory).
_BY_CUBE: Final = (
    (15, 12), (20, 16), (25, 20), (30, 25), (37, 30), (45, 35), (50, 40), (55, 45), (60, 50),
    (67, 55), (75, 60), (85, 70), (95, 80), (105, 90),
)  # fmt: skip


def measured(text: str, key: str) -> Decimal | None:
    """Give what a text measures in the unit of a key's name, or None where it says nothing such.

    ``5800 psi``, ``47 1/4 in``, ``94 lb``, ``50 MPa cube``: to four decimals.
    """
    told = f"_{key.removesuffix('_per_person')}"
    ending = max((e for e in _UNITS if told.endswith(e)), key=len, default=None)
    found = _AMOUNT.match(text.strip())
    if ending is None or found is None:
        return None
    unit = text.strip()[found.end() :].strip().lower()
    by_cube = ending == "_mpa" and unit.endswith("cube")
    per = _UNITS[ending].get(unit.removesuffix("cube").removesuffix("by ").strip())
    if per is None:
        return None
    amount = _exact(found) * per
    if by_cube:
        amount = _of_cylinder(amount)
    exact = Decimal(amount.numerator) / Decimal(amount.denominator)
    return exact.quantize(_PLACES, ROUND_HALF_EVEN).normalize()


def _exact(found: re.Match[str]) -> Fraction:
    whole, over, under, plain = found.groups()
    if plain is not None:
        return Fraction(plain)
    return int(whole or 0) + Fraction(int(over), int(under) or 1)


def _of_cylinder(cube: Fraction) -> Fraction:
    """The strength by cylinder of one that was measured by cube, between the classes linearly."""
    low, high = (Fraction(0), Fraction(0)), (Fraction(105), Fraction(90))
    for by_cube, by_cylinder in _BY_CUBE:
        if by_cube <= cube:
            low = (Fraction(by_cube), Fraction(by_cylinder))
        else:
            high = (Fraction(by_cube), Fraction(by_cylinder))
            break
    if cube >= low[0] >= high[0]:
        return cube * low[1] / low[0]
    return low[1] + (cube - low[0]) * (high[1] - low[1]) / (high[0] - low[0])
