"""The outlines of the pieces of a slab that is cut: their corners, their sides, their radii."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Literal

from shapely.geometry import LineString, Point, Polygon, box

from ledgerstone import plane
from ledgerstone.order import CORNERS, LShape, Notch, Outline, Rectangle, Round, Slab
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.outline import XY, finished_size_mm, sharp_corners, side_names, wall_sides
from ledgerstone.quantities import Length

Axis = Literal["x", "y"]
Sides = Mapping[str, tuple[str, float]]  # by side of the whole: a piece's own, and how long of it
_FINE_MM = 0.1  # nearer is the same corner: under what is cast
_ON_MM = 0.6  # sizes of pieces are whole millimetres, so their sides may be half of one off
_SHORTEST_MM = 1.0  # of a side that counts: over any rounding
_L_CORNERS = 6  # an L has six corners


@dataclass(frozen=True, slots=True)
class Plan:
    """A slab's finished plan: its sharp corners anticlockwise, the side after each, its walls.

    ``added_mm`` is, by side, the size in the order less the size that is cast.
    """

    slab: Slab
    corners: tuple[XY, ...]
    names: tuple[str, ...]
    size_mm: XY
    added_mm: Mapping[str, float]

    def along(self, axis: Axis) -> float:
        """Finished size across an axis, in mm."""
        return self.size_mm[0] if axis == "x" else self.size_mm[1]


def plan_of(slab: Slab, fitting_gap_mm: float) -> Plan | None:
    """Return the plan of a slab that has sides."""
    if isinstance(slab.outline, Round):
        return None
    size = finished_size_mm(slab, fitting_gap_mm)
    corners, names = sharp_corners(slab.outline, *size), side_names(slab.outline)
    if not Polygon(corners).exterior.is_ccw:
        corners, names = corners[::-1], (*names[-2::-1], names[-1])
    added: dict[str, float] = {}
    if slab.size_from == "between-walls":
        added = dict.fromkeys(wall_sides(slab), fitting_gap_mm)
    elif slab.size_from == "over-units" and slab.rests is not None:
        added = {side: -over.mm for side, over in slab.rests.overhang.items()}
    return Plan(slab, corners, names, size, MappingProxyType(added))


def clipped(plan: Plan, axis: Axis, span: tuple[float, float]) -> tuple[XY, ...] | None:
    """Corners, mm, of the part of the plan within a span, mm; None if it is not one piece."""
    far = 1.0 + max(plan.size_mm)
    low, high = (-far, -far), (2 * far, 2 * far)
    low, high = (
        ((span[0], low[1]), (span[1], high[1]))
        if axis == "x"
        else ((low[0], span[0]), (high[0], span[1]))
    )
    inside = plane.intersection(Polygon(plan.corners), box(*low, *high))
    if not isinstance(inside, Polygon) or inside.is_empty or inside.interiors:
        return None
    ring = [(float(x), float(y)) for x, y in inside.exterior.coords[:-1]]
    tidy = _without_straight(ring if inside.exterior.is_ccw else ring[::-1])
    return tidy if len(tidy) >= len(CORNERS) else None


def _without_straight(ring: Sequence[XY]) -> tuple[XY, ...]:
    """Leave out corners at which the outline runs straight on."""
    kept = []
    for i, corner in enumerate(ring):
        before, after = ring[i - 1], ring[(i + 1) % len(ring)]
        if LineString([before, after]).distance(Point(corner)) > _FINE_MM:
            kept.append(corner)
    return tuple(kept)


def outline_of(plan: Plan, ring: Sequence[XY]) -> Rectangle | LShape | None:
    """Return the outline of a piece as an order has it; None if no kind of outline fits.

    ``ring`` is its corners, mm. Its sizes are as cast; ``with_given_sizes`` makes them the order's.
    """
    xs, ys = [x for x, _ in ring], [y for _, y in ring]
    box_corners = ((min(xs), min(ys)), (max(xs), min(ys)), (max(xs), max(ys)), (min(xs), max(ys)))
    length, width = (_spoken(plan, max(v) - min(v)) for v in (xs, ys))
    if not _is_square(ring):
        return None
    if len(ring) == len(CORNERS):
        radii = MappingProxyType(_radii(plan, box_corners))
        return Rectangle(length, width, corner_radii=radii)
    missing = [k for k, corner in enumerate(box_corners) if not _among(corner, ring)]
    if len(ring) != _L_CORNERS or len(missing) != 1 or _is_rounded(plan.slab.outline):
        return None
    corner = box_corners[missing[0]]
    inner = min(ring, key=lambda p: 0 if _is_inner(p, box_corners) else 1)
    notch = Notch(
        CORNERS[missing[0]],
        _spoken(plan, abs(inner[0] - corner[0])),
        _spoken(plan, abs(inner[1] - corner[1])),
    )
    own = _radii(plan, box_corners) | _inner_radius(plan, CORNERS[missing[0]])
    return LShape(length, width, notch, corner_radii=MappingProxyType(own))


def _among(place: XY, ring: Sequence[XY]) -> bool:
    return any(max(abs(place[0] - x), abs(place[1] - y)) < _FINE_MM for x, y in ring)


def _is_inner(place: XY, box_corners: Sequence[XY]) -> bool:
    """Return whether a corner lies on no side of the box around its piece."""
    (x0, y0), (x1, y1) = box_corners[0], box_corners[2]
    return x0 + _FINE_MM < place[0] < x1 - _FINE_MM and y0 + _FINE_MM < place[1] < y1 - _FINE_MM


def with_given_sizes(plan: Plan, outline: Rectangle | LShape, sides: Sides) -> Rectangle | LShape:
    """An outline with sizes as in an order: with wall gaps, without overhangs."""
    more = {mine: plan.added_mm.get(side, 0.0) for side, (mine, _) in sides.items()}
    sizes: list[Length] = []
    for name, ends in (("length", ("left", "right")), ("width", ("front", "back"))):
        size: Length = getattr(outline, name)
        by = sum(more.get(end, 0.0) for end in ends)
        sizes.append(_spoken(plan, size.mm + by) if by else size)
    return replace(outline, length=sizes[0], width=sizes[1])


def sides_on(plan: Plan, outline: Rectangle | LShape, at_mm: XY) -> Sides:
    """State which sides of the whole a piece has, by the longest of its own that lies on each."""
    found: dict[str, tuple[str, float]] = {}
    ring = sharp_corners(outline, outline.length.mm, outline.width.mm)
    for name, line in _lines(ring, side_names(outline), at_mm):
        around = plane.buffer(line, _ON_MM, cap_style="flat")
        for side, whole in _lines(plan.corners, plan.names, (0.0, 0.0)):
            length = plane.intersection(whole, around).length
            if length > max(_SHORTEST_MM, found.get(side, ("", 0.0))[1]):
                found[side] = (name, length)
    return found


def side_at(outline: Rectangle | LShape, axis: Axis, at_mm: float, from_mm: XY) -> str | None:
    """The one side of a piece that lies on the joint."""
    k = 0 if axis == "x" else 1
    ring = sharp_corners(outline, outline.length.mm, outline.width.mm)
    on = [
        name
        for name, line in _lines(ring, side_names(outline), from_mm)
        if all(abs(place[k] - at_mm) < _ON_MM for place in line.coords)
    ]
    return on[0] if len(on) == 1 else None


def _lines(ring: Sequence[XY], names: Sequence[str], at_mm: XY) -> Iterator[tuple[str, LineString]]:
    for k, name in enumerate(names):
        ends = (ring[k], ring[(k + 1) % len(ring)])
        yield name, LineString([(x + at_mm[0], y + at_mm[1]) for x, y in ends])


def _is_square(ring: Sequence[XY]) -> bool:
    pairs = zip(ring, (*ring[1:], ring[0]), strict=True)
    return all(min(abs(a[0] - b[0]), abs(a[1] - b[1])) < _FINE_MM for a, b in pairs)


def _is_rounded(outline: Outline) -> bool:
    radius: Length | None = getattr(outline, "corner_radius", None)
    return radius is not None and radius.mm > 0.0


def _spoken(plan: Plan, mm: float) -> Length:
    """Return a size in the customer's unit: the order's own if it was not cut."""
    outline = plan.slab.outline
    known: list[Length] = [
        getattr(record, name)
        for record in (outline, getattr(outline, "notch", None))
        for name in ("length", "width")
        if hasattr(record, name)
    ]
    same = [length for length in known if abs(length.mm - mm) < _FINE_MM / 2]
    like = known[0] if known else plan.slab.thickness
    return same[0] if same else like.like(mm, to_mm=_FINE_MM)


def _radii(plan: Plan, corners: Sequence[XY]) -> dict[str, Length]:
    """Radii of those corners of a piece that were corners of the whole."""
    found: dict[str, Length] = {}
    for name, place in zip(CORNERS, corners, strict=True):
        for whole, radius in zip(plan.corners, _given_radii(plan.slab.outline), strict=True):
            if radius is not None and _among(place, [whole]):
                found[name] = radius
    return found


def _given_radii(outline: Outline) -> Sequence[Length | None]:
    """The order's radius for each sharp corner, in the order of the corners."""
    every = getattr(outline, "corner_radius", None)
    if isinstance(outline, OrderPolygon):
        return [every] * len(outline.points)
    by_corner: Mapping[str, Length] = getattr(outline, "corner_radii", {})
    radii = [by_corner.get(corner, every) for corner in CORNERS]
    if isinstance(outline, LShape):
        at = CORNERS.index(outline.notch.corner)
        radii[at : at + 1] = [every, radii[at], every]
    return radii


def _inner_radius(plan: Plan, corner: str) -> dict[str, Length]:
    """The radius of the inside corner that a piece keeps."""
    outline = plan.slab.outline
    if not isinstance(outline, LShape) or outline.notch.corner not in outline.corner_radii:
        return {}
    return {corner: outline.corner_radii[outline.notch.corner]}
