"""What an order costs to make, and what the customer is asked for it. Decimal throughout."""

from ledgerstone.price.asking import making_lines, price, worth
from ledgerstone.price.costing import Cost, costs
from ledgerstone.price.materials import Material, materials, steel_pieces
from ledgerstone.price.settling import (
    Line,
    Price,
    pennies,
    stepped,
    tax_in,
    tax_on,
)

__all__ = [
    "Cost",
    "Line",
    "Material",
    "Price",
    "costs",
    "making_lines",
    "materials",
    "pennies",
    "price",
    "steel_pieces",
    "stepped",
    "tax_in",
    "tax_on",
    "worth",
]
