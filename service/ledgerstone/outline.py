"""The outline of a slab: its sides, its finished size, its corners and their rounding."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from shapely.geometry import LineString, Polygon

from ledgerstone.order import CORNERS, Outline, Rectangle, Round, Slab
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.quantities import Length

ARC_STEP_DEGREES = 2.8125  # 128 chords to a circle: sagitta under 0.06 mm on a 400 mm opening
XY = tuple[float, float]
_SAME_POINT_MM = 1e-5
_BOX_SIDES = ("front", "right", "back", "left")


@dataclass(frozen=True, slots=True)
class Side:
    """One side of an outline: its name and its line, anticlockwise; ``length_mm`` along arcs."""

    name: str
    line: LineString
    length_mm: float


def typed_length(outline: Outline) -> Length:
    """Return a length of an outline whose unit its customer used for it."""
    if isinstance(outline, Round):
        return outline.diameter
    return outline.points[0].x if isinstance(outline, OrderPolygon) else outline.length


def side_names(outline: Outline) -> tuple[str, ...]:
    """Name the sides of an outline, in the order of its points."""
    if isinstance(outline, Round):
        return ("rim",)
    if isinstance(outline, OrderPolygon):
        return tuple(str(i + 1) for i in range(len(outline.points)))
    if isinstance(outline, Rectangle):
        return _BOX_SIDES
    at = CORNERS.index(outline.notch.corner)
    bite = ("notch-y", "notch-x") if _enters_along_x(at) else ("notch-x", "notch-y")
    return _BOX_SIDES[:at] + bite + _BOX_SIDES[at:]


def _enters_along_x(corner: int) -> bool:
    """Going anticlockwise, whether the side that runs into this corner of the box lies along x."""
    return corner in (1, 3)


def finished_size_mm(slab: Slab, fitting_gap_mm: float) -> XY:
    """Length and width as cast: gaps off wall sides, overhangs added, as ``size_from`` says."""
    outline = slab.outline
    if isinstance(outline, Round):
        return outline.diameter.mm, outline.diameter.mm
    if isinstance(outline, OrderPolygon):
        xs = [point.x.mm for point in outline.points]
        ys = [point.y.mm for point in outline.points]
        return max(xs) - min(xs), max(ys) - min(ys)
    length, width = outline.length.mm, outline.width.mm
    if slab.size_from == "between-walls":
        walls = wall_sides(slab)
        length -= fitting_gap_mm * len(walls & {"left", "right"})
        width -= fitting_gap_mm * len(walls & {"front", "back"})
    elif slab.size_from == "over-units" and slab.rests is not None:
        over = {side: overhang.mm for side, overhang in slab.rests.overhang.items()}
        length += over.get("left", 0.0) + over.get("right", 0.0)
        width += over.get("front", 0.0) + over.get("back", 0.0)
    return length, width


def wall_sides(slab: Slab) -> set[str]:
    """Return the sides that meet a wall: those so profiled, or left and right if none is."""
    named = {name for name, edge in slab.edges.items() if edge.profile == "wall"}
    return named or {"left", "right"}


def sharp_corners(outline: Outline, length_mm: float, width_mm: float) -> tuple[XY, ...]:
    """Corners of the finished outline before rounding, anticlockwise, in mm; none for a round."""
    if isinstance(outline, Round):
        return ()
    if isinstance(outline, OrderPolygon):
        return tuple((point.x.mm, point.y.mm) for point in outline.points)
    box = [(0.0, 0.0), (length_mm, 0.0), (length_mm, width_mm), (0.0, width_mm)]
    if isinstance(outline, Rectangle):
        return tuple(box)
    at = CORNERS.index(outline.notch.corner)
    x, y = box[at]
    inner_x = outline.notch.length.mm if x == 0.0 else length_mm - outline.notch.length.mm
    inner_y = outline.notch.width.mm if y == 0.0 else width_mm - outline.notch.width.mm
    along_x, along_y = (inner_x, y), (x, inner_y)
    bite = [along_x, (inner_x, inner_y), along_y]
    return tuple(box[:at] + (bite if _enters_along_x(at) else bite[::-1]) + box[at + 1 :])


def corner_radii_mm(outline: Outline, inside_radius_mm: float) -> tuple[float, ...]:
    """Return the radius at each sharp corner, mm; by default the smallest of the formers."""
    if isinstance(outline, Round):
        return ()
    every = outline.corner_radius.mm if outline.corner_radius is not None else 0.0
    if isinstance(outline, OrderPolygon):
        return (every,) * len(outline.points)
    named = [outline.corner_radii[c].mm if c in outline.corner_radii else every for c in CORNERS]
    if isinstance(outline, Rectangle):
        return tuple(named)
    at = CORNERS.index(outline.notch.corner)
    inner = outline.corner_radii.get(outline.notch.corner)
    if inner is not None:
        inside = inner.mm
    elif outline.corner_radius is not None:
        inside = every
    else:
        inside = min(inside_radius_mm, outline.notch.length.mm, outline.notch.width.mm)
    return (*named[:at], every, inside, every, *named[at + 1 :])


def _inside_radii_mm(corners: tuple[XY, ...], radius_mm: float) -> tuple[float, ...]:
    """Radii, mm, of a polygon without given ones: those of the formers at its inside corners.

    Smaller where its sides are too short.
    """
    n, radius = len(corners), min(radius_mm, largest_radius_mm(corners))
    return tuple(
        radius if _turn(corners[i - 1], corners[i], corners[(i + 1) % n]) < 0 else 0.0
        for i in range(n)
    )


def arc_points(centre: XY, radius_mm: float, start: float, sweep: float) -> list[XY]:
    """Points on an arc from angle ``start`` (radians) through ``sweep``, both ends included.

    An even number of chords, so that a point is in the middle.
    """
    steps = max(2, 2 * math.ceil(abs(math.degrees(sweep)) / ARC_STEP_DEGREES / 2 - 1e-9))
    x, y = centre
    angles = [start + sweep * i / steps for i in range(steps + 1)]
    return [(x + radius_mm * math.cos(a), y + radius_mm * math.sin(a)) for a in angles]


def fillet(before: XY, corner: XY, after: XY, radius_mm: float) -> tuple[list[XY], float, float]:
    """Round one corner, given by three points in mm.

    Returns
    -------
    points, tangent_mm, area_mm2
        Points of the arc, mm, from the incoming to the outgoing side; the length of each side that
        it takes; the exact area between the arc and the sharp corner (positive).

    Source
    ------
    Geometry: tangent ``r / tan(α/2)``.
    """
    ux, uy = unit_vector(corner, before)
    vx, vy = unit_vector(corner, after)
    angle = math.atan2(abs(ux * vy - uy * vx), ux * vx + uy * vy)  # exact near straight, too
    if radius_mm <= 0.0 or angle > math.pi - 1e-9 or angle < 1e-9:
        return [corner], 0.0, 0.0
    tangent = radius_mm / math.tan(angle / 2)
    reach = radius_mm / math.sin(angle / 2)
    bx, by = ux + vx, uy + vy
    norm = math.hypot(bx, by)
    centre = (corner[0] + reach * bx / norm, corner[1] + reach * by / norm)
    start = math.atan2(corner[1] + tangent * uy - centre[1], corner[0] + tangent * ux - centre[0])
    end = math.atan2(corner[1] + tangent * vy - centre[1], corner[0] + tangent * vx - centre[0])
    sweep = (end - start + math.pi) % (2 * math.pi) - math.pi
    area = radius_mm * tangent - 0.5 * radius_mm**2 * (math.pi - angle)
    return arc_points(centre, radius_mm, start, sweep), tangent, area


def largest_radius_mm(corners: Sequence[XY]) -> float:
    """Return the largest radius that every corner of a ring can have at once, in mm.

    Source
    ------
    Geometry: the tangents of two corners share a side.
    """
    n = len(corners)
    takes = [takes for _, takes, _ in _arcs(corners, (1.0,) * n)]
    sides = [math.dist(corners[i], corners[(i + 1) % n]) for i in range(n)]
    both = [takes[i] + takes[(i + 1) % n] for i in range(n)]
    fits = (side / taken for side, taken in zip(sides, both, strict=True) if taken > 0.0)
    return min(fits, default=math.inf)


def unit_vector(origin: XY, towards: XY) -> XY:
    """Return the direction from one point to another as pure numbers, length one."""
    dx, dy = towards[0] - origin[0], towards[1] - origin[1]
    norm = math.hypot(dx, dy) or 1.0
    return dx / norm, dy / norm


def _turn(before: XY, corner: XY, after: XY) -> float:
    """Twice the signed area of three points: positive where the outline turns left."""
    return (corner[0] - before[0]) * (after[1] - corner[1]) - (corner[1] - before[1]) * (
        after[0] - corner[0]
    )


def rounded(
    corners: tuple[XY, ...], radii_mm: tuple[float, ...], names: tuple[str, ...]
) -> tuple[Polygon, tuple[Side, ...], float]:
    """Round the corners, mm, of an outline given anticlockwise; all stay sharp if they do not fit.

    Returns
    -------
    outline, sides, area_mm2
        The polygon; its sides, each with half of the arcs at its ends; the exact area.

    Source
    ------
    Geometry.
    """
    if not can_round(corners, radii_mm):
        radii_mm = (0.0,) * len(corners)
    n, arcs = len(corners), _arcs(corners, radii_mm)
    area = abs(Polygon(corners).area)
    for i, (_, _, bite) in enumerate(arcs):
        turns_left = _turn(corners[i - 1], corners[i], corners[(i + 1) % n]) > 0
        area += -bite if turns_left else bite
    sides = tuple(_side(names[i], arcs[i][0], arcs[(i + 1) % n][0]) for i in range(n))
    return Polygon(_ring([point for points, _, _ in arcs for point in points])), sides, area


def _arcs(corners: Sequence[XY], radii_mm: Sequence[float]) -> list[tuple[list[XY], float, float]]:
    n = len(corners)
    return [fillet(corners[i - 1], corners[i], corners[(i + 1) % n], radii_mm[i]) for i in range(n)]


def can_round(corners: Sequence[XY], radii_mm: Sequence[float]) -> bool:
    """Return whether arcs at corners, mm, fit on their sides, and none crosses another side."""
    n, arcs = len(corners), _arcs(corners, radii_mm)
    for i, (_, takes, _) in enumerate(arcs):
        side = math.dist(corners[i], corners[(i + 1) % n])
        if takes + arcs[(i + 1) % n][1] > side + _SAME_POINT_MM:
            return False
    return Polygon(_ring([point for points, _, _ in arcs for point in points])).is_valid


def _ring(points: list[XY]) -> list[XY]:
    """Leave out points that repeat the one before, as where two arcs use up a whole side."""
    return [
        point for i, point in enumerate(points) if math.dist(point, points[i - 1]) > _SAME_POINT_MM
    ]


def _side(name: str, first: list[XY], second: list[XY]) -> Side:
    """One side from the middle of one corner's arc to the middle of the next."""
    line = LineString([*first[len(first) // 2 :], *second[: len(second) // 2 + 1]])
    return Side(name, line, line.length)


def circle(centre: XY, radius_mm: float) -> Polygon:
    """Return a disc, its centre in mm, as a polygon of 128 chords."""
    return Polygon(arc_points(centre, radius_mm, 0.0, 2 * math.pi)[:-1])


def outline_shape(
    outline: Outline, length_mm: float, width_mm: float, inside_radius_mm: float
) -> tuple[Polygon, tuple[Side, ...], tuple[XY, ...], float]:
    """Polygon, sides, sharp corners, mm, and exact area, mm², of a finished outline."""
    if isinstance(outline, Round):
        radius = outline.diameter.mm / 2
        disc = circle((radius, radius), radius)
        ring = LineString(disc.exterior.coords)
        side = Side("rim", ring, 2 * math.pi * radius)
        return disc, (side,), (), math.pi * radius**2
    corners = sharp_corners(outline, length_mm, width_mm)
    radii = corner_radii_mm(outline, inside_radius_mm)
    names = side_names(outline)
    if Polygon(corners).exterior.is_ccw is False:
        # Side i runs from point i to point i + 1: reversed, side i becomes the one before.
        corners, radii = corners[::-1], radii[::-1]
        names = (*names[-2::-1], names[-1])
    if isinstance(outline, OrderPolygon) and outline.corner_radius is None:
        radii = _inside_radii_mm(corners, inside_radius_mm)
    polygon, sides, area = rounded(corners, radii, names)
    return polygon, sides, corners, area
