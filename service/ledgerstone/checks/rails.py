"""Check of what carries across base units: rails that must be fitted before the slab goes down."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from shapely.geometry import Point

from ledgerstone.checks.finding import Finding, geojson
from ledgerstone.checks.units import standing_units, unit_name
from ledgerstone.order import Order, Slab
from ledgerstone.price.rails import unit_price
from ledgerstone.stages import Assessed
from ledgerstone.strength.rests import RestKind, crowded_units
from ledgerstone.strength.slabs import SlabStrength
from ledgerstone.wording import Listed, Message, slab_name
from ledgerstone.workshop.records import Workshop

# Whether we fit it, what it is, whether it has a post, and across what.
FittedRail = tuple[bool, str, str, Listed]


def rails_needed(assessed: Assessed) -> Iterable[Finding]:
    """Across units whose own rails bend too far, stronger ones are a condition: a caution."""
    order, workshop = assessed.planned.order, assessed.planned.workshop
    for i, slab, shape, strength in assessed.slabs():
        needed = strength.in_place.rails
        if needed and slab.rests is not None:
            standing = {unit.index: unit for unit in standing_units(slab.rests, shape)}
            first = standing[needed[0][0]]
            name = slab_name(slab, i, len(order.slabs))
            fitted = tuple(_to_fit(order, rail) for rail in _fitted(order, slab, needed, workshop))
            yield Finding(
                "rails-needed",
                "caution",
                Message("rails-needed", fitted=Listed(fitted, joined="sentences"), slab=name),
                "beam between side panels; EN 338, EN 312, EN 1993-1-1 3.2.6",
                slab=i,
                at=tuple(f"/slabs/{i}/rests/units/{unit}" for unit, _ in needed),
                where_mm=geojson(Point(0.5 * (first.start_mm + first.end_mm), first.front_mm)),
            )


def _to_fit(order: Order, fitted: FittedRail) -> Message:
    """Say who fits a rail: we do, or the customer has it fitted, before we come where we lay."""
    ours, rail, post, units = fitted
    if ours:
        return Message("rails-we-fit", rail=rail, post=post, units=units)
    laid = "by-us" if order.delivery.kind == "fitted" else "by-others"
    return Message("rails-fit", laid=laid, rail=rail, post=post, units=units)


def flat_rails_in_the_way(assessed: Assessed) -> Iterable[Finding]:
    """A base unit's own flat rail under an opening must stand on edge, clear of it: a caution."""
    order, rails = assessed.planned.order, assessed.planned.workshop.rails
    for i, slab, shape, _ in assessed.slabs():
        rests = slab.rests
        if rests is None or rests.rails not in (None, "cabinet"):
            continue
        crowded = crowded_units(rests, shape, rails)
        if crowded:
            units = Listed(tuple(unit_name(slab, unit) for unit in crowded))
            first = next(unit for unit in standing_units(rests, shape) if unit.index == crowded[0])
            wide = slab.thickness.like(rails.flat.width_mm)
            name = slab_name(slab, i, len(order.slabs))
            yield Finding(
                "flat-rail-in-the-way",
                "caution",
                Message("flat-rail-in-the-way", units=units, wide=wide, slab=name),
                "a cabinet's flat rail; common practice, no source",
                slab=i,
                at=tuple(f"/slabs/{i}/rests/units/{unit}" for unit in crowded),
                where_mm=geojson(Point(0.5 * (first.start_mm + first.end_mm), first.front_mm)),
            )


def rail_conditions(
    order: Order, strength: Sequence[SlabStrength], workshop: Workshop
) -> Iterator[Message]:
    """What an offer rests on: the rails that others must have fitted when the slabs are laid."""
    for name, (ours, rail, post, units) in _needed(order, strength, workshop):
        if not ours:
            yield Message("rails-before", slab=name, rail=rail, post=post, units=units)


def rails_to_fit(
    order: Order, strength: Sequence[SlabStrength], workshop: Workshop
) -> Iterator[Message]:
    """The rails that we fit ourselves before the slabs go down: they are in the price."""
    for name, (ours, rail, post, units) in _needed(order, strength, workshop):
        if ours:
            yield Message("rails-first", slab=name, rail=rail, post=post, units=units)


def _needed(
    order: Order, strength: Sequence[SlabStrength], workshop: Workshop
) -> Iterator[tuple[Message, FittedRail]]:
    """Yield the rails that each slab needs, with the slab's name."""
    for i, (slab, slab_strength) in enumerate(zip(order.slabs, strength, strict=True)):
        name = slab_name(slab, i, len(order.slabs))
        for rail in _fitted(order, slab, slab_strength.in_place.rails, workshop):
            yield name, rail


def _fitted(
    order: Order, slab: Slab, needed: Sequence[tuple[int, RestKind]], workshop: Workshop
) -> Iterator[FittedRail]:
    """Yield each rail that a slab needs."""
    levels: tuple[RestKind, ...] = ("hardwood", "steel", "post")
    for level in levels:
        units = [unit for unit, kind in needed if kind == level]
        if units:
            across = Listed(tuple(unit_name(slab, unit) for unit in units))
            rails = workshop.rails
            rail = rails.steel.name if level == "steel" else rails.hardwood.name
            ours = unit_price(order, level, workshop) is not None
            yield ours, rail, "yes" if level == "post" else "no", across
