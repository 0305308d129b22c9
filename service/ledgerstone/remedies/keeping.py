"""Whether what was asked for is kept: every opening, and every size within a share."""

from __future__ import annotations

from ledgerstone.cutouts import cutout_size_mm
from ledgerstone.order import LShape, Outline, Round
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.remedies.option import WITHIN
from ledgerstone.remedies.state import State

_EXACTLY_MM = 1e-6


def keeps(state: State) -> bool:
    """Whether every cut-out is kept, and each size in plan within a tenth."""
    for i, sent in enumerate(state.sent.slabs):
        pieces = state.of_slab(i)
        if {k for piece, _ in pieces for k in piece.cutouts} != {*range(len(sent.cutouts))}:
            return False
        for piece, slab in pieces:
            sizes = [(_outline_sizes(piece.was.outline), _outline_sizes(slab.outline))]
            sizes += [
                (cutout_size_mm(sent.cutouts[k]), cutout_size_mm(cutout))
                for k, cutout in zip(piece.cutouts, slab.cutouts, strict=True)
            ]
            if piece.plain or any(len(old) != len(new) or _far(old, new) for old, new in sizes):
                return False
    return True


def _far(old: tuple[float, ...], new: tuple[float, ...]) -> bool:
    return any(abs(n - o) > WITHIN * o + _EXACTLY_MM for o, n in zip(old, new, strict=True))


def _outline_sizes(outline: Outline) -> tuple[float, ...]:
    if isinstance(outline, Round):
        return (outline.diameter.mm, outline.diameter.mm)
    if isinstance(outline, OrderPolygon):
        xs = [point.x.mm for point in outline.points]
        ys = [point.y.mm for point in outline.points]
        return (max(xs) - min(xs), max(ys) - min(ys))
    sizes = (outline.length.mm, outline.width.mm)
    if isinstance(outline, LShape):
        return (*sizes, outline.notch.length.mm, outline.notch.width.mm)
    return sizes
