"""When a customer acts on a finding: before the order, on delivery, or in use."""

from __future__ import annotations

from typing import Final, Literal

Occasion = Literal["before-order", "on-delivery", "in-use"]
OCCASIONS: tuple[Occasion, ...] = ("before-order", "on-delivery", "in-use")
# What is done as the order comes and is laid. What is in neither set is settled before the order.
ON_DELIVERY: Final = frozenset(
    {
        "beyond-hands",
        "beyond-tail-lift",
        "carry-on-edge",
        "cracks-when-moved",
        "drop-not-checked",
        "fall-advised",
        "hands-needed",
        "level-the-rests",
        "set-down-at-kerb",
        "sun-on-fixed",
        "tips-when-sat-on",
        "vehicle-to-collect",
    }
)
IN_USE: Final = frozenset({"acids-and-oil", "cracks-in-place", "food-surface", "young-in-place"})


def occasion_of(check: str, level: str) -> Occasion:
    """Return when a finding is acted on; what stops an order is settled before it."""
    if level == "stops":
        return "before-order"
    if check in ON_DELIVERY:
        return "on-delivery"
    return "in-use" if check in IN_USE else "before-order"
