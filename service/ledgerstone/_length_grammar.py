"""A typed length is read by a strict grammar, in exact fractions, before any arithmetic.

The grammar, after dashes, quotation marks and blanks are made plain::

    length  = ["-"] ( amount unit | whole-feet ["-"] amount inch-unit )
    amount  = digits ["." digits] | "." digits | [digits (blank | "-")] digits "/" digits

A decimal number may have another country's marks, where its marks are given: ``1,2 m`` and
``1.200 mm`` in Germany, ``1,200 mm`` in Britain. Only millimetres and centimetres have thousands.

Nothing longer than 32 characters is looked at, so no text can keep the reader busy.
"""

import re
from fractions import Fraction
from types import MappingProxyType
from typing import Final, Literal

from ledgerstone import _length_faults
from ledgerstone._length_faults import CANONICAL, Marks
from ledgerstone.errors import QuantityError

__all__ = ["DECIMALS", "LONGEST_LENGTH_TEXT", "THOUSANDS", "UnitName", "is_grouped", "read"]

UnitName = Literal["mm", "cm", "m", "in", "ft"]

LONGEST_LENGTH_TEXT: Final = 32
DECIMALS: Final = 9  # a typed amount keeps nine, which drops the noise of someone's floats
_DENOMINATORS: Final = frozenset({2, 4, 8, 16, 32, 64})
_INCHES_PER_FOOT: Final = 12

_UNITS: Final = MappingProxyType[str, UnitName](
    {
        **dict.fromkeys(("mm", "millimetre", "millimetres", "millimeter", "millimeters"), "mm"),
        **dict.fromkeys(("cm", "centimetre", "centimetres", "centimeter", "centimeters"), "cm"),
        "zentimeter": "cm",
        **dict.fromkeys(("m", "metre", "metres", "meter", "meters"), "m"),
        **dict.fromkeys(("in", "in.", "inch", "inches", "zoll", '"'), "in"),
        **dict.fromkeys(("ft", "ft.", "foot", "feet", "fuß", "fuss", "'"), "ft"),
    }
)

# What phones and word processors put where a plain mark was meant. A vulgar fraction is set
# apart by blanks, so that "22½" is twenty-two and a half and "½5" is nothing.
_PLAIN: Final = str.maketrans(
    {
        **dict.fromkeys("\N{MINUS SIGN}\N{HYPHEN}\N{NON-BREAKING HYPHEN}\N{EN DASH}", "-"),
        **dict.fromkeys("\N{PRIME}\N{RIGHT SINGLE QUOTATION MARK}", "'"),
        **dict.fromkeys("\N{DOUBLE PRIME}\N{RIGHT DOUBLE QUOTATION MARK}", '"'),
        **dict.fromkeys("\N{NO-BREAK SPACE}\N{NARROW NO-BREAK SPACE}\N{THIN SPACE}", " "),
        "\N{FRACTION SLASH}": "/",
        "½": " 1/2 ",
        "¼": " 1/4 ",
        "¾": " 3/4 ",
        "⅛": " 1/8 ",
        "⅜": " 3/8 ",
        "⅝": " 5/8 ",
        "⅞": " 7/8 ",
    }
)

# A blank or hyphen must stand before a fraction's numerator: were it optional, "53/8" would be
# read as 5 3/8.
_LENGTH: Final = re.compile(
    r"""
    (?P<sign>-\ ?)?
    (?: (?P<feet>\d+) \ ? (?:ft\.?|foot|feet|fuß|fuss|') \ ?-?\ ? )?
    (?: (?: (?P<whole>\d+) (?:\ ?-\ ?|\ ) )? (?P<over>\d+)/(?P<under>\d+)
      | (?P<plain>\d+(?:\.\d+)?|\.\d+) )
    \ ? (?P<unit>UNIT) \Z
    """.replace("UNIT", "|".join(re.escape(name) for name in _UNITS)),
    re.ASCII | re.IGNORECASE | re.VERBOSE,
)


