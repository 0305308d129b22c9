"""Triangles over any slab, with every edge of its boundary kept."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np
import shapely
from shapely.geometry import MultiPoint, Polygon

from ledgerstone.arrays import FloatArray, IntArray
from ledgerstone.outline import XY
from ledgerstone.strength import _outline, _refine
from ledgerstone.strength._dividing import divided, rounded_off
from ledgerstone.strength._lattice import lattice
from ledgerstone.strength._locating import Locator, locator_of
from ledgerstone.strength._mirrored import Image, image_of
from ledgerstone.strength._spacing import (
    Spacing,
    affordable,
    refined_at,
    ruled_mm,
    spacing_for,
)
from ledgerstone.strength._turning import (
    are_clear_of,
    round_corners,
    sizes_about,
    with_ends_at_the_edge,
    with_rings,
)

MAX_NODES = 2000  # three unknowns each: methods §1.2
MAX_NODES_ASKED = 40_000  # where the caller names the element size
MOST_TRIES = 4  # to come below that, each coarser by a power of how far the last was above it
COARSER_BY, COARSER_AS = 1.1, 1.5  # the factor and the power: from trials
LOOKED_AT = (61, 31)  # places along and across, at which the spacing's nodes are estimated
SPARE_NODES = 100  # below the most, for what the estimate leaves out
SAME_AREA = 0.02  # of it: a curve divided may change it so much


def _cross(u: FloatArray, v: FloatArray) -> FloatArray:
    return np.asarray(u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0])


@dataclass(frozen=True, slots=True)
class Mesh:
    """Triangles over a slab.

    Parameters
    ----------
    nodes
        Places of the nodes, mm, shape (n, 2).
    triangles
        Node numbers, anticlockwise, shape (m, 3).
    steps
        Node numbers of every step of the boundary and of the zones' edges, shape (s, 2).
    polygon
        The outline that was meshed, after small corners and holes were made plain.
    coarse_mm
        Element size far from everything.
    """

    nodes: FloatArray
    triangles: IntArray
    steps: IntArray
    polygon: Polygon
    coarse_mm: float
    _image: Image
    _locator: Locator

    def located(self, points: FloatArray) -> tuple[IntArray, FloatArray]:
        """Triangle that holds each of ``points``, shape (k, 2), mm, and area coordinates in it.

        Returns
        -------
        triangle, shares
            Shape (k,), -1 where a point lies outside the mesh; and (k, 3), by corner, sum 1.

        Source
        ------
        Geometry: area coordinates.
        """
        points = np.asarray(points, dtype=float).reshape(-1, 2)
        triangle = self._locator.triangle_at(points)
        return triangle, self.shares(triangle, points)

    def shares(self, triangle: IntArray, points: FloatArray) -> FloatArray:
        """Area coordinates of ``points``, shape (k, 2), mm, in triangles (k,); shape (k, 3).

        Source
        ------
        Geometry: shares of the triangle's area.
        """
        a, b, c = (self.nodes[self.triangles[triangle, k]] for k in range(3))
        twice = _cross(b - a, c - a)
        second = _cross(points - a, c - a) / twice
        third = _cross(b - a, points - a) / twice
        return np.column_stack([1.0 - second - third, second, third])

    def nearest(self, points: FloatArray) -> tuple[IntArray, FloatArray, FloatArray]:
        """Like ``located``, with points outside moved to the nearest place on the mesh.

        Points are in mm, shape (k, 2).

        Returns
        -------
        triangle, shares, moved_mm
            Shapes (k,), (k, 3) and (k,): how far each point lay outside, 0 for those within.

        Source
        ------
        Geometry: clipped area coordinates, which lie near the nearest place and not always on it.
        """
        points = np.asarray(points, dtype=float).reshape(-1, 2)
        triangle, share = self.located(points)
        moved = np.zeros(len(points))
        every = np.arange(len(self.triangles))
        for k in np.flatnonzero(triangle < 0).tolist():
            clipped = np.clip(
                self.shares(every, np.broadcast_to(points[k], (len(every), 2))), 0, None
            )
            clipped /= clipped.sum(axis=1, keepdims=True)
            places = np.einsum("mk,mki->mi", clipped, self.nodes[self.triangles])
            distance = np.hypot(*(places - points[k]).T)
            best = int(np.argmin(distance))
            triangle[k], share[k], moved[k] = best, clipped[best], distance[best]
        return triangle, share, moved

    def seen(self, points: FloatArray) -> FloatArray:
        """Points in the one of the plan's mirror images that was meshed, mm, shape (k, 2) each.

        Source
        ------
        Geometry.
        """
        return self._image.points(points)

    def is_even(self, axis: Literal["x", "y"]) -> bool:
        """Return whether the plan is its own mirror image along an axis."""
        return self._image.alike["xy".index(axis)]

    def smallest_angle_degrees(self) -> float:
        """Smallest angle of any triangle, degrees.

        Source
        ------
        Geometry.
        """
        return float(_refine.angles_degrees(self.nodes, self.triangles).min())


def mesh_of(
    outline: Polygon,
    *,
    thickness_mm: float,
    mesh_mm: float | None = None,
    zones: Sequence[Polygon] = (),
    turning: Sequence[XY] = (),
) -> Mesh:
    """Mesh of a slab, the same for the same input, of at most about 2000 nodes.

    Parameters
    ----------
    outline
        Slab in plan with its openings, mm.
    thickness_mm
        Thickness; corners that turn inward are meshed at half of it.
    mesh_mm
        Coarse element size; None takes ``ruled_mm``.
    zones
        Areas whose edges must be edges of triangles.
    turning
        Places about which a slab turns, on its rests or at grips, mm: the mesh is finer there.

    Raises
    ------
    OutlineUnusableError
        If the outline is no single piece, or cannot be covered by triangles.
    """
    about = MultiPoint(turning)
    image = image_of(outline, [*zones, about])
    seen = _outline.simplified(image.of(outline))
    most = MAX_NODES if mesh_mm is None else MAX_NODES_ASKED
    turned = image.points(np.array(turning).reshape(-1, 2))
    ends = with_rings(turned)
    spacing = _spacing_of(seen, thickness_mm, mesh_mm, most, ends)
    cornered = with_ends_at_the_edge(_rounded_off(seen, spacing), turned)
    boundary = _outline.noded(cornered, [image.of(zone) for zone in zones])
    shapely.prepare(boundary[-1])
    corners = _round_corners(seen, mesh_mm)
    corners = corners[are_clear_of(ends, corners)]
    mesh = _meshed(image, boundary, spacing, ends, corners)
    for _ in range(MOST_TRIES):
        if len(mesh.nodes) <= most:
            break
        spacing = spacing.scaled(COARSER_BY * (len(mesh.nodes) / most) ** COARSER_AS)
        mesh = _meshed(image, boundary, spacing, ends, corners)
    return mesh


def _round_corners(polygon: Polygon, mesh_mm: float | None) -> FloatArray:
    """Rings of nodes at the corners that turn inward, closer on a mesh finer than the rule's."""
    x0, y0, x1, y1 = polygon.bounds
    rule = ruled_mm(min(x1 - x0, y1 - y0))
    return round_corners(polygon, 1.0 if mesh_mm is None else min(mesh_mm / rule, 1.0))


