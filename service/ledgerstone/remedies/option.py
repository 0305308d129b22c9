"""An option that might settle a finding: its changes, their kind and their size."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

from ledgerstone.checks import Finding
from ledgerstone.json_types import KeyPath
from ledgerstone.order import Cutout, LShape, Point, Polygon, Rectangle, Round, Slab
from ledgerstone.quantities import Length
from ledgerstone.remedies.change import Change, Changes
from ledgerstone.remedies.cutting import SlabCut
from ledgerstone.remedies.policy import NOTHING, NUMBER_CHARACTERS, ChangeWeight, added, weight
from ledgerstone.remedies.state import State

ROUND_TO_MM = 5.0  # what a person would name: our own choice


@dataclass(frozen=True, slots=True)
class Option:
    """Changes that may settle a finding, and then a cut.

    Two options of one ``effect`` are never both shown.

    ``cost`` weighs it among others of its kind; ``beside`` is what else it changes.
    """

    effect: str
    changes: Changes
    cost: float
    cut: SlabCut | None = None
    beside: ChangeWeight = NOTHING

    @property
    def name(self) -> str:
        """Its effect, without the number of one that is tried by itself."""
        return self.effect.rstrip(NUMBER_CHARACTERS)

    @property
    def weight(self) -> ChangeWeight:
        """The cost of the option, by its kind and the changes with it."""
        return added(weight(self.name, self.cost), self.beside)

    def after(self, state: State, fitting_gap_mm: float) -> State | None:
        """Return the order after this option; None if a cut cannot be described."""
        changed = state.after(self.changes)
        return changed if self.cut is None else changed.cut(self.cut, fitting_gap_mm)


def named(finding: Finding, part: str) -> Iterable[str]:
    """Which cut-outs, reliefs or edges a finding points at: indices, or sides."""
    for pointer in finding.at:
        match pointer.split("/"):
            case [_, _, _, name, which, *_] if name == part:
                yield which


def resized_cutout(
    base: KeyPath, cutout: Cutout, scale: float, to_mm: float = ROUND_TO_MM
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
    base: KeyPath, outline: Rectangle | LShape | Polygon, scale: float
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
