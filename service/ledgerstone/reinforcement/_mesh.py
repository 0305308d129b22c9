"""Mesh over a whole slab, in the rectangles that are cut from sheets."""

from __future__ import annotations

from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.steel import MeshPiece
from ledgerstone.workshop.records import Workshop


def mesh_of(
    shape: Shape, workshop: Workshop, beside_mm: float
) -> tuple[tuple[MeshPiece, ...], tuple[XY, ...]]:
    """One piece over the slab's box, its cover off every side."""
    x0, y0, x1, y1 = shape.outline.bounds
    length, width = x1 - x0 - 2 * beside_mm, y1 - y0 - 2 * beside_mm
    steel = workshop.steel
    if min(length, width) < 2 * steel.mesh_pitch_mm:
        return (), ()
    piece = MeshPiece("M1", steel.mesh_wire_mm, steel.mesh_pitch_mm, length, width)
    return (piece,), ((x0 + beside_mm, y0 + beside_mm),)
