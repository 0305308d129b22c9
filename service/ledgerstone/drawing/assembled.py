"""The assembled plan: an order's joined pieces from above, with the hand of an L."""

from __future__ import annotations

import hashlib
import math
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from shapely.geometry import LineString, Polygon

from ledgerstone import plane
from ledgerstone.drawing import dimensions
from ledgerstone.drawing.arcs import curved_path
from ledgerstone.drawing.assembled_rows import letter, rows_of
from ledgerstone.drawing.frame import (
    MARGIN,
    PLAIN,
    SHEET_WIDTH,
    SMALL,
    Frame,
    course_of,
    leading_length,
    ring_points,
    unit_note,
)
from ledgerstone.drawing.handedness import handedness
from ledgerstone.drawing.joining import Assembly, DrawnJoin, assemble
from ledgerstone.drawing.lettering import (
    ACCENT,
    FAMILY,
    INK,
    PAPER,
    PENCIL,
    SLAB_FILL,
    lettered,
    wrapped,
)
from ledgerstone.drawing.placing import Box, Places, rings
from ledgerstone.drawing.plan import patterns
from ledgerstone.drawing.svg import SvgElement, document, element, path_of, render
from ledgerstone.order import Join, Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape
from ledgerstone.wording import Message, Speech

_ABOVE: Final = 40.0
_TALLEST: Final = 560.0
_TAG: Final = 12.5
_LINE: Final = 21.0
_WALL: Final = 10.0


def draw_assembled(
    slabs: Sequence[Slab], shapes: Sequence[Shape], joins: Sequence[Join], speech: Speech
) -> str:
    """Draw an order's pieces together as an SVG document.

    Parameters
    ----------
    shapes
        The slabs', from ``shape_of``.
    speech
        Formats messages in the order's language.

    """
    assembly = assemble(shapes, joins)
    frame = replace(_frame(shapes, assembly), point=speech.formats.point)
    prefix = f"together-{hashlib.blake2b(repr((slabs, joins)).encode(), digest_size=4).hexdigest()}"
    like = leading_length(slabs[0])
    drawn = [
        *_walls(slabs, shapes, assembly, frame, prefix),
        *_pieces(slabs, shapes, assembly, frame),
        *_tags(shapes, assembly, frame),
    ]
    foot = frame.slab.y1 + 30
    if assembly.is_whole:
        overalls, foot = _overalls(frame, like, speech)
        drawn += overalls
    drawn += _front(frame, foot, speech)
    says = [speech.say(hand) for hand in handedness(slabs, shapes, assembly, joins)]
    rows = [(tag, speech.say(row)) for tag, row in rows_of(slabs, shapes, assembly)]
    words, end = _words(says, rows, foot + 46)
    height = float(math.ceil(end + MARGIN))
    paper = element("rect", x=0, y=0, width=SHEET_WIDTH, height=height, fill=PAPER)
    return render(
        document(
            (SHEET_WIDTH, height),
            prefix,
            title=speech.say(Message("together-title")),
            says=" ".join([speech.say(Message("together-pieces", count=len(slabs))), *says]),
            children=[patterns(prefix), paper, element("g", *drawn, *words, font_family=FAMILY)],
        )
    )


def _overalls(frame: Frame, like: Length, speech: Speech) -> tuple[list[SvgElement], float]:
    """Draw the overall dimensions, and return their lower end."""
    below = dimensions.along_front(frame, [], like, MARGIN, SHEET_WIDTH - MARGIN)
    foot = frame.slab.y1 + below.depth + 18
    at = (SHEET_WIDTH - MARGIN, foot + 13)
    note = lettered(speech.say(unit_note(like)), at, SMALL, anchor="end", fill=PENCIL)
    return [*below.drawn, *dimensions.overall_right(frame, like), note], foot


def _frame(shapes: Sequence[Shape], assembly: Assembly) -> Frame:
    """Fit all pieces into the sheet, hung from its top."""
    boxes = [
        stand.of(shape.outline).bounds for shape, stand in zip(shapes, assembly.stands, strict=True)
    ]
    x0, y0 = min(b[0] for b in boxes), min(b[1] for b in boxes)
    x1, y1 = max(b[2] for b in boxes), max(b[3] for b in boxes)
    left, right = MARGIN + 24, SHEET_WIDTH - MARGIN - dimensions.BESIDE - PLAIN - 4
    per_mm = min((right - left) / (x1 - x0), _TALLEST / (y1 - y0))
    slack = right - left - per_mm * (x1 - x0)
    origin = (left + slack / 2 - per_mm * x0, _ABOVE + per_mm * y1)
    room = Box(left, _ABOVE, right, _ABOVE + _TALLEST)
    bare = Frame(per_mm, origin, room, room, (x0, y0), (x1, y1), is_round=False)
    box = bare.box((x0, y0, x1, y1))
    return replace(bare, slab=box, zone=box)


def _pieces(
    slabs: Sequence[Slab], shapes: Sequence[Shape], assembly: Assembly, frame: Frame
) -> list[SvgElement]:
    """Draw every piece with its openings, to scale, and a broad line along its front."""
    drawn = []
    pen = frame.units(1.0)
    for i, (shape, stand) in enumerate(zip(shapes, assembly.stands, strict=True)):
        drawn.append(
            element(
                "path",
                d=_path(stand.of(shape.outline)),
                fill=SLAB_FILL,
                stroke=INK,
                stroke_width=2 * pen,
                stroke_linejoin="round",
                data_part="piece",
                data_index=str(i),
            )
        )
        for opening in shape.openings:
            if not opening.polygon.is_empty:
                hot = slabs[i].cutouts[opening.index].heat
                drawn.append(
                    element(
                        "path",
                        d=_path(stand.of(opening.polygon)),
                        fill=PAPER,
                        stroke=ACCENT if hot else INK,
                        stroke_width=1.4 * pen,
                        data_part="opening",
                    )
                )
    for drawn_join in assembly.drawn_joins:
        line = path_of(drawn_join.line, closed=False)
        drawn.append(element("path", d=line, stroke=ACCENT, stroke_width=4 * pen, data_part="join"))
    return [element("g", *drawn, transform=frame.transform, data_unit="mm")]


