"""A slab too large to cast or to carry, made of pieces: where a sensible join lies.

Clear of every opening by 100 mm, and over the side of a unit if it is on units; else at an
L's inside corner; else, last, through the middle of a hob or of a covered sink. Common practice, no
source.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from itertools import pairwise
from operator import itemgetter

import numpy as np

from ledgerstone.checks import Finding
from ledgerstone.checks.units import standing_units
from ledgerstone.goes_in import is_bowl, is_hob
from ledgerstone.order import CORNERS, MAX_SLABS, LShape
from ledgerstone.quantities import MM_PER, Length
from ledgerstone.remedies.costs import COST, UNEVEN
from ledgerstone.remedies.cut_outlines import Axis, Plan, plan_of
from ledgerstone.remedies.cutting import JOINT_GAP_MM, SlabCut
from ledgerstone.remedies.laid_out import placed
from ledgerstone.remedies.option import Option
from ledgerstone.remedies.placeable import Obstacle
from ledgerstone.remedies.policy import NOTHING
from ledgerstone.shape import Shape
from ledgerstone.stages import Planned, StageContext
from ledgerstone.stages.placement import Freedom

IN_TWO = "two-pieces"
CUT_CLEAR_MM = 100.0  # of a join from an opening and an end; common practice, no source
MAX_CUT_OPTIONS = 2  # each is worked out in full
MAX_CUTS_TRIED = 6  # of the places found, the cheapest
_TABLE = "too-big-for-table"
_MID = (0.25, 0.75)  # if neither casting nor carrying limits the length
# Round numbers, the roundest first: in millimetres, and in sixteenths of an inch.
_ROUND_MM = (
    (100.0, 50.0, 10.0, 5.0, 1.0),
    tuple(float(Fraction(part, 16) * MM_PER["in"]) for part in (192, 96, 16, 8, 4, 1)),
)
_OFF_MM, _EVEN_MM = 2.6, 5.0  # an opening's middle, over half of what is round at a corner
_ROUNDER_BY_MM = 30.0  # greatest distance from the best place for the sake of a rounder number


def in_pieces(
    finding: Finding, planned: Planned, context: StageContext, _most: float
) -> Iterable[Option]:
    """Cast a slab in two; a piece that is still too large is then cut again.

    Openings in the way of a joint, or badly placed, are placed again before the cut.
    """
    order = planned.order
    i = finding.slab
    if i is None or len(order.slabs) >= MAX_SLABS:
        return
    slab, shape = order.slabs[i], planned.shapes[i]
    plan = plan_of(slab, planned.workshop.shaping.fitting_gap_mm)
    if plan is None:
        return
    found = [
        (cost, SlabCut(i, axis, at))
        for axis in _axes(finding, plan, planned)
        for cost, at in _places(finding, plan, shape, planned, axis)
    ]
    count = 0
    for cost, cut in _first_of_each(found):
        for option in _cut(count, cost, cut, planned, context):
            yield option
            count += 1
        if count >= MAX_CUT_OPTIONS:
            return
    yield from _through(finding, plan, shape, planned, count)


def _first_of_each(found: list[tuple[float, SlabCut]]) -> Iterator[tuple[float, SlabCut]]:
    """Places by what they cost, each once."""
    seen: set[SlabCut] = set()
    for cost, cut in sorted(found, key=itemgetter(0))[:MAX_CUTS_TRIED]:
        if cut not in seen:
            seen.add(cut)
            yield cost, cut


def _cut(
    k: int, cost: float, cut: SlabCut, planned: Planned, context: StageContext
) -> Iterator[Option]:
    """Return one cut, with the openings placed clear of it by 100 mm or by their rule."""
    order = planned.order
    every = frozenset(range(len(order.slabs[cut.slab].cutouts)))
    if not every:
        yield Option(f"{IN_TWO}-{k}", (), cost, cut)
        return
    for clear_mm, more in ((CUT_CLEAR_MM, 0.0), (None, COST["cut-close"])):
        joint = _joint(cut, clear_mm)
        room = placed("move-all", cut.slab, planned, context, Freedom(moves=every), keeps_off=joint)
        for move in room:
            beside = move.weight if move.changes else NOTHING
            yield Option(f"{IN_TWO}-{k}", move.changes, cost + more, cut, beside)
            return


def _joint(cut: SlabCut, clear_mm: float | None) -> Obstacle:
    """The joint as a place that openings keep clear of."""
    far, at = 1e5, (cut.at_mm, cut.at_mm + JOINT_GAP_MM)
    ring = [(x, y) for y in (-far, far) for x in at]
    directions = ((1.0, 0.0), (-1.0, 0.0))
    if cut.axis == "y":
        ring, directions = [(y, x) for x, y in ring], ((0.0, 1.0), (0.0, -1.0))
    return Obstacle(np.array(ring), directions, clear_mm=clear_mm)


def _through(
    finding: Finding, plan: Plan, shape: Shape, planned: Planned, count: int
) -> Iterator[Option]:
    """Cuts through the middle of a hob or of a covered sink."""
    i = finding.slab
    for axis in _axes(finding, plan, planned) if i is not None else ():
        low, high, best = _range(finding, plan, planned, axis)
        k = 0 if axis == "x" else 1
        for opening in shape.openings:
            cutout, bounds = plan.slab.cutouts[opening.index], opening.polygon.bounds
            covered = cutout.rim == "covered" and is_bowl(cutout)
            if not bounds or cutout.open_to is not None or not (covered or is_hob(cutout)):
                continue
            middle = (bounds[k] + bounds[k + 2] - JOINT_GAP_MM) / 2
            if i is not None and low <= middle <= high:
                at = _round_place(plan, axis, middle, (middle - _OFF_MM, middle + _OFF_MM))
                cut = SlabCut(i, axis, middle if at is None else at, opening.index)
                cost = COST["cut-through-an-opening"] + abs(middle - best) / plan.along(axis)
                yield Option(f"{IN_TWO}-{count + opening.index}", (), cost, cut)


def _axes(finding: Finding, plan: Plan, planned: Planned) -> Iterator[Axis]:
    """Across which axes a cut helps: the one that leaves fewer pieces first."""
    if finding.check != _TABLE:
        length, width = plan.size_mm
        yield "x" if length >= width else "y"
        if isinstance(plan.slab.outline, LShape):
            yield "y" if length >= width else "x"
        return
    counts = {axis: _count(plan, planned, axis) for axis in ("x", "y")}
    least = min(counts.values())
    yield from (axis for axis in ("x", "y") if counts[axis] <= max(least, 2) or _is_l(plan))


def _is_l(plan: Plan) -> bool:
    return len(plan.corners) > len(CORNERS)


def _count(plan: Plan, planned: Planned, axis: Axis) -> int:
    """How many pieces a cut across an axis makes before each fits the table; many if none does."""
    most = _most_mm(plan, planned, axis)
    return (
        math.ceil((plan.along(axis) + JOINT_GAP_MM) / (most + JOINT_GAP_MM)) if most else MAX_SLABS
    )


def _most_mm(plan: Plan, planned: Planned, axis: Axis) -> float:
    """Return the greatest length of a piece as deep as the slab, mm; 0 if it is too deep."""
    table, other = planned.workshop.table, plan.along("y" if axis == "x" else "x")
    sizes = ((table.length_mm, table.width_mm), (table.width_mm, table.length_mm))
    return max((most for most, deep in sizes if other <= deep), default=0.0)


def _places(
    finding: Finding, plan: Plan, shape: Shape, planned: Planned, axis: Axis
) -> Iterator[tuple[float, float]]:
    """Yield possible positions of a join along an axis, each with its cost."""
    low, high, best = _range(finding, plan, planned, axis)
    least = _least_mm(finding, plan, planned, axis, low)
    whole, on_units = plan.along(axis), list(_bays(plan, shape)) if axis == "x" else []
    for at in _panels(plan, on_units):
        if least <= at <= high:
            yield COST["cut-over-a-side"] + _away(at, best, low, whole), at
    for at in _inner_corners(plan, axis):
        if CUT_CLEAR_MM <= at <= whole - CUT_CLEAR_MM:
            uneven = UNEVEN * (_round_place(plan, axis, at, (at, at), least_mm=_EVEN_MM) is None)
            yield COST["cut-at-a-corner"] + uneven + abs(at - best) / whole, at
    cost = COST["cut-over-a-unit" if on_units else "cut-clear"]
    bays = on_units or [(least, high)]
    taken = list(_taken(shape, axis))
    for bay in bays:
        a, b = max(bay[0], least), min(bay[1], high)
        for first, last in ((a, b), *_gaps(a, b, taken)):
            good = min(max(best, first), last)
            place = _round_place(plan, axis, good, (first, last)) if last >= first else None
            if place is not None:
                yield cost + _away(place, best, low, whole), place


def _away(at: float, best: float, low: float, whole: float) -> float:
    """What a place costs for being away from the best one, or for making one more piece."""
    return abs(at - best) / whole + (COST["one-piece-more"] if at < low else 0.0)


def _least_mm(finding: Finding, plan: Plan, planned: Planned, axis: Axis, low: float) -> float:
    """Return the least end of the first piece, if there may be one piece more than the fewest."""
    most = _most_mm(plan, planned, axis)
    if finding.check != _TABLE or not most or _is_l(plan):
        return low
    return max(low - most - JOINT_GAP_MM, CUT_CLEAR_MM)


def _bays(plan: Plan, shape: Shape) -> Iterator[tuple[float, float]]:
    """Return the extents of the units beneath a slab: a joint over a gap is not carried."""
    rests = plan.slab.rests
    if rests is not None and rests.kind == "units":
        for unit in standing_units(rests, shape):
            yield unit.start_mm, unit.end_mm


def _range(
    finding: Finding, plan: Plan, planned: Planned, axis: Axis
) -> tuple[float, float, float]:
    """Return the range in which the first piece may end, and the preferred end."""
    whole = plan.along(axis)
    count, most = _count(plan, planned, axis), _most_mm(plan, planned, axis)
    if finding.check != _TABLE or not most or _is_l(plan):
        return _MID[0] * whole, _MID[1] * whole, whole / 2
    count = max(count, 2)
    least = whole - (count - 1) * (most + JOINT_GAP_MM)
    return max(least, CUT_CLEAR_MM), min(most, whole - CUT_CLEAR_MM), whole / count


def _taken(shape: Shape, axis: Axis) -> Iterator[tuple[float, float]]:
    """Return the spans of openings along an axis with their clearance, and of reliefs."""
    k = 0 if axis == "x" else 1
    for opening in shape.openings:
        if not opening.polygon.is_empty:
            low, high = opening.polygon.bounds[k], opening.polygon.bounds[k + 2]
            yield low - CUT_CLEAR_MM, high + CUT_CLEAR_MM
    for relief in shape.reliefs:
        yield relief.bounds[k], relief.bounds[k + 2]


def _gaps(
    low: float, high: float, taken: Sequence[tuple[float, float]]
) -> Iterator[tuple[float, float]]:
    """What of a range is clear of everything in it; the joint lies between its end and the next."""
    at = low
    for first, last in sorted(taken):
        if last <= at:
            continue
        if first - JOINT_GAP_MM > high:
            break
        yield at, first - JOINT_GAP_MM
        at = max(at, last)
    yield at, high


def _panels(plan: Plan, bays: Sequence[tuple[float, float]]) -> Iterator[float]:
    """Where one unit ends and the next begins: the joint lies there, the first piece is round."""
    for bay, next_bay in pairwise(bays):
        if next_bay[0] - bay[1] < JOINT_GAP_MM:
            between = bay[1] - JOINT_GAP_MM / 2
            at = _round_place(plan, "x", between, (bay[1] - JOINT_GAP_MM, bay[1]))
            yield between if at is None else at


def _inner_corners(plan: Plan, axis: Axis) -> Iterator[float]:
    """Where a cut from an inside corner leaves the wider piece whole."""
    k, n = (0 if axis == "x" else 1), len(plan.corners)
    for i, corner in enumerate(plan.corners):
        before, after = plan.corners[i - 1], plan.corners[(i + 1) % n]
        turn = (corner[0] - before[0]) * (after[1] - corner[1]) - (corner[1] - before[1]) * (
            after[0] - corner[0]
        )
        if turn < 0.0:
            along = max(before, after, key=lambda p: abs(p[k] - corner[k]))
            yield corner[k] if along[k] > corner[k] else corner[k] - JOINT_GAP_MM


def _round_place(
    plan: Plan, axis: Axis, best: float, span: tuple[float, float], least_mm: float = 0.0
) -> float | None:
    """The place nearest to the best at which the first piece has a round size in its unit.

    Parameters
    ----------
    least_mm
        No finer grid than this counts as round.
    """
    name, side = ("length", "left") if axis == "x" else ("width", "front")
    given: Length = getattr(plan.slab.outline, name, plan.slab.thickness)
    more = plan.added_mm.get(side, 0.0)
    near: float | None = None
    for grid in _ROUND_MM[given.unit in ("in", "ft")]:
        if grid < least_mm:
            continue
        for steps in (math.floor((best + more) / grid), math.ceil((best + more) / grid)):
            at = steps * grid - more
            if span[0] - 1e-6 <= at <= span[1] + 1e-6 and at > 0.0:
                near = at if near is None or abs(at - best) < abs(near - best) else near
        if near is not None and (abs(near - best) <= max(_ROUNDER_BY_MM, grid / 2)):
            return near
    return near
