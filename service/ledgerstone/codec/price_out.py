"""Prices as members of an answer, their lines in the order's language."""

from __future__ import annotations

from typing import Any

from ledgerstone.price import Price
from ledgerstone.wording import Speech


def price_members(price: Price, speech: Speech) -> dict[str, Any]:
    """Return what ``PriceSchema`` writes."""
    return {
        "currency": price.currency,
        "lines": [{"label": speech.say(line.label), "amount": line.amount} for line in price.lines],
        "net": price.net,
        "tax": price.tax,
        "tax_percent": price.tax_percent,
        "total": price.total,
        "deposit": price.deposit,
    }
