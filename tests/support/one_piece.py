"""Shapes in plan that are known to stay one piece, typed as the one polygon they are."""

from __future__ import annotations

from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry


def one_piece(shape: BaseGeometry) -> Polygon:
    """The shape, seen to be a single polygon."""
    assert isinstance(shape, Polygon), shape.geom_type
    return shape


def less(slab: Polygon, *openings: BaseGeometry) -> Polygon:
    """A slab with openings taken out, still in one piece."""
    left: BaseGeometry = slab
    for opening in openings:
        left = left.difference(opening)
    return one_piece(left)
