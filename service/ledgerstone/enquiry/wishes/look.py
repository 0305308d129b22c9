"""Finish and surface as the writer says them."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from types import MappingProxyType
from typing import Final

from ledgerstone.enquiry.scene.said import SaidWord
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.surfaces import Surface

_FINISH_LABEL: Final = re.compile(
    r"(?:^|[\s(.])(?:finish|seal(?:er)?|surface|oberfläche|versiegelung"
    r"|treatment)(?!\w)[ \t]{0,4}(?:[:=|\t]|is\b|should be\b|to be\b|,)?[ \t]*"
    r"(?P<value>(?!(?:sizes?"
    r"|measurements?)\b)[^\n.;|:]{2,70})",
    re.IGNORECASE,
)
# What each surface is called, as an alternation of regular expressions in both languages. The
# first surface that the words name is taken.
_SURFACE_TERMS: Final[Mapping[Surface, str]] = MappingProxyType(
    {
        "honed": "honed|geschliffene?[nrs]?|smooth",
        "polished": "polished|polierte?[nrs]?",
        "as-cast": "as[ -]cast|straight from the mould|schalungsglatt",
    }
)
# Of terms that begin alike the longer stands first.
FINISHES: Final = "|".join(
    (
        "matt sealed|matte sealed|satin sealed|satin sealer|matt sealer|matt|matte|mat|satin",
        "sealed|waxed|glossy|gloss|brushed|low sheen|oiled|no sealer|unsealed",
        "not shiny|not glossy|nothing glossy|not polished|nothing shiny",
        "geschliffen und versiegelt|matt versiegelt|versiegelt|gewachst|geölt",
        "glatt|unbehandelt|nicht poliert|seidenmatt",
        *_SURFACE_TERMS.values(),
    )
)
_FINISH: Final = re.compile(
    rf"\b(?:{FINISHES})\b(?:(?:,? (?:and|und|&)|,) (?:{FINISHES})\b)?(?: finish)?", re.IGNORECASE
)
_SURFACES: Final = tuple(
    (name, re.compile(rf"(?<!not )(?<!nicht )\b(?:{terms})\b", re.IGNORECASE))
    for name, terms in _SURFACE_TERMS.items()
)
# A tap is of brushed brass, a sink of polished steel: no face of a slab.
_METAL: Final = re.compile(
    r"\s(?:stainless|steel|brass|chrome|nickel|copper|bronze|gold|metal|messing|chrom|edelstahl)\b",
    re.IGNORECASE,
)
_SEALERS: Final = (
    ("matt", re.compile(r"\bmatte?\b|\bmat\b|\bmatt versiegelt\b", re.IGNORECASE)),
    ("satin", re.compile(r"\bsatin\b|\bseidenmatt\b|\blow sheen\b", re.IGNORECASE)),
    ("wax", re.compile(r"\bwax(?:ed)?\b|\bgewachst\b|\bhard wax\b", re.IGNORECASE)),
)


def finishes_of(text: str, spans: Sequence[TextSpan]) -> list[SaidWord]:
    """Return the finishes in the writer's words; the first is of the newest part and the surest."""
    for start, end in spans:
        said = list(_finishes(text, start, end))
        if said:
            return said
    return []


def _finishes(text: str, start: int, end: int) -> Iterator[SaidWord]:
    labelled = _FINISH_LABEL.finditer(text, start, end)
    for found in labelled:
        if _FINISH.search(found["value"]):
            value = found["value"].strip(" \t,:-")
            at = text.index(value, found.start())
            yield SaidWord(" ".join(value.split()), ((at, at + len(value)),))
    for found in _FINISH.finditer(text, start, end):
        before = text[max(start, found.start() - 24) : found.start()]
        named = found[0][:1].isupper() and re.match(r"\s[A-Z]", text[found.end() : found.end() + 2])
        if (
            not named
            and not _METAL.match(text, found.end())
            and not re.search(
                r"(?:door|place|welcome|bath)[ -]?\Z|if it(?:'s| is) \Z|\b(?:edelstahl|messing) \Z",
                before,
                re.IGNORECASE,
            )
        ):
            yield SaidWord(" ".join(found[0].split()), (found.span(),))


def surface_in(words: str) -> str:
    """Return the surface of the contract that words name, or nothing."""
    return next((name for name, pattern in _SURFACES if pattern.search(words)), "")


def sealer_in(words: str) -> str:
    """Return the beginning of the sealer's name that words name, or nothing."""
    return next((name for name, pattern in _SEALERS if pattern.search(words)), "")
