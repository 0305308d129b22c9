"""A rectangular cut-out."""

from __future__ import annotations

from shapely.geometry import Polygon

from ledgerstone.cutouts._boxed import boxed_size_mm, placed_box
from ledgerstone.cutouts.kind import CutoutKind
from ledgerstone.order import Cutout


def _corner_radius_mm(cutout: Cutout, inside_radius_mm: float) -> float:
    return cutout.corner_radius.mm if cutout.corner_radius is not None else inside_radius_mm


def _placed(cutout: Cutout, inside_radius_mm: float) -> tuple[Polygon, float]:
    return placed_box(cutout, _corner_radius_mm(cutout, inside_radius_mm))


RECTANGLE = CutoutKind(
    name="rectangle",
    sizes=("length", "width"),
    docstring="A rectangular opening.",
    has_corners=True,
    size_mm=boxed_size_mm,
    placed=_placed,
    corner_radius_mm=_corner_radius_mm,
)
