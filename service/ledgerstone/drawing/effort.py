"""How much work a drawing is, estimated before any of it is done: a count, never a time.

A unit is the strength of a plain slab, about a thirtieth of a second. The figures were
fitted to the awkward drawings of the tests and to crowded orders.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.order import Polygon, Slab

_A_SHEET: Final = 0.3
_AN_OPENING, _A_RELIEF, _A_POINT = 0.06, 0.06, 0.012
_PAINTING: Final = 1.0
_A_MILLION_PIXELS: Final = {"view": 6.5}  # its light and its mottling cover all of it
_OF_LINES: Final = 3.0
_A_KILOBYTE: Final = 0.12
# Estimates of a sheet before it is drawn: height over width, and size as SVG.
_HIGH_FOR_WIDE: Final = 0.75
_A_SHEET_KB, _AN_OPENING_KB, _A_POINT_KB = 12.0, 1.5, 0.2
_A_PAPER, _A_SLAB_ON_PAPER = 6.0, 3.0


def drawing_effort(slabs: Sequence[Slab]) -> float:
    """Units of work until these slabs are drawn on one sheet, as SVG."""
    return _A_SHEET + sum(
        _AN_OPENING * len(slab.cutouts)
        + _A_RELIEF * len(slab.reliefs)
        + _A_POINT * _points(slab)
        for slab in slabs
    )  # fmt: skip


def painting_effort(name: str, million_pixels: float, kilobytes: float) -> float:
    """Units of work to paint a drawing.

    Parameters
    ----------
    kilobytes
        Size of the drawing as SVG.
    """
    a_million = _A_MILLION_PIXELS.get(name, _OF_LINES)
    return _PAINTING + a_million * million_pixels + _A_KILOBYTE * kilobytes


def plan_picture_effort(slab: Slab, width_px: int) -> float:
    """Units of work to draw and to paint a slab's plan, of which nothing is drawn yet."""
    high = _HIGH_FOR_WIDE * width_px
    long = _A_SHEET_KB + _AN_OPENING_KB * len(slab.cutouts) + _A_POINT_KB * _points(slab)
    return drawing_effort([slab]) + painting_effort("plan", width_px * high / 1e6, long)


def paper_effort(slabs: Sequence[Slab]) -> float:
    """Units of work to write a paper of these slabs, in any format, and to print it."""
    each = sum(_A_SLAB_ON_PAPER + 2.0 * drawing_effort([slab]) for slab in slabs)
    return _A_PAPER + each


def _points(slab: Slab) -> int:
    outlines = [slab.outline, *(relief.outline for relief in slab.reliefs)]
    around = sum(len(outline.points) for outline in outlines if isinstance(outline, Polygon))
    return around + sum(len(cutout.points) for cutout in slab.cutouts)
