"""Options where a slab would crack, tip or have no support."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import replace

from shapely.geometry import Point as PlanePoint
from shapely.geometry import shape as geometry

from ledgerstone import plane
from ledgerstone.checks import Finding
from ledgerstone.json_types import KeyPath
from ledgerstone.order import CORNERS, LShape, Order, Point, Rectangle, Rests, Round, Slab, Unit
from ledgerstone.outline import XY, finished_size_mm, side_names
from ledgerstone.quantities import Length
from ledgerstone.remedies.change import Change
from ledgerstone.remedies.costs import (
    COST,
    NEXT_OF_SEVERAL,
    PER_MM_MOVED,
    PER_SHARE_OF_OPENING,
    PER_SHARE_OF_OVERHANG,
    SECOND_PLACES,
)
from ledgerstone.remedies.laid_out import moved_by
from ledgerstone.remedies.option import ROUND_TO_MM, Option, resized_cutout
from ledgerstone.remedies.policy import has_its_size
from ledgerstone.remedies.rooms import COARSE_MM, step_mm
from ledgerstone.remedies.size_offers import joined
from ledgerstone.remedies.strength_helps import helps
from ledgerstone.shape import Shape
from ledgerstone.stages import Planned, StageContext
from ledgerstone.strength.rests import PANEL_MM

_FRAME_MM = 40.0  # width of a frame's tubes: common practice, no source
_BESIDE_MM = 250.0  # a stress so near to an opening is its doing: our own choice
_MUCH = 0.3  # of the slab's depth: an opening that takes so much weakens it
_LEG_IN_MM = 80.0  # from the ends: common practice, no source
_BEST_LEG_SHARE = 0.22  # near 0.207 of the length from each end, where the moments are least
_LEG_SHARES = (_BEST_LEG_SHARE, 0.1)  # of the length between an end and the legs, the best first
_LEG_IN = 0.25  # of a narrow top's depth: no farther in than that
_RIM_SHARES = (0.7, 0.8)  # of the radius; near 0.7 of it, the moments of a round are least
_MAX_LEGS = 18  # of one slab: more is a frame or a base
_RAILS = ("cabinet", "hardwood", "steel")  # each stiffer than the one before
_SIZES = ("length", "width")
_PAD_MM, _ROOM_MM = 40.0, 5.0  # of a leg; and beside it: common practice, no source
_HANGS_MM = 100.0  # what hangs over further is not bedded
_BED_ON = {
    **dict.fromkeys(("units", "frame"), ("bed", COST["base"])),
    **dict.fromkeys(
        ("legs", "ends", "ledges", "pedestal"), ("bed-for-legs", COST["base-for-legs"])
    ),
}
_LESS_OVER = (0.9, 0.75, 0.6, 0.5, 0.35, 0.2)  # of an overhang, the least change first: likewise
_SHARES = (0.025, 0.05, 0.1, 0.25, 0.4, 0.6)  # of the size, the least change first: our own choice


def smaller_openings(
    finding: Finding, planned: Planned, _context: StageContext, most_share: float
) -> Iterable[Option]:
    """Make the opening beside which it cracks a little smaller, unless it has its own size."""
    order = planned.order
    if finding.slab is None:
        return
    i = finding.slab
    for k in _beside(finding, planned.shapes[i]):
        cutout = order.slabs[i].cutouts[k]
        for share in _SHARES:
            wider = _less_slender(planned.shapes[i], k, share)
            if has_its_size(cutout) or share > most_share + 1e-9 or not helps(finding, wider):
                continue
            changes = tuple(resized_cutout(("slabs", i, "cutouts", k), cutout, 1 - share))
            cost = COST["smaller-opening"] + PER_SHARE_OF_OPENING * share
            yield Option("smaller-opening", changes, cost)


def centred(
    finding: Finding, planned: Planned, _context: StageContext, _most: float
) -> Iterable[Option]:
    """Move the opening beside which it cracks to where the strips in front and behind are alike."""
    order = planned.order
    if finding.slab is None:
        return
    i, shape = finding.slab, planned.shapes[finding.slab]
    for k in _beside(finding, shape):
        cutout, polygon = order.slabs[i].cutouts[k], shape.openings[k].polygon
        x0, y0, x1, y1 = shape.outline.bounds
        a0, b0, a1, b1 = polygon.bounds
        by = (y0 + y1 - b0 - b1) / 2 if x1 - x0 >= y1 - y0 else (x0 + x1 - a0 - a1) / 2
        axis = "y" if x1 - x0 >= y1 - y0 else "x"
        if cutout.centre is None or cutout.open_to is not None:
            continue
        old: Length = getattr(cutout.centre, axis)
        step = step_mm(old, COARSE_MM)
        by = math.copysign(step * (abs(by) // step), by)
        if by:
            path = ("slabs", i, "cutouts", k, "centre", axis)
            place = moved_by(old, by)
            yield Option("move", (Change(path, place),), COST["move"] + PER_MM_MOVED * abs(by))


def _less_slender(shape: Shape, k: int, share: float) -> float:
    """How much less slender the strips beside an opening become when it is made smaller."""
    opening = shape.openings[k]
    wider = share * opening.longer_mm / 2
    widths = [s.width_mm for s in shape.strips if k in (s.opening, s.faces) and s.width_mm > 1.0]
    narrowest = min(widths, default=opening.longer_mm)
    return min(1.0 - share, narrowest / (narrowest + wider))


def _beside(finding: Finding, shape: Shape) -> Iterable[int]:
    """The opening nearest to where a slab cracks, where it is near and takes much of the slab."""
    if finding.where_mm is None:
        return
    spot = geometry(dict(finding.where_mm))
    near = [
        (opening.polygon.distance(spot), opening.index)
        for opening in shape.openings
        if not opening.polygon.is_empty
    ]
    distance, index = min(near, default=(float("inf"), -1))
    across = min(shape.length_mm, shape.width_mm)
    if distance <= _BESIDE_MM and shape.openings[index].longer_mm >= _MUCH * across:
        yield index


def other_rests(
    finding: Finding, planned: Planned, _context: StageContext, _most: float
) -> Iterable[Option]:
    """Shorten an overhang, place legs better, add one, or carry the slab on more."""
    order = planned.order
    if finding.slab is None:
        return
    slab, shape = order.slabs[finding.slab], planned.shapes[finding.slab]
    rests, base = slab.rests, ("slabs", finding.slab, "rests")
    if rests is None:
        return
    yield from _shorter_overhangs(finding, slab, base)
    if rests.kind == "legs":
        yield from _legs(finding, slab, shape, base)
    if rests.kind == "units":
        yield from _end_panels(rests, base)
        yield from _stiffer_rails(rests, base)
    yield from _more_rests(finding.slab, order, shape)


def _shorter_overhangs(finding: Finding, slab: Slab, base: KeyPath) -> Iterator[Option]:
    """Overhangs that a slab of its own size may have less of: its units then come further out."""
    for side, overhang in slab.rests.overhang.items() if slab.rests is not None else ():
        for share in _LESS_OVER:
            if slab.size_from == "over-units" or not helps(finding, share):
                continue
            new = overhang.like(overhang.mm * share, "down", to_mm=10)
            if 0.0 < new.mm < overhang.mm:
                change = Change((*base, "overhang", side), new)
                cost = COST["overhang"] + PER_SHARE_OF_OVERHANG * (1 - share)
                yield Option("overhang", (change,), cost)


def _legs(finding: Finding, slab: Slab, shape: Shape, base: KeyPath) -> Iterator[Option]:
    """The leg under nothing moved; all of them to the middle, or to the best places; two more."""
    rests = slab.rests
    if rests is None:
        return
    yield from _moved_leg(finding, rests, shape, base)
    for k, (cost, places) in enumerate(_places(slab, rests, shape)):
        say = rests.at[0]
        at = tuple(
            Point(say.x.like(x, to_mm=ROUND_TO_MM), say.y.like(y, to_mm=ROUND_TO_MM))
            for x, y in places
        )
        if at != rests.at:
            yield Option(f"legs-{k}", (Change((*base, "at"), at),), cost)
    if len(rests.at) <= _MAX_LEGS and not isinstance(slab.outline, Round):
        x0, _, x1, _ = shape.outline.bounds
        ys = sorted(leg.y.mm for leg in rests.at)
        x = rests.at[0].x.like((x0 + x1) / 2, to_mm=ROUND_TO_MM)
        more = tuple(Point(x, rests.at[0].y.like(y, to_mm=ROUND_TO_MM)) for y in (ys[0], ys[-1]))
        if not set(more) & set(rests.at):
            at = (*rests.at, *more)
            yield Option("more-legs", (Change((*base, "at"), at),), COST["more-legs"])


def _places(slab: Slab, rests: Rests, shape: Shape) -> Iterator[tuple[float, list[XY]]]:
    """Places for the same legs: as they stand, about the middle; then the best ones."""
    legs = [(leg.x.mm, leg.y.mm) for leg in rests.at]
    count = len(legs)
    middle = (sum(x for x, _ in legs) / count, sum(y for _, y in legs) / count)
    x0, y0, x1, y1 = shape.outline.bounds
    centre = (shape.outline.centroid.x, shape.outline.centroid.y)
    by = (centre[0] - middle[0], centre[1] - middle[1])
    if max(abs(by[0]), abs(by[1])) > ROUND_TO_MM / 2:
        yield COST["legs-to-the-middle"], [(x + by[0], y + by[1]) for x, y in legs]
    if isinstance(slab.outline, Round):
        for k, share in enumerate(_RIM_SHARES):
            radius = share * shape.length_mm / 2
            angles = [math.atan2(y - middle[1], x - middle[0]) for x, y in legs]
            yield (
                COST["legs-on-a-ring"] + k * SECOND_PLACES,
                [
                    (centre[0] + radius * math.cos(a), centre[1] + radius * math.sin(a))
                    for a in angles
                ],
            )
    elif count == len(CORNERS):
        deep = min(_LEG_IN_MM, _LEG_IN * (y1 - y0))
        for k, share in enumerate(_LEG_SHARES):
            xs = (x0 + share * (x1 - x0), x1 - share * (x1 - x0))
            corners = [(x, y) for y in (y0 + deep, y1 - deep) for x in xs]
            order = [min(corners, key=lambda c: math.dist(c, leg)) for leg in legs]
            best = order if len(set(order)) == count else corners
            yield COST["legs-at-the-best"] + k * SECOND_PLACES, best


def _stiffer_rails(rests: Rests, base: KeyPath) -> Iterator[Option]:
    """Stiffer rails across the units than the order's, the next stiffer first.

    Where the order gives none, those that suffice are a condition already.
    """
    stiffer = _RAILS[_RAILS.index(rests.rails) + 1 :] if rests.rails is not None else ()
    for k, rail in enumerate(stiffer):
        yield Option(
            "rails", (Change((*base, "rails"), rail),), COST["rails"] + NEXT_OF_SEVERAL * k
        )


def _end_panels(rests: Rests, base: KeyPath) -> Iterator[Option]:
    """A side panel under each end at which a gap stands: nothing else carries it there."""
    units = list(rests.units)
    for at in (0, -1):
        gap = units[at]
        if gap.use == "gap" and gap.width.mm > 2 * PANEL_MM:
            panel = Unit(gap.width.like(PANEL_MM))
            units[at] = replace(gap, width=gap.width.in_unit(gap.width.mm - panel.width.mm))
            units = [panel, *units] if at == 0 else [*units, panel]
    if len(units) > len(rests.units):
        yield Option("end-panels", (Change((*base, "units"), tuple(units)),), COST["end-panels"])


def _moved_leg(finding: Finding, rests: Rests, shape: Shape, base: KeyPath) -> Iterator[Option]:
    """Return a leg under no concrete, moved to the nearest concrete with room for its pad."""
    if finding.check != "rest-under-nothing" or "/at/" not in finding.at[0]:
        return
    k = int(finding.at[0].rpartition("/")[2])
    pad = rests.pad.mm if rests.pad is not None else _PAD_MM
    room = plane.buffer(shape.net, -pad / 2 - _ROOM_MM)
    leg = rests.at[k]
    if not room.is_empty:
        near = room.boundary.interpolate(room.boundary.project(PlanePoint(leg.x.mm, leg.y.mm)))
        at = (*rests.at[:k], _moved_towards(leg, (near.x, near.y)), *rests.at[k + 1 :])
        yield Option("move-leg", (Change((*base, "at"), at),), COST["move-leg"])


def _moved_towards(leg: Point, place: XY) -> Point:
    """The place nearest to another that a leg gets to in round steps."""
    steps = (
        (old, step_mm(old, COARSE_MM), to) for old, to in zip((leg.x, leg.y), place, strict=True)
    )
    x, y = (moved_by(old, step * round((to - old.mm) / step)) for old, step, to in steps)
    return Point(x, y)


def _more_rests(i: int, order: Order, shape: Shape) -> Iterator[Option]:
    """A frame under every side, or a bed all over on a base that does not bend.

    The pieces of one slab are bedded alike.
    """
    slab, base = order.slabs[i], ("slabs", i, "rests")
    rests, say = slab.rests, slab.thickness
    if rests is None:
        return
    frame = Rests("frame", sides=side_names(slab.outline), width=say.like(_FRAME_MM))
    on_units, sized = rests.kind == "units", slab.size_from == "over-units" and rests.overhang
    if not plane.buffer(shape.outline, -_FRAME_MM).is_empty and frame != rests and not sized:
        yield Option("bed-instead" if on_units else "frame", (Change(base, frame),), COST["frame"])
    hangs = any(over.mm > _HANGS_MM for over in rests.overhang.values())
    effect, cost = _BED_ON.get(rests.kind, ("bed-instead", COST["base"]))
    bed = [
        change
        for k in joined(order, i)
        for own in [order.slabs[k].rests]
        if own is not None and own.kind == rests.kind
        for change in _bedded(k, order.slabs[k], own)
    ]
    yield Option("bed-instead" if hangs else effect, tuple(bed), cost)


def _bedded(k: int, slab: Slab, rests: Rests) -> Iterator[Change]:
    """Bed a slab all over; one sized by its units then has its size in the order."""
    yield Change(("slabs", k, "rests"), Rests("full", fixed=rests.fixed))
    outline = slab.outline
    if slab.size_from != "over-units" or not isinstance(outline, Rectangle | LShape):
        return
    yield Change(("slabs", k, "size_from"), "finished")
    as_ordered = (outline.length, outline.width)
    for name, old, now_mm in zip(_SIZES, as_ordered, finished_size_mm(slab, 0.0), strict=True):
        if now_mm != old.mm:
            yield Change(("slabs", k, "outline", name), moved_by(old, now_mm - old.mm))
