"""Steel in the mould, and the places where a slab is held, as the workshop draws them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

import shapely
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.drawing.casting import drawn_document
from ledgerstone.drawing.lettering import ACCENT, INK, PENCIL, lettered, text_width
from ledgerstone.drawing.svg import SvgElement, element, path_of
from ledgerstone.outline import XY
from ledgerstone.shape import Shape

_WIDE, _EDGE, _SMALL = 600.0, 14.0, 15.0
_TALLEST = 420.0
ALONG = (0.5, 0.3, 0.7, 0.18, 0.82, 0.4, 0.6, 0.08, 0.92)  # shares of a bar where its mark may be


@dataclass(frozen=True, slots=True)
class DrawnBars:
    """Equal bars side by side as they are drawn: their mark, and the ends of each, plane mm."""

    mark: str
    ends_mm: tuple[tuple[XY, XY], ...]


@dataclass(frozen=True, slots=True)
class DrawnMesh:
    """A rectangle of mesh as it is drawn: its mark, and x0, y0, x1, y1, plane mm."""

    mark: str
    bounds_mm: tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class Layer:
    """Steel of one slab, where it is gripped and where a rail is clamped, as it is drawn.

    ``grips_mm`` are two places along the long side, which lies along y where ``along_y``;
    ``grip_says`` stands beside them. ``rail_mm`` are the ends of the rail, where there is one, and
    ``rail_says`` stands on it; mesh is cut ``mesh_off_mm`` back from edges and openings.
    """

    bars: tuple[DrawnBars, ...]
    mesh: tuple[DrawnMesh, ...]
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

    def ends(self, start: XY, end: XY) -> tuple[XY, XY]:
        return self.at(start), self.at(end)


def draw_steel(
    shape: Shape,
    layer: Layer,
    *,
    title: str,
    says: str,
    wide: float = _WIDE,
    tallest: float = _TALLEST,
) -> str:
    """Draw where bars, mesh and grips go, seen as the shape lies: an SVG document.

    Parameters
    ----------
    wide
        Width in sheet units. Letters are 15 high, so a narrower sheet has larger ones on paper.
    tallest
        Greatest height of the slab itself, sheet units.
    """
    x0, y0, x1, y1 = shape.outline.bounds
    across = wide - 2 * (_EDGE + 24)
    per_mm = min(across / (x1 - x0), tallest / (y1 - y0))
    slack = (across - per_mm * (x1 - x0)) / 2
    over = 24.0 if layer.grip_says else 8.0
    scale = _Scale(per_mm, x0, y1, slack, over)
    height = per_mm * (y1 - y0) + 2 * (_EDGE + over)
    drawn = [*_concrete(shape, scale)]
    room = plane.buffer(shape.net, -layer.mesh_off_mm)
    for mesh in layer.mesh:
        drawn += _mesh(mesh.bounds_mm, room, scale)
    drawn += _grips(shape, layer, scale)
    if layer.rail_mm is not None:
        drawn += _rail(*layer.rail_mm, scale, layer.rail_says)
    for bars in layer.bars:
        drawn += [_line(*scale.ends(*ends), 3.0) for ends in bars.ends_mm]
    drawn += _marks(layer, room, scale)
    return drawn_document("steel", (wide, height), title, says, drawn)


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


def _line(start: XY, end: XY, width: float) -> SvgElement:
    line = path_of([start, end], closed=False)
    return element("path", d=line, fill="none", stroke=ACCENT, stroke_width=width)


# --- marks ----------------------------------------------------------------------------------


def _marks(layer: Layer, room: BaseGeometry, scale: _Scale) -> list[SvgElement]:
    """Write every mark once, where it covers no other: by its bars, and on its mesh.

    A thin line crosses all the bars that a mark stands for.
    """
    taken: list[Polygon] = []
    drawn: list[SvgElement] = []
    for bars in layer.bars:
        ends = [scale.ends(*end) for end in bars.ends_mm]
        share = _free([_middle(ends, share) for share in ALONG], bars.mark, taken)
        drawn += _crossing(ends, ALONG[share])
        drawn.append(_mark(bars.mark, _middle(ends, ALONG[share]), ACCENT))
    for mesh in layer.mesh:
        others = [other.bounds_mm for other in layer.mesh if other is not mesh]
        places = [scale.at(xy) for xy in _on_mesh(mesh.bounds_mm, others, room)]
        if places:
            drawn.append(_mark(mesh.mark, places[_free(places, mesh.mark, taken)], PENCIL))
    return drawn


def _mark(mark: str, at: XY, fill: str) -> SvgElement:
    place = at[0], at[1] + 0.36 * _SMALL
    return lettered(mark, place, _SMALL, anchor="middle", bold=True, fill=fill, halo="#ffffff")


def _middle(ends: Sequence[tuple[XY, XY]], share: float) -> XY:
    """Half-way from the first bar to the last, at a share of their length."""
    first, last = (_along(bar, share) for bar in (ends[0], ends[-1]))
    return (first[0] + last[0]) / 2, (first[1] + last[1]) / 2


def _along(ends: tuple[XY, XY], share: float) -> XY:
    (x0, y0), (x1, y1) = ends
    return x0 + share * (x1 - x0), y0 + share * (y1 - y0)


def _crossing(ends: Sequence[tuple[XY, XY]], share: float) -> Iterator[SvgElement]:
    """Draw a line across bars at a share of their length, and a dot on each."""
    if len(ends) < 2:
        return
    at = [_along(end, share) for end in ends]
    yield _line(at[0], at[-1], 1.0)
    yield from (element("circle", cx=x, cy=y, r=2.6, fill=ACCENT) for x, y in at)


def _free(places: Sequence[XY], mark: str, taken: list[Polygon]) -> int:
    """Return which place covers least of the marks written so far, the first of equals; take it."""
    half = 0.5 * text_width(mark, _SMALL, bold=True) + 1
    boxes = [shapely.box(x - half, y - 0.5 * _SMALL, x + half, y + 0.5 * _SMALL) for x, y in places]
    covers = [
        round(sum(plane.intersection(box, other).area for other in taken), 3) for box in boxes
    ]
    best = covers.index(min(covers))
    taken.append(boxes[best])
    return best


def _on_mesh(
    bounds: tuple[float, float, float, float],
    others: Iterable[tuple[float, float, float, float]],
    room: BaseGeometry,
) -> list[XY]:
    """Places on a mesh and on no other, plane mm, those farthest from its edges first."""
    area = plane.intersection(shapely.box(*bounds), room)
    for other in others:
        area = plane.difference(area, shapely.box(*other))
    if area.is_empty:
        return []
    x0, y0, x1, y1 = area.bounds
    grid = [
        (x0 + i * (x1 - x0) / 12, y0 + j * (y1 - y0) / 12)
        for i in range(1, 12)
        for j in range(1, 12)
    ]
    points = [shapely.Point(xy) for xy in grid]
    away = {
        xy: round(area.boundary.distance(point))
        for xy, point in zip(grid, points, strict=True)
        if area.contains(point)
    }
    inside = area.representative_point()
    return sorted(away, key=lambda xy: -away[xy]) or [(inside.x, inside.y)]


def _grips(shape: Shape, layer: Layer, scale: _Scale) -> list[SvgElement]:
    """Mark the two best places to lift by arrows outside the slab."""
    x0, y0, x1, y1 = shape.outline.bounds
    drawn: list[SvgElement] = []
    labels: list[XY] = []
    for place in layer.grips_mm:
        if layer.along_y:
            ends = [(scale.at((x0, place)), -1), (scale.at((x1, place)), 1)]
            arrows = [f"M{x + 4 * s:.1f} {y:.1f}l{12 * s} -7v14z" for (x, y), s in ends]
        else:
            ends = [(scale.at((place, y0)), 1), (scale.at((place, y1)), -1)]
            arrows = [f"M{x:.1f} {y + 4 * s:.1f}l-7 {12 * s}h14z" for (x, y), s in ends]
        drawn += [element("path", d=arrow, fill=INK) for arrow in arrows]
        x, y = ends[1][0]
        labels.append((x - 60, y + 5) if layer.along_y else (x, y - 19))
    if layer.grip_says:
        drawn += [
            lettered(layer.grip_says, at, _SMALL, anchor="middle", bold=True)
            for at in _grip_labels(labels, layer.grip_says)
        ]
    return drawn


def _grip_labels(labels: Sequence[XY], says: str) -> Sequence[XY]:
    """Return both labels' places, or the one between them where the labels would overlap."""
    (x0, y0), (x1, y1) = labels
    wide = text_width(says, _SMALL, bold=True) + _SMALL / 2
    if abs(x1 - x0) >= wide or abs(y1 - y0) >= 1.2 * _SMALL:
        return labels
    return [((x0 + x1) / 2, (y0 + y1) / 2)]


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
