"""Boundary lines made fit to mesh: small round holes, slivers and noded zones."""

from __future__ import annotations

import math

import numpy as np
import shapely
from scipy.spatial.distance import cdist
from shapely.geometry import Polygon

from ledgerstone import plane
from ledgerstone.arrays import FloatArray, IntArray
from ledgerstone.errors import OutlineUnusableError
from ledgerstone.strength._sharpening import sharpened

THINNEST_STRIP_MM = 10.0  # a narrower strip is taken to carry nothing; the shape checks stop it
SMALLEST_HOLE_MM = 8.0  # equivalent diameter; the verdict is averaged over more than this
TAP_HOLE_MM = 60.0  # round holes up to this become octagons
SIDES = 8  # of an octagon, and of what may be a circle
ROUND_FROM = 0.9  # area over that of a circle as long: a square has 0.79, an octagon 0.95
MAX_VERTICES = 600  # of an outline; beyond it curves are simplified, which bounds the work
STRAIGHT_MM = 0.05  # vertices this near a line through their neighbours are left out
COARSER, COARSEST_MM = 3.0, 50.0  # so much more is left out at a time, and so much at most
SAME_AREA = 0.02  # of it: so little may go with a piece or with short sides
SLIVER_ROUGHNESS_MM = 0.5  # what rounding leaves along a cut that was opened again
SNAPPED_MM = 3.0  # a zone's corner this near to the outline is on it
AT_SHARES = (0.02, 0.25, 0.5, 0.75, 0.98)  # of a segment, where a thin strip is looked for
GRID_MM = 0.01  # the overlay's: far below what is cast, far above rounding
MIN_SIDE_MM = 2.5  # shorter sides of any outline do not change its bending
SHORTEST_SIDE_MM = 5.0  # shorter sides go too, where slivers go
BEVELLED_LIMIT = 1.6  # where slivers go, corners sharper than about 77 degrees lose their tips


def simplified(outline: Polygon) -> Polygon:
    """Outline with the same strength and far fewer corners.

    Round holes up to 60 mm become the octagon around them and corner radii up to 60 mm become
    sharp corners (both are on the safe side at openings), and strips under 10 mm are taken away.

    Raises
    ------
    OutlineUnusableError
        If the outline is empty or crosses itself, or if more than one piece is left.

    Source
    ------
    methods §1.2.
    """
    if outline.is_empty or not outline.is_valid or outline.area < 1.0:
        raise OutlineUnusableError("The outline does not enclose one plain piece.")
    tolerance = STRAIGHT_MM
    tidy = _simplified(outline, tolerance)
    while shapely.get_num_coordinates(tidy) > MAX_VERTICES and tolerance < COARSEST_MM:
        tolerance *= COARSER
        tidy = _simplified(outline, tolerance)
    return _without_slivers(_without_short_sides(tidy, MIN_SIDE_MM))


def _simplified(outline: Polygon, tolerance_mm: float) -> Polygon:
    shell = _ring(np.asarray(outline.exterior.coords)[:-1], tolerance_mm)
    holes = [
        ring
        for hole in outline.interiors
        if (ring := _hole(np.asarray(hole.coords)[:-1], tolerance_mm)) is not None
    ]
    best = Polygon(shell, holes)
    if best.is_valid:
        return best
    plain = outline.simplify(tolerance_mm)
    return plain if isinstance(plain, Polygon) and plain.is_valid else outline


def _hole(points: FloatArray, tolerance_mm: float) -> FloatArray | None:
    polygon = Polygon(points)
    diameter = 2.0 * math.sqrt(polygon.area / math.pi)
    if diameter < SMALLEST_HOLE_MM:
        return None
    roundness = 4.0 * math.pi * polygon.area / polygon.length**2  # of a circle 1
    if diameter <= TAP_HOLE_MM and len(points) >= SIDES and roundness > ROUND_FROM:
        return _octagon(polygon.centroid.x, polygon.centroid.y, diameter / 2.0)
    return _ring(points, tolerance_mm)


