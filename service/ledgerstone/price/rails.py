"""What the rails cost that a slab needs across its units, where we fit it."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from ledgerstone.order import Order
from ledgerstone.strength.rests import RestKind
from ledgerstone.workshop.records import Workshop

# Units by their place in the list, and what each needs.
RailsNeeded = Sequence[tuple[int, RestKind]]
PER_UNIT = 2  # one across the front and one across the back


def rails_price(order: Order, needed: Sequence[RailsNeeded], workshop: Workshop) -> Decimal:
    """Price of all rails that we fit under the slabs of an order, before tax.

    Parameters
    ----------
    needed
        Of each slab.

    Source
    ------
    As `unit_price`, for each unit of each piece.
    """
    return sum(
        (
            slab.quantity * (unit_price(order, level, workshop) or Decimal(0))
            for slab, units in zip(order.slabs, needed, strict=True)
            for _, level in units
        ),
        Decimal(0),
    )


def unit_price(order: Order, level: RestKind, workshop: Workshop) -> Decimal | None:
    """Price before tax of what we fit across one unit; None if the customer has it fitted.

    Source
    ------
    The profile's ``rails``; a rail in front and one behind: common practice, no source.
    """
    rails = workshop.rails
    each = rails.steel.fitted if level == "steel" else rails.hardwood.fitted
    post = rails.post_fitted if level == "post" else Decimal(0)
    if order.delivery.kind != "fitted" or each is None or post is None:
        return None
    return PER_UNIT * (each + post)
