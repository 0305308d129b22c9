"""Messages of the trade's own words and of numbers that no size is, in no order."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import ModuleType
from typing import Final

from hypothesis import strategies as st

from ledgerstone.enquiry.words import english, english_nouns, german

_NOT_IN_TABLES: Final = (
    "rounded edge", "bevelled", "pencil edge", "Kante abgerundet", "drip", "Tropfkante",
    "pedestal", "top plate", "Kopfplatte", "two units of", "zwei Unterschränke je", "gap",
    "all round", "from the left", "von links", "about", "ca.", "no,", "sorry, I meant", "or",
    "tapering to", "each", "instead of", "less", "plus", "between", "half", "third", "Option B",
)  # fmt: skip
NUMBERS: Final = (
    "0", "00", "-0", "0/0", "5/0", "1/2", "0/8", "1 1/2", "3-1/0", "½", "1½", "0.0", "0,5", "1,2,3",
    "1.234.567", "1'200", "1e9", "9" * 30, "0." + "0" * 20 + "1", "٣٤", "²", "-40", "+40", "1/7",
    "31/02", "29.02.2027", "12:75", "40", "600", "1800", "2.4",
)  # fmt: skip
_BETWEEN: Final = (" ", " ", " ", "", " x ", " by ", " - ", ", ", ". ", "\n", ": ", " = ", "/", "(")
UNITS: Final = (
    "",
    "",
    "mm",
    "cm",
    "m",
    "in",
    '"',
    "'",
    "ft",
    "er",
    "kg",
    "lb",
    "€",
    "%",
    "°",
    "th",
)


def _phrases(module: ModuleType) -> Iterator[str]:
    tables = [*vars(module).values()]
    for table in tables:
        for listed in table.values() if isinstance(table, Mapping) else ():
            if isinstance(listed, str):
                yield from (phrase.strip() for phrase in listed.split(","))


_WORDS: Final = sorted(
    {*_NOT_IN_TABLES}.union(*map(_phrases, (english, english_nouns, german))) - {""}
)


@st.composite
def jumbled_messages(draw: st.DrawFn) -> str:
    """Between three and thirty words and numbers, and what stands between them."""
    number = st.builds("".join, st.tuples(st.sampled_from(NUMBERS), st.sampled_from(UNITS)))
    part = st.one_of(st.sampled_from(_WORDS), number)
    parts = draw(st.lists(part, min_size=3, max_size=30))
    return "".join(one + draw(st.sampled_from(_BETWEEN)) for one in parts)
