"""What is kept of where the openings of a slab were found room, and the key that it is kept under.

Remedies look for the places; what they find is kept with the results of the stages.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from ledgerstone.outline import XY
from ledgerstone.stages.keys import SlabKey


@dataclass(frozen=True, slots=True)
class Freedom:
    """What a layout may change: which openings move or shrink, and by what share sizes may.

    Small openings keep ``times`` their rule's distance from everything else. With ``at_home``, an
    opening with a unit of its own stays over it. ``grows`` is whether the slab may become longer,
    and deeper.
    """

    moves: frozenset[int] = frozenset()
    shrinks: frozenset[int] = frozenset()
    grows: tuple[bool, bool] = (False, False)
    most_share: float = 0.0
    times: float = 1.0
    at_home: bool = True


@dataclass(frozen=True, slots=True)
class Placement:
    """What was found: movements by item, shares by item, and growth along and across."""

    moved_mm: Mapping[int, XY]
    shrunk: Mapping[int, float]
    grown_mm: XY


@dataclass(frozen=True, slots=True)
class JointKey:
    """A joint that openings keep off, by value: ``placeable.Obstacle`` with its corners in mm."""

    points: tuple[XY, ...]
    directions: tuple[XY, ...]
    is_edge: bool
    clear_mm: float | None


@dataclass(frozen=True, slots=True)
class LayoutKey:
    """What the places of openings depend on, beside the workshop.

    Attributes
    ----------
    to_mm
        The step in which they are placed.
    keeps_off
        The joint that they keep off, if there is one.
    """

    slab: SlabKey
    freedom: Freedom
    to_mm: float
    keeps_off: JointKey | None
