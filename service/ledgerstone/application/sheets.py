"""Sheets for a quote's token or an order: as JSON, HTML or PDF."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any, Final

from ledgerstone.application.answering import Desk
from ledgerstone.application.asks import Asked, AskSchema, answer_ask, read_ask
from ledgerstone.application.drawings import Beside, Drawer, drawing_content
from ledgerstone.codec.tokens import Tokens
from ledgerstone.papers import Templates, Told
from ledgerstone.papers.approval import approval_sheet
from ledgerstone.papers.care import care_sheet
from ledgerstone.papers.fitting import fitting_sheet
from ledgerstone.papers.sheet import Sheet, sheet_content, sheet_page, sheet_print
from ledgerstone.quote import SentBack

_SCHEMA = AskSchema()


@dataclass(frozen=True, slots=True)
class Drafter:
    """What a sheet is made with."""

    desk: Desk
    tokens: Tokens
    templates: Templates

    def sheet(self, kind: str, document: object) -> Sheet | Asked:
        """Make a sheet; what was asked, with its send-back, where the order cannot be made.

        Raises
        ------
        NotUnderstood
        """
        ask = read_ask(_SCHEMA, document)
        asked = answer_ask(ask, self.desk, self.tokens, search=False)
        if isinstance(asked.answer, SentBack):
            return asked
        told = Told(
            quote=asked.answer,
            name=asked.offer.name if asked.offer is not None else "",
            link=asked.link,
            whole=asked.whole,
        )
        return SHEETS[kind](self, told, ask.get("customer", ""))

    def content(self, sheet: Sheet) -> dict[str, Any]:
        """Write a sheet as JSON members."""
        return sheet_content(sheet, self.desk.workshop)

    def page(self, sheet: Sheet) -> str:
        """Write a sheet as HTML.

        Raises
        ------
        TemplateFault
        """
        return sheet_page(sheet, self.desk.workshop, self.templates)

    def printed(self, sheet: Sheet) -> bytes:
        """Write a sheet as a PDF."""
        return sheet_print(sheet, self.desk.workshop)

    def plans(self, told: Told) -> list[str]:
        """Draw each slab's plan; nothing that the sheet does not number is pinned on it."""
        order = told.quote.order
        beside = Beside(reference=told.name, issued=told.quote.issued)
        drawer = Drawer(drawing_content(order, beside), self.desk.workshop)
        return [drawer.drawn("plan", i) for i in range(len(order.slabs))]


def _approval(drafter: Drafter, told: Told, customer: str) -> Sheet:
    return approval_sheet(told, drafter.desk.workshop, drafter.plans(told), customer)


def _fitting(drafter: Drafter, told: Told, customer: str) -> Sheet:
    return fitting_sheet(told, drafter.desk.workshop, customer)


def _care(drafter: Drafter, told: Told, customer: str) -> Sheet:
    return care_sheet(told, drafter.desk.workshop, customer)


SHEETS: Final[Mapping[str, Callable[[Drafter, Told, str], Sheet]]] = MappingProxyType(
    {"approval": _approval, "fitting": _fitting, "care": _care}
)
