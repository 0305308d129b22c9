"""Openings placed again on a slab, as changes: each over its own unit, or moved with it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from ledgerstone.json_types import KeyPath
from ledgerstone.order import Cutout, Order, Point, Slab, Unit
from ledgerstone.quantities import Length
from ledgerstone.remedies.change import Change, Changes, changed
from ledgerstone.remedies.costs import COST, PER_CHANGE, PER_MM_MOVED, PER_SHARE
from ledgerstone.remedies.option import Option, resized_cutout
from ledgerstone.remedies.placeable import MAX_PLACED_TOGETHER, Obstacle
from ledgerstone.remedies.rooms import COARSE_MM, FINE_MM, Layout
from ledgerstone.stages import Planned, StageContext
from ledgerstone.stages.keys import SlabKey
from ledgerstone.stages.placement import Freedom, JointKey, LayoutKey, Placement

_EXACT_PLACES = 4  # decimals of a millimetre: every sixteenth of an inch is exact


def placed(
    effect: str,
    i: int,
    planned: Planned,
    context: StageContext,
    freedom: Freedom,
    *,
    keeps_off: Obstacle | None = None,
) -> Iterator[Option]:
    """One option from a placing, in steps as coarse as its room allows.

    What has a unit of its own keeps over it; else the two move together, the unit changing places
    with its neighbour; else it goes where there is room.
    """
    order = planned.order
    slab, shape = order.slabs[i], planned.shapes[i]
    fixed = frozenset(k for k, cutout in enumerate(slab.cutouts) if _is_halved(order, i, cutout))
    freedom = replace(freedom, moves=freedom.moves - fixed, shrinks=freedom.shrinks - fixed)
    if len(freedom.moves) > MAX_PLACED_TOGETHER:
        return
    layout = Layout(slab, shape, planned.workshop, freedom, COARSE_MM, keeps_off)
    found = _found(layout, context)
    if found is None and layout.kept_units():
        together = _with_units(order, i, layout, context) if keeps_off is None else None
        if together is not None:
            yield replace(together, effect=effect)
            return
        found = _found(replace(layout, freedom=replace(freedom, at_home=False)), context)
    if found is not None:
        changes, cost = _changes(order, i, found)
        if changes or keeps_off is not None:
            yield Option(effect, changes, cost + PER_CHANGE * len(changes))


def _found(layout: Layout, context: StageContext) -> Placement | None:
    """Where the openings of a layout have room, in coarse steps, else in fine ones."""
    for to_mm in (COARSE_MM, FINE_MM):
        each = replace(layout, to_mm=to_mm)
        found = context.cache.results.layouts.get_or_compute(_key_of(each), each.placed)
        if found is not None:
            return found
    return None


def _key_of(layout: Layout) -> LayoutKey:
    joint = None if layout.keeps_off is None else _joint_key_of(layout.keeps_off)
    return LayoutKey(SlabKey.of(layout.slab), layout.freedom, layout.to_mm, joint)


def _joint_key_of(joint: Obstacle) -> JointKey:
    points = tuple((float(x), float(y)) for x, y in joint.points)
    return JointKey(points, joint.directions, joint.is_edge, joint.clear_mm)


def _with_units(order: Order, i: int, layout: Layout, context: StageContext) -> Option | None:
    """The least movement after one unit with a given use has changed places."""
    options = []
    for units in _exchanged(layout.slab, layout.kept_units()):
        own = (Change(("slabs", i, "rests", "units"), units),)
        after = changed(order, own)
        found = _found(replace(layout, slab=after.slabs[i]), context)
        if found is not None:
            moves, cost = _changes(after, i, found)
            options.append(Option("move", (*own, *moves), COST["units-changed"] + cost))
    return min(options, key=lambda option: option.cost, default=None)


def _exchanged(slab: Slab, kept_units: frozenset[int]) -> Iterator[tuple[Unit, ...]]:
    """Units after one with a given use has changed places with a neighbour."""
    units = slab.rests.units if slab.rests is not None else ()
    for k in range(len(units) - 1):
        if {k, k + 1} & kept_units and "gap" not in (units[k].use, units[k + 1].use):
            yield (*units[:k], units[k + 1], units[k], *units[k + 2 :])


def _is_halved(order: Order, i: int, cutout: Cutout) -> bool:
    """Return whether a joint runs through an opening, which then is not moved."""
    ends = [end for join in order.joins for end in (join.one, join.other)]
    return cutout.open_to in {end.side for end in ends if end.slab == i}


def _changes(order: Order, i: int, found: Placement) -> tuple[Changes, float]:
    """Write a placing as changes in the customer's units, and weigh it."""
    slab, changes, cost = order.slabs[i], list[Change](), 0.0
    for k in sorted({*found.moved_mm, *found.shrunk}):
        base: KeyPath = ("slabs", i, "cutouts", k)
        cutout, by = slab.cutouts[k], found.moved_mm.get(k, (0.0, 0.0))
        share = found.shrunk.get(k, 0.0)
        if share > 0.0:
            changes += resized_cutout(base, cutout, 1.0 - share, FINE_MM)
        changes += _moved(base, changed(order, changes).slabs[i].cutouts[k], by)
        cost += PER_MM_MOVED * (abs(by[0]) + abs(by[1])) + PER_SHARE * share
    for name, grown in zip(("length", "width"), found.grown_mm, strict=True):
        if grown > 0.0:
            old: Length = getattr(slab.outline, name)
            changes.append(Change(("slabs", i, "outline", name), moved_by(old, grown)))
            cost += PER_SHARE * grown / old.mm
    return tuple(changes), cost


def _moved(base: KeyPath, cutout: Cutout, by_mm: tuple[float, float]) -> Iterator[Change]:
    if cutout.points and by_mm != (0.0, 0.0):
        points = tuple(
            Point(moved_by(p.x, by_mm[0]), moved_by(p.y, by_mm[1])) for p in cutout.points
        )
        yield Change((*base, "points"), points)
    elif cutout.centre is not None:
        for axis, by in zip(("x", "y"), by_mm, strict=True):
            if by:
                yield Change((*base, "centre", axis), moved_by(getattr(cutout.centre, axis), by))


def moved_by(old: Length, by_mm: float) -> Length:
    """Return a length that is longer by a step, exact in its own unit."""
    by = old.in_unit(round(by_mm, _EXACT_PLACES))
    return replace(by, exact_mm=old.exact_mm + by.exact_mm)
