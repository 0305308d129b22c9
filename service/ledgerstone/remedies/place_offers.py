"""Options where a plan cannot be made: openings placed again, all together."""

from __future__ import annotations

from collections.abc import Iterable

from shapely.geometry import shape as geometry

from ledgerstone.checks import Finding
from ledgerstone.cutouts import cutout_size_mm
from ledgerstone.goes_in import is_bowl
from ledgerstone.json_types import KeyPath
from ledgerstone.order import Cutout, LShape, Slab
from ledgerstone.remedies.belonging import companions
from ledgerstone.remedies.change import Change, changed
from ledgerstone.remedies.costs import COST
from ledgerstone.remedies.laid_out import placed
from ledgerstone.remedies.option import Option, named
from ledgerstone.remedies.placeable import MAX_PLACED_TOGETHER
from ledgerstone.remedies.policy import NEAREST_WITHIN, SIZES_WITHIN, has_its_size, may_grow
from ledgerstone.shape import Shape
from ledgerstone.stages import Planned, StageContext, plan
from ledgerstone.stages.placement import Freedom

_ALIKE_MM = 5.0  # turned a quarter, it is as it was
_QUARTER, _HALF = 90.0, 180.0
MAX_AT_ONCE = 2  # openings made smaller together: more is another drawing
_ROOMIER = (3.0, 2.0, 1.5)  # times the room that is needed, the roomiest first: our own choice
_FEWER = (1, 2, 4, 8, 12, 16)  # openings left out, the fewest first, so that few are tried
_BESIDE_MM = 100.0  # a tap so near belongs to the basin: common practice, no source


def moved(
    finding: Finding, planned: Planned, context: StageContext, _most: float
) -> Iterable[Option]:
    """Move the openings that a finding names, with what belongs to them; else all."""
    order = planned.order
    i = finding.slab
    if i is None or not order.slabs[i].cutouts:
        return
    named_openings = _with_belongings(
        order.slabs[i], planned.shapes[i], map(int, named(finding, "cutouts"))
    )
    every = frozenset(range(len(order.slabs[i].cutouts)))
    first = list(placed("move", i, planned, context, Freedom(moves=named_openings or every)))
    yield from first
    if (
        not first
        and named_openings
        and named_openings != every
        and len(every) <= MAX_PLACED_TOGETHER
    ):
        yield from placed("move-all", i, planned, context, Freedom(moves=every))


def placed_anew(
    finding: Finding, planned: Planned, context: StageContext, _most: float
) -> Iterable[Option]:
    """Place all openings of a slab again; of many, those that a finding names."""
    order = planned.order
    i = finding.slab
    if i is None or not order.slabs[i].cutouts:
        return
    every = frozenset(range(len(order.slabs[i].cutouts)))
    if len(every) > MAX_PLACED_TOGETHER:
        named_openings = map(int, named(finding, "cutouts"))
        every = _with_belongings(order.slabs[i], planned.shapes[i], named_openings)
    yield from placed("move-all", i, planned, context, Freedom(moves=every))


def roomier(
    finding: Finding, planned: Planned, context: StageContext, _most: float
) -> Iterable[Option]:
    """Place all openings again with wider strips about a tap, where a slab cracks beside one."""
    i, order = finding.slab, planned.order
    if i is None or finding.where_mm is None:
        return
    shape, spot = planned.shapes[i], geometry(dict(finding.where_mm))
    taps = companions(order.slabs[i], shape)
    if all(shape.openings[k].polygon.distance(spot) > _BESIDE_MM for k in taps):
        return
    every = frozenset(range(len(order.slabs[i].cutouts)))
    for times in _ROOMIER:
        found = list(placed("move-apart", i, planned, context, Freedom(every, times=times)))
        if found:
            yield from (option for option in found if option.changes)
            return


def resized(
    finding: Finding, planned: Planned, context: StageContext, most: float
) -> Iterable[Option]:
    """Make openings smaller that have no size of their own, or the slab larger, or both.

    Where the slab can't be larger, the nearest that can be made has bowls of another size.
    """
    order = planned.order
    i = finding.slab
    if i is None:
        return
    slab = order.slabs[i]
    every = frozenset(range(len(slab.cutouts)))
    free = frozenset(k for k in every if not has_its_size(slab.cutouts[k]))
    grows, near = may_grow(slab), SIZES_WITHIN
    if free:
        yield from placed("shrink", i, planned, context, Freedom(every, free, most_share=near))
    if any(grows):
        yield from placed("grow", i, planned, context, Freedom(every, grows=grows, most_share=near))
        yield from placed(
            "grow", i, planned, context, Freedom(every, free, grows=grows, most_share=near)
        )
    bowls = frozenset(k for k in every if is_bowl(slab.cutouts[k]))
    shrinks = free if any(grows) else free | bowls
    if most > SIZES_WITHIN and (shrinks or any(grows)):
        yield from placed(
            "far-size",
            i,
            planned,
            context,
            Freedom(every, shrinks, grows=grows, most_share=NEAREST_WITHIN),
        )


