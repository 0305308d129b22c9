"""The placeholder for a drawing that could not be made."""

from __future__ import annotations

from pathlib import Path
from typing import Final

from ledgerstone.drawing.frame import MARGIN, PLAIN, SHEET_WIDTH, SMALL
from ledgerstone.drawing.lettering import INK, PAPER, lettered
from ledgerstone.drawing.svg import document, element, render
from ledgerstone.drawing.typesetting import typeset
from ledgerstone.wording import Message, Speech

__all__ = ["missing_drawing", "missing_pdf"]

_TEMPLATE: Final = Path(__file__).with_name("missing.typ")
_HIGH: Final = 2 * MARGIN + PLAIN + 2 * SMALL


def missing_drawing(speech: Speech) -> str:
    """Write the placeholder as an SVG document."""
    title, text = _title_and_text(speech)
    return render(
        document(
            (SHEET_WIDTH, _HIGH),
            "missing",
            title=title,
            says=text,
            children=[
                element("rect", width=SHEET_WIDTH, height=_HIGH, fill=PAPER, stroke=INK),
                lettered(title, (MARGIN, MARGIN + PLAIN), PLAIN, bold=True),
                lettered(text, (MARGIN, MARGIN + PLAIN + 1.6 * SMALL), SMALL),
            ],
        )
    )


def missing_pdf(speech: Speech) -> bytes:
    """Print the placeholder for a paper at true size, on one sheet."""
    title, text = _title_and_text(speech)
    return typeset(_TEMPLATE, {"title": title, "says": text})


def _title_and_text(speech: Speech) -> tuple[str, str]:
    return speech.say(Message("drawing-missing")), speech.say(Message("drawing-missing-text"))
