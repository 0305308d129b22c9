"""Text and exact lengths that remember their unit, and how much of one unit is in another."""

import math
import re
from dataclasses import dataclass, field
from decimal import Decimal
from fractions import Fraction
from types import MappingProxyType
from typing import Final, Literal, Self

from ledgerstone import _length_faults, _length_grammar
from ledgerstone._length_faults import CANONICAL, Marks
from ledgerstone._length_grammar import THOUSANDS, UnitName
from ledgerstone._unit_factors import (
    FOOT_M,
    INCH_MM,
    KG_PER_LB,
    KG_PER_M3_PER_LB_PER_YD3,
    LITRES_PER_GALLON,
    MM_PER,
    MPA_PER_PSI,
    N_PER_LBF,
    factor,
)
from ledgerstone.errors import QuantityError
from ledgerstone.message import Spoken

__all__ = [
    "CANONICAL",
    "FOOT_M",
    "INCH_MM",
    "KG_PER_LB",
    "KG_PER_M3_PER_LB_PER_YD3",
    "LITRES_PER_GALLON",
    "LONGEST_MM",
    "MM2_PER_M2",
    "MM3_PER_L",
    "MM3_PER_M3",
    "MM_PER",
    "MPA_PER_PSI",
    "N_PER_LBF",
    "Length",
    "Marks",
    "Origin",
    "Rounding",
    "UnitName",
    "factor",
]

Origin = Literal["text", "number", "worked"]
Rounding = Literal["near", "up", "down"]

LONGEST_MM: Final = 1_000_000
MM2_PER_M2: Final = 1e6
MM3_PER_L: Final = 1e6
MM3_PER_M3: Final = 1e9

_TEXT_PLACES: Final = MappingProxyType({"mm": 2, "cm": 3, "m": 5, "in": 3, "ft": 3})
_FINEST_INCH: Final = Fraction(1, 64)
_USUAL_INCH: Final = Fraction(1, 16)
_GROUPED_LIKE: Final = re.compile(r"(?<!\d)\d{1,3}\.\d{3}(?!\d)")
_NOISE_PLACES: Final = 6  # of a millimetre: every 64th of an inch lies on this grid


@dataclass(frozen=True, slots=True, order=True)
class Length(Spoken):
    """A length that keeps the unit in which it was given.

    Lengths are equal, ordered and hashed by how long they are: 1 m equals 1000 mm.

    Attributes
    ----------
    exact_mm
        The length in millimetres, exact.
    unit
        The unit it is spoken in; ``ft`` speaks feet and inches.
    origin
        ``text`` as someone typed it, ``number`` as millimetres in JSON, ``worked`` as a result.
    mm
        The length in millimetres, to the nearest float.

    """

    exact_mm: Fraction
    unit: UnitName = field(default="mm", compare=False)
    origin: Origin = field(default="worked", compare=False)
    mm: float = field(init=False, compare=False, repr=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "mm", self.exact_mm.numerator / self.exact_mm.denominator)

    @classmethod
    def parse(cls, value: object, marks: Marks = CANONICAL) -> Self:
        """Read a length: a number is millimetres, a text carries its unit.

        Parameters
        ----------
        marks
            What stands between whole and tenth, and between thousands, where it was typed.

        Raises
        ------
        QuantityError
            With one or two sentences that say how to write it.

        """
        if isinstance(value, str):
            amount, unit = _length_grammar.read(value, marks)
            return cls(_within_bound(amount * MM_PER[unit], unit), unit, "text")
        if isinstance(value, int | float) and not isinstance(value, bool):
            return cls(_within_bound(_exact(value)), "mm", "number")
        raise QuantityError(_length_faults.not_a_length())

    @classmethod
    def of(cls, amount: Fraction, unit: UnitName) -> Self:
        """Make the length that someone wrote as so many of a unit, exactly.

        Raises
        ------
        QuantityError
            Where it is longer than any slab could be.
        """
        return cls(_within_bound(amount * MM_PER[unit], unit), unit, "text")

    @classmethod
    def of_mm(cls, mm: float, unit: UnitName = "mm") -> Self:
        """Make a length from a number of millimetres, to be spoken in ``unit``."""
        return cls(_exact(mm), unit)

    def text(self) -> str:
        """Format the length in its own unit, as a person would write it.

        What was typed is said exactly and parses back to the same length. A number or a result
        is rounded to 0.01 mm in metric units; in inches to a 64th where it is one, else to
        0.001 in. Feet and inches under a foot are said in inches.
        """
        if self.origin != "text" and not self._is_imperial:
            return _rounded(self.exact_mm, _TEXT_PLACES[self.unit], self.unit)
        per = MM_PER["in" if self.unit == "ft" else self.unit]
        amount = self.exact_mm / per
        if self.origin != "text" and not (self._is_imperial and _is_64th(amount)):
            amount = round(amount, _TEXT_PLACES[self.unit])
        sign = "-" if amount < 0 else ""
        return sign + _written(abs(amount), self.unit)

    def wire(self) -> str | int | float:
        """Return what goes back in JSON: a number where it came as a number, else the text.

        The text is read back as the same length whatever marks a language has: 1.125 mm goes as
        1.1250 mm, which nobody means as 1125.
        """
        if self.origin != "number":
            return (
                _GROUPED_LIKE.sub(r"\g<0>0", self.text()) if self.unit in THOUSANDS else self.text()
            )
        return self.exact_mm.numerator if self.exact_mm.denominator == 1 else self.mm

    def in_unit(self, mm: float) -> Self:
        """Speak another length the way this one came, with its value unrounded."""
        origin: Origin = "number" if self.origin == "number" else "worked"
        return type(self)(_exact(mm), self.unit, origin)

    def like(self, mm: float, step: Rounding = "near", *, to_mm: float = 1) -> Self:
        """Speak a worked-out length the way this one came, rounded as a person would write it.

        Metric lengths go to a multiple of ``to_mm``. Inches go to the largest of 1, 1/2, 1/4,
        1/8 and 1/16 in that is within ``to_mm``, and never finer than 1/16 in.

        Parameters
        ----------
        mm
            The length, mm. Anything under a millionth of a millimetre is taken as noise.
        step
            ``up`` never gives less than ``mm`` and ``down`` never more, so that a limit or a
            measure that is spoken is not contradicted by the check it came from.
        to_mm
            What metric lengths are rounded to, mm, above zero.

        """
        grid = _inch_grid_mm(_exact(to_mm)) if self._is_imperial else _exact(to_mm)
        steps = round(_exact(mm), _NOISE_PLACES) / grid
        rounded = {
            "up": math.ceil(steps),
            "down": math.floor(steps),
            "near": math.floor(steps + Fraction(1, 2)),
        }[step]
        return type(self)(rounded * grid, self.unit, self.in_unit(mm).origin)

    @property
    def _is_imperial(self) -> bool:
        return self.unit in {"in", "ft"}

    def __str__(self) -> str:
        return self.text()


