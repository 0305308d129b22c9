"""What stands about the slab in the view: its shadow, the rests under it and a rule for scale."""

from __future__ import annotations

from typing import Final

from ledgerstone.drawing.beneath import rest_polygons
from ledgerstone.drawing.camera import Camera, shadow_of
from ledgerstone.drawing.frame import course_of
from ledgerstone.drawing.lettering import INK, PENCIL, lettered
from ledgerstone.drawing.shadow import drop_of
from ledgerstone.drawing.solid import Ribbon, hanging
from ledgerstone.drawing.svg import Element, element, path_of
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape

LETTERS: Final = 24.0
_INCH_MM: Final = 25.4
_ROD_MM: Final = 34.0


def shadow_ends(shape: Shape, camera: Camera, floor_mm: float) -> list[XY]:
    """Return how far the darker part of the shadow reaches, on the sheet."""
    x0, y0, x1, y1 = shape.outline.bounds
    drop = drop_of(shape, floor_mm)
    ends = [shadow_of((x, y), drop) for x in (x0, x1) for y in (y0, y1)]
    return [camera.at(x, y, floor_mm) for x, y in ends]


def rests(slab: Slab, shape: Shape, camera: Camera, floor_mm: float) -> list[Element]:
    """Draw what carries the slab in outline, from its underside to the floor."""
    if slab.rests is None:
        return []
    drawn = []
    for piece in rest_polygons(slab.rests, shape, 9.0 / camera.per_mm):
        ring = course_of(piece.exterior) if piece.exterior.is_ccw else piece.exterior.coords[:0:-1]
        ribbons = hanging(ring, -shape.thickness_mm, floor_mm)
        drawn += [_outlined(ribbon, camera) for ribbon in ribbons]
    return drawn


def _outlined(ribbon: Ribbon, camera: Camera) -> Element:
    tops, feet = [], []
    uprights = ""
    for i, face in enumerate(ribbon.faces):
        tops.append(camera.at(*face.start, face.top_mm))
        feet.append(camera.at(*face.start, face.foot_mm))
        if i and len(ribbon.faces) < 8:
            uprights += path_of([tops[-1], feet[-1]], closed=False)
    last = ribbon.faces[-1]
    tops.append(camera.at(*last.end, last.top_mm))
    feet.append(camera.at(*last.end, last.foot_mm))
    return element(
        "path",
        d=path_of([*tops, *feet[::-1]]) + uprights,
        fill="#fbfaf7",
        fill_opacity=0.45,
        stroke=PENCIL,
        stroke_width=1.1,
        stroke_linejoin="round",
        data_part="rest",
    )


def rod_of(like: Length, longest_mm: float) -> tuple[float, int, str]:
    """Length of the rule, its parts and what it says: short beside a small slab."""
    if like.unit in {"in", "ft"}:
        return (36 * _INCH_MM, 6, "3 ft") if longest_mm > 600 else (12 * _INCH_MM, 6, "12 in")
    return (1000.0, 10, "1 m") if longest_mm > 600 else (300.0, 6, "300 mm")


def rod_corners(shape: Shape, rod_mm: float, wide_mm: float) -> tuple[XY, XY]:
    """Front-left and back-right corners of the rule, lying before the slab."""
    x0, y0, x1, _ = shape.outline.bounds
    left = x0 if rod_mm < x1 - x0 else (x0 + x1 - rod_mm) / 2
    near = y0 - 3.4 * wide_mm
    return (left, near), (left + rod_mm, near + wide_mm)


def rod(
    shape: Shape, camera: Camera, floor_mm: float, told: tuple[float, int, str]
) -> list[Element]:
    """Lay our rule on the floor before the slab, and say how long it is."""
    rod_mm, parts, says = told
    (x0, y0), (x1, y1) = rod_corners(shape, rod_mm, rod_width(camera))

    def quad(a: float, b: float) -> str:
        corners = ((a, y0), (b, y0), (b, y1), (a, y1))
        return path_of([camera.at(x, y, floor_mm) for x, y in corners])

    each = rod_mm / parts
    dark = "".join(quad(x0 + i * each, x0 + (i + 1) * each) for i in range(0, parts, 2))
    at = camera.at(x1, y0, floor_mm)
    return [
        element("path", d=quad(x0, x1), fill="#fbfaf7", stroke=INK, stroke_width=1),
        element("path", d=dark, fill=INK),
        lettered(says, (at[0] - 4, at[1] + LETTERS * 0.95), LETTERS, anchor="middle", fill=INK),
    ]


def rod_width(camera: Camera) -> float:
    """Return how wide the rule is, mm: never so thin that it cannot be seen."""
    return max(_ROD_MM * 0.5, 11.0 / camera.per_mm)
