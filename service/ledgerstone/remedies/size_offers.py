"""Options where a slab is too large, too small, too thick or too thin."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from ledgerstone.checks import Finding
from ledgerstone.order import LShape, Order, Point, Round
from ledgerstone.quantities import Length
from ledgerstone.remedies.change import Change, Changes
from ledgerstone.remedies.costs import COST, MM_OF_DEPTH, PER_SHARE
from ledgerstone.remedies.option import ROUND_TO_MM, Option, resized_outline
from ledgerstone.remedies.policy import SIZES_WITHIN, has_its_room
from ledgerstone.remedies.strength_helps import helps, lightens
from ledgerstone.stages import Planned, StageContext
from ledgerstone.workshop.records import Shaping

SAME_THICKNESS_MM = 2.0  # within the cast tolerance
_WANTS_THICKER = frozenset(
    (
        "aggregate-too-large",
        "relief-too-deep",
        "too-thin-for-drip",
        "edge-too-deep",
        "edge-too-thin-for-finish",
        "steel-rusts",
    )
)
_ARMS_OVER = (1.0, 2.0, 3.0)  # thicknesses that an L's arms get wider than; our own choice
_TOO = ("too-thin", "too-thick")
_SHARES = (0.05, 0.1, 0.25, 0.4, 0.6)  # of the size, the least change first: our own choice


def _resized(i: int, order: Order, scale: tuple[float, float], most: float) -> Iterator[Option]:
    """A slab of another size, if it may have one; its legs keep their places in it."""
    slab, share = order.slabs[i], max(abs(f - 1.0) for f in scale)
    near = share <= SIZES_WITHIN + 1e-9
    if (near and not has_its_room(slab)) or most > SIZES_WITHIN:
        changes = resized_outline(i, slab, scale)
        if changes:
            effect = "smaller-slab" if near and not has_its_room(slab) else "far-size"
            legs = _legs_with(i, order, scale)
            yield Option(effect, (*changes, *legs), COST["size"] + PER_SHARE * share)


def _legs_with(i: int, order: Order, scale: tuple[float, float]) -> Changes:
    rests = order.slabs[i].rests
    if rests is None or rests.kind != "legs":
        return ()
    at = tuple(
        Point(
            leg.x.like(leg.x.mm * scale[0], to_mm=ROUND_TO_MM),
            leg.y.like(leg.y.mm * scale[1], to_mm=ROUND_TO_MM),
        )
        for leg in rests.at
    )
    return (Change(("slabs", i, "rests", "at"), at),)


def to_the_table(
    finding: Finding, planned: Planned, _context: StageContext, most: float
) -> Iterable[Option]:
    """Bring a slab down to the casting table; either way round."""
    order = planned.order
    if finding.slab is None:
        return
    i, table = finding.slab, planned.workshop.table
    width, depth = _box_mm(planned, i)
    for most_x, most_y in ((table.length_mm, table.width_mm), (table.width_mm, table.length_mm)):
        fx, fy = min(1.0, most_x / width), min(1.0, most_y / depth)
        if isinstance(order.slabs[i].outline, Round):
            fx = fy = min(fx, fy)
        yield from _resized(i, order, (fx, fy), most)


def _box_mm(planned: Planned, i: int) -> tuple[float, float]:
    """How large the box round a slab is; never nothing."""
    x0, y0, x1, y1 = planned.shapes[i].outline.bounds
    return max(x1 - x0, ROUND_TO_MM), max(y1 - y0, ROUND_TO_MM)


def wider_outline(
    finding: Finding, planned: Planned, _context: StageContext, most: float
) -> Iterable[Option]:
    """Bring a sliver up to the narrowest that is cast."""
    order = planned.order
    if finding.slab is None:
        return
    i, least = finding.slab, planned.workshop.shaping.smallest_side_mm
    width, depth = _box_mm(planned, i)
    fx, fy = max(1.0, least / width), max(1.0, least / depth)
    if isinstance(order.slabs[i].outline, Round):
        fx = fy = max(fx, fy)
    yield from _resized(i, order, (fx, fy), most)


def smaller_slab(
    finding: Finding, planned: Planned, _context: StageContext, most: float
) -> Iterable[Option]:
    """Make the slab a little shorter, or a little less deep."""
    order = planned.order
    if finding.slab is None:
        return
    i = finding.slab
    longest = planned.shapes[i].length_mm >= planned.shapes[i].width_mm
    for share in _SHARES:
        if share <= most + 1e-9 and helps(finding, 1 - share) and lightens(finding, 1 - share):
            scales = [(1 - share, 1.0), (1.0, 1 - share)]
            for scale in scales if longest else scales[::-1]:
                yield from _resized(i, order, scale, most)


def short_enough(
    finding: Finding, planned: Planned, _context: StageContext, most: float
) -> Iterable[Option]:
    """Yield the longest slab that passes, if it is close to the ordered length."""
    order = planned.order
    long, limit = (numbers.get("length_mm") for numbers in (finding.measured, finding.limit))
    if finding.slab is None or not isinstance(long, float) or not isinstance(limit, float):
        return
    share = 1.0 - limit / long
    if 0.0 < share <= most:
        shape, scale = planned.shapes[finding.slab], limit / long
        axes = (scale, 1.0) if shape.length_mm >= shape.width_mm else (1.0, scale)
        yield from _resized(finding.slab, order, axes, most)


def slimmer_notch(
    finding: Finding, planned: Planned, _context: StageContext, most: float
) -> Iterable[Option]:
    """Make an L's notch smaller, until its arms are wider than they are thick."""
    order = planned.order
    if finding.slab is None:
        return
    slab = order.slabs[finding.slab]
    if not isinstance(slab.outline, LShape):
        return
    base = ("slabs", finding.slab, "outline", "notch")
    for times in _ARMS_OVER:
        changes, shares = [], [0.0]
        for name in ("length", "width"):
            whole, notch = getattr(slab.outline, name), getattr(slab.outline.notch, name)
            new = notch.like(whole.mm - times * slab.thickness.mm, "down", to_mm=ROUND_TO_MM)
            if 0.0 < new.mm < notch.mm:
                changes.append(Change((*base, name), new))
                shares.append(1.0 - new.mm / notch.mm)
        near = max(shares) <= SIZES_WITHIN and not has_its_room(slab)
        if changes and (near or most > SIZES_WITHIN):
            effect = "smaller-slab" if near else "far-size"
            yield Option(effect, tuple(changes), COST["size"] + PER_SHARE * sum(shares))


