"""What carries the slabs in the view: plain units with fronts, legs, frames, piers and corbels."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from shapely.geometry import Point, Polygon, box
from shapely.geometry.polygon import orient

from ledgerstone import plane
from ledgerstone.drawing.camera import Camera
from ledgerstone.drawing.covering import back_to_front
from ledgerstone.drawing.frame import course_of
from ledgerstone.drawing.solid import Face, Ribbon, hanging
from ledgerstone.drawing.standing import Standing
from ledgerstone.drawing.svg import SvgElement, element, path_of
from ledgerstone.drawing.tint import RGB, lit
from ledgerstone.outline import XY

_PAINTED: Final[RGB] = (231, 227, 218)
_WOOD: Final[RGB] = (190, 172, 146)
_METAL: Final[RGB] = (92, 92, 90)
_DOOR_MM: Final = 620.0  # the widest door; a wider front has two
_PLINTH_MM: Final = 110.0
_GAP_MM: Final = 9.0
_HANDLE_MM: Final = 140.0
_RAIL_MM: Final = 60.0
_POST_MM: Final = 60.0
_LEG_MM: Final = 70.0  # no leg is drawn thicker; a larger pad is a pedestal's plate
_COLUMN_MM: Final = 120.0
_PLATE_MM: Final = 14.0
_FOOT_MM, _FOOT_OF_PLATE = 420.0, 0.7  # across: at least, and of the plate under the top
_CORBEL_MM: Final = 90.0
_MASONRY_MM: Final = 90.0  # a frame as wide as this is built up from the floor
_CONTRAST: Final = 0.5
_UNDER: Final = 0.78  # light beneath the slab's own edge


@dataclass(frozen=True, slots=True)
class Block:
    """An upright prism; ``front`` is which way its doors face, where it has any."""

    footprint: Polygon
    top_mm: float
    foot_mm: float
    colour: RGB
    front: XY | None = None
    doors: tuple[int, int] = (1, 1)


def furniture(standing: Standing, camera: Camera) -> list[SvgElement]:
    """Draw what carries a slab, from the farthest to the nearest; heights below the slab's top."""
    blocks = list(_blocks(standing))
    under = -standing.piece.shape.thickness_mm
    plates = [block for block in blocks if block.top_mm < under]
    ribbons: list[Ribbon] = []
    of: dict[int, Block] = {}
    for block in blocks:
        for ring in (block.footprint.exterior, *block.footprint.interiors):
            made = hanging(course_of(ring), block.top_mm, block.foot_mm)
            ribbons += made
            of |= {id(ribbon): block for ribbon in made}
    drawn = [
        element("g", *_draw_block(ribbon, of[id(ribbon)], camera), data_part="rest")
        for ribbon in back_to_front([ribbon for ribbon in ribbons if of[id(ribbon)] in plates])
    ]
    drawn += [_plate_top(plate, camera) for plate in plates]
    return drawn + [
        element("g", *_draw_block(ribbon, of[id(ribbon)], camera), data_part="rest")
        for ribbon in back_to_front([ribbon for ribbon in ribbons if of[id(ribbon)] not in plates])
    ]


def _plate_top(plate: Block, camera: Camera) -> SvgElement:
    """Draw the top of a plate on the floor, which no slab hides."""
    points = [camera.at(x, y, plate.top_mm) for x, y in course_of(plate.footprint.exterior)]
    return element("path", d=path_of(points, places=1), fill=lit(plate.colour, 1.12))


def _blocks(standing: Standing) -> Iterator[Block]:
    piece = standing.piece
    rests, thick = piece.slab.rests, piece.shape.thickness_mm
    under, floor = -thick, -standing.height_mm
    if rests is None or floor >= under:
        return
    if rests.kind == "units":
        yield from _units(standing, under, floor)
    elif rests.kind in ("legs", "pedestal"):
        for pad in standing.rests:
            yield from _leg(pad, under, floor)
    elif rests.kind == "frame" and rests.width is not None and rests.width.mm < _MASONRY_MM:
        yield from _framed(standing.rests, under, floor)
    else:
        low = max(floor, under - _CORBEL_MM) if standing.hangs else floor
        for footprint in standing.rests:
            yield Block(footprint, under, low, _PAINTED)


def _units(standing: Standing, under: float, floor: float) -> Iterator[Block]:
    rests = standing.piece.slab.rests
    shown = [unit for unit in rests.units if unit.use != "gap"] if rests is not None else []
    for footprint, unit in zip(standing.rests, shown, strict=False):
        beside = 2 if unit.width.mm > _DOOR_MM else 1
        doors = (1, 2) if unit.use == "hob" else (beside, 1)
        yield Block(footprint, under, floor, _PAINTED, standing.front, doors)


