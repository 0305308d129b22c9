"""The way in: steps that are counted, and stairs that are told without their number."""

from __future__ import annotations

import re
from typing import Final

from ledgerstone.enquiry.scene.said import SaidWord
from ledgerstone.enquiry.words.lexicon import NUMBERS

_NUMBER_WORDS: Final = "|".join(
    sorted(
        (w for w in NUMBERS if w not in ("a", "an", "half", "zero", "null", "halben", "halber")),
        key=len,
        reverse=True,
    )
)
_OF_STEPS: Final = r"(?![ -](?:tops?|treads?|slabs?|stones?|nosings?|plates?|tiles?)\b)"  # of ours
_STEPS: Final = re.compile(
    rf"\b(?P<count>\d{{1,3}}|{_NUMBER_WORDS}|a|no)\s"
    rf"(?:(?!few\b|flights?\b|couple\b|concrete\b|cast\b)\w{{1,12}}\s)?"
    rf"(?:steps?|stairs"
    rf"|stufen?)\b(?! \d){_OF_STEPS}|(?P<one>\bone step\b){_OF_STEPS}|(?P<ohne>\bkeine stufen\b)",
    re.IGNORECASE,
)
_FLIGHTS: Final = re.compile(
    rf"\b(?P<count>\d{{1,2}}|{_NUMBER_WORDS}|a) flights?(?:"
    rf" (?:of|with|à|at) (?P<each>\d{{1,2}}|{_NUMBER_WORDS})(?: (?:stairs|steps))?\b(?: each\b)?"
    r"| of (?:\w{1,12} )?(?:stairs|steps)\b| up\b| down\b)",
    re.IGNORECASE,
)
_SOME_STEPS: Final = re.compile(
    r"\b(?:a few|some|several|a couple of|many|einige|mehrere|ein paar) (?:\w{1,12} )?(?:steps"
    r"|stairs|stufen)\b|\b(?:up|down) (?:the|some|our|a|\w{1,12}) (?:\w{1,12} )?(?:stairs|staircase"
    rf"|stairway)\b|\b(?:\d|{_NUMBER_WORDS}|eine) treppen?\b"
    r"|\btreppe (?:hoch|hinauf|rauf|runter)\b",
    re.IGNORECASE,
)
_FLAT: Final = re.compile(
    r"\bflat access\b|\blevel (?:access|from|throughout)\b|\bno steps\b"
    r"|\bwithout (?:any )?(?:stairs|steps)\b|\bohne (?:stufen|treppen?)\b"
    r"|,\s?level\b|step-free"
    r"|ebenerdig|level all the way|all on the level",
    re.IGNORECASE,
)


def climb_in(text: str, start: int, end: int) -> SaidWord | None:
    """Return words of stairs that say how many flights there are, or some: not how many steps."""
    found = _FLIGHTS.search(text, start, end) or _SOME_STEPS.search(text, start, end)
    return SaidWord(" ".join(found[0].split()), (found.span(),)) if found else None


def _in_flights(text: str, start: int, end: int) -> SaidWord | None:
    """Return the steps of flights that are told with how many each has: "two flights of 13"."""
    found = _FLIGHTS.search(text, start, end)
    if found is None or found["each"] is None:
        return None
    count, each = (
        int(said) if said.isdigit() else int(NUMBERS.get(said, 0))
        for said in (found["count"].lower(), found["each"].lower())
    )
    return SaidWord(str(count * each), (found.span(),))


def steps_in(text: str, start: int, end: int) -> SaidWord | None:
    """Return how many steps are said: counted, in flights of so many, or none."""
    flights = _in_flights(text, start, end)
    if flights is not None:
        return flights
    for found in _STEPS.finditer(text, start, end):
        said = (found["count"] or "").lower()
        if found["ohne"] or said == "no":
            return SaidWord("0", (found.span(),))
        if found["one"] or said in ("a", "one"):
            return SaidWord("1", (found.span(),))
        count = int(said) if said.isdigit() else int(NUMBERS.get(said, 0))
        return SaidWord(str(count), (found.span(),))
    flat = _FLAT.search(text, start, end)
    return SaidWord("0", (flat.span(),)) if flat else None
