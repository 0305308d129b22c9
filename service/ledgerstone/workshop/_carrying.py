"""What carries an order to its place: a carrier's pallets, and the workshop's own van."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal

from ledgerstone.workshop._keys import about, above_0, at_least_0, documented


@dataclass(frozen=True, slots=True, kw_only=True)
class Pallet:
    """One kind of pallet that the carrier takes, with pieces standing on it on edge."""

    name: str = documented("what the carrier calls it")
    length_mm: float = above_0("the pallet's own length")
    overhang_mm: float = field(
        default=0.0,
        metadata=about("how far a piece may stand out at each end", at_least=0, at_most=1000),
    )
    highest_mm: float = above_0("the pallet and what stands on it")
    deck_mm: float = field(
        default=150.0, metadata=about("height of the pallet alone", at_least=0, at_most=400)
    )
    most_kg: float = above_0("packed, the pallet with it")
    kg: float = at_least_0("the pallet alone")
    price_percent: Decimal = field(
        default=Decimal(100), metadata=about("of the area's pallet price", above=0, at_most=1000)
    )

    @property
    def longest_mm(self) -> float:
        """The longest piece it takes, standing out at both ends."""
        return self.length_mm + 2 * self.overhang_mm

    @property
    def deepest_mm(self) -> float:
        """The deepest piece that stands on it on edge."""
        return self.highest_mm - self.deck_mm


@dataclass(frozen=True, slots=True, kw_only=True)
class Van:
    """The workshop's own van."""

    length_mm: float = above_0("clear length of its floor")
    most_kg: float = above_0("what it may carry")
