"""One thing that might settle a finding: changes, what kind of effect, and how much it changes."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Any

from ledgerstone.checks import Finding
from ledgerstone.order import Cutout, LShape, Order, Point, Polygon, Rectangle, Round, Slab
from ledgerstone.quantities import Length
from ledgerstone.remedies.change import Change, Changes, Path
from ledgerstone.remedies.cutting import Cut
from ledgerstone.remedies.layout import Layout
from ledgerstone.remedies.state import State
from ledgerstone.shape import Shape

ROUND_TO_MM = 5.0
WITHIN = 0.1  # how far a size may change and still be what was asked for
_HARDLY_MM = 0.05
MOVE_COSTS = 0.01  # a change of a hundred millimetres weighs 1
RESIZE_COSTS = 20.0  # a tenth more slab weighs 2
SHRINK_COSTS = 50.0  # a tenth less opening weighs 5: what goes into it has its size


@dataclass(frozen=True, slots=True)
class Option:
    """Changes that may settle a finding; two options of one ``effect`` are never both shown."""

    effect: str
    changes: Changes
    cost: float
    cut: Cut | None = None

    def after(self, state: State, fitting_gap_mm: float) -> State | None:
        """Return the order after this option; None where a cut can't be told."""
        if self.cut is not None:
            return state.cut(self.cut, fitting_gap_mm)
        return state.after(self.changes)


def named(finding: Finding, part: str) -> Iterable[str]:
    """Which cut-outs, reliefs or edges a finding points at: indices, or sides."""
    for pointer in finding.at:
        parts = pointer.split("/")
        if len(parts) > 4 and parts[3] == part:
            yield parts[4]


def layout_changes(
    order: Order, index: int, shape: Shape, layout: Layout, to_mm: float
) -> tuple[Changes, float]:
    """Write a layout as changes in the customer's units, and weigh it."""
    slab = order.slabs[index]
    changes: list[Change] = []
    cost = 0.0
    for i in sorted({*layout.moved_mm, *layout.shrunk}):
        opening = shape.openings[i]
        base: Path = ("slabs", index, "cutouts", opening.index)
        by = layout.moved_mm.get(i, (0.0, 0.0))
        share = layout.shrunk.get(i, 0.0)
        changes += _cutout_changes(base, slab.cutouts[opening.index], by, share, to_mm)
        cost += MOVE_COSTS * (abs(by[0]) + abs(by[1])) + SHRINK_COSTS * share
    for name, grown in layout.grown_mm.items():
        old: Length = getattr(slab.outline, name)
        changes.append(
            Change(("slabs", index, "outline", name), old.like(old.mm + grown, "up", to_mm=to_mm))
        )
        cost += 0.3 + RESIZE_COSTS * grown / old.mm
    return tuple(changes), cost


def _cutout_changes(
    base: Path, cutout: Cutout, by: tuple[float, float], share: float, to_mm: float
) -> Iterable[Change]:
    """Move and shrink one opening; what it moves by is round in the customer's unit."""
    if share > 0.0:
        yield from resized_cutout(base, cutout, 1.0 - share, to_mm)
    hardly = _HARDLY_MM if to_mm < 1.0 else to_mm / 2
    step = (by[0] if abs(by[0]) > hardly else 0.0, by[1] if abs(by[1]) > hardly else 0.0)
    if cutout.points and step != (0.0, 0.0):
        points = _drawn_together(cutout.points, share) if share > 0.0 else cutout.points
        yield Change((*base, "points"), tuple(stepped(point, step, to_mm) for point in points))
    elif cutout.centre is not None:
        there = stepped(cutout.centre, step, to_mm)
        for axis in ("x", "y"):
            if getattr(there, axis) != getattr(cutout.centre, axis):
                yield Change((*base, "centre", axis), getattr(there, axis))


def stepped(place: Point, by_mm: tuple[float, float], to_mm: float) -> Point:
    """Move a place by a round number of its own unit along each axis."""
    return Point(_moved(place.x, by_mm[0], to_mm), _moved(place.y, by_mm[1], to_mm))


