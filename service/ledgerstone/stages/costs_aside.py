"""A profile without what things cost: money and hours affect no plan, no stress and no steel."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Final

from ledgerstone.workshop.records import Way

_HOURS: Final = "hours"


def without_costs(part: object) -> object:
    """Return a part of a profile by value, without money (its decimals) and hours of labour."""
    if isinstance(part, tuple):
        return tuple(map(without_costs, part))
    members = getattr(part, "__dataclass_fields__", None)
    if members is None:
        return None if isinstance(part, Decimal) else part
    kept = (name for name in members if not name.startswith(_HOURS))
    return (type(part).__name__, *[without_costs(getattr(part, name)) for name in kept])


def same_way(way: Way, ways: Sequence[Way]) -> Way:
    """Return the first of some ways that is the same but for what it costs.

    Of two that are, the first one suffices as well, and is the one that is taken.
    """
    return next(other for other in ways if without_costs(other) == without_costs(way))
