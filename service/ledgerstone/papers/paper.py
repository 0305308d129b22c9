"""A paper that is worked out, and the one way from it to a page and to a PDF."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final, Literal

from markupsafe import Markup

from ledgerstone.drawing.typesetting import typeset
from ledgerstone.json_types import JSON
from ledgerstone.papers.printing import printed_content
from ledgerstone.papers.templates import Templates

Content = dict[str, Any]
Layout = Literal["sheet", "job_sheet"]

_FOLDER: Final = Path(__file__).with_name("texts")
_DRAWINGS: Final = frozenset(("drawing", "svg"))  # members that hold an SVG of ours


@dataclass(frozen=True, slots=True, kw_only=True)
class Paper:
    """A sheet or a job sheet, its drawings as SVG in it.

    Attributes
    ----------
    layout
        The name of its template and of its printed form.
    content
        What its answer's schema writes.
    page, printed
        What its template is filled with, and what its printed form is told.
    """

    layout: Layout
    content: Content
    page: Content
    printed: Content


def paper_page(paper: Paper, templates: Templates) -> str:
    """Write a paper as an HTML page that prints well.

    Raises
    ------
    TemplateFault
    """
    return templates.fill(f"{paper.layout}.html", _safe(paper.page))


def paper_print(paper: Paper) -> bytes:
    """Write a paper as a PDF; all that is in it goes in as data, never as markup."""
    template = _FOLDER / f"{paper.layout}.typ"
    return typeset(template, {"told": printed_content(paper.printed)})


def _safe(content: JSON, key: str = "") -> JSON:
    """Let drawings through as they are; everything else is escaped where it is filled in."""
    if isinstance(content, dict):
        return {name: _safe(part, name) for name, part in content.items()}
    if isinstance(content, list):
        return [_safe(part) for part in content]
    if isinstance(content, str) and key in _DRAWINGS:
        return Markup(content)  # noqa: S704  an SVG that we drew ourselves
    return content
