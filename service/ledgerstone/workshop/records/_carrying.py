"""What carries an order to its place: a carrier's pallets, and the workshop's own van."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from decimal import Decimal

from ledgerstone.workshop.records._keys import about, above_0, at_least_0, documented, may_be_0


@dataclass(frozen=True, slots=True, kw_only=True)
class Pallet:
    """One kind of pallet that the carrier takes, with pieces standing on it on edge."""

    name: str = documented("name that the carrier uses")
    length_mm: float = above_0("length of the pallet itself")
    overhang_mm: float = field(
        default=0.0,
        metadata=about("how far a piece may stand out at each end", at_least=0, at_most=1000),
    )
    highest_mm: float = above_0("greatest height, with what stands on it")
    deck_mm: float = field(
        default=150.0, metadata=about("height of the pallet alone", at_least=0, at_most=400)
    )
    most_kg: float = above_0("most it may weigh packed")
    kg: float = at_least_0("mass of the pallet alone")
    price_percent: Decimal = field(
        default=Decimal(100),
        metadata=about("price, of the area's price of a pallet", above=0, at_most=1000),
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
    most_kg: float = above_0("most it may carry")


@dataclass(frozen=True, slots=True, kw_only=True)
class Crate:
    """A crate on the pallet for several pieces on edge."""

    pieces: int = field(metadata=about("pieces in a crate", at_least=1, at_most=24))
    materials: Decimal = at_least_0("timber, bearers and straps of a crate")
    hours: float = at_least_0("hours to build and close a crate")
    kg: float = at_least_0("mass of an empty crate")


@dataclass(frozen=True, slots=True, kw_only=True)
class PackingWay:
    """How pieces are packed that leave in one way."""

    materials_per_piece: Decimal = at_least_0("film, foam and edge protection, each piece")
    hours_per_piece: float = at_least_0("hours to wrap and load a piece")
    kg_per_piece: float = may_be_0("mass of the wrapping of a piece")
    crate: Crate | None = field(default=None, metadata=about("crate that pieces stand in"))

    def crates(self, pieces: int) -> int:
        """Number of crates for a number of pieces."""
        return math.ceil(pieces / self.crate.pieces) if self.crate is not None else 0


@dataclass(frozen=True, slots=True, kw_only=True)
class PackingSettings:
    """Packing by how an order leaves."""

    collected: PackingWay = documented("the customer collects it")
    own_van: PackingWay = documented("our own van brings it, to the door or to be fitted")
    pallet: PackingWay = documented("a carrier takes it on a pallet")
