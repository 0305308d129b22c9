"""The slab's soft shadow on the floor: one small blurred picture, the same bytes on every machine.

Its darkness is worked out where the floor is seen, row by row, and blurred by a table of whole
numbers, so that no machine rounds it otherwise.
"""

from __future__ import annotations

import base64
import math
import struct
import zlib
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Final

import numpy as np
import numpy.typing as npt

from ledgerstone.drawing.camera import Camera, shadow_of
from ledgerstone.drawing.frame import polygons
from ledgerstone.drawing.svg import EMBEDDED_PNG, Element, element
from ledgerstone.outline import XY
from ledgerstone.shape import Shape

_WIDE: Final = 96  # cells across
_FINE: Final = 2.0  # units; a fifth of a cell
_LOOKS: Final = 3  # rows looked along in each cell
_DARKEST: Final = 92  # of 255
_FALL_MOST: Final = 0.12  # a shadow from high up is kept near, so that it stays in the picture
_BLUR: Final = 3  # cells to each side, thrice

Cells = npt.NDArray[np.int64]


@dataclass(frozen=True, slots=True)
class _Grid:
    """Cells over a part of the sheet: its corner, a cell's size, and how many rows."""

    corner: XY
    cell: float
    rows: int


def drop_of(shape: Shape, floor_mm: float) -> float:
    """How far a shadow falls, mm: less than the floor is below where that is far."""
    return min(-floor_mm, _FALL_MOST * max(shape.length_mm, shape.width_mm))


def shadow(shape: Shape, camera: Camera, floor_mm: float) -> list[Element]:
    """Lay the shadow on the floor; what is seen down an opening is dark already."""
    drop = drop_of(shape, floor_mm)
    rings = [
        [camera.at(*shadow_of((p[0], p[1]), drop), floor_mm) for p in ring]
        for ring in _rings(shape, _FINE / camera.per_mm)
    ]
    if not rings:
        return []
    grid = _grid(rings)
    dark = _blurred(_covered(rings, grid))
    x, y = grid.corner
    return [
        element(
            "image",
            href=_picture(dark),
            x=x,
            y=y,
            width=_WIDE * grid.cell,
            height=grid.rows * grid.cell,
            preserveAspectRatio="none",
            data_part="shadow",
        )
    ]


def _rings(shape: Shape, fine_mm: float) -> Iterator[Sequence[Sequence[float]]]:
    for piece in polygons(shape.net):
        caster = piece.exterior.simplify(fine_mm, preserve_topology=False)
        yield list(caster.coords)


def _grid(rings: Sequence[Sequence[XY]]) -> _Grid:
    """Cover the shadow and as much again as its blur reaches."""
    xs, ys = zip(*(point for ring in rings for point in ring), strict=True)
    room = 3 * _BLUR + 1
    cell = (max(xs) - min(xs)) / (_WIDE - 2 * room)
    rows = min(2 * _WIDE, math.ceil((max(ys) - min(ys)) / cell) + 2 * room)
    return _Grid((min(xs) - room * cell, min(ys) - room * cell), cell, rows)


def _covered(rings: Sequence[Sequence[XY]], grid: _Grid) -> Cells:
    """How much of each cell the shadow covers, in 1/1000; shape ``(rows, cells across)``."""
    starts, ends = [], []
    for ring in rings:
        points = np.array(ring) - grid.corner
        starts.append(points[:-1] / grid.cell)
        ends.append(points[1:] / grid.cell)
    (x0, y0), (x1, y1) = np.concatenate(starts).T, np.concatenate(ends).T
    at = ((np.arange(grid.rows * _LOOKS) + 0.5) / _LOOKS)[:, None]
    crossed = (y0 <= at) != (y1 <= at)
    rise = np.where(y1 == y0, 1.0, y1 - y0)
    across = x0 + (at - y0) / rise * (x1 - x0)
    right = np.arange(1, _WIDE + 1)
    # Each crossing turns the shadow on or off for all that lies to its right.
    order = np.sort(np.where(crossed, across, np.inf), axis=1)
    order = order[:, : int(crossed.sum(axis=1).max(initial=0))]
    signs = np.where(np.arange(order.shape[1]) % 2 == 0, 1.0, -1.0)
    share = np.clip(right - order[:, :, None], 0.0, 1.0) * signs[None, :, None]
    rows = share.sum(axis=1).reshape(grid.rows, _LOOKS, _WIDE).mean(axis=1)
    whole: Cells = np.rint(1000 * rows).astype(np.int64)
    return whole


def _blurred(cells: Cells) -> Cells:
    """Blur by three running means each way, which comes near a Gaussian.

    Whole numbers this small are exact as floats, in whatever order they are added.
    """
    rows, wide = cells.shape
    blurred = _spread(rows) @ cells.astype(np.float64) @ _spread(wide)
    dark: Cells = np.rint(blurred).astype(np.int64) * _DARKEST // (1000 * (2 * _BLUR + 1) ** 6)
    return dark


@cache
def _spread(count: int) -> npt.NDArray[np.float64]:
    """Return what each cell of a row gives to each, shape ``(count, count)``."""
    once = np.ones(2 * _BLUR + 1)
    kernel = np.convolve(np.convolve(once, once), once)
    apart = np.abs(np.subtract.outer(np.arange(count), np.arange(count)))
    far = np.concatenate([kernel[len(kernel) // 2 :], np.zeros(count)])
    spread: npt.NDArray[np.float64] = far[apart]
    return spread


def _picture(dark: Cells) -> str:
    """Write darkness as a PNG of black, each cell as opaque as it is dark; not compressed."""
    rows, wide = dark.shape
    levels = _DARKEST + 1
    scan = b"".join(b"\x00" + row.astype(np.uint8).tobytes() for row in dark)
    chunks = [
        (b"IHDR", struct.pack(">IIBBBBB", wide, rows, 8, 3, 0, 0, 0)),
        (b"PLTE", bytes(3 * levels)),
        (b"tRNS", bytes(range(levels))),
        (b"IDAT", zlib.compress(scan, 0)),
        (b"IEND", b""),
    ]
    png = b"\x89PNG\r\n\x1a\n" + b"".join(
        struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data))
        for name, data in chunks
    )
    return EMBEDDED_PNG + base64.b64encode(png).decode("ascii")
