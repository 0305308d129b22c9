"""Records of a placing: openings, and the slab as their room."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np

from ledgerstone.arrays import FloatArray
from ledgerstone.outline import XY

_EIGHTH = float(np.sqrt(0.5))  # cosine of an eighth of a turn
# Normals of the four ways along the sides.
_AXES = ((1.0, 0.0), (-1.0, 0.0), (0.0, 1.0), (0.0, -1.0))
# And of the four between them.
_SLANTED = tuple((x * _EIGHTH, y * _EIGHTH) for x in (1.0, -1.0) for y in (1.0, -1.0))
_ROUND_POINTS = 12  # a hull of more corners is round, or has round corners
MAX_PLACED_TOGETHER = 6  # openings placed together: more take too long to choose among
MAX_CHOICES = 96  # ways past obstacles, of all openings together

Coefficients = dict[int, float]
Limited = tuple[Coefficients, float]  # a row, and the bound on its sum


@dataclass(frozen=True, slots=True)
class Item:
    """An opening to be placed.

    Attributes
    ----------
    points
        Corners of its hull, in mm from its centre.
    clear_mm
        The width of concrete that its rule requires beside it.
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
        """Support function: reach from its centre along ``n``, shape (2,), of length one, mm."""
        return float((self.points @ n).max())

    def support_between(self, n: XY) -> float:
        """Its extent along a direction of length one, mm."""
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

    An opening keeps its own clearance from an edge, or ``clear_mm`` where that is given.
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


def nearest_chosen(beside: list[list[Limited]], freed: int) -> list[list[Limited]]:
    """Leave an item's share of the choices, at its nearest obstacles; the others it passes as now.

    Parameters
    ----------
    beside
        For each obstacle the rows of which one must hold.
    freed
        How many items share the choices.
    """
    most = MAX_CHOICES // max(1, freed)
    if sum(map(len, beside)) <= most:
        return beside
    kept = []
    for rows in sorted(beside, key=lambda rows: max(limit for _, limit in rows)):
        most -= len(rows)
        kept.append(rows if most >= 0 else [max(rows, key=lambda row: row[1])])
    return kept


def directions(item: Item, other: Item, few: bool) -> Iterable[FloatArray]:
    """Unit vectors, shape (2,), along which two openings may be kept apart; slanted if round."""
    slanted = few and min(len(item.points), len(other.points)) > _ROUND_POINTS
    for n in (*_AXES, *(_SLANTED if slanted else ())):
        yield np.array(n)
