"""What one piece may measure, and what shapes are made."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from ledgerstone.workshop._keys import about, above_0, at_least_0, documented


@dataclass(frozen=True, slots=True, kw_only=True)
class CastingTable:
    """What one piece may measure."""

    length_mm: float = above_0("longest side that can be cast")
    width_mm: float = above_0("shorter side that can be cast")
    count: int = field(default=1, metadata=about("tables of this size", at_least=1))


@dataclass(frozen=True, slots=True, kw_only=True)
class StripRule:
    """How wide the concrete beside an opening must stay; the first rule that fits is used."""

    beside: str = documented("what the opening is, in words: a tap hole")
    opening_up_to_mm: float = field(
        default=20_000.0, metadata=about("the opening's longer side, at most", above=0)
    )
    rim: Literal["shown", "covered", "any"] = field(
        default="any", metadata=about("shown, covered or any")
    )
    stops_mm: float = at_least_0("narrower than this is not made")
    cautions_mm: float = at_least_0("narrower than this is made with care")


@dataclass(frozen=True, slots=True, kw_only=True)
class Shaping:
    """What shapes the workshop makes."""

    thicknesses_mm: tuple[float, ...] = above_0("thicknesses the mould sides are stocked in")
    thinnest_mm: float = above_0("thinner is not made")
    thickest_mm: float = above_0("thicker is not made")
    smallest_side_mm: float = above_0("a slab's shorter side, at least")
    inside_radius_mm: float = at_least_0("smallest radius a former gives an inside corner")
    fitting_gap_mm: float = at_least_0("taken off each wall side of a slab between walls")
    strips: tuple[StripRule, ...] = documented("widths of concrete beside openings")