def _octagon(x: float, y: float, radius: float) -> FloatArray:
    """Octagon around a circle, sides parallel to the axes, shape (8, 2)."""
    turn = (np.arange(SIDES) + 0.5) * 2.0 * math.pi / SIDES
    reach = radius / math.cos(math.pi / SIDES)
    return np.column_stack([x + reach * np.cos(turn), y + reach * np.sin(turn)])


def _ring(points: FloatArray, tolerance_mm: float) -> FloatArray:
    straight = shapely.simplify(Polygon(points), STRAIGHT_MM)
    sharp = Polygon(sharpened(shapely.get_coordinates(straight)[:-1]))
    simple = shapely.simplify(sharp, tolerance_mm)
    coords: FloatArray = shapely.get_coordinates(simple)[:-1]
    return coords if len(coords) >= 3 and simple.is_valid else points


def _without_slivers(polygon: Polygon) -> Polygon:
    """Polygon with strips under 10 mm taken away; whole corners stay."""
    if not has_thin_strip(polygon):
        return polygon
    half = THINNEST_STRIP_MM / 2.0
    worn = plane.buffer(polygon, -half, join_style="mitre")
    grown = plane.buffer(worn, half, join_style="mitre", mitre_limit=BEVELLED_LIMIT)
    opened = shapely.simplify(plane.intersection(grown, polygon), SLIVER_ROUGHNESS_MM)
    parts = [g for g in shapely.get_parts(opened) if isinstance(g, Polygon)]
    pieces = sorted((p for p in parts if p.area > SAME_AREA * polygon.area), key=lambda p: -p.area)
    if len(pieces) != 1:
        raise OutlineUnusableError("The slab falls apart at a thin strip.", pieces=len(pieces))
    return _without_short_sides(pieces[0], SHORTEST_SIDE_MM)


def _without_short_sides(polygon: Polygon, shortest_mm: float) -> Polygon:
    """Polygon without corners nearer than ``shortest_mm`` to the last, if it stays valid."""
    plain = shapely.remove_repeated_points(polygon, tolerance=shortest_mm)
    close = abs(plain.area - polygon.area) < SAME_AREA * polygon.area
    return plain if plain.is_valid and close else polygon


def segments_of(polygon: Polygon) -> tuple[FloatArray, FloatArray]:
    """Starts and ends of the boundary's segments, mm, shape (m, 2) each; the slab on their left.

    Source
    ------
    Geometry.
    """
    oriented = shapely.orient_polygons(polygon)
    rings = [oriented.exterior, *oriented.interiors]
    coords = [np.asarray(r.coords)[:, :2] for r in rings]
    return np.concatenate([c[:-1] for c in coords]), np.concatenate([c[1:] for c in coords])


def widths_mm(
    points: FloatArray,
    inward: FloatArray,
    starts: FloatArray,
    ends: FloatArray,
    *,
    within_mm: float,
) -> FloatArray:
    """Width of the concrete along the normal at boundary points, shape (n,), mm; inf where none.

    Parameters
    ----------
    points, inward
        Places on the boundary, mm, and the unit normals into the slab, shape (n, 2) each.
    starts, ends
        Segments of the boundary, shape (m, 2) each, mm.
    within_mm
        Wider than this counts as none.

    Source
    ------
    Geometry: where the ray along the normal first meets a segment.
    """
    reach = within_mm + 0.5 * np.linalg.norm(ends - starts, axis=1)
    point, segment = np.nonzero(cdist(points, 0.5 * (starts + ends)) <= reach)
    (sx, sy), (ix, iy) = (ends - starts)[segment].T, inward[point].T
    dx, dy = (starts[segment] - points[point]).T
    cross = ix * sy - iy * sx
    safe = np.where(np.abs(cross) < 1e-9, np.inf, cross)
    ahead, along = (dx * sy - dy * sx) / safe, (dx * iy - dy * ix) / safe
    hit = (ahead > 1e-3) & (along > -1e-9) & (along < 1.0 + 1e-9) & np.isfinite(safe)
    hit &= ahead <= within_mm
    found = np.full(len(points), np.inf)
    np.minimum.at(found, point[hit], ahead[hit])
    return found