def other_thickness(
    finding: Finding, planned: Planned, _context: StageContext, _most: float
) -> Iterable[Option]:
    """Try the stocked thicknesses, the nearest first; pieces that are joined keep to one."""
    order = planned.order
    if finding.slab is None:
        return
    old, shaping = order.slabs[finding.slab].thickness, planned.workshop.shaping
    alike_mm = 0.0 if finding.check in _TOO else SAME_THICKNESS_MM
    for usual in shaping.thicknesses_mm:
        new = stocked_thickness(old, usual, shaping)
        made = shaping.thinnest_mm <= new.mm <= shaping.thickest_mm
        useful = helps(finding, old.mm / new.mm) and lightens(finding, new.mm / old.mm)
        useful = useful and (new.mm > old.mm or finding.check not in _WANTS_THICKER)
        if made and useful and abs(new.mm - old.mm) > alike_mm:
            yield Option(
                "thicker" if new.mm > old.mm else "thinner",
                tuple(Change(("slabs", k, "thickness"), new) for k in joined(order, finding.slab)),
                COST["thickness"] + abs(new.mm - old.mm) / MM_OF_DEPTH,
            )


def stocked_thickness(old: Length, mm: float, shaping: Shaping) -> Length:
    """Give one of the stocked thicknesses in the unit of another."""
    new = old.like(mm)
    over = new.mm > shaping.thickest_mm  # a sixteenth of an inch
    return old.like(mm, "down") if over else new


def joined(order: Order, i: int) -> list[int]:
    """A slab and those of its thickness that it is joined to, one through another."""
    found = [i]
    for at in found:
        for join in order.joins:
            ends = (join.one.slab, join.other.slab)
            if at in ends:
                found += [k for k in ends if k not in found]
    alike = order.slabs[i].thickness
    return sorted(k for k in found if order.slabs[k].thickness == alike)
