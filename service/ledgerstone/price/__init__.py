"""What an order costs to make, and what the customer is asked for it. Decimal throughout."""

from ledgerstone.price.costing import Cost, costs
from ledgerstone.price.customer_price import making_lines, price, subtotal
from ledgerstone.price.maker_terms import NO_TERMS, MakerTerms
from ledgerstone.price.materials import Material, materials, steel_pieces
from ledgerstone.price.rounding import (
    ROUNDING,
    Line,
    Price,
    pennies,
    rounded_total,
    shown_amount,
    tax_in,
    tax_on,
    tax_percent_of,
)

__all__ = [
    "NO_TERMS",
    "ROUNDING",
    "Cost",
    "Line",
    "MakerTerms",
    "Material",
    "Price",
    "costs",
    "making_lines",
    "materials",
    "pennies",
    "price",
    "rounded_total",
    "shown_amount",
    "steel_pieces",
    "subtotal",
    "tax_in",
    "tax_on",
    "tax_percent_of",
]
