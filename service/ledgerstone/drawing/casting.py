"""Drawings for the workshop: steel in the mould, a section through it, boards on their sheets."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import shapely
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.drawing.lettering import FAMILY, INK, PENCIL, lettered, wrapped
from ledgerstone.drawing.svg import SvgElement, document, element, path_of, render
from ledgerstone.mould import Nest
from ledgerstone.outline import XY
from ledgerstone.shape import Shape

_WIDE, _EDGE, _SMALL = 600.0, 14.0, 15.0
_TALLEST = 420.0
_STEEL = "#94371a"
_MARK = 10.5  # a piece's number: 9 points across a page, and no higher than a narrow strip
_RAIL_HOLDS_MM = 200.0


@dataclass(frozen=True, slots=True)
class DrawnBar:
    """A bar as it is drawn: its mark and its ends, plane mm."""

    mark: str
    start_mm: XY
    end_mm: XY


@dataclass(frozen=True, slots=True)
class Layer:
    """Steel of one slab, where it is gripped and where a rail is clamped, as it is drawn.

    ``grips_mm`` are two places along the long side, which lies along y where ``along_y``;
    ``grip_says`` stands beside them. ``rail_mm`` are the ends of the rail, where there is one, and
    ``rail_says`` stands on it; mesh is cut ``mesh_off_mm`` back from edges and openings.
    """

    bars: tuple[DrawnBar, ...]
    mesh_mm: tuple[tuple[float, float, float, float], ...]
    grips_mm: XY
    along_y: bool
    rail_mm: tuple[XY, XY] | None = None
    grip_says: str = ""
    rail_says: str = ""
    mesh_off_mm: float = 0.0


@dataclass(frozen=True, slots=True)
class _Scale:
    per_mm: float
    x_mm: float
    top_mm: float
    slack: float
    over: float

    def at(self, point: Sequence[float]) -> XY:
        x = _EDGE + 24 + self.slack + self.per_mm * (point[0] - self.x_mm)
        return x, _EDGE + self.over + self.per_mm * (self.top_mm - point[1])


def draw_steel(
    shape: Shape,
    layer: Layer,
    *,
    title: str,
    says: str,
    wide: float = _WIDE,
    tallest: float = _TALLEST,
) -> str:
    """Draw where bars, mesh and hands go, seen as the shape lies: an SVG document.

    Parameters
    ----------
    wide
        Width in sheet units. Letters are 15 high, so a narrower sheet has larger ones on paper.
    tallest
        Greatest height of the slab itself, sheet units.
    """
    x0, y0, x1, y1 = shape.outline.bounds
    room = wide - 2 * (_EDGE + 24)
    per_mm = min(room / (x1 - x0), tallest / (y1 - y0))
    slack = (room - per_mm * (x1 - x0)) / 2
    over = 24.0 if layer.grip_says else 8.0
    scale = _Scale(per_mm, x0, y1, slack, over)
    height = per_mm * (y1 - y0) + 2 * (_EDGE + over)
    drawn = [*_concrete(shape, scale)]
    for box in layer.mesh_mm:
        drawn += _mesh(box, plane.buffer(shape.net, -layer.mesh_off_mm), scale)
    drawn += _grips(shape, layer, scale)
    if layer.rail_mm is not None:
        drawn += _rail(*layer.rail_mm, scale, layer.rail_says)
    for bar in layer.bars:
        drawn += _bar(bar, scale)
    return _drawn("steel", (wide, height), title, says, drawn)


def _drawn(prefix: str, size: XY, title: str, says: str, drawn: Sequence[SvgElement]) -> str:
    group = element("g", *drawn, font_family=FAMILY)
    return render(document(size, prefix, title=title, says=says, children=[group]))


def _concrete(shape: Shape, scale: _Scale) -> list[SvgElement]:
    parts = [p for p in shapely.get_parts(shape.net) if isinstance(p, Polygon)]
    drawn = []
    for part in parts:
        for ring in (part.exterior, *part.interiors):
            path = path_of([scale.at(xy) for xy in ring.coords[:-1]])
            drawn.append(element("path", d=path, fill="none", stroke=INK, stroke_width=2))
    return drawn


def _mesh(
    box: tuple[float, float, float, float], room: BaseGeometry, scale: _Scale
) -> list[SvgElement]:
    """Draw a mesh by its edge and every fourth wire, cut back from edges and openings."""
    x0, y0, x1, y1 = box
    area = plane.intersection(shapely.box(x0, y0, x1, y1), room)
    step = 200.0
    lines = [
        [(x0 + i * step, y0), (x0 + i * step, y1)] for i in range(1, int((x1 - x0) / step) + 1)
    ]
    lines += [
        [(x0, y0 + i * step), (x1, y0 + i * step)] for i in range(1, int((y1 - y0) / step) + 1)
    ]
    courses = [list(part.exterior.coords) for part in shapely.get_parts(area) if part.area > 0]
    for line in lines:
        met = shapely.get_parts(plane.intersection(shapely.LineString(line), area))
        courses += [list(part.coords) for part in met if part.length > 0]
    return [
        element(
            "path",
            d=path_of([scale.at(xy) for xy in course], closed=False),
            fill="none",
            stroke=PENCIL,
            stroke_width=0.7,
            stroke_dasharray="4 3",
        )
        for course in courses
    ]


def _bar(bar: DrawnBar, scale: _Scale) -> list[SvgElement]:
    start, end = scale.at(bar.start_mm), scale.at(bar.end_mm)
    along_x = abs(end[0] - start[0]) >= abs(end[1] - start[1])
    number = int("".join(c for c in bar.mark if c.isdigit()) or 0)
    share = (0.12, 0.3, 0.48, 0.66, 0.84)[number % 5]  # so that neighbours' marks do not overlap
    at = (start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1]))
    at = (at[0], at[1] + 5) if along_x else (at[0], at[1])
    line = path_of([start, end], closed=False)
    return [
        element("path", d=line, fill="none", stroke=_STEEL, stroke_width=3),
        lettered(bar.mark, at, _SMALL, anchor="middle", bold=True, halo="#ffffff"),
    ]


def _grips(shape: Shape, layer: Layer, scale: _Scale) -> list[SvgElement]:
    """Mark the two best places to lift by arrows outside the slab."""
    x0, y0, x1, y1 = shape.outline.bounds
    drawn = []
    for place in layer.grips_mm:
        if layer.along_y:
            ends = [(scale.at((x0, place)), -1), (scale.at((x1, place)), 1)]
            arrows = [f"M{x + 4 * s:.1f} {y:.1f}l{12 * s} -7v14z" for (x, y), s in ends]
        else:
            ends = [(scale.at((place, y0)), 1), (scale.at((place, y1)), -1)]
            arrows = [f"M{x:.1f} {y + 4 * s:.1f}l-7 {12 * s}h14z" for (x, y), s in ends]
        drawn += [element("path", d=arrow, fill=INK) for arrow in arrows]
        if layer.grip_says:
            x, y = ends[1][0]
            at = (x - 60, y + 5) if layer.along_y else (x, y - 19)
            drawn.append(lettered(layer.grip_says, at, _SMALL, anchor="middle", bold=True))
    return drawn


def rail_of(shape: Shape, *, along_y: bool) -> tuple[XY, XY]:
    """Return the ends of a rail across all openings, plane mm, along the long side.

    It runs through the middle of the largest, and onto the concrete beyond the outermost as far as
    a clamp needs, where there is enough (common practice, no source).
    """
    openings = [one.polygon for one in shape.openings if not one.polygon.is_empty]
    largest = max(openings, key=lambda one: one.area)
    x0, y0, x1, y1 = plane.union(openings).bounds
    a, b, c, d = shape.outline.bounds
    x, y = largest.centroid.x, largest.centroid.y
    if along_y:
        return (x, max(b + 20.0, y0 - _RAIL_HOLDS_MM)), (x, min(d - 20.0, y1 + _RAIL_HOLDS_MM))
    return (max(a + 20.0, x0 - _RAIL_HOLDS_MM), y), (min(c - 20.0, x1 + _RAIL_HOLDS_MM), y)


def _rail(start: XY, end: XY, scale: _Scale, says: str) -> list[SvgElement]:
    """Draw a rail as a bar with a clamp at each end, and its label."""
    (x0, y0), (x1, y1) = scale.at(start), scale.at(end)
    upright = abs(x1 - x0) < abs(y1 - y0)
    left, top = min(x0, x1), min(y0, y1)
    wide, high = abs(x1 - x0), abs(y1 - y0)
    box = (left - 9, top, 18.0, high) if upright else (left, top - 9, wide, 18.0)
    drawn = [
        element("rect", x=box[0], y=box[1], width=box[2], height=box[3], fill="#ffffff",
                stroke=INK, stroke_width=1.6)
    ]  # fmt: skip
    across, along = (15, 6) if upright else (6, 15)
    for x, y in ((x0, y0), (x1, y1)):
        clamp = {"x": x - across, "y": y - along, "width": 2 * across, "height": 2 * along}
        drawn.append(element("rect", **clamp, fill=INK))
    if says:
        at = ((x0 + x1) / 2, (y0 + y1) / 2 + 5)
        drawn.append(lettered(says, at, _SMALL, anchor="middle", bold=True, halo="#ffffff"))
    return drawn


# --- a section through the mould ------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class MouldSection:
    """The labels of a section through the mould, and whether mesh and bars are drawn."""

    thickness: str
    back: str
    cover: str
    face: str
    steel: str
    mesh: bool
    bars: bool


def draw_section(section: MouldSection, *, title: str, says: str) -> str:
    """Draw a section through the mould, face down, not to scale; lengths are written beside it."""
    wide, left, right = 255.0, 76.0, 232.0
    back, face = (wrapped(text, wide - 8, _SMALL, 2) for text in (section.back, section.face))
    top = 26.0 + 18 * (len(back) - 1)
    foot = top + 72
    middle = (top + foot) / 2
    named = [*face, *wrapped(section.steel, wide - 8, _SMALL, 2)]
    drawn = [
        element("rect", x=left - 36, y=foot, width=right - left + 56, height=12, fill="#d9c9a8",
                stroke=INK),
        *(element("rect", x=x, y=top - 6, width=16, height=foot - top + 6, fill="#d9c9a8",
                  stroke=INK) for x in (left - 16, right)),
        element("rect", x=left, y=top, width=right - left, height=foot - top, fill="#ebe7dd",
                stroke=INK, stroke_width=1.6),
        element("path", d=f"M{left} {foot - 14}H{right}", stroke=PENCIL, stroke_dasharray="5 3"),
        *(element("path", d=f"M{left + 8} {middle}H{right - 8}", stroke=_STEEL, stroke_width=2)
          for _ in range(section.mesh)),
        *(element("circle", cx=left + 22 + 28 * i, cy=middle - 4, r=3.4, fill=_STEEL)
          for i in range(5 * section.bars)),
        *(_up_down(left + 18, foot, middle + 2, section.cover) if section.steel else ()),
        *_up_down(left - 44, foot, top, ""),
        lettered(section.thickness, (left - 52, middle), _SMALL, anchor="middle", turn=-90),
        *(lettered(row, (4, 13 + 18 * n), _SMALL) for n, row in enumerate(back)),
        *(lettered(row, (4, foot + 30 + 18 * n), _SMALL, bold=n < len(face))
          for n, row in enumerate(named)),
    ]  # fmt: skip
    return _drawn("mould-section", (wide, foot + 18 + 18 * len(named)), title, says, drawn)


def _up_down(x: float, foot: float, top: float, says: str) -> list[SvgElement]:
    """Dimension from one height to another, its figure beside it."""
    ticks = f"M{x} {foot}V{top}M{x - 4} {foot}h8M{x - 4} {top}h8"
    at = (x + 8, (foot + top) / 2 + 5)
    return [
        element("path", d=ticks, fill="none", stroke=INK),
        lettered(says, at, _SMALL, halo="#ebe7dd"),
    ]


# --- boards on their sheets -----------------------------------------------------------------


def draw_sheet(nest: Nest, sheet: int, marks: Sequence[str], *, title: str) -> str:
    """Draw one sheet with its pieces, each by its mark, in the nest's own order: an SVG."""
    per_mm = (_WIDE - 2 * _EDGE) / nest.length_mm
    height = per_mm * nest.width_mm
    drawn = [
        element("rect", x=_EDGE, y=_EDGE, width=per_mm * nest.length_mm, height=height,
                fill="#ffffff", stroke=INK, stroke_width=1.6)
    ]  # fmt: skip
    for number, (placed, mark) in enumerate(zip(nest.placed, marks, strict=True)):
        share = (0.5, 0.35, 0.65, 0.2, 0.8)[number % 5]  # so that neighbours' marks do not overlap
        if placed.sheet != sheet:
            continue
        x, wide = _EDGE + per_mm * placed.x_mm, per_mm * placed.length_mm
        high = per_mm * placed.width_mm
        y = _EDGE + height - per_mm * placed.y_mm - high
        drawn.append(element("rect", x=x, y=y, width=wide, height=high, fill="#ebe7dd", stroke=INK))
        along = (share, 0.5) if wide > high else (0.5, share)
        at = (x + along[0] * wide, y + along[1] * high + _MARK * 0.36)
        drawn.append(lettered(mark, at, _MARK, anchor="middle", bold=True))
    return _drawn(f"sheet-{sheet}", (_WIDE, height + 2 * _EDGE), title, title, drawn)
