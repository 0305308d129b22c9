"""The room of the view: its floor, the walls that the order names, and light from a window."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from ledgerstone.drawing.camera import LEVEL, Camera
from ledgerstone.drawing.standing import Standing
from ledgerstone.drawing.svg import SvgElement, element, path_of
from ledgerstone.outline import XY

_SKIRTING_MM: Final = 70.0
_FAR_MM: Final = 60_000.0
_SQUARE: Final = 0.999
_BACK, _LEFT = "#f1eee8", "#e6e2da"
_SKIRTING = "#f8f6f2"
_LINE = "#c9c4ba"
_PANE_MM, _BAR_MM = (300.0, 430.0), 34.0
_LIGHT: Final = 0.5
_WALL_SHADOW: Final = 0.8  # how far down a shelf's shadow reaches, of its depth
_LAYERS: Final = 8


@dataclass(frozen=True, slots=True)
class Walls:
    """The positions of walls behind and to the left, plane mm; None if the order names none."""

    back_mm: float | None = None
    left_mm: float | None = None


def walls_of(standings: Sequence[Standing]) -> Walls:
    """Take the walls that face the eye, the farthest out each; a shelf always has one behind."""
    backs: list[float] = []
    lefts: list[float] = []
    for standing in standings:
        shape = standing.piece.shape
        x0, _, _, y1 = standing.bounds
        is_at_wall = standing.hangs or standing.has_wall
        if is_at_wall and standing.front[1] < -_SQUARE:
            backs.append(y1)
        if is_at_wall and standing.front[0] > _SQUARE:
            lefts.append(x0)
        if standing.upright is not None:
            continue
        for side in shape.sides:
            edge = standing.piece.slab.edges.get(side.name)
            if edge is None or edge.profile != "wall" or side.line.is_ring:
                continue
            (ax, ay), (bx, by) = side.line.coords[0], side.line.coords[-1]
            length = ((bx - ax) ** 2 + (by - ay) ** 2) ** 0.5 or 1.0
            out = ((by - ay) / length, (ax - bx) / length)
            if LEVEL.facing((-out[0], -out[1], 0.0)) <= 0:
                continue
            if out[1] > _SQUARE and max(ay, by) > y1 - 1.0:
                backs.append(max(ay, by))
            elif out[0] < -_SQUARE and min(ax, bx) < x0 + 1.0:
                lefts.append(min(ax, bx))
    back, left = max(backs, default=None), min(lefts, default=None)
    low_x = min(standing.bounds[0] for standing in standings)
    high_y = max(standing.bounds[3] for standing in standings)
    return Walls(
        back if back is not None and back > high_y - 1.0 else None,
        left if left is not None and left < low_x + 1.0 else None,
    )


def walls(found: Walls, camera: Camera, heights: XY, *, is_inside: bool) -> Iterator[SvgElement]:
    """Draw the walls, and their skirting where they are a room's.

    Parameters
    ----------
    heights
        Of the floor, and of the walls' upper end, above the picture, mm.
    is_inside
        Whether they stand indoors.
    """
    (floor_mm, top_mm), back, left = heights, found.back_mm, found.left_mm
    if left is not None:
        far = _FAR_MM if back is None else back
        yield _wall(camera, ((left, -_FAR_MM), (left, far)), (floor_mm, top_mm), _LEFT)
        if is_inside:
            yield _skirting(camera, ((left, -_FAR_MM), (left, far)), floor_mm)
    if back is not None:
        near = -_FAR_MM if left is None else left
        yield _wall(camera, ((near, back), (_FAR_MM, back)), (floor_mm, top_mm), _BACK)
        if is_inside:
            yield _skirting(camera, ((near, back), (_FAR_MM, back)), floor_mm)


def _wall(camera: Camera, ends: tuple[XY, XY], heights: XY, fill: str) -> SvgElement:
    return element("path", d=_upright(camera, ends, heights), fill=fill)


def _skirting(camera: Camera, ends: tuple[XY, XY], floor_mm: float) -> SvgElement:
    d = _upright(camera, ends, (floor_mm, floor_mm + _SKIRTING_MM))
    return element("path", d=d, fill=_SKIRTING, stroke=_LINE, stroke_width=0.8)


def _upright(camera: Camera, ends: tuple[XY, XY], heights: XY) -> str:
    (a, b), (low, high) = ends, heights
    corners = ((*a, low), (*b, low), (*b, high), (*a, high))
    return path_of([camera.at(*corner) for corner in corners], places=1)


def wall_shadow(standing: Standing, camera: Camera, back_mm: float) -> Iterator[SvgElement]:
    """Draw what a shelf throws on the wall behind it: thin layers, each a little deeper."""
    shape = standing.piece.shape
    x0, y0, x1, y1 = shape.outline.bounds
    reach = _WALL_SHADOW * (y1 - y0)
    for i in range(_LAYERS):
        share = (i + 1) / _LAYERS
        ends = ((x0 + 0.5 * share * reach, back_mm), (x1 + share * reach, back_mm))
        heights = (-shape.thickness_mm - share * reach, 0.0)
        d = _upright(camera, ends, heights)
        yield element("path", d=d, fill="#000000", fill_opacity=0.03, data_part="shadow")


def window_light(camera: Camera, at: XY, high_mm: float, scale: float) -> SvgElement:
    """Draw what a window of four panes throws on a wall behind: ``at`` is its left end, plane mm.

    Parameters
    ----------
    high_mm
        Height of its lower edge.
    scale
        1 in a room of full size.
    """
    (x, y), (wide, tall), bar = at, _PANE_MM, _BAR_MM * scale
    lean = 0.35  # light from high up on the left slants across the wall
    d = ""
    for i in range(2):
        for k in range(2):
            x0, z0 = x + i * (wide * scale + bar), high_mm + k * (tall * scale + bar)
            corners = [(0.0, 0.0), (wide, 0.0), (wide, tall), (0.0, tall)]
            d += path_of(
                [
                    camera.at(
                        x0 + px * scale - lean * (z0 + pz * scale - high_mm), y, z0 + pz * scale
                    )
                    for px, pz in corners
                ],
                places=1,
            )
    return element("path", d=d, fill="#ffffff", fill_opacity=_LIGHT, data_part="light")
