"""A slot: a long cut-out with round ends."""

from __future__ import annotations

from shapely.geometry import Polygon

from ledgerstone.cutouts._boxed import boxed_size_mm, placed_box
from ledgerstone.cutouts.kind import CutoutKind
from ledgerstone.order import Cutout


def _placed(cutout: Cutout, _inside_radius_mm: float) -> tuple[Polygon, float]:
    return placed_box(cutout, min(boxed_size_mm(cutout)) / 2)


def _corner_radius_mm(_cutout: Cutout, _inside_radius_mm: float) -> None:
    return None


SLOT = CutoutKind(
    name="slot",
    sizes=("length", "width"),
    docstring="A slot with round ends.",
    has_corners=False,
    size_mm=boxed_size_mm,
    placed=_placed,
    corner_radius_mm=_corner_radius_mm,
    centre_lines=True,
)
