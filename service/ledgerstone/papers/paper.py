"""The one way from an order's records to a paper, and from a paper to a page and to a PDF."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date
from pathlib import Path
from typing import Any, Final

from markupsafe import Markup

from ledgerstone.drawing.typesetting import typeset
from ledgerstone.json_types import JSON
from ledgerstone.message import Message, Spoken
from ledgerstone.papers.kinds import PAPER_KINDS, PaperLayout
from ledgerstone.papers.printing import printed_content
from ledgerstone.papers.records import PaperRecords
from ledgerstone.papers.sheet import Content
from ledgerstone.papers.templates import Templates
from ledgerstone.wording import Speech, bench_speech, speech_of
from ledgerstone.workshop.countries import PaperFormat

# The typesetter's names.
_PAPERS: Final[Mapping[PaperFormat, str]] = {"A4": "a4", "Letter": "us-letter"}
_FOLDER: Final = Path(__file__).with_name("texts")
_NOT_SHOWN: Final = frozenset(
    ("operations", "costs", "days", "materials")
)  # for programs, on no paper
_DRAWINGS: Final = frozenset(("drawing", "svg"))  # members that hold an SVG of ours


@dataclass(frozen=True, slots=True)
class Paper:
    """A paper in its language, with its drawings as SVG.

    Attributes
    ----------
    layout
        The name of its template and of its printed form, and what its answer's schema goes by.
    size
        What it is printed on.
    speech
        Its reader's.
    """

    layout: PaperLayout
    content: Content
    size: PaperFormat
    speech: Speech


def paper_of(kind: str, records: PaperRecords) -> Paper:
    """Make a paper in its reader's language."""
    made = PAPER_KINDS[kind]
    if made.reader == "workshop":
        speech = bench_speech(records.workshop.workshop.language, records.workshop)
    else:
        speech = speech_of(records.quote.order, records.workshop)
    content = made.content(replace(records, speech=speech))
    shown = {**formatted(content, speech), "language": speech.language}
    return Paper(made.layout, shown, records.workshop.place.paper, speech)


def paper_page(paper: Paper, templates: Templates) -> str:
    """Write a paper as an HTML page that prints well.

    Raises
    ------
    TemplateFault
    """
    return templates.fill(f"{paper.layout}.html", _in_layout(paper))


def _in_layout(paper: Paper) -> Content:
    shown: Content = _safe(_in_a_row(_shown(paper)))
    return {**shown, "paper": paper.size}


def paper_print(paper: Paper) -> bytes:
    """Write a paper as a PDF; all that is in it goes in as data, never as markup."""
    template = _FOLDER / f"{paper.layout}.typ"
    data = printed_content(_shown(paper), paper.speech)
    return typeset(template, {"data": data, "paper": _PAPERS[paper.size]})


def formatted(content: Any, speech: Speech) -> Any:  # noqa: ANN401  lists, members and values, nested
    """Format every message and value of a content; everything else stays as it is."""
    if isinstance(content, Mapping):
        return {name: formatted(part, speech) for name, part in content.items()}
    if isinstance(content, list | tuple):
        return [formatted(part, speech) for part in content]
    if isinstance(content, Message | Spoken | date):
        return speech.value(content)
    return content


def _shown(paper: Paper) -> Content:
    return {name: part for name, part in paper.content.items() if name not in _NOT_SHOWN}


def _in_a_row(content: Content) -> Content:
    """Set the blocks of all pages one by one, each page headed: a template loops once."""
    blocks: list[Content] = []
    pages = content.get("pages", [])
    for number, page in enumerate(pages, start=1):
        head = {"kind": "page", "says": page["title"], "number": number, "of": len(pages)}
        blocks += [head, *page["blocks"]]
    return {**content, "blocks": blocks} if pages else content


def _safe(content: JSON, key: str = "") -> JSON:
    """Let drawings through as they are; everything else is escaped where it is filled in."""
    if isinstance(content, dict):
        return {name: _safe(part, name) for name, part in content.items()}
    if isinstance(content, list):
        return [_safe(part) for part in content]
    if isinstance(content, str) and key in _DRAWINGS:
        return Markup(content)  # noqa: S704  an SVG that we drew ourselves
    return content