def _path(shape: object) -> str:
    """Course of a piece, or of an opening, where it stands."""
    assert isinstance(shape, Polygon)  # noqa: S101  turned and moved polygons are polygons
    return curved_path(ring_points(shape.exterior))


def _walls(
    slabs: Sequence[Slab],
    shapes: Sequence[Shape],
    assembly: Assembly,
    frame: Frame,
    prefix: str,
) -> list[SvgElement]:
    """Hatch the walls that pieces stand against."""
    drawn = []
    for slab, shape, stand in zip(slabs, shapes, assembly.stands, strict=True):
        for side in shape.sides:
            edge = slab.edges.get(side.name)
            if edge is None or edge.profile != "wall":
                continue
            line = stand.of(LineString(side.line.coords))
            band = plane.buffer(line, -frame.units(_WALL), single_sided=True, join_style="mitre")
            for piece in plane.polygons_in(plane.difference(band, stand.of(shape.outline))):
                path = path_of(frame.at((p[0], p[1])) for p in course_of(piece.exterior))
                drawn.append(element("path", d=path, fill=f"url(#{prefix}-hatch)"))
    return drawn


def _tags(shapes: Sequence[Shape], assembly: Assembly, frame: Frame) -> list[SvgElement]:
    """Number the pieces and letter the joins, clear of each other and of openings."""
    places = Places(Box(2, 2, SHEET_WIDTH - 2, frame.slab.y1 + 24))
    for shape, stand in zip(shapes, assembly.stands, strict=True):
        places.avoid(
            frame.box(stand.of(opening.polygon).bounds)
            for opening in shape.openings
            if not opening.polygon.is_empty
        )
    lines = [_line_box(drawn_join, frame) for drawn_join in assembly.drawn_joins]
    places.avoid(lines)
    drawn = []
    for i, (shape, stand) in enumerate(zip(shapes, assembly.stands, strict=True), start=1):
        concrete = shape.outline if shape.net.is_empty else shape.net
        inner = stand.of(concrete).representative_point()
        middle = stand.of(shape.outline).centroid
        near = [frame.at((middle.x, middle.y)), frame.at((inner.x, inner.y))]
        spots = [*near, *rings(near[1], (20.0, 34.0, 50.0, 70.0, 95.0))]
        at = places.place(spots, 2 * _TAG, 2 * _TAG) or near[1]
        drawn.append(element("circle", cx=at[0], cy=at[1], r=_TAG, fill=INK))
        drawn.append(_written(str(i), at, PAPER))
    for drawn_join in assembly.drawn_joins:
        (x0, y0), (x1, y1) = (frame.at(p) for p in drawn_join.line)
        middle_at = ((x0 + x1) / 2, (y0 + y1) / 2)
        at = places.place(rings(middle_at, (18.0, 26.0, 38.0, 55.0, 80.0)), 22, 22) or middle_at
        drawn.append(
            element(
                "rect", x=at[0] - 11, y=at[1] - 11, width=22, height=22, rx=3, fill=PAPER,
                stroke=ACCENT, stroke_width=1.8,
            )
        )  # fmt: skip
        drawn.append(_written(letter(drawn_join.number), at, ACCENT))
    return drawn


def _line_box(drawn_join: DrawnJoin, frame: Frame) -> Box:
    (x0, y0), (x1, y1) = (frame.at(p) for p in drawn_join.line)
    return Box(min(x0, x1) - 4, min(y0, y1) - 4, max(x0, x1) + 4, max(y0, y1) + 4)


def _written(text: str, at: XY, ink: str) -> SvgElement:
    return lettered(
        text, (at[0], at[1] + SMALL * 0.36), SMALL, anchor="middle", fill=ink, bold=True
    )


def _front(frame: Frame, y: float, speech: Speech) -> list[SvgElement]:
    """Draw the mark of the front: that of the first piece is at the bottom."""
    middle = (frame.slab.x0 + frame.slab.x1) / 2
    arrow = f"M{middle - 46:.2f} {y + 13:.2f}l7 -13l7 13z"
    return [
        element("path", d=arrow, fill=INK),
        lettered(speech.say(Message("together-front")), (middle - 26, y + 13), PLAIN, bold=True),
    ]


def _words(
    says: Sequence[str], rows: Sequence[tuple[str, str]], top: float
) -> tuple[list[SvgElement], float]:
    """Write the hand, large, then each row beside its tag; return their lower end."""
    drawn: list[SvgElement] = []
    at = top
    for sentence in says:
        for row in wrapped(sentence, (SHEET_WIDTH - 2 * MARGIN) / 1.12, PLAIN + 1, 3):
            drawn.append(lettered(row, (MARGIN, at), PLAIN + 1, bold=True))
            at += _LINE + 2
    at += 6
    for tag, text in rows:
        drawn.append(lettered(tag, (MARGIN + 2, at), SMALL, bold=True))
        for row in wrapped(text, SHEET_WIDTH - 2 * MARGIN - 26, SMALL, 3):
            drawn.append(lettered(row, (MARGIN + 26, at), SMALL))
            at += _LINE
    return drawn, at
