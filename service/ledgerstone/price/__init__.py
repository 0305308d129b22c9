"""The cost of making an order, and its price to the customer. Decimal throughout."""

from ledgerstone.price.costing import Cost, costs
from ledgerstone.price.customer_price import making_lines, price, subtotal
from ledgerstone.price.maker_terms import NO_TERMS, MakerTerms
from ledgerstone.price.materials import Material, materials, steel_pieces
from ledgerstone.price.rounding import (
    ROUNDING,
    Price,
    PriceLine,
    rounded_total,
    shown_amount,
    tax_in,
    tax_on,
    tax_percent_of,
    to_penny,
)

__all__ = [
    "NO_TERMS",
    "ROUNDING",
    "Cost",
    "MakerTerms",
    "Material",
    "Price",
    "PriceLine",
    "costs",
    "making_lines",
    "materials",
    "price",
    "rounded_total",
    "shown_amount",
    "steel_pieces",
    "subtotal",
    "tax_in",
    "tax_on",
    "tax_percent_of",
    "to_penny",
]
