"""What a maker types at one place of a profile, as people write amounts, spans, days and postcodes.

One grammar for every number of a form, in English and German::

    entry   = [hedge] (span | amount) [afterthought]
    span    = ["between" | "from"] amount ("to" | "or" | "-" | "and") amount
    amount  = [sign of money] number [unit] [thing]
    number  = digits | fraction | words
    hedge   = "about" | "ca." | "up to" …       afterthought = "or so" …

A span is taken at its middle; where whole numbers are asked, at the side that promises less. Weeks
are days, five where working days are asked. A text that is none of this stays as it was typed.
"""

from __future__ import annotations

import math
import re
from fractions import Fraction
from typing import Final

from ledgerstone.workshop.keys.numerals import exact_of, in_decimals, in_digits
from ledgerstone.workshop.records.members import Member

_HEDGE: Final = re.compile(
    r"^(?:(?:about|approx(?:\.|imately)?|around|roughly|circa|ca\.?|say|some|maybe|up to|at most"
    r"|etwa|ungefähr|rund|zirka|bis zu|höchstens|maximal|vielleicht)(?=[\s\d$£€])|[~≈])\s*",
    re.IGNORECASE,
)
_AFTER: Final = re.compile(r"\s*,?\s*(?:or so|more or less|approx\.?|oder so)$", re.IGNORECASE)
_NUMBER: Final = r"(?:\d+[ -])?\d+/[1-9]\d*|\d[\d.,]*\d|\d"
_UNIT: Final = r"[^\d\s$£€–—-][^\d$£€–—-]*?"
_SPAN: Final = re.compile(
    rf"(?:(?P<both>between|zwischen)\s+|(?:from|von)\s+)?(?P<sign>[$£€]?)\s*"
    rf"(?P<low>{_NUMBER})\s*(?P<unit>{_UNIT})?\s*(?P<joint>[–—-]|\b(?:to|bis|or|oder|and|und)\b)"
    rf"\s*[$£€]?\s*(?P<high>{_NUMBER})(?P<rest>(?!\d)(?:.*\S)?)\s*",
    re.IGNORECASE,
)
_WEEKS: Final = re.compile(rf"({_NUMBER})\s*(?:weeks?|wks?\.?|wochen?)", re.IGNORECASE)
_FEET_AND_INCHES: Final = re.compile(rf"\d+\s*(?:'|’|′)\s*(?:{_NUMBER})", re.IGNORECASE)
# What is counted or bought, as it is named behind a number whose key says it already.
_THINGS: Final = {
    "people": r"people|persons?|men|guys|of us|hands|workers?|leuten?|personen|mann|köpfe|händen?",
    "bag": r"bags?|sacks?|säcke|sack",
    "day": r"(?:(?:working|business) )?days?|(?:werk|arbeits)?tagen?|(?:werk|arbeits)?tag",
}
_COUNTS: Final = ("hands", "people")
_MONEY: Final = r"dollars?|bucks|euros?|quid|francs?|franken"


def entry_of(text: str, member: Member, mark: str) -> str:
    """Return an entry as one amount, a number in digits with its unit; else as it was typed.

    Parameters
    ----------
    member
        The place that it is entered at: its unit, and whether it is a whole number.
    mark
        Between whole and tenth in the maker's language: ``.`` or ``,``.
    """
    plain = in_digits(_AFTER.sub("", _HEDGE.sub("", text.strip())))
    plain = _in_days(_middle(plain, member, mark), member, mark)
    plain = _without_thing(plain, member)
    if member.unit == "mm" and _FEET_AND_INCHES.fullmatch(plain):
        return f'{plain}"'
    return plain if re.search(r"\d", plain) else text.strip()


def middle_taken(text: str, member: Member, mark: str) -> str | None:
    """Return what is taken of a span that was typed; None where none was.

    Parameters
    ----------
    member, mark
        As `entry_of` has them.
    """
    plain = in_digits(_AFTER.sub("", _HEDGE.sub("", text.strip())))
    return None if _middle(plain, member, mark) == plain else entry_of(text, member, mark)


def _middle(plain: str, member: Member, mark: str) -> str:
    """The middle of a span, with the unit of its end; what is no span as it is."""
    found = _SPAN.fullmatch(plain)
    if found is None or (found["joint"].lower() in ("and", "und")) != (found["both"] is not None):
        return plain
    low, high = exact_of(found["low"], mark), exact_of(found["high"], mark)
    unit, rest = (found["unit"] or "").strip(), found["rest"].strip()
    if low is None or high is None or low >= high or unit not in ("", rest):
        return plain
    return f"{found['sign']}{_written(_taken((low + high) / 2, member), mark)} {rest}".strip()


def _taken(middle: Fraction, member: Member) -> Fraction:
    """The middle; of a whole number the side on which a day is later and hands are fewer."""
    if member.kind != "whole":
        return middle
    return Fraction(math.ceil(middle) if _is_days(member) else math.floor(middle))


def _in_days(plain: str, member: Member, mark: str) -> str:
    """Weeks as days: five where working days are asked, else seven."""
    found = _WEEKS.fullmatch(plain)
    weeks = exact_of(found[1], mark) if found is not None and _is_days(member) else None
    if weeks is None:
        return plain
    return _written(weeks * (5 if "working day" in member.about else 7), mark)


def _without_thing(plain: str, member: Member) -> str:
    """An amount without the name of what its key counts: ``60 lb`` of ``60 lb bag``."""
    words = _MONEY if member.kind == "money" else _THINGS.get(_thing_of(member))
    found = words and re.fullmatch(rf"(.*\d.*?)[\s-]*\b(?:{words})\.?", plain, re.IGNORECASE)
    return found[1].strip() if found else plain


def _thing_of(member: Member) -> str:
    if member.name.startswith("bag_"):
        return "bag"
    if member.kind == "whole" and any(word in member.name for word in _COUNTS):
        return "people"
    return "day" if _is_days(member) and member.kind == "whole" else ""


def _is_days(member: Member) -> bool:
    return member.unit == "d" or "day" in member.about.lower()


def _written(number: Fraction, mark: str) -> str:
    return in_decimals(number).replace(".", mark)


# --- postcodes ------------------------------------------------------------------------------

_BEGINNING: Final = re.compile(
    r"^(?:(?:all|everything|alles?)\s+)?(?:(?:zip|plz|post(?:al )?)\s*(?:codes?)?\s*:?\s*)?"
    r"(?:(?:starting|beginning|beginnend)\s+(?:with|mit)\s+)?",
    re.IGNORECASE,
)
_OPEN_END: Final = re.compile(r"(?<=\d)[\s-]*(?:[xX]+|[*?…]+|\.{2,})$")
_RANGE: Final = re.compile(
    r"(\d+)\s*[x*]*\s*(?:-|–|—|\bto\b|\bbis\b)\s*(\d+)\s*[x*]*", re.IGNORECASE
)
_JOINED: Final = re.compile(r"\s*[;/+&]\s*|\s+(?:and|und|or|oder)\s+", re.IGNORECASE)


def postcodes_of(text: str) -> list[str]:
    """Return the beginnings of postcodes and ranges of them in an entry.

    ``973xx`` is ``973``, ``97301 to 97399`` is ``97301-97399``, ``973 and 974`` are two.
    """
    return [_postcode(part) for part in _JOINED.split(text.strip()) if part] or [text]


def _postcode(part: str) -> str:
    plain = _BEGINNING.sub("", part.strip())
    span = _RANGE.fullmatch(plain)
    if span is not None:
        return f"{span[1]}-{span[2]}"
    return _OPEN_END.sub("", plain) if plain[:1].isdigit() else plain
