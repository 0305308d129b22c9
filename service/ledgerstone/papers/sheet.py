"""A sheet of paper: sections of facts, sentences and drawings."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from ledgerstone.papers.paper import Paper
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """One part of a sheet.

    Attributes
    ----------
    facts
        Pairs of what and how, set as a table.
    says
        Sentences; each is a line to read, or to tick where the sheet is signed.
    drawing, words
        An SVG of ours, and what it shows in words.
    """

    heading: str
    facts: Sequence[tuple[str, str]] = ()
    says: Sequence[str] = ()
    drawing: str = ""
    words: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """A whole sheet.

    Attributes
    ----------
    facts
        What stands under the title: the reference, the day, whom it is for.
    signs
        What is signed at the foot, in a sentence; empty where nothing is.
    """

    title: str
    facts: Sequence[tuple[str, str]]
    sections: Sequence[Section] = field(default_factory=tuple)
    signs: str = ""


def sheet_paper(sheet: Sheet, workshop: Workshop) -> Paper:
    """Write a sheet as plain lists and texts, and its drawings."""
    mine = workshop.workshop
    content = {
        "title": sheet.title,
        "workshop": f"{mine.name}, {mine.town}",
        "reach": f"{mine.email} · {mine.telephone}",
        "facts": _pairs(sheet.facts),
        "sections": [
            {
                "heading": section.heading,
                "facts": _pairs(section.facts),
                "says": list(section.says),
                "words": section.words,
                "drawing": section.drawing,
            }
            for section in sheet.sections
        ],
        "signs": sheet.signs,
    }
    return Paper(layout="sheet", content=content, page=content, printed=content)


def _pairs(pairs: Sequence[tuple[str, str]]) -> list[dict[str, str]]:
    return [{"what": what, "says": says} for what, says in pairs]
