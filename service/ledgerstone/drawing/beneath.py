"""What carries the slab, dotted beneath it, and what each unit is for."""

from __future__ import annotations

from itertools import pairwise

from shapely.geometry import LineString, Polygon, box

from ledgerstone import plane
from ledgerstone.drawing.frame import SMALL, TALL, Frame, course_of
from ledgerstone.drawing.lettering import PENCIL, fitted, lettered, text_width
from ledgerstone.drawing.placing import Places
from ledgerstone.drawing.svg import SvgElement, element, path_of
from ledgerstone.message import Message
from ledgerstone.order import Rests, Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.strength.rests import pedestal_plate
from ledgerstone.wording import Speech

_PAD_MM = 60.0  # a leg's pad where the order gives none
_BED = 9.0


def rests_group(slab: Slab, shape: Shape, frame: Frame) -> list[SvgElement]:
    """Dot the rests, on the sheet."""
    if slab.rests is None:
        return []
    return [_dotted(piece, frame) for piece in rest_polygons(slab.rests, shape, frame.units(_BED))]


def _dotted(polygon: Polygon, frame: Frame) -> SvgElement:
    rings = [polygon.exterior, *polygon.interiors]
    path = "".join(path_of(frame.at((p[0], p[1])) for p in course_of(ring)) for ring in rings)
    return element(
        "path",
        d=path,
        fill="none",
        stroke=PENCIL,
        stroke_width=1.5,
        stroke_linecap="round",
        stroke_dasharray="0.1 4",
        data_part="rest",
    )


def rest_polygons(rests: Rests, shape: Shape, bed_mm: float) -> list[Polygon]:
    """Outlines of what carries the slab, plane mm; a full bed is drawn ``bed_mm`` inside it."""
    if rests.kind == "units":
        boxes = unit_boxes(rests, shape)
        return [box(*bounds) for bounds, name in boxes if name.values["use"] != "gap"]
    if rests.kind == "legs":
        half = (rests.pad.mm if rests.pad is not None else _PAD_MM) / 2
        return [box(p.x.mm - half, p.y.mm - half, p.x.mm + half, p.y.mm + half) for p in rests.at]
    if rests.kind == "ledges":
        return [
            plane.buffer(
                LineString(
                    [(ledge.start.x.mm, ledge.start.y.mm), (ledge.end.x.mm, ledge.end.y.mm)]
                ),
                ledge.depth.mm / 2,
                cap_style="flat",
            )
            for ledge in rests.lines
            if ledge.start != ledge.end
        ]
    if rests.kind == "pedestal":
        return [pedestal_plate(rests, shape)]
    if rests.kind == "full":
        return plane.polygons_in(plane.buffer(shape.outline, -bed_mm))
    return _bearings(rests, shape)


def _bearings(rests: Rests, shape: Shape) -> list[Polygon]:
    """Bands inside the sides that bear: a frame's, or the two ends."""
    if rests.kind == "ends":
        names: tuple[str, ...] = ("left", "right")
    else:
        names = rests.sides or tuple(side.name for side in shape.sides)
    depth = rests.depth if rests.kind == "ends" else rests.width
    if depth is None:
        return []
    x0, y0, x1, y1 = shape.outline.bounds
    bands = {
        "left": box(x0, y0, x0 + depth.mm, y1),
        "right": box(x1 - depth.mm, y0, x1, y1),
        "front": box(x0, y0, x1, y0 + depth.mm),
        "back": box(x0, y1 - depth.mm, x1, y1),
    }
    lines = {side.name: side.line for side in shape.sides}
    pieces = [
        bands[name] if name in bands else plane.buffer(lines[name], depth.mm)
        for name in names
        if name in bands or name in lines
    ]
    return plane.polygons_in(
        plane.union([plane.intersection(piece, shape.outline) for piece in pieces])
    )


def unit_boxes(
    rests: Rests, shape: Shape
) -> list[tuple[tuple[float, float, float, float], Message]]:
    """Boxes of the units from left to right in plane mm, and what each is: ``basin 800 mm``."""
    x0, y0, _, y1 = shape.outline.bounds
    over = {side: length.mm for side, length in rests.overhang.items()}
    front, back = y0 + over.get("front", 0.0), y1 - over.get("back", 0.0)
    edges = [x0 + over.get("left", 0.0)]
    for unit in rests.units:
        edges.append(edges[-1] + unit.width.mm)
    backs = [min(back, _back_mm(shape, (a + b) / 2)) for a, b in pairwise(edges)]
    return [
        ((a, front, b, deep), Message("plan-rest-unit", use=unit.use, width=unit.width))
        for (a, b), deep, unit in zip(pairwise(edges), backs, rests.units, strict=True)
        if front < deep
    ]


def _back_mm(shape: Shape, x_mm: float) -> float:
    """How far back the slab reaches at a place along its front; no unit is drawn any deeper."""
    _, y0, _, y1 = shape.outline.bounds
    across = plane.intersection(shape.outline, LineString([(x_mm, y0), (x_mm, y1)]))
    return y1 if across.is_empty else float(across.bounds[3])


def unit_labels(
    slab: Slab, shape: Shape, frame: Frame, places: Places, speech: Speech
) -> list[SvgElement]:
    """Name each unit within it, low down, where its name has room."""
    if slab.rests is None or slab.rests.kind != "units":
        return []
    drawn = []
    for bounds, named in unit_boxes(slab.rests, shape):
        name = speech.say(named)
        within = frame.box(bounds)
        text = fitted(name, within.x1 - within.x0 - 8, SMALL)
        if text != name:
            continue
        wide = text_width(text, SMALL)
        middle = (within.x0 + within.x1) / 2
        heights = [within.y1 - 13, within.y0 + 13, (within.y0 + within.y1) / 2]
        side = (within.x1 - within.x0 - wide) / 2 - 5
        spots = [(middle + s, y) for y in heights for s in (0.0, -side, side)]
        place = places.place(spots, wide, TALL, clear=True)
        if place is not None:
            drawn.append(_named(text, place))
    return drawn


def _named(text: str, place: XY) -> SvgElement:
    at = (place[0], place[1] + SMALL * 0.36)
    return lettered(text, at, SMALL, anchor="middle", fill=PENCIL, halo="#ebe7dd")
