"""Letters of openings and sides, and radii, placed clear of other labels."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import chain, groupby

import numpy as np
import shapely
from shapely.geometry import LineString

from ledgerstone.arrays import FloatArray
from ledgerstone.drawing.frame import SMALL, TALL, Frame, figures, length_text
from ledgerstone.drawing.lettering import INK, PAPER, PENCIL, fitted, lettered, text_width
from ledgerstone.drawing.placing import Box, Places, rings
from ledgerstone.drawing.schedule import letter_of
from ledgerstone.drawing.sections import details
from ledgerstone.drawing.svg import SvgElement, element, path_of
from ledgerstone.message import Message
from ledgerstone.order import LShape, Round, Slab
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.outline import XY, Side, unit_vector
from ledgerstone.quantities import Length
from ledgerstone.shape import Opening, Shape
from ledgerstone.wording import Speech

_NEAR = (15.0, 22.0, 30.0, 42.0, 58.0, 78.0, 100.0)
_TAG = 9.5
_MANY_SIDES = 12
_APART_MM = 1.0  # between lines that are put end to end: no place is on two of them
_ALONG = (0.5, 0.38, 0.62, 0.26, 0.74, 0.15, 0.85)  # where along a side its letter may stand


def given_places(slab: Slab) -> list[XY]:
    """Places of legs and ledges, plane mm, that should be seen though they may be off the slab."""
    if slab.rests is None:
        return []
    points = [*slab.rests.at, *(p for ledge in slab.rests.lines for p in (ledge.start, ledge.end))]
    return [(point.x.mm, point.y.mm) for point in points]


def line_boxes(shape: Shape, frame: Frame) -> list[Box]:
    """Boxes along the outline and about the openings, to keep labels off their lines."""
    boxes = _along([side.line for side in shape.sides], frame)
    for opening in shape.openings:
        if not opening.polygon.is_empty:
            boxes.append(frame.box(opening.polygon.bounds))
    boxes += [frame.box(relief.bounds) for relief in shape.reliefs]
    return boxes


def _along(lines: Sequence[LineString], frame: Frame) -> list[Box]:
    """Boxes that follow some lines, short enough to lie close to them."""
    long = shapely.length(lines).tolist()
    pieces = [max(1, min(24, math.ceil(mm * frame.per_mm / 16))) for mm in long]
    points = _points_on(lines, [[i / n for i in range(n + 1)] for n in pieces])
    x, y = points.T
    at = np.column_stack([frame.origin[0] + frame.per_mm * x, frame.origin[1] - frame.per_mm * y])
    starts = np.delete(np.arange(len(at)), np.cumsum([n + 1 for n in pieces]) - 1)
    begins, ends = at[starts], at[starts + 1]
    corners = np.hstack([np.minimum(begins, ends) - 1, np.maximum(begins, ends) + 1])
    return [Box(*corner) for corner in corners.tolist()]


def _points_on(lines: Sequence[LineString], shares: Sequence[Sequence[float]]) -> FloatArray:
    """Points on each of some lines, at shares of its length: one line's after another's.

    Returns
    -------
    points
        In plane mm, shape ``(n, 2)``.
    """
    points, of_line = shapely.get_coordinates(lines, return_index=True)
    steps = np.hypot(*np.diff(points, axis=0).T)
    steps[np.diff(of_line) > 0] = _APART_MM
    far = np.concatenate([[0.0], np.cumsum(steps)])
    starts = np.searchsorted(of_line, np.arange(len(lines)))
    ends = np.append(starts[1:], len(points)) - 1
    each = np.repeat(np.arange(len(lines)), [len(some) for some in shares])
    begin, length = far[starts], far[ends] - far[starts]
    wanted = begin[each] + length[each] * np.array([*chain(*shares)])
    found: FloatArray = np.column_stack([np.interp(wanted, far, xs) for xs in points.T])
    return found


def letters(slab: Slab, shape: Shape, frame: Frame, places: Places) -> list[SvgElement]:
    """Letter every opening and relief: with its name inside where there is room, else beside."""
    drawn, beside = [], []
    for opening in shape.openings:
        if opening.polygon.is_empty:
            continue
        label = slab.cutouts[opening.index].label
        box = frame.box(opening.polygon.bounds)
        inside = _inside(letter_of(opening.index), label, box, places)
        if inside is None:
            beside.append(opening)
        else:
            drawn += inside
    for i, relief in enumerate(shape.reliefs):
        letter = letter_of(len(slab.cutouts) + i)
        label = slab.reliefs[i].label or slab.reliefs[i].kind
        drawn += _inside(letter, label, frame.box(relief.bounds), places) or []
    for opening in beside:
        drawn += _beside(opening, frame, places)
    return drawn


def _inside(letter: str, label: str, box: Box, places: Places) -> list[SvgElement] | None:
    """Letter an opening within its box, off the crossing of its lines, its name too if it fits."""
    wide, high = box.x1 - box.x0, box.y1 - box.y0
    middle = (box.x0 + box.x1) / 2
    if high < SMALL * 2.4:
        return None
    for text in (f"{letter}  {label}", letter):
        shown = fitted(text, wide * 0.8, SMALL, bold=True)
        if not shown or (shown.endswith("…") and text != letter):
            continue
        width = text_width(shown, SMALL, bold=True)
        spots = [(middle, box.y0 + high * share) for share in (0.3, 0.7)]
        place = places.place(spots, width + 8, TALL + 2)
        if place is not None:
            return _plated(shown, place, width)
    return None


def _plated(text: str, place: XY, width: float) -> list[SvgElement]:
    """Write a text on a plate of paper that hides the lines behind it."""
    plate = Box.round(place, width + 8, SMALL + 4)
    return [
        element(
            "rect",
            x=plate.x0,
            y=plate.y0,
            width=plate.x1 - plate.x0,
            height=plate.y1 - plate.y0,
            fill=PAPER,
        ),
        lettered(text, (place[0], place[1] + SMALL * 0.36), SMALL, anchor="middle", bold=True),
    ]


def _beside(opening: Opening, frame: Frame, places: Places) -> list[SvgElement]:
    box = frame.box(opening.polygon.bounds)
    centre = ((box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2)
    text = letter_of(opening.index)
    wide = text_width(text, SMALL, bold=True)
    half = max(box.x1 - box.x0, box.y1 - box.y0) / 2
    place = places.place(rings(centre, [half + d - 4 for d in _NEAR]), wide, TALL)
    if place is None:
        return []
    drawn = []
    if math.dist(place, centre) > half + 20:
        drawn.append(_leader(place, centre))
    at = (place[0], place[1] + SMALL * 0.36)
    drawn.append(lettered(text, at, SMALL, anchor="middle", bold=True, halo="#ebe7dd"))
    return drawn


def _leader(start: XY, end: XY) -> SvgElement:
    ux, uy = unit_vector(start, end)
    begun = (start[0] + 9 * ux, start[1] + 9 * uy)
    line = path_of([begun, end], closed=False)
    return element("path", d=line, stroke=PENCIL, stroke_width=0.9)


def side_letters(slab: Slab, shape: Shape, frame: Frame, places: Places) -> list[SvgElement]:
    """Letter every side with its section's letter, just outside the side.

    Of an outline with many sides, one of each run of neighbours that are made alike.
    """
    by_side = {name: detail.letter for detail in details(slab, shape) for name in detail.names}
    drawn = []
    sides: Sequence[Side] = shape.sides
    if len(sides) > _MANY_SIDES:
        runs = groupby(sides, key=lambda side: by_side[side.name])
        sides = [max(run, key=lambda side: side.length_mm) for _, run in runs]
    lettered_sides = [s for s in sides if s.length_mm * frame.per_mm >= 2 * _TAG]
    for side, outside in zip(lettered_sides, _outside(lettered_sides, frame, 17.0), strict=True):
        letter = by_side[side.name]
        place = places.place(outside, 2 * _TAG, 2 * _TAG)
        if place is None:
            continue
        x, y = place
        drawn.append(
            element("circle", cx=x, cy=y, r=_TAG, fill=PAPER, stroke=PENCIL, stroke_width=0.9)
        )
        drawn.append(lettered(letter, (x, y + 4.8), SMALL, anchor="middle"))
    return drawn


def _outside(sides: Sequence[Side], frame: Frame, away: float) -> Iterator[Iterator[XY]]:
    """Places beside each side, on the outer hand: the outline runs anticlockwise."""
    if not sides:
        return iter(())
    lines = [side.line for side in sides]
    steps = [min(0.5, 1.0 / max(line.length, 1e-9)) for line in lines]
    shares = [[*_ALONG, *(min(share + step, 1.0) for share in _ALONG)] for step in steps]
    by_side = _points_on(lines, shares).reshape(len(lines), 2 * len(_ALONG), 2).tolist()
    return (_beside_points([(x, y) for x, y in points], frame, away) for points in by_side)


def _beside_points(points: Sequence[XY], frame: Frame, away: float) -> Iterator[XY]:
    """Places beside points on a side, each of which is followed by one a little farther on."""
    half = len(points) // 2
    for along, next_to_it in zip(points[:half], points[half:], strict=True):
        ux, uy = unit_vector(along, next_to_it)
        x, y = frame.at(along)
        yield x + uy * away, y + ux * away


def radii(
    slab: Slab, shape: Shape, frame: Frame, places: Places, *, like: Length, speech: Speech
) -> list[SvgElement]:
    """Describe the radius at each rounded corner, or once where all are alike."""
    drawn = []
    for corner, radius, all_alike in _rounded_corners(slab, shape):
        anchor = frame.at(_on_arc(corner, shape))
        say = figures if radius.unit == like.unit else length_text
        written_radius = say(radius, radius.mm, frame.point)
        text = speech.say(
            Message("plan-all-radii" if all_alike else "plan-radius", radius=written_radius)
        )
        wide = text_width(text, SMALL)
        outward = math.degrees(math.atan2(*_outward(corner, shape)))
        place = places.place(rings(anchor, (24.0, 34.0, 46.0, 60.0), first=outward), wide, TALL)
        if place is not None:
            drawn.append(_leader_to(place, anchor, wide))
            at = (place[0], place[1] + SMALL * 0.36)
            drawn.append(lettered(text, at, SMALL, anchor="middle", fill=INK, halo=PAPER))
    return drawn


def _rounded_corners(slab: Slab, shape: Shape) -> list[tuple[XY, Length, bool]]:
    """Corners whose radius the order gives, and whether it stands for all."""
    outline = slab.outline
    if isinstance(outline, Round):
        return []
    x0, y0, x1, y1 = shape.outline.bounds
    places = {
        "front-left": (x0, y0),
        "front-right": (x1, y0),
        "back-right": (x1, y1),
        "back-left": (x0, y1),
    }
    by_name = {} if isinstance(outline, OrderPolygon) else outline.corner_radii
    lines = [
        (_corner_named(name, slab, shape, places[name]), radius, False)
        for name, radius in by_name.items()
        if name in places and radius.mm > 0
    ]
    every = outline.corner_radius
    if every is not None and every.mm > 0 and not lines:
        return [(_nearest(shape.corners, places["back-right"]), every, True)]
    return lines


def _corner_named(name: str, slab: Slab, shape: Shape, place: XY) -> XY:
    """Return the corner that a radius rounds: at an L's notch, the inside one."""
    outline = slab.outline
    if isinstance(outline, LShape) and outline.notch.corner == name:
        return max(shape.corners, key=lambda corner: _within_hull(corner, shape))
    return _nearest(shape.corners, place)


def _within_hull(corner: XY, shape: Shape) -> float:
    """How far inside the outline's hull a corner lies, mm."""
    return float(shape.outline.convex_hull.boundary.distance(shapely.Point(corner)))


def _nearest(corners: tuple[XY, ...], place: XY) -> XY:
    return min(corners, key=lambda corner: math.dist(corner, place))


def _outward(corner: XY, shape: Shape) -> XY:
    """Direction from the slab's middle to a corner, (y, x) for an arc tangent."""
    x0, y0, x1, y1 = shape.outline.bounds
    return corner[1] - (y0 + y1) / 2, corner[0] - (x0 + x1) / 2


def _on_arc(corner: XY, shape: Shape) -> XY:
    """Return the point of the rounded outline nearest a sharp corner."""
    on = shapely.shortest_line(shape.outline.exterior, shapely.Point(corner)).coords[0]
    return on[0], on[1]


def _leader_to(place: XY, anchor: XY, wide: float) -> SvgElement:
    side = place[0] - wide / 2 if anchor[0] < place[0] else place[0] + wide / 2
    line = path_of([(side, place[1]), anchor], closed=False)
    return element("path", d=line, stroke=PENCIL, stroke_width=0.9)
