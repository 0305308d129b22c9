"""What is placed and where it may go: openings, the room about them, and what came of it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from ledgerstone.outline import XY

FloatArray = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Item:
    """An opening to be placed.

    Attributes
    ----------
    points
        Corners of its hull, in mm from its centre.
    clear_mm
        Concrete that its rule asks beside it.
    step_mm
        What it moves by, along and across.
    moves, shrinks
        Whether it may.
    passes
        Numbers of the planes, and then of the obstacles, that it need not keep clear of.
    follows
        The item that it belongs to.
    within_mm
        From where to where along a slab its own unit is clear, if it has one.
    outward, most_out_mm
        For one that is open to a side: out of the slab, and how far it may go there; never back.
    """

    centre: FloatArray
    points: FloatArray
    clear_mm: float
    step_mm: XY
    moves: bool = True
    shrinks: bool = False
    passes: frozenset[int] = frozenset()
    follows: int | None = None
    within_mm: XY | None = None
    outward: XY | None = None
    most_out_mm: float = 0.0

    def support(self, n: FloatArray) -> float:
        """How far it reaches along a direction, from its centre."""
        return float((self.points @ n).max())

    def support_between(self, n: XY) -> float:
        """How much it takes along a direction, from side to side."""
        along = np.array(n)
        return self.support(along) + self.support(-along)


@dataclass(frozen=True, slots=True)
class Plane:
    """Concrete lies where ``n · p <= reach``; an opening keeps its clearance if it is an edge."""

    n: XY
    reach_mm: float
    is_edge: bool = True


@dataclass(frozen=True, slots=True)
class Obstacle:
    """A convex place where no opening may lie, and the directions in which one may pass it.

    An opening keeps its own clearance from an edge, or ``clear_mm`` where that is told.
    """

    points: FloatArray
    directions: tuple[XY, ...]
    is_edge: bool = True
    clear_mm: float | None = None


@dataclass(frozen=True, slots=True)
class Room:
    """A slab in which openings are placed; ``grows_mm`` is by how much it may, along and across."""

    planes: tuple[Plane, ...]
    obstacles: tuple[Obstacle, ...]
    box_mm: tuple[float, float, float, float]
    grows_mm: XY = (0.0, 0.0)
    grow_step_mm: XY = (5.0, 5.0)
    most_share: float = 0.0

    @property
    def size_mm(self) -> XY:
        """How long and how wide its box is."""
        return self.box_mm[2] - self.box_mm[0], self.box_mm[3] - self.box_mm[1]


@dataclass(frozen=True, slots=True)
class Placed:
    """What was found: movements by item, shares by item, and growth along and across."""

    moved_mm: Mapping[int, XY]
    shrunk: Mapping[int, float]
    grown_mm: XY
