"""Last stage: the price."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.price import NO_TERMS, MakerTerms, Price, price
from ledgerstone.stages.scheduled import Scheduled


@dataclass(frozen=True, slots=True)
class Priced:
    """An order with its price."""

    scheduled: Scheduled
    price: Price


def price_work(scheduled: Scheduled, terms: MakerTerms = NO_TERMS) -> Priced:
    """Price the materials and the list of work of an order, by what the maker sets beside them."""
    assessed = scheduled.assessed
    planned = assessed.planned
    found = price(
        planned.order,
        planned.shapes,
        scheduled.operations,
        planned.workshop,
        assessed.steel,
        terms=terms,
        costed=scheduled.costed,
        rails=[strength.in_place.rails for strength in assessed.strength],
    )
    return Priced(scheduled, found)