def _leg(pad: Polygon, under: float, floor: float) -> Iterator[Block]:
    x0, y0, x1, y1 = pad.bounds
    middle, wide = ((x0 + x1) / 2, (y0 + y1) / 2), max(x1 - x0, y1 - y0)
    if wide <= 2 * _LEG_MM:
        yield Block(_square(middle, min(wide, _LEG_MM)), under, floor, _WOOD)
        return
    across = max(_FOOT_OF_PLATE * wide, _FOOT_MM)
    yield Block(_disc(middle, across), floor + _PLATE_MM, floor, _METAL)
    yield Block(_disc(middle, _COLUMN_MM), under, floor + _PLATE_MM, _METAL)


def _disc(middle: XY, across: float) -> Polygon:
    return orient(plane.buffer(Point(middle), across / 2, quad_segs=12))


def _square(middle: XY, side: float) -> Polygon:
    x, y = middle
    return box(x - side / 2, y - side / 2, x + side / 2, y + side / 2, ccw=True)


def _framed(bands: Sequence[Polygon], under: float, floor: float) -> Iterator[Block]:
    """Rails under the slab, and a post at each end of what they span."""
    low = max(floor, under - _RAIL_MM)
    half = _POST_MM / 2
    for band in bands:
        x0, y0, x1, y1 = band.bounds
        for x in (x0 + half, x1 - half):
            for y in (y0 + half, y1 - half):
                yield Block(_square((x, y), _POST_MM), low, floor, _METAL)
    for band in bands:
        yield Block(band, under, low, _METAL)


def _softly(light: float) -> float:
    """Light on furniture: less contrast than on the concrete."""
    return 1.0 - _CONTRAST * (1.0 - light)


def _draw_block(ribbon: Ribbon, block: Block, camera: Camera) -> Iterable[SvgElement]:
    for face in ribbon.faces:
        fill = lit(block.colour, _softly(face.light))
        d = _quad(face, camera, (0.0, 1.0), (face.top_mm, face.foot_mm))
        yield element("path", d=d, fill=fill, stroke=fill, stroke_width=0.5)
        if block.front is not None and _faces(face, block.front):
            yield from _doors(face, block, camera)


def _faces(face: Face, way: XY) -> bool:
    """Return whether a face looks that way."""
    dx, dy = face.end[0] - face.start[0], face.end[1] - face.start[1]
    return bool(dy * way[0] - dx * way[1] > 0.9 * (dx * dx + dy * dy) ** 0.5)


def _quad(face: Face, camera: Camera, along: XY, heights: XY) -> str:
    """Path of part of a face: from and to which share of its length, and its top and foot."""
    (x0, y0), (x1, y1) = face.start, face.end
    (a, b), (top, foot) = along, heights
    ends = [(x0 + (x1 - x0) * t, y0 + (y1 - y0) * t) for t in (a, b)]
    corners = [(*ends[0], top), (*ends[1], top), (*ends[1], foot), (*ends[0], foot)]
    return path_of([camera.at(*corner) for corner in corners], places=1)


def _doors(face: Face, block: Block, camera: Camera) -> Iterator[SvgElement]:
    """Plinth, doors or drawers with a shadow gap, a handle each, and the slab's own shade."""
    whole, light = (0.0, 1.0), _softly(face.light)
    tall = block.top_mm - block.foot_mm
    knee = block.foot_mm + min(_PLINTH_MM, 0.16 * tall)
    fronts, handles = _leaves(face, block, knee, camera)
    shade = (block.top_mm, block.top_mm - min(34.0, 0.1 * tall))
    for heights, share in (((knee, block.foot_mm), 0.45), ((block.top_mm, knee), 0.7)):
        d = _quad(face, camera, whole, heights)
        yield element("path", d=d, fill=lit(block.colour, share * light))
    yield element("path", d=fronts, fill=lit(block.colour, light))
    yield element("path", d=handles, fill=lit(_METAL, light))
    d = _quad(face, camera, whole, shade)
    yield element("path", d=d, fill="#000000", fill_opacity=1 - _UNDER)


def _leaves(face: Face, block: Block, knee_mm: float, camera: Camera) -> tuple[str, str]:
    """Paths of a front's doors or drawers, and of their handles."""
    beside, above = block.doors
    wide = math.dist(face.start, face.end)
    high, gap = (block.top_mm - knee_mm) / above, _GAP_MM / wide
    fronts, handles = "", ""
    for i in range(beside):
        along = (i / beside + gap, (i + 1) / beside - gap)
        middle, half = sum(along) / 2, min(_HANDLE_MM / wide, 0.6 / beside) / 2
        for k in range(above):
            top = block.top_mm - high * k - _GAP_MM
            fronts += _quad(face, camera, along, (top, top - high + 1.5 * _GAP_MM))
            at = top - min(36.0, 0.2 * high)
            handles += _quad(face, camera, (middle - half, middle + half), (at, at - 9.0))
    return fronts, handles
