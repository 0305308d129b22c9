"""A sheet of paper: sections of facts, sentences and drawings, as lists and values to be said."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from ledgerstone.message import Message, Value
from ledgerstone.papers.descriptions import Fact
from ledgerstone.papers.records import PaperRecords
from ledgerstone.workshop.records import Workshop

Content = dict[str, Any]


def section(
    heading: Value,
    *,
    facts: Iterable[Fact] = (),
    says: Iterable[Value] = (),
    drawing: str = "",
    words: str = "",
    wide_mm: float = 0.0,
    large: int = 0,
    is_slab: bool = False,
) -> Content:
    """Make one part of a sheet: facts as a table, lines to read or to tick, and a drawing.

    Parameters
    ----------
    drawing, words, wide_mm
        An SVG of ours, what it shows in words, and how wide it is printed: 0 is the whole width.
    large
        How many of the lines, the first ones, are set large.
    is_slab
        Whether it is a slab's own part, whose drawing stands under its facts.
    """
    return {
        "heading": heading,
        "facts": _pairs(facts),
        "says": list(says),
        "words": words,
        "drawing": drawing,
        "wide_mm": wide_mm,
        "large": large,
        "is_slab": is_slab,
    }


def workshop_named(workshop: Workshop) -> Message:
    """Name the workshop on a page; one for show says that it is, and so does a trial."""
    identity = workshop.workshop
    shown = "trial" if workshop.standing.trial else "own"
    shown = "invented" if identity.demonstration else shown
    return Message("paper-workshop", name=identity.name, town=identity.town, shown=shown)


def headed(title: Value, workshop: Workshop) -> Value:
    """Return the title of a paper or a letter; that of a trial begins by saying so."""
    return Message("trial-headed", title=title) if workshop.standing.trial else title


def sheet(
    title: Value,
    facts: Iterable[Fact],
    sections: Iterable[Content],
    records: PaperRecords,
    signs: Value = "",
) -> Content:
    """Make a whole sheet.

    Parameters
    ----------
    facts
        What stands under the title: the reference, the day, whom it is for.
    signs
        What is signed at the foot, in a sentence; empty if nothing is.
    """
    workshop = records.workshop
    identity = workshop.workshop
    return {
        "title": headed(title, workshop),
        "workshop": workshop_named(workshop),
        "reach": f"{identity.email} · {identity.ring}",
        "facts": _pairs(facts),
        "sections": [section for section in sections if _holds(section)],
        "signs": signs,
        "agreed": headed(Message("approval-signed"), workshop),
        "signed_by": [Message("paper-name"), Message("paper-signature"), Message("paper-day")],
    }


def _pairs(pairs: Iterable[Fact]) -> list[dict[str, Value]]:
    return [{"what": what, "says": says} for what, says in pairs]


def _holds(part: Content) -> bool:
    """Return whether a section has anything to show: an empty one is left out."""
    return bool(part["facts"] or part["says"] or part["drawing"])