def _with_belongings(slab: Slab, shape: Shape, named_openings: Iterable[int]) -> frozenset[int]:
    """Openings, the bowls that they belong to, and the taps that belong to those."""
    follows, named_ones = companions(slab, shape), set(named_openings)
    heads = {follows.get(k, k) for k in named_ones}
    return frozenset(named_ones | heads | {k for k, bowl in follows.items() if bowl in heads})


def opened(
    finding: Finding, planned: Planned, _context: StageContext, _most: float
) -> Iterable[Option]:
    """An opening that reaches past one side may be meant to be open to it."""
    order = planned.order
    if finding.check != "cutout-off-slab" or finding.slab is None:
        return
    i, shape = finding.slab, planned.shapes[finding.slab]
    for k in map(int, named(finding, "cutouts")):
        cutout = order.slabs[i].cutouts[k]
        if has_its_size(cutout) and not (is_bowl(cutout) and cutout.kind == "rectangle"):
            continue  # a hob, a tap and a round bowl have a whole rim; a sink may have an apron
        for side in shape.sides:
            crossed = shape.openings[k].polygon.intersects(side.line)
            if crossed and side.name != order.slabs[i].cutouts[k].open_to:
                path = ("slabs", i, "cutouts", k, "open_to")
                yield Option("open-to", (Change(path, side.name),), COST["open-to"])


def turned(
    finding: Finding, planned: Planned, context: StageContext, most: float
) -> Iterable[Option]:
    """Turn an opening a quarter round, and place all: only for the nearest that can be made."""
    order = planned.order
    i, named_openings = finding.slab, [int(k) for k in named(finding, "cutouts")]
    if i is None or most <= SIZES_WITHIN or len(named_openings) > MAX_AT_ONCE:
        return
    for k in named_openings:
        cutout = order.slabs[i].cutouts[k]
        length, width = cutout_size_mm(cutout)
        if cutout.kind not in ("rectangle", "slot") or abs(length - width) < _ALIKE_MM:
            continue
        path = ("slabs", i, "cutouts", k, "turn_degrees")
        turn = Change(path, (cutout.turn_degrees + _QUARTER) % _HALF)
        there = changed(order, (turn,))
        at = plan(there, context)
        every = frozenset(range(len(order.slabs[i].cutouts)))
        move = next(placed("turn", i, at, context, Freedom(moves=every)), None)
        yield Option("turn", (turn, *(move.changes if move is not None else ())), COST["turn"])


def fewer(
    finding: Finding, planned: Planned, context: StageContext, most: float
) -> Iterable[Option]:
    """Leave openings out, the last first, and place the rest: only for the nearest makeable."""
    order = planned.order
    if finding.slab is None or most <= SIZES_WITHIN:
        return
    i, count = finding.slab, len(order.slabs[finding.slab].cutouts)
    for gone in sorted({*_FEWER, count - 1, count}):
        if not 0 < gone <= count:
            continue
        removed = tuple(
            Change(("slabs", i, "cutouts", k), None) for k in range(count - 1, count - 1 - gone, -1)
        )
        left = changed(order, removed)
        at = plan(left, context)
        every = frozenset(range(count - gone))
        rest = next(placed("fewer", i, at, context, Freedom(moves=every)), None) if every else None
        yield Option(
            "fewer", (*removed, *(rest.changes if rest is not None else ())), COST["fewer"] * gone
        )


def rounder(
    finding: Finding, planned: Planned, _context: StageContext, _most: float
) -> Iterable[Option]:
    """Set an inside corner to the smallest radius that the formers make."""
    order = planned.order
    if finding.slab is None:
        return
    i, limit = finding.slab, planned.workshop.shaping.inside_radius_mm
    outline, changes = order.slabs[i].outline, list[Change]()
    for k in map(int, named(finding, "cutouts")):
        changes += _rounded_opening(("slabs", i, "cutouts", k), order.slabs[i].cutouts[k], limit)
    if isinstance(outline, LShape) and f"/slabs/{i}/outline" in finding.at:
        corner = outline.notch.corner
        given = outline.corner_radii.get(corner) or outline.corner_radius or outline.length
        path = ("slabs", i, "outline", "corner_radii", corner)
        changes.append(Change(path, given.like(limit, "up")))
    if changes:
        yield Option("round", tuple(changes), COST["round"])


def _rounded_opening(base: KeyPath, cutout: Cutout, limit_mm: float) -> Iterable[Change]:
    """A larger radius; round ends where an opening is too narrow for it."""
    if cutout.corner_radius is None:
        return
    if cutout.kind == "rectangle" and min(cutout_size_mm(cutout)) < 2 * limit_mm:
        yield Change((*base, "kind"), "slot")
        yield Change((*base, "corner_radius"), None)
    else:
        yield Change((*base, "corner_radius"), cutout.corner_radius.like(limit_mm, "up"))
