"""A round cut-out."""

from __future__ import annotations

import math

from shapely.geometry import Polygon

from ledgerstone.cutouts._boxed import centre_mm
from ledgerstone.cutouts.kind import CutoutKind
from ledgerstone.order import Cutout
from ledgerstone.outline import XY, circle


def _size_mm(cutout: Cutout) -> XY:
    diameter = cutout.diameter.mm if cutout.diameter else 0.0
    return diameter, diameter


def _placed(cutout: Cutout, _inside_radius_mm: float) -> tuple[Polygon, float]:
    diameter, _ = _size_mm(cutout)
    return circle(centre_mm(cutout), diameter / 2), math.pi * (diameter / 2) ** 2


def _corner_radius_mm(_cutout: Cutout, _inside_radius_mm: float) -> None:
    return None


CIRCLE = CutoutKind(
    name="circle",
    sizes=("diameter",),
    docstring="A round opening.",
    has_corners=False,
    size_mm=_size_mm,
    placed=_placed,
    corner_radius_mm=_corner_radius_mm,
    centre_lines=True,
    is_circle=True,
)
