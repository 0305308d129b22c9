"""Places of drainers, recesses and rebates that the order does not place: beside the rest."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from ledgerstone.layout.rounded_length import step_mm
from ledgerstone.layout.runs import Run, spread
from ledgerstone.order import Point, Relief, Slab
from ledgerstone.outline import XY, outline_shape
from ledgerstone.quantities import Length, UnitName
from ledgerstone.shape import Shape
from ledgerstone.siting import PlacedOpening, UnplacedOpening, place_for
from ledgerstone.strip_rules import strips_of
from ledgerstone.workshop.records import Workshop

_CLEAR_OF_RIM: Final = "covered"


def with_places(
    slab: Slab, shape: Shape, free: frozenset[int], unit: UnitName, workshop: Workshop
) -> Slab | None:
    """Place the free reliefs of a slab whose openings have their places; None if one fits not.

    Parameters
    ----------
    shape
        The slab in plan.
    free
        Which reliefs are to be placed, by number.
    """
    taken = _taken(shape, free)
    placed = list(slab.reliefs)
    for k in sorted(free):
        length, width = _size_mm(slab.reliefs[k])
        run, step = Run.of(slab.outline, shape), step_mm(unit)
        spans = [
            (opening.x_mm - opening.length_mm / 2, opening.x_mm + opening.length_mm / 2)
            for opening in taken
        ]
        (x,) = spread(run, spans, [length])
        wish = (round(x / step) * step, round(run.middle_mm / step) * step)
        wanted = UnplacedOpening(length, width, rim=_CLEAR_OF_RIM, wish_mm=wish)
        at = place_for(shape.outline, taken, wanted, strips_of(workshop), step_mm=step)
        if at is None:
            return None
        taken.append(PlacedOpening(*at, length, width, rim=_CLEAR_OF_RIM))
        placed[k] = replace(placed[k], at=_corner(at, length, width, unit))
    return replace(slab, reliefs=tuple(placed))


def _taken(shape: Shape, free: frozenset[int]) -> list[PlacedOpening]:
    """The boxes of openings, and of the reliefs that stay."""
    areas = [opening.polygon for opening in shape.openings]
    areas += [area for k, area in enumerate(shape.reliefs) if k not in free]
    return [_boxed(area.bounds) for area in areas if not area.is_empty]


def _boxed(bounds: Sequence[float]) -> PlacedOpening:
    x0, y0, x1, y1 = bounds
    return PlacedOpening((x0 + x1) / 2, (y0 + y1) / 2, x1 - x0, y1 - y0, rim=_CLEAR_OF_RIM)


def _size_mm(relief: Relief) -> XY:
    outline = relief.outline
    if outline.kind == "round":
        return outline.diameter.mm, outline.diameter.mm
    if outline.kind == "polygon":
        x0, y0, x1, y1 = outline_shape(outline, 0.0, 0.0, 0.0)[0].bounds
        return x1 - x0, y1 - y0
    return outline.length.mm, outline.width.mm


def _corner(at: XY, length: float, width: float, unit: UnitName) -> Point:
    x, y = at[0] - length / 2, at[1] - width / 2
    return Point(Length.of_mm(round(x, 4), unit), Length.of_mm(round(y, 4), unit))