def _moved(old: Length, by_mm: float, to_mm: float) -> Length:
    by = old.like(by_mm, to_mm=to_mm)
    return replace(by, exact_mm=old.exact_mm + by.exact_mm) if by.exact_mm else old


def resized_cutout(
    base: Path, cutout: Cutout, scale: float, to_mm: float = ROUND_TO_MM
) -> Iterable[Change]:
    """Make an opening smaller in proportion; its corners keep their radius where they can."""
    if cutout.kind == "polygon":
        yield Change((*base, "points"), _drawn_together(cutout.points, 1.0 - scale))
        return
    sizes = []
    for name in ("diameter", "length", "width"):
        old: Length | None = getattr(cutout, name)
        if old is not None:
            new = old.like(old.mm * scale, "down", to_mm=to_mm)
            if new.mm <= 0.0:
                new = old.like(old.mm * scale, to_mm=0.1)
            sizes.append(new.mm)
            yield Change((*base, name), new)
    radius = cutout.corner_radius
    if radius is not None and sizes and 2 * radius.mm > min(sizes):
        yield Change((*base, "corner_radius"), radius.like(min(sizes) / 2, "down", to_mm=1))


def _drawn_together(points: Sequence[Point], share: float) -> tuple[Point, ...]:
    """Points drawn together about their middle."""
    xs, ys = [p.x.mm for p in points], [p.y.mm for p in points]
    middle = ((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2)
    return tuple(
        Point(
            p.x.like(middle[0] + (p.x.mm - middle[0]) * (1 - share)),
            p.y.like(middle[1] + (p.y.mm - middle[1]) * (1 - share)),
        )
        for p in points
    )


def resized_outline(
    index: int, slab: Slab, scale: float | tuple[float, float], to_mm: float = ROUND_TO_MM
) -> Changes:
    """Change an outline's sizes by a factor, or by one for each axis, rounded inward."""
    fx, fy = scale if isinstance(scale, tuple) else (scale, scale)
    outline, base = slab.outline, ("slabs", index, "outline")
    step: Any = "down" if fx <= 1.0 and fy <= 1.0 else "up"
    if isinstance(outline, Round):
        old = outline.diameter
        return (Change((*base, "diameter"), old.like(old.mm * min(fx, fy), step, to_mm=to_mm)),)
    rounded = tuple(_smaller_radii(base, outline, min(fx, fy)))
    if isinstance(outline, Polygon):
        points = tuple(
            Point(p.x.like(p.x.mm * fx, to_mm=1), p.y.like(p.y.mm * fy, to_mm=1))
            for p in outline.points
        )
        return (Change((*base, "points"), points), *rounded)
    sized = (
        [(base, outline)]
        if isinstance(outline, Rectangle)
        else [(base, outline), ((*base, "notch"), outline.notch)]
    )
    changes = [
        Change((*path, name), old.like(old.mm * f, step, to_mm=to_mm))
        for path, record in sized
        for name, f in (("length", fx), ("width", fy))
        if abs(f - 1.0) > 1e-9
        for old in [getattr(record, name)]
    ]
    return (*changes, *rounded)


def _smaller_radii(
    base: Path, outline: Rectangle | LShape | Polygon, scale: float
) -> Iterable[Change]:
    """Corner radii that shrink with their outline: a smaller one may not hold them."""
    if scale >= 1.0:
        return
    if outline.corner_radius is not None and outline.corner_radius.mm > 0.0:
        old = outline.corner_radius
        yield Change((*base, "corner_radius"), old.like(old.mm * scale, "down"))
    for corner, old in getattr(outline, "corner_radii", {}).items():
        if old.mm > 0.0:
            yield Change((*base, "corner_radii", corner), old.like(old.mm * scale, "down"))


def weighed(option: Option, extra: float) -> Option:
    """Return the option at a higher cost."""
    return replace(option, cost=option.cost + extra)
