"""Paper at true size: a cut-out or a corner as a PDF to lay under the sink or cut the former by."""

from __future__ import annotations

import json
import math
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

import shapely
from shapely.geometry import LineString, Polygon, box

from ledgerstone import plane
from ledgerstone.cutouts import kind_of
from ledgerstone.drawing.frame import leading_length, spoken
from ledgerstone.drawing.lettering import STANDS_FOR, in_our_letters
from ledgerstone.drawing.saying import cutout_notes
from ledgerstone.drawing.schedule import letter_of
from ledgerstone.drawing.svg import clean
from ledgerstone.drawing.tiling import (
    MOST_SHEETS,
    PAPERS,
    Bounds,
    Course,
    Paper,
    Word,
    key,
    sheets,
    tiling_of,
)
from ledgerstone.drawing.typesetting import typeset
from ledgerstone.order import CORNERS, LShape, Slab
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.outline import XY, corner_radii_mm
from ledgerstone.shape import Shape

_TEMPLATE: Final = Path(__file__).with_name("true_size.typ")
_ROOM_MM: Final = 4.0  # round what is cut
_CROSS_MM: Final = 12.0  # a centre's cross runs past the cut by this
_CORNER_MM: Final = (70.0, 240.0)  # least and most that is shown of the sides at a corner
_CHORD_DEGREES: Final = 1.0  # a circle's chords: 0.04 mm inside an arc of 1 m radius
CHECK: Final = (
    "Measure both rulers before you cut. If they are not 100 mm and 4 in long, print again at"
    " 100 %, not fitted to the page. Trim along the marks and tape edge to edge."
)


@dataclass(frozen=True, slots=True)
class Drawn:
    """What is drawn at true size: its lines, what it is called, and what there is to know of it."""

    courses: tuple[Course, ...]
    window: Bounds
    title: str
    facts: str
    words: tuple[Word, ...]


@dataclass(frozen=True, slots=True)
class TooManySheets:
    """What is told in place of more sheets than anybody tapes together: how many it would take."""

    sheets: int


def cutout_drawn(slab: Slab, shape: Shape, index: int, inside_radius_mm: float) -> Drawn | None:
    """Take a cut-out as its former is cut, and the edges near it; None where there is none."""
    if not 0 <= index < len(slab.cutouts):
        return None
    cutout = slab.cutouts[index]
    polygon, _ = kind_of(cutout).placed(cutout, inside_radius_mm)
    opening = shape.openings[index].polygon
    whole = opening if cutout.open_to is not None and not opening.is_empty else polygon
    ring: Sequence[Sequence[float]] = list(whole.exterior.coords)
    if kind_of(cutout).is_circle and cutout.open_to is None and cutout.diameter is not None:
        ring = _circle((whole.centroid.x, whole.centroid.y), cutout.diameter.mm / 2)
    courses = [Course(LineString(ring), "cut")]
    like = leading_length(slab)
    facts = [kind_of(cutout).described(cutout), *cutout_notes(cutout)]
    if cutout.centre is not None:
        x, y = cutout.centre.x.mm, cutout.centre.y.mm
        courses += [Course(line, "centre") for line in _cross((x, y), whole)]
        left, front = shape.outline.bounds[:2]
        facts.append(
            f"centre {spoken(like, x - left)} from left, {spoken(like, y - front)} from front"
        )
    window = plane.buffer(box(*whole.bounds), _ROOM_MM, join_style="mitre")
    edge = plane.intersection(shape.outline.exterior, window)
    courses += [Course(part, "edge") for part in _lines(edge)]
    name = cutout.label or "cut-out"
    title = f"True size: {name} ({letter_of(index)}) of {slab.label or 'the slab'}"
    inside = whole.representative_point()
    words = (Word((inside.x + 4, inside.y + 7), "cut out"),)
    return Drawn(tuple(courses), window.bounds, title, ", ".join(facts), words)


def corner_drawn(slab: Slab, shape: Shape, name: str, inside_radius_mm: float) -> Drawn | None:
    """Take one corner, a box's by name, a polygon's by its number from 1; None where there is none.

    An L's notched corner is the one inside the notch.
    """
    i = _corner(slab, shape, name)
    if i is None:
        return None
    x, y = shape.corners[i]
    radius = _radius_mm(slab, shape, i, inside_radius_mm)
    least, most = _CORNER_MM
    reach = min(max(least, radius * 1.6), max(most, radius * 1.2))
    window = box(x - reach, y - reach, x + reach, y + reach)
    courses = [
        Course(part, "cut") for part in _lines(plane.intersection(shape.outline.exterior, window))
    ]
    before, after = shape.corners[i - 1], shape.corners[(i + 1) % len(shape.corners)]
    sharp = plane.intersection(LineString([before, (x, y), after]), window)
    courses += [Course(part, "centre") for part in _lines(sharp)]
    said = spoken(leading_length(slab), radius)
    facts = f"radius {said}" if radius > 0 else "sharp, its arris eased"
    where = name.replace("-", " ") if not name.isdigit() else name
    title = f"True size: corner {where} of {slab.label or 'the slab'}"
    bounds = plane.intersection(shape.outline.exterior, window).bounds
    concrete = plane.intersection(shape.outline, box(*bounds)).representative_point()
    words = (Word((concrete.x, concrete.y), "slab"),)
    room = plane.buffer(box(*bounds), _ROOM_MM, join_style="mitre").bounds
    return Drawn(tuple(courses), room, title, facts, words)


