"""Check of what carries across base units: rails that must be fitted before the slab goes down."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from shapely.geometry import Point

from ledgerstone.checks.finding import Finding, geojson
from ledgerstone.checks.units import standing_units
from ledgerstone.order import Order, Slab
from ledgerstone.stages import Judged
from ledgerstone.strength.rests import Level
from ledgerstone.strength.slabs import SlabStrength
from ledgerstone.wording import slab_words
from ledgerstone.workshop.records import Workshop

_USES = {"hob": "the hob's unit", "basin": "the basin's unit"}


def rails_needed(judged: Judged) -> Iterable[Finding]:
    """Across units whose own rails bend too far, stronger ones are a condition: a caution."""
    order = judged.planned.order
    for i, slab, shape, strength in judged.slabs():
        needed = strength.in_place.rails
        if needed and slab.rests is not None:
            standing = {unit.index: unit for unit in standing_units(slab.rests, shape)}
            first = standing[needed[0][0]]
            name = slab_words(slab, i, len(order.slabs))
            fitted = " ".join(_sentences(slab, needed, judged.planned.workshop))
            yield Finding(
                "rails-needed",
                "caution",
                f"{fitted} On the cabinet's own rails {name} could crack. At the back, a batten on"
                " the wall does as well.",
                "beam between side panels; EN 338, EN 312, EN 1993-1-1 3.2.6",
                slab=i,
                at=tuple(f"/slabs/{i}/rests/units/{unit}" for unit, _ in needed),
                where_mm=geojson(Point(0.5 * (first.start_mm + first.end_mm), first.front_mm)),
            )


def rail_conditions(
    order: Order, strength: Sequence[SlabStrength], workshop: Workshop
) -> Iterator[str]:
    """What an offer rests on: the rails that must be there when the slabs are laid."""
    for i, (slab, one) in enumerate(zip(order.slabs, strength, strict=True)):
        name = slab_words(slab, i, len(order.slabs))
        for sentence in _sentences(slab, one.in_place.rails, workshop):
            yield f"Before {name} goes down: {sentence[0].lower()}{sentence[1:]}"


def _sentences(
    slab: Slab, needed: Sequence[tuple[int, Level]], workshop: Workshop
) -> Iterator[str]:
    for level in ("hardwood", "steel", "post"):
        units = [unit for unit, kind in needed if kind == level]
        if units:
            where = " and ".join(_unit_words(slab, unit) for unit in units)
            yield (
                f"Have a {_rail_words(level, workshop)} fitted across the front and back of"
                f" {where}."
            )


def _rail_words(level: Level, workshop: Workshop) -> str:
    if level == "steel":
        return workshop.rails.steel.name
    post = " with a post under its middle" if level == "post" else ""
    return f"{workshop.rails.hardwood.name}{post}"


def _unit_words(slab: Slab, unit: int) -> str:
    rests = slab.rests
    if rests is None:
        return f"unit {unit + 1}"
    uses = [one.use for one in rests.units]
    name = _USES.get(uses[unit])
    return name if name is not None and uses.count(uses[unit]) == 1 else f"unit {unit + 1}"
