"""The sheets of a quote's token or of an order, by their names."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any, Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.drawings import Annotations, Drawer, drawing_content
from ledgerstone.application.resolving import ResolvedRequest, read_ask, resolve
from ledgerstone.codec.paper_schemas import SHEET
from ledgerstone.codec.request_schemas import AskSchema
from ledgerstone.papers import QuoteView
from ledgerstone.papers.approval import approval_sheet
from ledgerstone.papers.care import care_sheet
from ledgerstone.papers.fitting import fitting_sheet
from ledgerstone.papers.sheet import Sheet, sheet_content
from ledgerstone.quote import SentBack

_SCHEMA = AskSchema()


def make_sheet(kind: str, document: object, context: QuoteContext) -> Sheet | ResolvedRequest:
    """Make a sheet; the resolved request, with its send-back, where it cannot be made.

    Raises
    ------
    NotUnderstood
    """
    ask = read_ask(_SCHEMA, document)
    resolved = resolve(ask, context, search=False)
    if isinstance(resolved.answer, SentBack):
        return resolved
    view = QuoteView(
        quote=resolved.answer,
        name=resolved.offer.name if resolved.offer is not None else "",
        link=resolved.link,
        whole=resolved.whole,
    )
    return SHEETS[kind](view, context, ask.get("customer", ""))


def write_sheet(sheet: Sheet, context: QuoteContext) -> dict[str, Any]:
    """Write a sheet as plain lists and texts, its drawings left out."""
    written: dict[str, Any] = SHEET.dump(sheet_content(sheet, context.workshop))
    return written


def _approval(view: QuoteView, context: QuoteContext, customer: str) -> Sheet:
    return approval_sheet(view, context.workshop, _plans(view, context), customer)


def _fitting(view: QuoteView, context: QuoteContext, customer: str) -> Sheet:
    return fitting_sheet(view, context.workshop, customer)


def _care(view: QuoteView, context: QuoteContext, customer: str) -> Sheet:
    return care_sheet(view, context.workshop, customer)


def _plans(view: QuoteView, context: QuoteContext) -> list[str]:
    """Draw each slab's plan; nothing that the sheet does not number is pinned on it."""
    order = view.quote.order
    annotations = Annotations(reference=view.name, issued=view.quote.issued)
    drawer = Drawer(drawing_content(order, annotations), context.workshop, context.contain)
    return [drawer.drawn("plan", i) for i in range(len(order.slabs))]


SHEETS: Final[Mapping[str, Callable[[QuoteView, QuoteContext, str], Sheet]]] = MappingProxyType(
    {"approval": _approval, "fitting": _fitting, "care": _care}
)
