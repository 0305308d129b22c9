"""The placeholder for a drawing that could not be made."""

from __future__ import annotations

from pathlib import Path
from typing import Final

from ledgerstone.drawing.frame import MARGIN, PLAIN, SHEET_WIDTH, SMALL
from ledgerstone.drawing.lettering import INK, PAPER, lettered
from ledgerstone.drawing.svg import document, element, render
from ledgerstone.drawing.typesetting import typeset

__all__ = ["MISSING", "missing_pdf"]

_TEMPLATE: Final = Path(__file__).with_name("missing.typ")
_TITLE: Final = "This drawing is missing"
_TEXT: Final = "It could not be made here. Nothing else depends on it: ask us for one."
_HIGH: Final = 2 * MARGIN + PLAIN + 2 * SMALL


def _missing() -> str:
    """Write the placeholder as an SVG document."""
    return render(
        document(
            (SHEET_WIDTH, _HIGH),
            "missing",
            title=_TITLE,
            says=_TEXT,
            children=[
                element("rect", width=SHEET_WIDTH, height=_HIGH, fill=PAPER, stroke=INK),
                lettered(_TITLE, (MARGIN, MARGIN + PLAIN), PLAIN, bold=True),
                lettered(_TEXT, (MARGIN, MARGIN + PLAIN + 1.6 * SMALL), SMALL),
            ],
        )
    )


MISSING: Final = _missing()


def missing_pdf() -> bytes:
    """Print the placeholder for a paper at true size, on one sheet."""
    return typeset(_TEMPLATE, {"title": _TITLE, "says": _TEXT})
