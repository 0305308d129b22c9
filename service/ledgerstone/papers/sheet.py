"""A sheet of paper: sections of facts, sentences and drawings, as JSON, HTML and PDF."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, Final

import typst
from markupsafe import Markup

from ledgerstone.drawing.raster import FONT_FOLDER
from ledgerstone.papers.printing import printed_content
from ledgerstone.papers.templates import Templates
from ledgerstone.workshop.records import Workshop

_PRINTED: Final = Path(__file__).with_name("texts") / "sheet.typ"


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


def sheet_content(sheet: Sheet, workshop: Workshop) -> dict[str, Any]:
    """Say a sheet as plain lists and texts."""
    mine = workshop.workshop
    return {
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
            }
            for section in sheet.sections
        ],
        "signs": sheet.signs,
    }


def _pairs(pairs: Sequence[tuple[str, str]]) -> list[dict[str, str]]:
    return [{"what": what, "says": says} for what, says in pairs]


def sheet_page(sheet: Sheet, workshop: Workshop, templates: Templates) -> str:
    """Write a sheet as an HTML page that prints well.

    Raises
    ------
    TemplateFault
    """
    content = sheet_content(sheet, workshop)
    for told, section in zip(content["sections"], sheet.sections, strict=True):
        told["drawing"] = Markup(section.drawing)  # noqa: S704  an SVG that we drew ourselves
    return templates.fill("sheet.html", content)


def sheet_print(sheet: Sheet, workshop: Workshop) -> bytes:
    """Write a sheet as a PDF; all that is in it goes in as data, never as markup."""
    content = sheet_content(sheet, workshop)
    for told, section in zip(content["sections"], sheet.sections, strict=True):
        told["drawing"] = section.drawing
    return bytes(
        typst.compile(
            str(_PRINTED),
            font_paths=[str(FONT_FOLDER)],
            ignore_system_fonts=True,
            format="pdf",
            sys_inputs={"told": printed_content(content)},
        )
    )
