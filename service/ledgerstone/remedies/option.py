"""One thing that might settle a finding: changes, what kind of effect, and how much it changes."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Any

from ledgerstone.checks import Finding
from ledgerstone.order import Cutout, LShape, Order, Point, Polygon, Rectangle, Round, Slab
from ledgerstone.quantities import Length
from ledgerstone.remedies.change import Change, Changes, Path
from ledgerstone.remedies.layout import Layout
from ledgerstone.shape import Shape

ROUND_TO_MM = 5.0
WITHIN = 0.1  # how far a size may change and still be what was asked for
_HARDLY_MM = 0.05
_A_SLAB = 2  # steps of its path: "slabs", and which
MOVE_COSTS = 0.01  # a change of a hundred millimetres weighs 1
RESIZE_COSTS = 20.0  # a tenth more slab weighs 2
SHRINK_COSTS = 50.0  # a tenth less opening weighs 5: what goes into it has its size


@dataclass(frozen=True, slots=True)
class Option:
    """Changes that may settle a finding; two options of one ``effect`` are never both shown."""

    effect: str
    changes: Changes
    cost: float


def named(finding: Finding, part: str) -> Iterable[str]:
    """Which cut-outs, reliefs or edges a finding points at: indices, or sides."""
    for pointer in finding.at:
        parts = pointer.split("/")
        if len(parts) > 4 and parts[3] == part:
            yield parts[4]


def merged(first: Changes, then: Changes) -> Changes:
    """Both sets of changes: the later one wins where they meet.

    A slab that is replaced as a whole stays where it came, before those that came after it; what
    was changed in it is in it.
    """
    by_path = {change.path: change for change in first}
    for change in then:
        if len(change.path) == _A_SLAB:
            inside = [p for p in by_path if len(p) > _A_SLAB and p[:_A_SLAB] == change.path]
            for path in inside:
                del by_path[path]
        else:
            by_path.pop(change.path, None)
        by_path[change.path] = change
    return tuple(by_path.values())


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
    if cutout.kind == "polygon":
        yield Change((*base, "points"), _moved_points(cutout.points, by, share))
        return
    if share > 0.0:
        yield from resized_cutout(base, cutout, 1.0 - share, to_mm)
    if cutout.centre is None:
        return
    for axis, step in zip(("x", "y"), by, strict=True):
        old: Length = getattr(cutout.centre, axis)
        if abs(step) > (_HARDLY_MM if to_mm < 1.0 else to_mm / 2):
            yield Change((*base, "centre", axis), old.like(old.mm + step, to_mm=to_mm))


def resized_cutout(
    base: Path, cutout: Cutout, scale: float, to_mm: float = ROUND_TO_MM
) -> Iterable[Change]:
    """Make an opening smaller in proportion; its corners keep their radius where they can."""
    if cutout.kind == "polygon":
        yield Change((*base, "points"), _moved_points(cutout.points, (0.0, 0.0), 1.0 - scale))
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


def _moved_points(
    points: Sequence[Point], by: tuple[float, float], share: float
) -> tuple[Point, ...]:
    """Points moved, and drawn together about their middle."""
    xs, ys = [p.x.mm for p in points], [p.y.mm for p in points]
    middle = ((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2)
    return tuple(
        Point(
            p.x.like(middle[0] + (p.x.mm - middle[0]) * (1 - share) + by[0]),
            p.y.like(middle[1] + (p.y.mm - middle[1]) * (1 - share) + by[1]),
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
