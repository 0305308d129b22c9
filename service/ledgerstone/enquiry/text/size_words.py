"""Units, fractions and the marks inside numbers, as people write them."""

from __future__ import annotations

import re
from fractions import Fraction
from types import MappingProxyType
from typing import Final

from ledgerstone.enquiry.words.word_sets import word_set
from ledgerstone.quantities import Length, UnitName

UNITS: Final = MappingProxyType[str, UnitName](
    {
        **dict.fromkeys(
            [
                "mm",
                "mms",
                "mil",
                "mils",
                "mill",
                "millimetre",
                "millimetres",
                "millimeter",
                "millimeters",
                "milimeter",
                "milimeters",
                "milimetre",
                "milimetres",
                "millimetern",
                "mmm",
                "mmmm",
                "milli",
                "millis",
            ],
            "mm",
        ),
        **dict.fromkeys(
            [
                "cm",
                "cms",
                "centimetre",
                "centimetres",
                "centimeter",
                "centimeters",
                "zentimeter",
                "zentimetern",
                "er",
            ],
            "cm",
        ),
        **dict.fromkeys(
            ["m", "metre", "metres", "meter", "meters", "mtr", "mtrs", "metern", "mtrs"], "m"
        ),
        **dict.fromkeys(["in", "ins", "inch", "inches", "zoll", '"', "″", "”"], "in"),
        **dict.fromkeys(["ft", "feet", "foot", "fuß", "'", "′", "’"], "ft"),
    }
)
VULGAR: Final = MappingProxyType(
    {
        "½": Fraction(1, 2),
        "¼": Fraction(1, 4),
        "¾": Fraction(3, 4),
        "⅛": Fraction(1, 8),
        "⅜": Fraction(3, 8),
        "⅝": Fraction(5, 8),
        "⅞": Fraction(7, 8),
        "⅓": Fraction(1, 3),
        "⅔": Fraction(2, 3),
    }
)
UNDER: Final = frozenset({"2", "4", "8", "16", "32", "64"})
AFTER_INCH: Final = word_set(
    "long wide deep thick thk high tall across dia diam diameter length width depth thickness"
    " round square x by from off "
    "back front and or to of is are at hole apart clear centres centers radius in overall max "
    "min with please that which has but plus including"
)
THICK: Final = frozenset({"thick", "thk", "dick", "stark"})
NOUN_OF_SIZE: Final = word_set("diameter length width depth thickness height dia diam")
QUOTES: Final = frozenset({'"', "”", "“", "„"})
MAX_QUOTED: Final = 16  # tokens
LONGEST_DIGITS: Final = 9
MAX_SPOKEN: Final = 8
TIMES: Final = {"hundred": 100, "hundert": 100, "thousand": 1000, "tausend": 1000}
ARTICLES: Final = frozenset(["a", "an", "half", "one", "ein", "eine", "einen", "einem", "halben"])
_APART: Final = re.compile(r"[\s'’]")
_DECIMAL: Final = re.compile(r"(\d{1,2})['’´](\d{1,2})")
GROUPED: Final = re.compile(r"\d{1,3}(?:[.,]\d{3})+\Z")


def number(written: str) -> tuple[Fraction, Fraction | None]:
    """Return a number with its mark read as the decimal's, and as a thousands separator."""
    if of_metres := _DECIMAL.fullmatch(written):
        return Fraction(f"{of_metres[1]}.{of_metres[2]}"), None
    if apart := _APART.sub("", written) if _APART.search(written) else "":
        return Fraction(int(apart)), None
    digits = re.sub(r"[.,]", "", written)
    marks = [c for c in written if c in ".,"]
    grouped = Fraction(int(digits)) if marks and GROUPED.match(written) else None
    if not marks:
        return Fraction(int(written)), None
    if len(marks) > 1 and (len(set(marks)) == 1 or not written.rpartition(marks[-1])[2]):
        return Fraction(int(digits)), Fraction(int(digits))
    whole, _, decimals = written.rpartition(marks[-1])
    return Fraction(f"{re.sub(r'[.,]', '', whole) or 0}.{decimals}"), grouped


def written_length(amount: str, unit: str | None, bare: UnitName = "mm") -> Length:
    """Return a length from its number and unit as they are written, the number without thousands.

    Parameters
    ----------
    bare
        What a number without a unit is in.

    Raises
    ------
    QuantityError
        The length is none that is measured.
    """
    parts = VULGAR.get(amount) or Fraction(amount.replace(",", "."))
    return Length.of(parts, UNITS[unit.lower()] if unit else bare)


PARTS: Final = MappingProxyType(
    {
        "half": Fraction(1, 2),
        "halb": Fraction(1, 2),
        "quarter": Fraction(1, 4),
        "quarters": Fraction(1, 4),
        "viertel": Fraction(1, 4),
        "eighth": Fraction(1, 8),
        "eighths": Fraction(1, 8),
    }
)
