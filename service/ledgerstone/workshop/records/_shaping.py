"""What one piece may measure, and what shapes are made."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from ledgerstone.workshop.records._keys import about, above_0, at_least_0, documented


@dataclass(frozen=True, slots=True, kw_only=True)
class CastingTable:
    """What one piece may measure."""

    length_mm: float = above_0("longest side that can be cast")
    width_mm: float = above_0("shorter side that can be cast")
    count: int = field(default=1, metadata=about("how many tables of this size", at_least=1))


@dataclass(frozen=True, slots=True, kw_only=True)
class StripRule:
    """How wide the concrete beside an opening must stay; the first rule that fits is used."""

    beside: str = documented("which opening it is for, in words: a tap hole")
    opening_up_to_mm: float = field(
        default=20_000.0, metadata=about("longer side of the opening, at most", above=0)
    )
    rim: Literal["shown", "covered", "any"] = field(
        default="any", metadata=about("which rims it is for")
    )
    stops_mm: float = at_least_0("least width of concrete beside it")
    cautions_mm: float = at_least_0("width below which it is cast with care")


@dataclass(frozen=True, slots=True, kw_only=True)
class Shaping:
    """What shapes the workshop makes."""

    thicknesses_mm: tuple[float, ...] = above_0("thicknesses that mould sides are in stock for")
    thinnest_mm: float = above_0("the thinnest slab that is cast")
    thickest_mm: float = above_0("the thickest slab that is cast")
    smallest_side_mm: float = above_0("the least width of a slab")
    inside_radius_mm: float = at_least_0("smallest radius a former gives an inside corner")
    fitting_gap_mm: float = at_least_0("gap taken off each side of a slab that meets a wall")
    strips: tuple[StripRule, ...] = documented("widths of concrete beside openings")
