"""The concrete's surface: a small tile of mottling, and voids at places from the order's seed.

The tile's pattern is worked out once from a hash, not drawn; only its sixteen colours change with
the shade, about a mean that is the shade itself. It is stored, not compressed, so that it has the
same bytes on every machine.
"""

from __future__ import annotations

import base64
import hashlib
import struct
import zlib
from functools import cache
from typing import Final

import numpy as np
import shapely
from shapely.geometry import MultiPolygon, Polygon

from ledgerstone.arrays import FloatArray
from ledgerstone.drawing.svg import EMBEDDED_PNG
from ledgerstone.drawing.tint import RGB, hex_of
from ledgerstone.outline import XY
from ledgerstone.quantities import MM2_PER_M2
from ledgerstone.surfaces import SURFACES, Surface

SIDE_PX: Final = 80
TILE_MM: Final = 430.0  # less on a small slab, which is drawn at a larger scale
_LEVELS: Final = 16
_OCTAVES: Final = ((4, 1.0), (9, 0.5), (20, 0.42), (40, 0.5), (80, 0.55))
_DEPTH: Final = 0.042  # how far mottling strays from the mean, as a share of full brightness
_MAX_VOIDS: Final = 260
_CLEAR_MM: Final = 4.0  # how far voids keep from an edge, at the least


def numbers(seed: str, count: int) -> FloatArray:
    """Pseudo-random numbers from 0 to 1 by a seed, shape ``(count,)``."""
    stream = hashlib.shake_256(seed.encode("utf-8", "replace")).digest(4 * count)
    return np.frombuffer(stream, dtype="<u4").astype(np.float64) / 2**32


def tile_mm(longest_mm: float) -> float:
    """How large the tile lies on a slab."""
    return min(TILE_MM, 0.6 * longest_mm)


def tile(colour: RGB) -> str:
    """Return the mottled tile in a shade, as a ``data:`` PNG."""
    indices, deviations = _pattern()
    reach = 255 * _DEPTH
    shades = [hex_of(_moved(colour, reach * deviation)) for deviation in deviations]
    palette = bytes.fromhex("".join(shade[1:] for shade in shades))
    header = struct.pack(">IIBBBBB", SIDE_PX, SIDE_PX, 4, 3, 0, 0, 0)
    chunks = [(b"IHDR", header), (b"PLTE", palette), (b"IDAT", indices), (b"IEND", b"")]
    png = b"\x89PNG\r\n\x1a\n" + b"".join(_chunk(name, data) for name, data in chunks)
    return EMBEDDED_PNG + base64.b64encode(png).decode("ascii")


def _moved(colour: RGB, by: float) -> tuple[float, float, float]:
    """Return a colour moved lighter or darker, less so near black or white: its mean stays."""
    room = min(1.0, min(*colour, 255 - max(colour)) / 24 + 0.25)
    return colour[0] + by * room, colour[1] + by * room, colour[2] + by * room


def _chunk(name: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data))


@cache
def _pattern() -> tuple[bytes, tuple[float, ...]]:
    """Return the tile's packed indices and what each index strays from the mean, -1 to 1."""
    field = sum((share * _octave(cells) for cells, share in _OCTAVES), np.zeros((SIDE_PX, SIDE_PX)))
    field = (field - field.mean()) / (2.4 * field.std())
    index = np.clip(np.round((field + 1) / 2 * (_LEVELS - 1)), 0, _LEVELS - 1).astype(np.uint8)
    levels = np.linspace(-1, 1, _LEVELS)
    levels -= levels[index].mean()
    packed = (index[:, 0::2] << 4) | index[:, 1::2]
    rows = b"".join(b"\x00" + row.tobytes() for row in packed)
    return zlib.compress(rows, 0), tuple(float(level) for level in levels)


def _octave(cells: int) -> FloatArray:
    """One scale of noise, periodic over the tile, shape ``(SIDE_PX, SIDE_PX)``."""
    lattice = numbers(f"mottle {cells}", cells * cells).reshape(cells, cells)
    at = np.arange(SIDE_PX) * cells / SIDE_PX
    low = at.astype(int)
    share = at - low
    share = share * share * (3 - 2 * share)
    high = (low + 1) % cells
    rows = lattice[low] * (1 - share)[:, None] + lattice[high] * share[:, None]
    noise: FloatArray = rows[:, low] * (1 - share) + rows[:, high] * share
    return noise


def voids(
    net: Polygon | MultiPolygon, surface: Surface, seed: str, edge_mm: float = 0.0
) -> list[tuple[XY, float]]:
    """Places and widths of the small air voids that show on a face, in plane mm.

    They keep clear of the rim by as much as ``edge_mm``, the size of its worked edge, and a little.
    """
    count = min(_MAX_VOIDS, round(SURFACES[surface].voids_per_m2 * net.area / MM2_PER_M2))
    if count == 0:
        return []
    thrown = numbers(f"voids {seed}", 6 * count).reshape(2 * count, 3)
    x0, y0, x1, y1 = net.bounds
    xs, ys = x0 + thrown[:, 0] * (x1 - x0), y0 + thrown[:, 1] * (y1 - y0)
    rim = net.boundary
    shapely.prepare(net)
    shapely.prepare(rim)
    kept: list[int] = []
    low = 0
    while low < 2 * count and len(kept) < count:  # few of them are rejected
        high = low + count - len(kept) + count // 4 + 1
        tried = low + np.flatnonzero(shapely.contains_xy(net, xs[low:high], ys[low:high]))
        near = shapely.dwithin(rim, shapely.points(xs[tried], ys[tried]), _CLEAR_MM + edge_mm)
        kept += tried[~near].tolist()
        low = high
    widths = 1.4 + 4.2 * thrown[:, 2] ** 4
    return [((float(xs[i]), float(ys[i])), float(widths[i])) for i in kept[:count]]
