"""The costs of an order, line by line: for the maker only."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

from ledgerstone.price import costs
from ledgerstone.price.rounding import to_penny
from ledgerstone.quote import Quote
from ledgerstone.wording import Message, workshop_speech
from ledgerstone.workshop.records import Workshop


def costs_content(quote: Quote, workshop: Workshop) -> dict[str, Any]:
    """Say the costs that a quote's price was made from, each to the penny, and the margin on them.

    What comes to nothing is no line.

    The margin is on every group but that of sample tiles, which their own price pays.
    """
    speech = workshop_speech(workshop.workshop.language, workshop)
    lines: list[dict[str, Any]] = [
        {
            "label": speech.say(cost.label),
            "group": speech.say(Message("price-making", group=cost.group)),
            "amount": cost.amount,
        }
        for cost in costs(quote.order, quote.shapes, quote.work, workshop, quote.steel)
        if to_penny(cost.amount)
    ]
    own = quote.terms.margin_percent
    margin = workshop.rates.margin_percent if own is None else own
    percent = f"{margin.normalize():f}"
    total = sum((to_penny(line["amount"]) for line in lines), Decimal(0))
    currency = quote.price.currency
    return {"currency": currency, "margin_percent": percent, "lines": lines, "total": total}
