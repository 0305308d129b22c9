"""Warm-up of a server before its first request, once for all its workers.

Lazy imports and results cached for a profile (shades' curves, holidays, a plate's parts) are then
in memory when the workers fork: the first customer, and the first after a worker died, waits no
longer than the next one.
"""

from __future__ import annotations

from contextlib import nullcontext
from dataclasses import replace
from typing import Any, Final

from ledgerstone.api.app_context import AppContext
from ledgerstone.application.answering import answer_order
from ledgerstone.application.answers import write_quote, write_sent_back
from ledgerstone.application.choices import write_choices
from ledgerstone.application.drawings import Drawings, drawing_content
from ledgerstone.quote import Quote
from ledgerstone.wording import speech_in
from ledgerstone.workshop.records import Workshop

_SIZE_MM: Final = {"length": 900, "width": 550}
_HOLE: Final = {"kind": "circle", "diameter": 200, "centre": {"x": 500, "y": 275}}


def warm(context: AppContext) -> None:
    """Answer one plain order as a customer's, and draw it; discard the answer."""
    quoting = replace(context.quote_context(), timed=nullcontext)
    write_choices(quoting, speech_in(context.workshop.workshop.language))
    document = _plain_order(context.workshop)
    answer = answer_order(document, quoting, search=False)
    if isinstance(answer, Quote):
        write_quote(answer, quoting, document=document)
    else:
        write_sent_back(answer, document, quoting)
    drawings = Drawings(drawing_content(answer.order), context.workshop)
    for name in ("plan", "view"):
        drawings.drawn(name, 0)


def _plain_order(workshop: Workshop) -> dict[str, Any]:
    """Return an order of a rectangle with a hole, of the last thickness offered, on two ends."""
    slab = {
        "outline": {"kind": "rectangle", **_SIZE_MM},
        "thickness": workshop.shaping.thicknesses_mm[-1],
        "cutouts": [_HOLE],
        "rests": {"kind": "ends", "depth": 60},
    }
    return {"slabs": [slab]}
