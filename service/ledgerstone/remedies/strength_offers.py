"""What a good maker would offer where a slab would crack, tip or stand on nothing."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from shapely.geometry import Point as PlanePoint
from shapely.geometry import shape as geometry

from ledgerstone import plane
from ledgerstone.checks import Facts, Finding
from ledgerstone.order import Order, Point, Rests, Slab
from ledgerstone.outline import side_names
from ledgerstone.remedies.change import Change, Path
from ledgerstone.remedies.option import Option, resized_cutout, resized_outline
from ledgerstone.shape import Shape

_FRAME_MM = 40.0
_BESIDE_MM = 250.0
_MUCH = 0.3
_BATCHES = 1.2  # the last batch is seldom a full one
_CLOSE = 1.02  # what a finding writes is rounded
_LEG_IN_MM = 60.0
_BEST_LEG_SHARE = 0.22  # near 0.207 of the length from each end, where the moments are least


def smaller_openings(
    finding: Finding, order: Order, facts: Facts, most_share: float
) -> Iterable[Option]:
    """Make the opening beside which it cracks a little smaller."""
    if finding.slab is None:
        return
    i = finding.slab
    for k in _beside(finding, facts.shapes[i]):
        for share in _shares(most_share):
            if not helps(finding, _less_slender(facts.shapes[i], k, share)):
                continue
            cutout = order.slabs[i].cutouts[k]
            changes = tuple(resized_cutout(("slabs", i, "cutouts", k), cutout, 1 - share))
            yield Option("smaller-opening", changes, 2.0 + 50 * share)


def lightens(finding: Finding, scale: float) -> bool:
    """Whether a slab of so much less concrete may settle what it weighs, or takes to pour."""
    if finding.check == "pour-too-slow":
        hours, most = finding.measured["open_hours"], finding.limit["open_hours"]
        return bool(hours * scale <= most * _BATCHES)
    if any(key.endswith("_kg") for key in finding.limit):
        return scale < 1.0
    return True


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


def smaller_slab(
    finding: Finding, order: Order, facts: Facts, most_share: float
) -> Iterable[Option]:
    """Make the slab a little shorter, or a little less deep."""
    if finding.slab is None:
        return
    i, slab = finding.slab, order.slabs[finding.slab]
    longest = facts.shapes[i].length_mm >= facts.shapes[i].width_mm
    for share in _shares(most_share):
        if helps(finding, 1 - share) and lightens(finding, 1 - share):
            scales = [(1 - share, 1.0), (1.0, 1 - share)]
            for scale in scales if longest else scales[::-1]:
                yield Option("smaller-slab", resized_outline(i, slab, scale), 2.0 + 25 * share)


def short_enough(
    finding: Finding, order: Order, facts: Facts, most_share: float
) -> Iterable[Option]:
    """Make the slab just as short as passes, where that is not far from what was asked for."""
    long, most = (numbers.get("length_mm") for numbers in (finding.measured, finding.limit))
    if finding.slab is None or not isinstance(long, float) or not isinstance(most, float):
        return
    share = 1.0 - most / long
    if 0.0 < share <= most_share:
        shape, scale = facts.shapes[finding.slab], most / long
        axes = (scale, 1.0) if shape.length_mm >= shape.width_mm else (1.0, scale)
        changes = resized_outline(finding.slab, order.slabs[finding.slab], axes)
        yield Option("short-enough", changes, 1.0 + 20 * share)


def helps(finding: Finding, scale: float) -> bool:
    """Whether a crack may be avoided by a span, or by one over a thickness, so much smaller.

    Stress goes down by the square at the very most (a strip under its own weight, of one
    thickness); what that does not settle need not be tried.
    """
    stress, limit = finding.measured.get("stress_mpa"), finding.limit.get("stress_mpa")
    if not isinstance(stress, float) or not isinstance(limit, float):
        return True
    return stress * scale**2 <= limit * _CLOSE


def _shares(most_share: float) -> tuple[float, ...]:
    return tuple(share for share in (0.05, 0.1, 0.25, 0.4, 0.6) if share <= most_share + 1e-9)


def other_rests(finding: Finding, order: Order, facts: Facts, _most: float) -> Iterable[Option]:
    """Shorten an overhang, place legs better, add one, or carry the slab on more."""
    if finding.slab is None or order.slabs[finding.slab].rests is None:
        return
    i = finding.slab
    slab, shape = order.slabs[i], facts.shapes[i]
    rests = slab.rests
    base: Path = ("slabs", i, "rests")
    if rests is None:
        return
    yield from _shorter_overhangs(finding, rests, base)
    if rests.kind == "legs":
        yield from _legs(finding, rests, shape, base)
    yield from _more_rests(slab, shape, base)


def _shorter_overhangs(finding: Finding, rests: Rests, base: Path) -> Iterable[Option]:
    for side, overhang in rests.overhang.items():
        for share in (0.9, 0.75, 0.6, 0.5, 0.35, 0.2):
            if not helps(finding, share):
                continue
            new = overhang.like(overhang.mm * share, "down", to_mm=10)
            if 0.0 < new.mm < overhang.mm:
                change = Change((*base, "overhang", side), new)
                yield Option("overhang", (change,), 2.0 + 8 * (1 - share))


def _legs(finding: Finding, rests: Rests, shape: Shape, base: Path) -> Iterable[Option]:
    """Legs at the best places; one more where it is worst; the one under nothing moved."""
    x0, y0, x1, y1 = shape.outline.bounds
    say = rests.at[0].x
    for share in (_BEST_LEG_SHARE, 0.1):
        xs = (x0 + share * (x1 - x0), x1 - share * (x1 - x0))
        deep = min(_LEG_IN_MM + 20, 0.25 * (y1 - y0))
        ys = (y0 + deep, y1 - deep)
        at = tuple(Point(say.like(x, to_mm=5), say.like(y, to_mm=5)) for y in ys for x in xs)
        yield Option("legs", (Change(base, replace(rests, at=at)),), 4.0)
    middle = tuple(
        Point(say.like((x0 + x1) / 2, to_mm=5), say.like(y, to_mm=5)) for y in (ys[0], ys[1])
    )
    if len(rests.at) <= 18:
        more = Change(base, replace(rests, at=(*rests.at, *middle)))
        yield Option("more-legs", (more,), 5.0)
    yield from _moved_leg(finding, rests, shape, base)


def _moved_leg(finding: Finding, rests: Rests, shape: Shape, base: Path) -> Iterable[Option]:
    """The leg that stands under nothing, moved to the nearest concrete with room for its pad."""
    if finding.check != "rest-under-nothing" or "/at/" not in finding.at[0]:
        return
    k = int(finding.at[0].rpartition("/")[2])
    pad = rests.pad.mm if rests.pad is not None else 40.0
    room = plane.buffer(shape.net, -pad / 2 - 5.0)
    leg = rests.at[k]
    if not room.is_empty:
        near = room.boundary.interpolate(room.boundary.project(PlanePoint(leg.x.mm, leg.y.mm)))
        place = Point(leg.x.like(near.x, to_mm=5), leg.y.like(near.y, to_mm=5))
        at = (*rests.at[:k], place, *rests.at[k + 1 :])
        yield Option("move-leg", (Change(base, replace(rests, at=at)),), 1.0)


def _more_rests(slab: Slab, shape: Shape, base: Path) -> Iterable[Option]:
    """A frame under every side, or a bed all over."""
    say = slab.thickness
    sides = side_names(slab.outline)
    frame = Rests("frame", sides=sides, width=say.like(_FRAME_MM))
    if plane.buffer(shape.outline, -_FRAME_MM).is_empty is False:
        yield Option("frame", (Change(base, frame),), 7.0)
    yield Option("bed", (Change(base, Rests("full")),), 12.0)
