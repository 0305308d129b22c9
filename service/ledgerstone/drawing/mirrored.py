"""A slab mirrored, as it lies face down in its mould."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from types import MappingProxyType

from ledgerstone.order import Cutout, LShape, Outline, Point, Rectangle, Relief, Round, Slab
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.quantities import Length, UnitName
from ledgerstone.shape import Shape

_OTHER = {"left": "right", "right": "left"}


def mirrored(slab: Slab, shape: Shape) -> Slab:
    """Return the slab that one sees looking down into its mould: front stays front.

    Its sizes are the finished ones, and nothing carries it there. Mirrored twice, it is cast as it
    was.
    """
    x0, _, x1, _ = shape.outline.bounds
    over = x0 + x1
    outline = slab.outline
    if isinstance(outline, Rectangle | LShape):
        outline = replace(
            outline,
            length=outline.length.in_unit(shape.length_mm),
            width=outline.width.in_unit(shape.width_mm),
        )
    names = side_names_mirrored(outline)
    return replace(
        slab,
        outline=_outline(outline, over),
        cutouts=tuple(_cutout(cutout, over, names) for cutout in slab.cutouts),
        reliefs=tuple(_relief(relief, over) for relief in slab.reliefs),
        edges=MappingProxyType({names.get(n, n): edge for n, edge in slab.edges.items()}),
        size_from="finished",
        rests=None,
    )


def in_unit(slab: Slab, unit: UnitName) -> Slab:
    """Return a slab whose outline, and so its whole plan, is in a unit."""

    def spoken(length: Length) -> Length:
        return replace(length, unit=unit, origin="worked")

    outline = slab.outline
    if isinstance(outline, Round):
        outline = replace(outline, diameter=spoken(outline.diameter))
    elif isinstance(outline, OrderPolygon):
        points = (replace(p, x=spoken(p.x), y=spoken(p.y)) for p in outline.points)
        outline = replace(outline, points=tuple(points))
    else:
        outline = replace(outline, length=spoken(outline.length), width=spoken(outline.width))
    return replace(slab, outline=outline)


def side_names_mirrored(outline: Outline) -> Mapping[str, str]:
    """Return what each side is called once mirrored, where that changes."""
    if not isinstance(outline, OrderPolygon):
        return _OTHER
    n = len(outline.points)
    return {str(i): str(n + 1 - i) for i in range(1, n + 1)}


def _x(length: Length, over_mm: float) -> Length:
    return length.in_unit(round(over_mm - length.mm, 6))


def _point(point: Point, over_mm: float) -> Point:
    return replace(point, x=_x(point.x, over_mm))


def _corner(name: str) -> str:
    depth, _, side = name.partition("-")
    return f"{depth}-{_OTHER[side]}"


def _radii(radii: Mapping[str, Length]) -> Mapping[str, Length]:
    return MappingProxyType({_corner(name): radius for name, radius in radii.items()})


def _outline(outline: Outline, over_mm: float) -> Outline:
    if isinstance(outline, Round):
        return outline
    if isinstance(outline, OrderPolygon):
        first, *rest = (_point(point, over_mm) for point in outline.points)
        return replace(outline, points=(first, *rest[::-1]))
    radii = _radii(outline.corner_radii)
    if isinstance(outline, LShape):
        corner = _corner(outline.notch.corner)
        notch = replace(outline.notch, corner=corner)  # type: ignore[arg-type]  # a corner's name
        return replace(outline, notch=notch, corner_radii=radii)
    return replace(outline, corner_radii=radii)


def _cutout(cutout: Cutout, over_mm: float, names: Mapping[str, str]) -> Cutout:
    open_to = cutout.open_to
    return replace(
        cutout,
        centre=None if cutout.centre is None else _point(cutout.centre, over_mm),
        points=tuple(_point(point, over_mm) for point in cutout.points),
        turn_degrees=-cutout.turn_degrees,
        open_to=None if open_to is None else names.get(open_to, open_to),
    )


def _relief(relief: Relief, over_mm: float) -> Relief:
    outline = relief.outline
    if isinstance(outline, Round):
        wide = outline.diameter.mm
    elif isinstance(outline, OrderPolygon):
        wide = max(point.x.mm for point in outline.points)
    else:
        wide = outline.length.mm
    at = replace(relief.at, x=relief.at.x.in_unit(round(over_mm - relief.at.x.mm - wide, 6)))
    return replace(relief, outline=_outline(outline, wide), at=at)
