"""Paper at true size: a cut-out or a corner as a PDF to lay under the sink or cut the former by."""

from __future__ import annotations

import json
import math
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path
from typing import Final

import shapely
from shapely.geometry import LineString, Polygon, box
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.cutouts import kind_of
from ledgerstone.drawing.frame import leading_length, shown
from ledgerstone.drawing.lettering import GLYPH_NOTE, with_known_glyphs
from ledgerstone.drawing.saying import cutout_facts, cutout_size
from ledgerstone.drawing.schedule import letter_of
from ledgerstone.drawing.svg import clean
from ledgerstone.drawing.tiling import (
    MAX_SHEETS,
    PAPERS,
    Course,
    SheetSize,
    SheetWord,
    Window,
    key,
    sheets,
    tiling_of,
)
from ledgerstone.drawing.typesetting import typeset
from ledgerstone.order import CORNERS, LShape, Slab
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.outline import XY, corner_radii_mm
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape
from ledgerstone.wording import Message, Speech

_TEMPLATE: Final = Path(__file__).with_name("true_size.typ")
_ROOM_MM: Final = 4.0  # round what is cut
_CROSS_MM: Final = 12.0  # a centre's cross runs past the cut by this
_CORNER_MM: Final = (70.0, 240.0)  # least and most that is shown of the sides at a corner
_RULERS: Final = (Length.of(Fraction(100), "mm"), Length.of(Fraction(4), "in"))
_CHORD_DEGREES: Final = 1.0  # a circle's chords: 0.04 mm inside an arc of 1 m radius


@dataclass(frozen=True, slots=True)
class Drawn:
    """A drawing at true size: its lines, its name and its facts."""

    courses: tuple[Course, ...]
    window: Window
    title: Message
    facts: tuple[Message, ...]
    word: tuple[XY, Message]


@dataclass(frozen=True, slots=True)
class TooManySheets:
    """Returned where a drawing would take too many sheets to tape together: how many."""

    sheets: int


def cutout_drawn(slab: Slab, shape: Shape, index: int, inside_radius_mm: float) -> Drawn | None:
    """Take a cut-out as its former is cut, and the edges near it; None if there is none."""
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
    facts = [cutout_size(cutout, like), *cutout_facts(cutout)]
    if cutout.centre is not None:
        x, y = cutout.centre.x.mm, cutout.centre.y.mm
        courses += [Course(line, "centre") for line in _cross((x, y), whole)]
        left, front = shape.outline.bounds[:2]
        across, back = shown(like, x - left), shown(like, y - front)
        facts.append(Message("plan-note-centre", x=across, y=back))
    window = plane.buffer(box(*whole.bounds), _ROOM_MM, join_style="mitre")
    edge = plane.intersection(shape.outline.exterior, window)
    courses += [Course(part, "edge") for part in _lines(edge)]
    by, of = letter_of(index), _name(slab)
    title = Message("true-size-cutout-unnamed", letter=by, slab=of)
    if cutout.label:
        title = Message("true-size-cutout", name=cutout.label, letter=by, slab=of)
    inside = whole.representative_point()
    word = ((inside.x + 4, inside.y + 7), Message("true-size-cut-out"))
    return Drawn(tuple(courses), window.bounds, title, tuple(facts), word)


def corner_drawn(slab: Slab, shape: Shape, name: str, inside_radius_mm: float) -> Drawn | None:
    """Take one corner, a box's by name, a polygon's by its number from 1; None if there is none.

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
    facts = Message("true-size-sharp")
    if radius > 0:
        facts = Message("true-size-radius", radius=shown(leading_length(slab), radius))
    number = int(name) if name.isdigit() else 0
    which = "numbered" if number else name
    title = Message("true-size-corner", corner=which, number=number, slab=_name(slab))
    bounds = plane.intersection(shape.outline.exterior, window).bounds
    concrete = plane.intersection(shape.outline, box(*bounds)).representative_point()
    word = ((concrete.x, concrete.y), Message("true-size-slab"))
    room = plane.buffer(box(*bounds), _ROOM_MM, join_style="mitre").bounds
    return Drawn(tuple(courses), room, title, (facts,), word)


def _name(slab: Slab) -> Message:
    return Message("slab-labelled", label=slab.label) if slab.label else Message("slab-only")


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
    """Return whether an anticlockwise outline turns right here: an L's inner corner."""
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


def _lines(geometry: BaseGeometry) -> list[LineString]:
    """Return the lines that a geometry is made of, joined where they meet."""
    merged = shapely.line_merge(geometry) if geometry.geom_type == "MultiLineString" else geometry
    return [
        part
        for part in shapely.get_parts(merged)
        if isinstance(part, LineString) and part.length > 0
    ]


def true_size_pdf(
    drawn: Drawn, paper: SheetSize, speech: Speech, *, workshop: str
) -> bytes | TooManySheets:
    """Print what is drawn at true size on sheets of a paper, as a PDF; always the same bytes."""
    tiling = tiling_of(drawn.window, paper)
    at, word = drawn.word
    printed = sheets(tiling, drawn.courses, (SheetWord(at, speech.say(word)),))
    if len(printed) > MAX_SHEETS:
        return TooManySheets(len(printed))
    x0, _, x1, _ = tiling.tile
    small = key(tiling, drawn.courses, (sheet["name"] for sheet in printed))
    named = clean(speech.say(drawn.title))
    title = with_known_glyphs(named)
    facts = ", ".join(speech.say(fact) for fact in drawn.facts)
    count = len(printed)
    for i, sheet in enumerate(printed, start=1):
        sheet["named"] = speech.say(Message("true-size-sheet", name=sheet["name"]))
        sheet["counted"] = speech.say(Message("true-size-sheets", number=i, count=count))
    content = {
        "page_mm": PAPERS[paper],
        "tile_mm": tiling.tile,
        "words_mm": x1 - x0 - small["wide_mm"] - 4,
        "title": title,
        "facts": clean(facts) + (f" {speech.say(GLYPH_NOTE)}" if title != named else ""),
        "workshop": with_known_glyphs(clean(workshop)),
        "check": speech.say(Message("true-size-check")),
        "front": speech.say(Message("true-size-front")),
        "language": speech.formats.locale.language,
        "rulers": [speech.value(length) for length in _RULERS],
        "sheets": printed,
        "key": small,
    }
    return typeset(_TEMPLATE, {"data": json.dumps(content)})
