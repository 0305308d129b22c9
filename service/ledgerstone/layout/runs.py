"""The part of a slab along which its openings lie in a row, and how they share it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Self

from ledgerstone.order import LShape, Outline
from ledgerstone.outline import XY
from ledgerstone.shape import Shape


@dataclass(frozen=True, slots=True)
class Run:
    """A box of the slab, mm: of an L its longer arm."""

    left_mm: float
    front_mm: float
    right_mm: float
    back_mm: float

    @classmethod
    def of(cls, outline: Outline, shape: Shape) -> Self:
        """Find the run of a slab."""
        x0, y0, x1, y1 = shape.outline.bounds
        if not isinstance(outline, LShape):
            return cls(x0, y0, x1, y1)
        across, deep = outline.notch.length.mm, outline.notch.width.mm
        along = cls(x0, y0, x1, y1 - deep)
        if outline.notch.corner.startswith("front"):
            along = cls(x0, y0 + deep, x1, y1)
        upright = cls(x0, y0, x1 - across, y1)
        if outline.notch.corner.endswith("left"):
            upright = cls(x0 + across, y0, x1, y1)
        return max(along, upright, key=lambda run: run.longer_mm)

    @property
    def longer_mm(self) -> float:
        """Its longer side."""
        return max(self.right_mm - self.left_mm, self.back_mm - self.front_mm)

    @property
    def turned(self) -> Self:
        """The same run from front to back."""
        return type(self)(self.front_mm, self.left_mm, self.back_mm, self.right_mm)

    @property
    def across_mm(self) -> float:
        """Its middle from left to right."""
        return (self.left_mm + self.right_mm) / 2

    @property
    def middle_mm(self) -> float:
        """Its middle from front to back."""
        return (self.front_mm + self.back_mm) / 2

    @property
    def front_left(self) -> XY:
        """Its front-left corner, mm."""
        return self.left_mm, self.front_mm

    @property
    def back_right(self) -> XY:
        """Its back-right corner, mm."""
        return self.right_mm, self.back_mm


def spread(run: Run, taken: Sequence[tuple[float, float]], lengths: Sequence[float]) -> list[float]:
    """Share a run: each length goes where most is left, and has as much on its left as its right.

    Parameters
    ----------
    taken
        From where to where it is taken already.

    Returns
    -------
    The middle of each length, mm.

    Source
    ------
    Our own choice: even gaps.
    """
    gaps = _gaps(run, taken)
    left = [end - start for start, end in gaps]
    holds: list[list[int]] = [[] for _ in gaps]
    for i, length in enumerate(lengths):
        widest = max(range(len(gaps)), key=lambda g: left[g])
        holds[widest].append(i)
        left[widest] -= length
    middles = [0.0] * len(lengths)
    for (start, _), over, inside in zip(gaps, left, holds, strict=True):
        at, apart = start, over / (len(inside) + 1)
        for i in inside:
            at += apart + lengths[i]
            middles[i] = at - lengths[i] / 2
    return middles


def _gaps(run: Run, taken: Sequence[tuple[float, float]]) -> list[tuple[float, float]]:
    gaps, at = [], run.left_mm
    for start, end in sorted(taken):
        if start > at:
            gaps.append((at, start))
        at = max(at, end)
    if at < run.right_mm or not gaps:
        gaps.append((at, max(at, run.right_mm)))
    return gaps