def _spacing_of(
    polygon: Polygon, thickness_mm: float, mesh_mm: float | None, most: int, turning: FloatArray
) -> Spacing:
    x0, y0, x1, y1 = polygon.bounds
    spacing = spacing_for(
        *_outline.segments_of(polygon),
        width_mm=min(x1 - x0, y1 - y0),
        thickness_mm=thickness_mm,
        mesh_mm=mesh_mm,
        turning=(turning, sizes_about(polygon, turning)),
    )
    many_x, many_y = LOOKED_AT
    gx, gy = np.meshgrid(np.linspace(x0, x1, many_x), np.linspace(y0, y1, many_y))
    places = np.column_stack([gx.ravel(), gy.ravel()])
    places = places[shapely.contains_xy(polygon, places[:, 0], places[:, 1])]
    if len(places) == 0:
        return spacing
    return affordable(spacing, polygon.area, places, most - SPARE_NODES)


def _rounded_off(polygon: Polygon, spacing: Spacing) -> Polygon:
    """Polygon with its curves divided evenly; as it is where that would change its area."""
    shell, *holes = (
        rounded_off(np.asarray(ring.coords)[:-1, :2], spacing)
        for ring in (polygon.exterior, *polygon.interiors)
    )
    smooth = Polygon(shell, holes)
    close = abs(smooth.area - polygon.area) < SAME_AREA * polygon.area
    return smooth if smooth.is_valid and close else polygon


def _meshed(
    image: Image,
    boundary: tuple[FloatArray, IntArray, Polygon],
    spacing: Spacing,
    kept: FloatArray,
    corners: FloatArray,
) -> Mesh:
    """Mesh with nodes at the places ``kept`` (k, 2) and ``corners`` (c, 2), but at the boundary."""
    vertices, segments, polygon = boundary
    border, cut = divided(vertices, segments, spacing)
    spacing = refined_at(spacing, border, cut)
    starts, ends = border[cut[:, 0]], border[cut[:, 1]]
    kept = kept[shapely.contains_xy(polygon, kept[:, 0], kept[:, 1])]
    kept = _refine.clear_of(kept, starts, ends, _refine.PROTECTED)
    inner = _refine.clear_of(lattice(polygon, spacing), starts, ends, _refine.PROTECTED)
    inner = inner[are_clear_of(kept, inner)]
    corners = corners[shapely.contains_xy(polygon, corners[:, 0], corners[:, 1])]
    corners = _refine.clear_of(corners, starts, ends, _refine.LOOSELY_PROTECTED)
    kept = np.concatenate([kept, corners])
    border = np.concatenate([border, kept])
    covered = _refine.at_rest(polygon, border, inner, cut, spacing, close=len(kept))
    covered, cut = _refine.recovered(polygon, border, cut, covered)
    nodes = image.back(covered.nodes)
    triangles = covered.triangles[:, ::-1] if image.turns_over else covered.triangles
    return Mesh(
        nodes,
        triangles,
        cut,
        shapely.transform(polygon, image.back),
        spacing.coarse_mm,
        image,
        locator_of(nodes, triangles),
    )