def _within_bound(mm: Fraction, unit: UnitName = "m") -> Fraction:
    if abs(mm) > LONGEST_MM:
        bound = Length(Fraction(LONGEST_MM), "ft" if unit in {"in", "ft"} else "m")
        raise QuantityError(_length_faults.over_bound(bound.like(LONGEST_MM, "down")))
    return mm


def _exact(number: float) -> Fraction:
    """Return the decimal number that a float was written as: 0.1 is a tenth."""
    if isinstance(number, int):
        return Fraction(int(number))
    if not math.isfinite(number):
        raise QuantityError(_length_faults.not_a_length())
    return Fraction(*Decimal(repr(float(number))).as_integer_ratio())


def _is_64th(amount: Fraction) -> bool:
    return (amount / _FINEST_INCH).denominator == 1


def _inch_grid_mm(to_mm: Fraction) -> Fraction:
    grid = Fraction(1)
    while grid > _USUAL_INCH and grid * MM_PER["in"] > to_mm:
        grid /= 2
    return grid * MM_PER["in"]


def _rounded(mm: Fraction, places: int, unit: UnitName) -> str:
    """Format a length in a unit, rounded to so many decimals, without trailing noughts.

    In whole numbers, half to even as ``round`` does: a drawing says hundreds of lengths.
    """
    per = MM_PER[unit]
    shares, share = mm.numerator * 10**places * per.denominator, mm.denominator * per.numerator
    tenths, left = divmod(abs(shares), share)
    tenths += 2 * left > share or (2 * left == share and tenths % 2 == 1)
    whole, rest = divmod(tenths, 10**places)
    number = f"{whole}.{rest:0{places}d}".rstrip("0").rstrip(".") if rest else f"{whole}"
    return f"{'-' if shares < 0 and tenths else ''}{number} {unit}"


def _written(amount: Fraction, unit: UnitName) -> str:
    """Format an amount that is not negative; for feet the amount is in inches."""
    if unit not in {"in", "ft"}:
        return f"{_decimal(amount)} {unit}"
    feet, inches = divmod(amount, 12) if unit == "ft" else (0, amount)
    if unit == "ft" and inches == 0:
        return f"{feet} ft"
    number = f"{_mixed(inches) if _is_64th(inches) else _decimal(inches)} in"
    return f"{feet} ft {number}" if feet else number


def _mixed(amount: Fraction) -> str:
    whole, rest = divmod(amount, 1)
    return " ".join(str(part) for part in (whole, rest) if part) or "0"


def _decimal(amount: Fraction) -> str:
    """Write at most nine decimals, without trailing noughts."""
    whole, rest = divmod(round(amount * 10**_length_grammar.DECIMALS), 10**_length_grammar.DECIMALS)
    return f"{whole}.{rest:0{_length_grammar.DECIMALS}d}".rstrip("0").rstrip(".")
