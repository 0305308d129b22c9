"""How postcodes are written in each country, and what the areas of a profile begin with.

The patterns and their examples are those of the address data that Google's libaddressinput
publishes. ``issued`` is narrower, and only a maker's own areas are looked at by it: which figures
or letters a country's post gives out, from memory of its own directory unless a source is named.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from string import ascii_uppercase, digits
from types import MappingProxyType
from typing import Final

_DISTRICTS: Final = re.compile(r"([A-Z]{1,2})([0-9]{1,2})(?:-([0-9]{1,2}))?")
_FIGURES: Final = re.compile(r"([0-9]+)-([0-9]+)")
_LONGEST_END: Final = 8  # figures that are tried behind a beginning


@dataclass(frozen=True, slots=True)
class Postcodes:
    """How a country's postcodes are written.

    Attributes
    ----------
    pattern
        What one is in capital letters and digits alone; its groups are its parts.
    joint
        What is written between its parts.
    parts
        How many of its parts say where it is, for an area to begin with.
    lead
        Letters that are written before it abroad, and that say nothing of where it is.
    issued
        What the part that says where it is looks like, where more is known than the pattern.
    example
        One such, to show how it is written.
    """

    pattern: str
    example: str
    joint: str = " "
    parts: int = 9
    lead: tuple[str, ...] = ()
    issued: str = ""

    def read(self, text: str) -> tuple[str, str] | None:
        """Return a postcode as it is usually written, and the part that says where it is.

        Blanks, hyphens and dots are passed over; None if it is no postcode of the country.
        """
        letters = re.sub(r"[\s.\-–]", "", text).upper()
        for lead in self.lead:
            if letters.startswith(lead) and letters[len(lead) :].isdigit():
                letters = letters.removeprefix(lead)
                break
        found = re.fullmatch(self.pattern, letters)
        if found is None:
            return None
        parts = [part for part in found.groups() if part]
        return self.joint.join(parts), "".join(parts[: self.parts])

    def under(self, beginning: str) -> str | None:
        """Return a postcode that falls under an area's beginning; None if none can.

        Ends are tried, and not every one: a country's own are found by what its example ends in,
        by each figure and by each letter.
        """
        for tried in self._tried(beginning):
            found = self.read(tried)
            if found is None or not falls_under(found[1], beginning):
                continue
            if not self.issued or re.fullmatch(self.issued, found[1]):
                return tried
        return None

    def _tried(self, beginning: str) -> Iterator[str]:
        """Yield whole postcodes that begin so, or as one end of a range does."""
        whole = re.sub(r"[\s\-]", "", self.example)
        read = self.read(self.example)
        last = whole[len(read[1]) :] if read is not None else ""
        for first in (*beginning.split("-"), *_each_district(beginning)):
            yield f"{first}{whole[len(first) :]}"
            for end in dict.fromkeys(("", last)):
                yield f"{first}{end}"
                yield from (f"{first}{letter}{end}" for letter in ascii_uppercase)
                for count in range(1, _LONGEST_END):
                    yield from (f"{first}{figure * count}{end}" for figure in digits)


def _each_district(beginning: str) -> Iterator[str]:
    """Yield the districts of a beginning, each with two figures as some countries write them."""
    there = _DISTRICTS.fullmatch(beginning)
    if there is not None:
        last = int(there[3] or there[2])
        yield from (f"{there[1]}{number:02}" for number in range(int(there[2]), last + 1))


def falls_under(where: str, beginning: str) -> bool:
    """Return whether a postcode's place falls under one of an area's beginnings.

    ``HR`` (an area of letters), ``LD1`` or ``LD1-6`` (districts), ``83`` (figures that it begins
    with) or ``83000-83739`` (from one such to another).
    """
    here = re.match(r"([A-Z]+)([0-9]*)", where)
    if here is None:  # postcodes of figures alone
        return _among_figures(where, beginning)
    there = _DISTRICTS.fullmatch(beginning)
    if there is None:
        return here[1] == beginning if beginning.isalpha() else where.startswith(beginning)
    low = int(there[2])
    high = int(there[3]) if there[3] else low
    return here[1] == there[1] and here[2] != "" and low <= int(here[2]) <= high


def _among_figures(where: str, beginning: str) -> bool:
    ends = _FIGURES.fullmatch(beginning)
    if ends is None:
        return where.startswith(beginning)
    begins = where[: len(ends[1])]
    return len(begins) == len(ends[1]) and ends[1] <= begins <= ends[2]


# The 121 areas of Royal Mail's postcodes, and those of the Isle of Man and the Channel Islands.
_BRITISH_AREAS: Final = (
    "AB AL B BA BB BD BH BL BN BR BS BT CA CB CF CH CM CO CR CT CV CW DA DD DE DG DH DL DN DT DY E"
    " EC EH EN EX FK FY G GL GU HA HD HG HP HR HS HU HX IG IP IV KA KT KW KY L LA LD LE LL LN LS"
    " LU M ME MK ML N NE NG NN NP NR NW OL OX PA PE PH PL PO PR RG RH RM S SA SE SG SK SL SM SN SO"
    " SP SR SS ST SW SY TA TD TF TN TQ TR TS TW UB W WA WC WD WF WN WR WS WV YO ZE IM GY JE"
)

# The BS 7666 v2.0 schema's pattern, with P added to the third letter of A9A districts (N1P and W1P
# are in use); GIR 0AA is no place a slab goes to.
_BRITISH: Final = Postcodes(
    r"([A-PR-UWYZ][0-9][0-9]?|[A-PR-UWYZ][A-HK-Y][0-9][0-9]?|[A-PR-UWYZ][0-9][A-HJKPSTUW]"
    r"|[A-PR-UWYZ][A-HK-Y][0-9][ABEHMNPRVWXY])([0-9][ABD-HJLNP-UW-Z]{2})",
    "HR0 1AA",
    parts=1,
    issued=f"({_BRITISH_AREAS.replace(' ', '|')})[0-9][0-9A-Z]?",
)
_CANADIAN: Final = Postcodes(
    r"([ABCEGHJ-NPRSTVXY][0-9][ABCEGHJ-NPRSTV-Z])([0-9][ABCEGHJ-NPRSTV-Z][0-9])",
    "H3Z 2Y7",
    parts=1,
)
# A routing key is a letter and two figures, the first a nought in Dublin alone, and D6W.
_IRISH: Final = Postcodes(
    r"([0-9A-Z]{3})([0-9A-Z]{4})",
    "A65 F4E2",
    parts=1,
    issued="D(0[1-9]|1[0-9]|2[0-4]|6W)|[ACEFHKNPRTV-Y][1-9][0-9]",
)
_DUTCH: Final = Postcodes(r"([1-9][0-9]{3})([A-Z]{2})", "1234 AB", parts=1)
_ZIP: Final = Postcodes(
    r"([0-9]{5})([0-9]{4})?", "95014", "-", parts=1, issued="(?!00[0-4])[0-9]{5}"
)
_FOUR, _FIVE = "([0-9]{4})", "([0-9]{5})"
_FROM_1000: Final = "[1-9][0-9]{3}"


def _figures(pattern: str, example: str, *lead: str, joint: str = " ", issued: str) -> Postcodes:
    return Postcodes(pattern, example, joint, lead=lead, issued=issued)


POSTCODES: Final[Mapping[str, Postcodes]] = MappingProxyType(
    {
        "GB": _BRITISH,
        "IE": _IRISH,
        "DE": _figures(_FIVE, "26133", "DE", "D", issued="(?!00|05|43|62)[0-9]{5}"),
        "AT": _figures(_FOUR, "1010", "AT", "A", issued=_FROM_1000),
        "CH": _figures(_FOUR, "2544", "CH", issued=_FROM_1000),
        "LI": _figures("(94[89][0-9])", "9490", "LI", "FL", issued="948[5-9]|949[0-8]"),
        "LU": _figures(_FOUR, "4750", "LU", "L", issued=_FROM_1000),
        "BE": _figures(_FOUR, "4000", "BE", "B", issued=_FROM_1000),
        "NL": _DUTCH,
        "FR": _figures(_FIVE, "33380", "FR", "F", issued="(?!00|96|99)[0-9]{5}"),
        "IT": _figures(_FIVE, "00144", "IT", "I", issued="(?!99)[0-9]{5}"),
        "ES": _figures(_FIVE, "28039", "ES", "E", issued="(0[1-9]|[1-4][0-9]|5[0-2])[0-9]{3}"),
        "PT": _figures("([0-9]{4})([0-9]{3})", "2725-079", joint="-", issued="[1-9][0-9]{6}"),
        "DK": _figures(_FOUR, "8660", "DK", issued="(?!00)[0-9]{4}"),
        "SE": _figures("([0-9]{3})([0-9]{2})", "114 55", "SE", "S", issued="[1-9][0-9]{4}"),
        "NO": _figures(_FOUR, "0025", "NO", "N", issued="(?!0000)[0-9]{4}"),
        "FI": _figures(_FIVE, "00550", "FI", "FIN", issued="(?!00000)[0-9]{5}"),
        "PL": _figures("([0-9]{2})([0-9]{3})", "00-950", "PL", joint="-", issued="[0-9]{5}"),
        "CZ": _figures("([0-9]{3})([0-9]{2})", "100 00", "CZ", issued="[1-7][0-9]{4}"),
        "ZA": _figures(_FOUR, "0083", issued="(?!0000)[0-9]{4}"),
        "NZ": _figures(_FOUR, "6001", issued="(?!00)[0-9]{4}"),
        "AU": _figures(_FOUR, "2060", issued="(?!0[013-7])[0-9]{4}"),
        "CA": _CANADIAN,
        "US": _ZIP,
    }
)


def beginnings_like(country: str) -> tuple[str, ...]:
    """Return how postcodes of a country may begin, as an area of a profile has them.

    ``98``, ``98801`` and ``98801-98899``, where they are figures alone.
    """
    known = POSTCODES.get(country)
    read = known.read(known.example) if known is not None else None
    if read is None:
        return ("10", "1010", "1010-1099")
    place = read[1]
    if place.isdecimal():
        return place[:2], place, f"{place}-{place[:-2]}99"
    letters = place.rstrip("0123456789") if place[-1].isdecimal() else place[0]
    return (letters, place, f"{letters}1-6") if country == "GB" else (letters, place)
