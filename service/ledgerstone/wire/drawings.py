"""From a drawing token's slabs to a drawing, with a pin for every finding of its shape."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Any

from ledgerstone.checks import Facts, Finding, run_stage
from ledgerstone.drawing import Pin, TitleBlock, draw_plan, pin_at
from ledgerstone.drawing.stress import draw_stress
from ledgerstone.shade import shade_seen
from ledgerstone.strength.painted import painted
from ledgerstone.strength.slabs import Plates, concrete_of, plate_of, slab_strength
from ledgerstone.wire.order_in import read_order
from ledgerstone.workshop.records import Workshop

_NO_DAY = date(2000, 1, 1)  # no check of a shape looks at the day
_NO_COLOUR = "#9a9a95"


def draw(name: str, slabs: Sequence[Any], number: int, workshop: Workshop) -> str | None:
    """Draw one slab of a drawing's token, or None where there is no such drawing."""
    if name != "plan":
        return None
    order = read_order({"slabs": slabs}, workshop)
    facts = Facts(order, workshop, (), _NO_DAY)
    slab, shape = order.slabs[number], facts.shapes[number]
    seen = shade_seen(slab.shade, workshop)
    title = TitleBlock(
        label=slab.label,
        shade=slab.shade.name or slab.shade.match or "",
        colour=seen.hex if seen is not None else _NO_COLOUR,
        workshop=workshop.workshop.name,
    )
    return draw_plan(slab, shape, title=title, pins=_pins(run_stage("shape", facts), number))


def draw_used(slabs: Sequence[Any], number: int, workshop: Workshop, plates: Plates) -> str:
    """Paint how far one slab of a drawing's token is used: for the maker alone.

    The shed is taken as cold as in its coldest month, so that the picture hangs on no day.
    """
    order = read_order({"slabs": slabs}, workshop)
    facts = Facts(order, workshop, (), _NO_DAY, plates)
    slab, shape = order.slabs[number], facts.shapes[number]
    title = f"How far the concrete is used: {slab.label or f'slab {number + 1}'}"
    stopped = any(f.level == "stops" for f in run_stage("shape", facts) if f.slab == number)
    if stopped:
        return draw_stress(slab, shape, None, None, title=title)
    coldest = min(workshop.handling.workshop_c)
    found = slab_strength(
        slab, shape, workshop, slab_kg=facts.slab_kg[number], shed_c=coldest, plates=plates
    )
    concrete = concrete_of(workshop)
    field = painted(slab, shape, plate_of(slab, shape, concrete, plates), concrete, workshop)
    return draw_stress(slab, shape, field, found.worst, title=title)


def _pins(findings: Sequence[Finding], slab: int) -> list[Pin]:
    """Number the findings as the answer lists them; keep those of one slab that have a place."""
    pins = (
        pin_at(number, finding.level, finding.where_mm)
        for number, finding in enumerate(findings, start=1)
        if finding.slab == slab
    )
    return [pin for pin in pins if pin is not None]