def has_thin_strip(polygon: Polygon) -> bool:
    """Whether a strip under 10 mm is met square to any boundary segment, at five places on it.

    Source
    ------
    As ``widths_mm``; the five places on a segment, its ends and middle, are our own choice.
    """
    starts, ends = segments_of(polygon)
    side = ends - starts
    inward = np.column_stack([-side[:, 1], side[:, 0]]) / np.linalg.norm(side, axis=1)[:, None]
    at = np.concatenate([starts + f * side for f in AT_SHARES])
    inward = np.tile(inward, (len(AT_SHARES), 1))
    widths = widths_mm(at, inward, starts, ends, within_mm=THINNEST_STRIP_MM)
    return bool((widths < THINNEST_STRIP_MM).any())


def noded(polygon: Polygon, zones: list[Polygon]) -> tuple[FloatArray, IntArray, Polygon]:
    """Boundary and zones' edges as a planar graph: cut wherever two of them cross.

    Returns
    -------
    vertices, segments
        Shape (n, 2), mm, and pairs of vertex numbers, shape (m, 2).
    polygon
        The same polygon with the crossings among its corners, to the last digit.

    Source
    ------
    Geometry: GEOS's noding and overlay, through ``plane``.
    """
    if not zones:
        starts, _ = segments_of(polygon)
        return starts, _ring_segments(polygon), polygon
    snapped = [shapely.snap(_plain_zone(z), polygon, SNAPPED_MM) for z in zones]
    edges = [plane.intersection(z.boundary, polygon) for z in snapped]
    whole = plane.union([polygon.boundary, *edges], grid_mm=GRID_MM)
    lines = list(shapely.get_parts(shapely.node(whole)))
    parts = [np.round(shapely.get_coordinates(line), 3) for line in lines]
    pairs = np.concatenate([np.stack([p[:-1], p[1:]], axis=1) for p in parts])
    vertices, index = np.unique(pairs.reshape(-1, 2), axis=0, return_inverse=True)
    segments = np.unique(np.sort(index.reshape(-1, 2), axis=1), axis=0).astype(np.intp)
    segments = segments[segments[:, 0] != segments[:, 1]]
    return vertices, segments, _rebuilt(polygon, vertices, segments)


def _plain_zone(zone: Polygon) -> Polygon:
    """Zone with its small arcs made sharp, as the outline's are: thinner in its corners."""
    plain = Polygon(_ring(np.asarray(zone.exterior.coords)[:-1, :2], STRAIGHT_MM))
    return plain if plain.is_valid else zone


def _rebuilt(polygon: Polygon, vertices: FloatArray, segments: IntArray) -> Polygon:
    """Polygon with exactly these vertices along its boundary."""
    pieces = shapely.get_parts(
        shapely.polygonize(list(shapely.get_parts(shapely.multilinestrings(vertices[segments]))))
    )
    inner = shapely.point_on_surface(pieces)
    kept = pieces[shapely.contains(plane.buffer(polygon, GRID_MM), inner)]
    whole = shapely.coverage_union_all(kept)
    return whole if isinstance(whole, Polygon) and whole.is_valid else polygon


def _ring_segments(polygon: Polygon) -> IntArray:
    sizes = [len(r.coords) - 1 for r in (polygon.exterior, *polygon.interiors)]
    offset, parts = 0, []
    for size in sizes:
        here = offset + np.arange(size)
        parts.append(np.column_stack([here, np.roll(here, -1)]))
        offset += size
    return np.concatenate(parts).astype(np.intp)
