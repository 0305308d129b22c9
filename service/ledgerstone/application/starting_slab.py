"""The size and thickness that an empty form starts with: a plain top that the workshop makes."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.typical_orders import plain_tops
from ledgerstone.codec.order_in import read_order
from ledgerstone.json_types import Members
from ledgerstone.quote import run_stages
from ledgerstone.workshop.records.usual import thicknesses_by_use


@dataclass(frozen=True, slots=True)
class StartingSlab:
    """The most that a slab measures at the start, and its thickness, in mm."""

    length_mm: float
    width_mm: float
    thickness_mm: float


def starting_slab(context: QuoteContext) -> StartingSlab:
    """Return the longest of some plain tops that no check of shape or strength stops.

    Of each size the usual thickness is tried first, then what is nearest to it. Where none can be
    made, the first stands: its findings say what is in the way.
    """
    thicknesses = thicknesses_by_use(context.workshop, "worktop")
    tried = [{**top, "thickness": mm} for top in plain_tops(context.workshop) for mm in thicknesses]
    slab = next((slab for slab in tried if _is_made(slab, context)), tried[0])
    outline = slab["outline"]
    length_mm, width_mm = (round(outline[side], 1) for side in ("length", "width"))
    return StartingSlab(length_mm, width_mm, slab["thickness"])


def _is_made(slab: Members, context: QuoteContext) -> bool:
    order, stages = read_order({"slabs": [slab]}, context.workshop), context.of_stages
    checked = run_stages(order, stages, groups=("shape", "strength"), contain=context.contain)
    return not checked.stops
