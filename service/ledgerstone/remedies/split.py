"""A slab too long to cast or to carry, made of two with a join."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from types import MappingProxyType

from ledgerstone.checks import Facts, Finding
from ledgerstone.checks.shape import strip_rule
from ledgerstone.order import (
    CORNERS,
    MOST_SLABS,
    Cutout,
    Edge,
    Join,
    JoinEnd,
    Order,
    Point,
    Rectangle,
    Rests,
    Slab,
    Unit,
)
from ledgerstone.quantities import Length
from ledgerstone.remedies.change import Change
from ledgerstone.remedies.option import ROUND_TO_MM, Option

IN_TWO = "two-pieces"
_GAP_MM = 2.0  # a filled joint; common practice, no source
_COSTS = 3.0  # as much as a tenth shorter: all of what was asked for is there
_SHARES = (0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65)


def two_pieces(finding: Finding, order: Order, facts: Facts, _most: float) -> Iterable[Option]:
    """Cast a rectangular slab in two: the join clear of every opening, over a side panel if it can.

    The join itself is a suggestion until it has been checked.
    """
    if finding.slab is None or len(order.slabs) >= MOST_SLABS:
        return
    i, slab = finding.slab, order.slabs[finding.slab]
    plain = isinstance(slab.outline, Rectangle) and slab.size_from == "finished"
    if not plain or slab.reliefs or slab.quantity > 1:
        return
    for at_mm in _places(slab, facts, i):
        cut = _cut(slab, at_mm)
        if cut is not None:
            yield Option(IN_TWO, _changes(order, i, cut), _COSTS)
            return


def _places(slab: Slab, facts: Facts, i: int) -> Iterable[float]:
    """Where the join may lie: between units first, then near the middle; clear of openings."""
    length = facts.shapes[i].length_mm
    panels: list[float] = []
    x = 0.0
    for unit in slab.rests.units if slab.rests is not None else ():
        x += unit.width.mm
        panels.append(x)
    inner = [p for p in panels if 0.3 * length < p < 0.7 * length]
    wished = [*sorted(inner, key=lambda p: abs(p - length / 2)), *(s * length for s in _SHARES)]
    for place in wished:
        at = ROUND_TO_MM * round(place / ROUND_TO_MM)
        if all(_clear_of(slab, facts, i, k, at) for k in range(len(slab.cutouts))):
            yield at


def _clear_of(slab: Slab, facts: Facts, i: int, k: int, at_mm: float) -> bool:
    opening = facts.shapes[i].openings[k]
    rule = strip_rule(slab.cutouts[k], opening.longer_mm, facts.workshop)
    clear = rule.stops_mm if rule is not None else 0.0
    x0, _, x1, _ = opening.polygon.bounds
    return not x0 - clear - _GAP_MM < at_mm < x1 + clear


def _cut(slab: Slab, at_mm: float) -> tuple[Slab, Slab, Length] | None:
    """The left piece, of a round length, what is left to its right, and the joint between them."""
    outline = slab.outline
    if not isinstance(outline, Rectangle):
        return None
    left = outline.length.like(at_mm, to_mm=ROUND_TO_MM)
    right = outline.length.like(outline.length.mm - left.mm - _GAP_MM)
    rests = _cut_rests(slab.rests, at_mm)
    if rests is None:
        return None
    pieces = []
    for side, length, own_rests in (("left", left, rests[0]), ("right", right, rests[1])):
        shift = 0.0 if side == "left" else outline.length.mm - right.mm
        joined = "right" if side == "left" else "left"
        corners: dict[str, Length] = {
            corner: radius
            for corner in CORNERS
            if side in corner
            for radius in [outline.corner_radii.get(corner, outline.corner_radius)]
            if radius is not None
        }
        pieces.append(
            replace(
                slab,
                label=f"{slab.label} {side}".strip()[:120],
                outline=replace(
                    outline,
                    length=length,
                    corner_radius=None,
                    corner_radii=MappingProxyType(corners),
                ),
                cutouts=tuple(_shifted(slab.cutouts, side, at_mm, shift)),
                edges=MappingProxyType(
                    {**{k: e for k, e in slab.edges.items() if k != joined}, joined: Edge("wall")}
                ),
                rests=own_rests,
            )
        )
    gap = slab.thickness.like(outline.length.mm - left.mm - right.mm, to_mm=0.1)
    return pieces[0], pieces[1], gap


def _shifted(
    cutouts: Sequence[Cutout], side: str, at_mm: float, shift_mm: float
) -> Iterable[Cutout]:
    for cutout in cutouts:
        middle = _middle_x(cutout)
        if (middle < at_mm) != (side == "left"):
            continue
        if cutout.centre is not None:
            x = cutout.centre.x.in_unit(cutout.centre.x.mm - shift_mm)
            yield replace(cutout, centre=Point(x, cutout.centre.y))
        else:
            points = tuple(Point(p.x.in_unit(p.x.mm - shift_mm), p.y) for p in cutout.points)
            yield replace(cutout, points=points)


def _middle_x(cutout: Cutout) -> float:
    if cutout.centre is not None:
        return cutout.centre.x.mm
    return sum(point.x.mm for point in cutout.points) / len(cutout.points)


def _cut_rests(rests: Rests | None, at_mm: float) -> tuple[Rests | None, Rests | None] | None:
    """The rests of each piece; None where they cannot be told apart."""
    if rests is None or rests.kind in ("full", "frame"):
        return rests, rests
    if rests.kind != "units" or rests.overhang.get("left") is not None:
        return None
    left, right = [], []
    x = 0.0
    for unit in rests.units:
        end = x + unit.width.mm
        if end <= at_mm + 1.0:
            left.append(unit)
        elif x >= at_mm - 1.0:
            right.append(unit)
        else:
            left.append(Unit(_part(unit.width, at_mm - x), unit.use))
            right.append(Unit(_part(unit.width, end - at_mm), unit.use))
        x = end
    if not left or not right:
        return None
    return replace(rests, units=tuple(left)), replace(rests, units=tuple(right))


def _part(width: Length, mm: float) -> Length:
    return width.in_unit(mm)


def _changes(order: Order, i: int, cut: tuple[Slab, Slab, Length]) -> tuple[Change, ...]:
    n = len(order.slabs)
    left, right, gap = cut
    join = Join(JoinEnd(i, "right"), JoinEnd(n, "left"), gap)
    return (
        Change(("slabs", i), left),
        Change(("slabs", n), right),
        Change(("joins",), (*order.joins, join)),
    )