THOUSANDS: Final = frozenset({"mm", "cm"})
_NUMBER: Final = re.compile(
    r"(?P<sign>-\ ?)?(?P<number>\d*[.,']?\d[\d.,']*)\ ?(?P<unit>UNIT)\Z".replace(
        "UNIT", "|".join(re.escape(name) for name in _UNITS)
    ),
    re.ASCII | re.IGNORECASE,
)


def is_grouped(number: str, mark: str) -> bool:
    """Return whether a mark groups thousands in a number: 1.200, 12.345.678."""
    grouped = rf"[1-9]\d{{0,2}}(?:{re.escape(mark)}\d{{3}})+"
    return re.fullmatch(grouped, number, re.ASCII) is not None


def read(text: str, marks: Marks = CANONICAL) -> tuple[Fraction, UnitName]:
    """Return the amount that was typed and the unit it was typed in.

    Feet and inches come back as feet. An amount keeps nine decimals.

    Parameters
    ----------
    marks
        What stands between whole and tenth and between thousands where it was typed.

    Raises
    ------
    QuantityError
        With a sentence that says how to write the length, whatever the text was.

    """
    if len(text) > LONGEST_LENGTH_TEXT:
        raise QuantityError(_length_faults.too_long(len(text), LONGEST_LENGTH_TEXT))
    tidy = _tidied(text)
    found = _LENGTH.match(_with_point(tidy, marks))
    if found is None:
        raise QuantityError(_length_faults.why_unread(text, tidy, frozenset(_UNITS)))
    unit = _UNITS[found["unit"].lower()]
    amount = _amount(found)
    if found["feet"] is not None:
        amount, unit = _feet(found, amount, unit), "ft"
    return (-amount if found["sign"] else amount), unit


def _tidied(text: str) -> str:
    """Make marks and blanks plain; two single quotation marks are an inch mark."""
    plain = text.translate(_PLAIN).replace("''", '"')
    return re.sub(" +", " ", plain).strip(" ")


def _with_point(tidy: str, marks: Marks) -> str:
    """Write a number with a point and without marks of thousands, where only one number is meant.

    In Germany 1,800 mm stays as it is: a slab's length in Britain, or less than two millimetres.
    """
    found = _NUMBER.match(tidy)
    if found is None:
        return tidy
    number, unit = found["number"], _UNITS[found["unit"].lower()]
    whole, point, decimals = number.rpartition(marks.point)
    for group in marks.groups if unit in THOUSANDS else ():
        if is_grouped(number, group):
            return tidy.replace(number, number.replace(group, ""))
        if point and decimals.isdigit() and is_grouped(whole, group):
            return tidy.replace(number, f"{whole.replace(group, '')}.{decimals}")
    if marks.point == "," and re.fullmatch(r"\d*,\d+", number, re.ASCII):
        foreign = unit == "mm" and is_grouped(number, ",")
        return tidy if foreign else tidy.replace(",", ".")
    return tidy


def _amount(found: re.Match[str]) -> Fraction:
    if found["plain"] is not None:
        return round(Fraction(found["plain"]), DECIMALS)
    over, under = int(found["over"]), int(found["under"])
    if under not in _DENOMINATORS:
        raise QuantityError(_length_faults.odd_fraction(found.string))
    if over >= under:
        raise QuantityError(_length_faults.more_than_one(found))
    return int(found["whole"] or 0) + Fraction(over, under)


def _feet(found: re.Match[str], inches: Fraction, unit: UnitName) -> Fraction:
    if unit != "in":
        raise QuantityError(_length_faults.mixed_units(found.string))
    if inches >= _INCHES_PER_FOOT:
        raise QuantityError(_length_faults.inches_past_a_foot(found.string))
    return int(found["feet"]) + inches / _INCHES_PER_FOOT
