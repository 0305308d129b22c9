"""English of other countries: words that replace British ones.

A variant is no third catalogue: our English messages are said with these words exchanged, and only
where that does not do stands a message of its own, in ``catalogues/variants/``.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from copy import deepcopy
from dataclasses import dataclass
from functools import lru_cache
from types import MappingProxyType
from typing import Final

from fluent.syntax import ast
from fluent.syntax.visitor import Visitor

from ledgerstone.workshop.countries import English, RegionalSettings

# British word or words: the other. A word's plural follows it, but where it has a row of its own; a
# beginning that ends in a hyphen changes whatever follows: "colour-" is colour, colours, coloured.
_SPELLING: Final = {
    "colour-": "color",
    "grey-": "gray",
    "mould-": "mold",
    "demould-": "demold",
    "metre-": "meter",
    "millimetre-": "millimeter",
    "centimetre-": "centimeter",
    "litre-": "liter",
    "fibre-": "fiber",
    "centre-": "center",
    "centring": "centering",
    "aluminium": "aluminum",
    "plough-": "plow",
    "towards": "toward",
    "enquir-": "inquir",
    "judgement-": "judgment",
    "labelled": "labeled",
    "levelled": "leveled",
    "bevelled": "beveled",
    "bevelling": "beveling",
    "modelled": "modeled",
    "plasticiser-": "plasticizer",
}
_NORTH_AMERICAN: Final = {
    "worktop": "countertop",
    "hob": "cooktop",
    "tap": "faucet",
    "kerb": "curb",
    "basin": "sink",
    "splashback": "backsplash",
    "cupboard": "cabinet",
    "plasterboard": "drywall",
    "skirting board": "baseboard",
    "spirit level": "level",
    "lorry": "truck",
    "washing-up liquid": "dish soap",
    "methylated spirit": "denatured alcohol",
    "white spirit": "mineral spirits",
    "lidded tin": "lidded can",
    "polythene": "polyethylene",
    "timber": "lumber",
    "pin hole": "pinhole",
    "straight edge": "straightedge",
    "nought": "zero",
    "metal bin": "metal can",
    "waste bin": "trash",
    "trolley": "dolly",
    "batten": "cleat",
    "drainer": "drainboard",
    "rebate": "rabbet",
    "upstand": "low backsplash",
    "ground floor": "first floor",
    "an rcd-protected": "a GFCI-protected",
    "ear defenders": "hearing protection",
    "shed": "shop",
    "collect it": "pick it up",
    "ready to collect": "ready for pickup",
    "collected": "picked up",
    "collect": "pick up",
    "fit": "install",
    "fits": "fits",
    "fitted": "installed",
    "fitting": "installation",
    "anticlockwise": "counterclockwise",
    "tick each": "check off each",
    "or ring": "or call",
    "all round": "all around",
    "round it": "around it",
    "round each": "around each",
    "round a hearth": "around a hearth",
    "gets round": "gets around",
    "way round": "way around",
    "order round": "order around",
    "a quarter round": "a quarter turn",
}
_AMERICAN: Final = {
    **_SPELLING,
    **_NORTH_AMERICAN,
    "postcode": "ZIP code",
    "telephone number": "phone number",
    "tick": "check",
    "quotation mark": "quotation mark",
    "quotation": "quote",
    "arris eased": "edge eased",
    "an arris": "an eased edge",
    "arrises": "edges",
    "arris": "edge",
    "rests on": "rests on",
    "rests so": "rests so",
    "rests": "supports",
    "mass": "weight",
    "tail lift": "liftgate",
    "our van": "our truck",
    "own van": "own truck",
    "pairs of hands": "people",
    "pair of hands": "person",
    "downstand": "drop edge",
    # What stands beneath a top; a length keeps its unit.
    "unit": "cabinet",
    "its unit": "its unit",
    "over its unit": "over its cabinet",
    "no unit": "no unit",
    "mixes unit": "mixes unit",
    "in a unit": "in a unit",
}
_CANADIAN: Final = {**_NORTH_AMERICAN, "postcode": "postal code"}
_AUSTRALIAN: Final = {"worktop": "benchtop", "hob": "cooktop", "cupboard": "cabinet"}
_WORDS: Final[Mapping[English, Mapping[str, str]]] = MappingProxyType(
    {
        "british": MappingProxyType({}),
        "american": MappingProxyType(_AMERICAN),
        "canadian": MappingProxyType(_CANADIAN),
        "australian": MappingProxyType(_AUSTRALIAN),
    }
)


@dataclass(frozen=True)
class Words:
    """Words that replace others, and messages that replace others.

    Attributes
    ----------
    pairs
        A British word and what is said instead; ``word-`` is one that any letters may follow.
    messages
        Whole messages, in Fluent's format.
    marks
        Single letters and marks that replace others, wherever they stand.
    """

    pairs: tuple[tuple[str, str], ...] = ()
    messages: str = ""
    marks: tuple[tuple[str, str], ...] = ()

    def exchanged(self, text: str) -> str:
        """Exchange the words of a text, each with its article; a capital stays one."""
        return self.spelled(_pattern(self.pairs).sub(self._other, text) if self.pairs else text)

    def spelled(self, text: str) -> str:
        """Exchange the letters and marks of a text alone."""
        for mark, other in self.marks:
            text = text.replace(mark, other)
        return text

    def _other(self, found: re.Match[str]) -> str:
        article, found_word = found["article"] or "", found["word"]
        word, plural = found_word.lower(), ""
        known = dict(self.pairs)
        begins = next((w for w in known if w.endswith("-") and word.startswith(w[:-1])), None)
        if begins is not None:
            other, plural = known[begins], found_word[len(begins) - 1 :]
        elif word in known:
            other = known[word]
        else:
            other, plural = known[word[:-1]], "s"
        if article and (word[0] in _VOWELS) != (other[0] in _VOWELS):
            article = f"{article[0]}{'n' if other[0] in _VOWELS else ''} "
        return (
            article + (other[0].upper() + other[1:] if found_word[0].isupper() else other) + plural
        )

    def in_place(self, entry: ast.Message) -> ast.Message:
        """Return a message with the words of its texts exchanged."""
        if not (self.pairs or self.marks):
            return entry
        other = deepcopy(entry)
        _Exchange(self).visit(other)
        return other


_VOWELS: Final = "aeiou"
NO_WORDS: Final = Words()
# Duden, K 160: no ß in Switzerland and Liechtenstein; quotation marks as Swiss newspapers set them,
# from memory.
SWISS_GERMAN: Final = frozenset({"CH", "LI"})
_SWISS: Final = Words(marks=(("ß", "ss"), ("„", "«"), ("“", "»")))


class _Exchange(Visitor):
    """Exchanges the words of each text in a message."""

    def __init__(self, words: Words) -> None:
        self._words = words

    def visit_TextElement(self, node: ast.TextElement) -> None:  # noqa: N802  fluent's own name
        node.value = self._words.exchanged(node.value)


@lru_cache(maxsize=8)
def _pattern(pairs: tuple[tuple[str, str], ...]) -> re.Pattern[str]:
    longest_first = sorted((word for word, _ in pairs), key=len, reverse=True)
    parts = (
        rf"{re.escape(w[:-1])}[a-z]*" if w.endswith("-") else rf"{re.escape(w)}s?"
        for w in longest_first
    )
    return re.compile(rf"\b(?P<article>an? )?(?P<word>{'|'.join(parts)})\b", re.IGNORECASE)


def words_of(language: str, place: RegionalSettings, messages: str = "") -> Words:
    """Return the words of a place, in the place of those of a language.

    English ones; of German ones the letters and marks that are not written in Switzerland.

    Parameters
    ----------
    messages
        Whole messages that replace ours there, in Fluent's format.
    """
    if language != "en":
        return _SWISS if language == "de" and place.country in SWISS_GERMAN else NO_WORDS
    pairs = {**_WORDS[place.words], **dict(place.replaced)}
    return Words(tuple(pairs.items()), messages)
