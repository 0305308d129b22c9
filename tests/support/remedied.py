"""Orders that are sent back, and what their fixes come to, for the tests of remedies."""

import copy
from datetime import date
from typing import Final

import jsonpatch

from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.quote import Quote, SentBack
from support.documents import Json
from support.written import write_fixes

TODAY: Final = date(2026, 11, 25)
FULL: Final = {"kind": "full"}


def rectangle(length: str, width: str, thickness: str = "40 mm", **more: object) -> Json:
    """An order of one rectangular slab."""
    outline = {"kind": "rectangle", "length": length, "width": width}
    return {"slabs": [{"outline": outline, "thickness": thickness, **more}]}


def hole(label: str, diameter: str, x: str, y: str, rim: str = "shown") -> Json:
    """A round cut-out."""
    centre = {"x": x, "y": y}
    return {"kind": "circle", "label": label, "diameter": diameter, "centre": centre, "rim": rim}


def sent_back(context: QuoteContext, order: Json) -> SentBack:
    """The send-back of an order that must be sent back."""
    answer = answer_order(order, context)
    assert isinstance(answer, SentBack)
    return answer


def fixed(
    context: QuoteContext, order: Json, name: str = "fix_all"
) -> tuple[list[str], Json, Quote]:
    """What the fix says, the order it makes (by an independent patch library), and its quote."""
    fix = write_fixes(order, sent_back(context, order).found, [])[name]
    mended: Json = jsonpatch.apply_patch(copy.deepcopy(order), fix["patch"])
    quote = answer_order(mended, context, search=False)
    assert isinstance(quote, Quote)
    assert f"{quote.price.total:.2f}" == fix["price"]["total"]
    return fix["says"], mended, quote