def _corner(slab: Slab, shape: Shape, name: str) -> int | None:
    """Find a corner among the shape's own."""
    outline, corners = slab.outline, shape.corners
    if isinstance(outline, OrderPolygon):
        numbers = [str(i + 1) for i in range(len(outline.points))]
        if name not in numbers:
            return None
        point = outline.points[numbers.index(name)]
        return _nearest(corners, (point.x.mm, point.y.mm))
    if name not in CORNERS or not corners:
        return None
    if isinstance(outline, LShape) and outline.notch.corner == name:
        return next(i for i in range(len(corners)) if _is_inside(corners, i))
    x0, y0, x1, y1 = shape.outline.bounds
    places = ((x0, y0), (x1, y0), (x1, y1), (x0, y1))
    return _nearest(corners, places[CORNERS.index(name)])


def _nearest(corners: tuple[XY, ...], place: XY) -> int:
    return min(range(len(corners)), key=lambda i: math.dist(corners[i], place))


def _is_inside(corners: tuple[XY, ...], i: int) -> bool:
    """Whether an anticlockwise outline turns right here: an L's inner corner."""
    (ax, ay), (bx, by), (cx, cy) = corners[i - 1], corners[i], corners[(i + 1) % len(corners)]
    return (bx - ax) * (cy - by) - (by - ay) * (cx - bx) < 0


def _radius_mm(slab: Slab, shape: Shape, i: int, inside_radius_mm: float) -> float:
    """Radius at a corner as it will be cast; a polygon's is read off its outline."""
    if not isinstance(slab.outline, OrderPolygon):
        return corner_radii_mm(slab.outline, inside_radius_mm)[i]
    every = slab.outline.corner_radius
    if every is not None:
        return every.mm
    return inside_radius_mm if _is_inside(shape.corners, i) else 0.0


def _circle(centre: XY, radius_mm: float) -> list[XY]:
    """Return a circle in short chords, closed."""
    steps = round(360 / _CHORD_DEGREES)
    angles = [math.tau * i / steps for i in range(steps + 1)]
    x, y = centre
    return [(x + radius_mm * math.cos(a), y + radius_mm * math.sin(a)) for a in angles]


def _cross(centre: XY, polygon: Polygon) -> list[LineString]:
    """Cross a centre out, a little beyond the cut."""
    x, y = centre
    x0, y0, x1, y1 = polygon.bounds
    over = min(_CROSS_MM, _ROOM_MM)
    return [
        LineString([(x0 - over, y), (x1 + over, y)]),
        LineString([(x, y0 - over), (x, y1 + over)]),
    ]


def _lines(geometry: Any) -> list[LineString]:  # noqa: ANN401  what an intersection gives
    """Return the lines that a geometry is made of, joined where they meet."""
    merged = shapely.line_merge(geometry) if geometry.geom_type == "MultiLineString" else geometry
    return [
        part
        for part in shapely.get_parts(merged)
        if isinstance(part, LineString) and part.length > 0
    ]


def true_size_pdf(drawn: Drawn, paper: Paper, *, workshop: str) -> bytes | TooManySheets:
    """Print what is drawn at true size on sheets of a paper, as a PDF; always the same bytes."""
    tiling = tiling_of(drawn.window, paper)
    printed = sheets(tiling, drawn.courses, drawn.words)
    if len(printed) > MOST_SHEETS:
        return TooManySheets(len(printed))
    x0, _, x1, _ = tiling.tile
    small = key(tiling, drawn.courses, (sheet["name"] for sheet in printed))
    title = in_our_letters(clean(drawn.title))
    starred = title != clean(drawn.title)
    told = {
        "page_mm": PAPERS[paper],
        "tile_mm": tiling.tile,
        "words_mm": x1 - x0 - small["wide_mm"] - 4,
        "title": title,
        "facts": clean(drawn.facts) + (f" {STANDS_FOR}" if starred else ""),
        "workshop": in_our_letters(clean(workshop)),
        "check": CHECK,
        "sheets": printed,
        "key": small,
    }
    return typeset(_TEMPLATE, {"told": json.dumps(told)})
