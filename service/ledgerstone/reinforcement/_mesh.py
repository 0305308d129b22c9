"""Mesh over a whole slab, in the rectangles that are cut from sheets."""

from __future__ import annotations

from shapely.geometry import box

from ledgerstone import plane
from ledgerstone.order import LShape, Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.steel import MeshPiece, density_of
from ledgerstone.steel_rules import lap_mm
from ledgerstone.workshop.records import Workshop

MeshBounds = tuple[float, float, float, float]  # x0, y0, x1, y1, mm


def mesh_of(
    slab: Slab, shape: Shape, workshop: Workshop, beside_mm: float
) -> tuple[tuple[MeshPiece, ...], tuple[XY, ...]]:
    """Pieces of mesh, ``beside_mm`` off every side, and their front-left corners, mm.

    One over the slab's box; over an L two that lap at its inside corner. What lies outside the
    slab or in an opening is cut away. Nothing if a side would be under two pitches of the mesh.

    Source
    ------
    Geometry; the lap as ``steel_rules.lap_mm``; two pitches at least: common practice, no source.
    """
    steel = workshop.steel
    lap = lap_mm(workshop, steel.mesh_wire_mm)
    rectangles = _rectangles(slab, shape, beside_mm, lap)
    narrowest = min(min(x1 - x0, y1 - y0) for x0, y0, x1, y1 in rectangles)
    if narrowest < 2 * steel.mesh_pitch_mm:
        return (), ()
    concrete = plane.buffer(shape.net, -beside_mm)
    pieces = []
    for number, (x0, y0, x1, y1) in enumerate(rectangles, start=1):
        length, width = x1 - x0, y1 - y0
        kept_mm2 = plane.intersection(box(x0, y0, x1, y1), concrete).area
        cut_mm2 = max(0.0, length * width - kept_mm2)
        mark, wire, pitch = f"M{number}", steel.mesh_wire_mm, steel.mesh_pitch_mm
        mesh = MeshPiece(
            mark,
            wire,
            pitch,
            length,
            width,
            cut_away_mm2=cut_mm2,
            kg_per_m3=density_of(steel.material),
        )
        pieces.append(mesh)
    return tuple(pieces), tuple((x0, y0) for x0, y0, _, _ in rectangles)


def _rectangles(slab: Slab, shape: Shape, beside_mm: float, lap: float) -> list[MeshBounds]:
    """Boxes of the mesh, ``beside_mm`` within the outline: of an L the two of least area."""
    x0, y0, x1, y1 = shape.outline.bounds
    whole = (x0 + beside_mm, y0 + beside_mm, x1 - beside_mm, y1 - beside_mm)
    if not isinstance(slab.outline, LShape):
        return [whole]
    middles = {side.name: side.line.interpolate(0.5, normalized=True) for side in shape.sides}
    corner_x, corner_y = middles["notch-y"].x, middles["notch-x"].y
    depth, hand = slab.outline.notch.corner.split("-")
    x0, y0, x1, y1 = whole
    left, back = hand == "left", depth == "back"
    # Of either arm where it ends at the notch, and how far the other reaches into it.
    end_x = corner_x + beside_mm if left else corner_x - beside_mm
    end_y = corner_y - beside_mm if back else corner_y + beside_mm
    lap_x = min(end_x + lap, x1) if left else max(end_x - lap, x0)
    lap_y = max(end_y - lap, y0) if back else min(end_y + lap, y1)
    deep = (end_x, x1) if left else (x0, end_x)
    wide = (y0, end_y) if back else (end_y, y1)
    reach_x = (x0, lap_x) if left else (lap_x, x1)
    reach_y = (lap_y, y1) if back else (y0, lap_y)
    along = [_bounds((x0, x1), wide), _bounds(deep, reach_y)]
    across = [_bounds(deep, (y0, y1)), _bounds(reach_x, wide)]
    return min(along, across, key=lambda pair: sum(map(_area_mm2, pair)))


def _bounds(x: XY, y: XY) -> MeshBounds:
    return x[0], y[0], x[1], y[1]


def _area_mm2(bounds: MeshBounds) -> float:
    x0, y0, x1, y1 = bounds
    return (x1 - x0) * (y1 - y0)
