"""Prices as JSON members: decimal texts beside the currency's code."""

from __future__ import annotations

from typing import Any

from ledgerstone.price import Price


def write_price(price: Price) -> dict[str, Any]:
    """Write a price: amounts are decimal texts beside the currency's code."""
    return {
        "currency": price.currency,
        "lines": [{"label": line.label, "amount": f"{line.amount:.2f}"} for line in price.lines],
        "net": f"{price.net:.2f}",
        "tax": f"{price.tax:.2f}",
        "tax_percent": float(price.tax_percent),
        "total": f"{price.total:.2f}",
        "deposit": f"{price.deposit:.2f}",
    }
