"""What lies about the slab in the view: how far its shadow reaches, and a rule for scale."""

from __future__ import annotations

from typing import Final

from ledgerstone.drawing.camera import Camera, shadow_of
from ledgerstone.drawing.lettering import INK
from ledgerstone.drawing.shadow import drop_of
from ledgerstone.drawing.svg import SvgElement, element, path_of
from ledgerstone.outline import XY
from ledgerstone.quantities import INCH_MM, Length
from ledgerstone.shape import Shape

Bounds = tuple[float, float, float, float]

LETTERS: Final = 24.0
_ROD_MM: Final = 34.0


def shadow_ends(shape: Shape, camera: Camera, floor_mm: float) -> list[XY]:
    """Corners of the darker part of the shadow, sheet units."""
    x0, y0, x1, y1 = shape.outline.bounds
    drop = drop_of(shape, floor_mm)
    ends = [shadow_of((x, y), drop) for x in (x0, x1) for y in (y0, y1)]
    return [camera.at(x, y, floor_mm) for x, y in ends]


def rod_of(like: Length, longest_mm: float) -> tuple[float, int, str]:
    """Length of the rule, mm, its number of parts and its label: short beside a small slab."""
    if like.unit in {"in", "ft"}:
        return (36 * INCH_MM, 6, "3 ft") if longest_mm > 600 else (12 * INCH_MM, 6, "12 in")
    return (1000.0, 10, "1 m") if longest_mm > 600 else (300.0, 6, "300 mm")


def rod_corners(bounds: Bounds, rod_mm: float, wide_mm: float) -> tuple[XY, XY]:
    """Front-left and back-right corners of the rule, plane mm, in front of the bounds."""
    x0, y0, x1, _ = bounds
    left = x0 if rod_mm < x1 - x0 else (x0 + x1 - rod_mm) / 2
    near = y0 - 3.4 * wide_mm
    return (left, near), (left + rod_mm, near + wide_mm)


def rod(
    bounds: Bounds, camera: Camera, floor_mm: float, scale: tuple[float, int, str]
) -> tuple[list[SvgElement], XY]:
    """Draw the rule on the floor before the slabs; also where its label goes, sheet units."""
    rod_mm, parts, _ = scale
    (x0, y0), (x1, y1) = rod_corners(bounds, rod_mm, rod_width(camera))

    def quad(a: float, b: float) -> str:
        corners = ((a, y0), (b, y0), (b, y1), (a, y1))
        return path_of([camera.at(x, y, floor_mm) for x, y in corners])

    each = rod_mm / parts
    dark = "".join(quad(x0 + i * each, x0 + (i + 1) * each) for i in range(0, parts, 2))
    at = camera.at(x1, y0, floor_mm)
    drawn = [
        element("path", d=quad(x0, x1), fill="#fbfaf7", stroke=INK, stroke_width=1),
        element("path", d=dark, fill=INK),
    ]
    return drawn, (at[0] - 4, at[1] + LETTERS * 0.95)


def rod_width(camera: Camera) -> float:
    """Return how wide the rule is, mm: never so thin that it cannot be seen."""
    return max(_ROD_MM * 0.5, 11.0 / camera.per_mm)
