"""The way in: corners, lifts and ceilings that a slab on edge passes, by geometry only."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from ledgerstone.order import Lift, Slab
from ledgerstone.shape import Shape

PADDING_MM = 20.0  # foam on both faces of a slab on edge; common practice, no source
_ANGLES = 360  # steps of a quarter turn: the first look, before the refinement


@dataclass(frozen=True, slots=True)
class CarriedBox:
    """A slab carried on edge: its box's longest side level, the shortest across the way."""

    length_mm: float
    depth_mm: float
    across_mm: float


def on_edge(slab: Slab, shape: Shape) -> CarriedBox:
    """Return the slab's box as it is carried: a drop makes it thick, foam is on both faces."""
    drops = [edge.drop.depth.mm for edge in slab.edges.values() if edge.drop is not None]
    x0, y0, x1, y1 = shape.outline.bounds
    thin, middle, long = sorted((x1 - x0, y1 - y0, shape.thickness_mm + max(drops, default=0.0)))
    return CarriedBox(long, middle, thin + PADDING_MM)


def longest_round_corner(a_mm: float, b_mm: float, w_mm: float) -> float:
    """Length of the longest piece that gets round a right-angled corner, lying level.

    Parameters
    ----------
    a_mm, b_mm
        Clear widths before and after the corner.
    w_mm
        Width of the piece in plan.

    Returns
    -------
    float
        In mm, by geometry alone: the people at its ends need room too. Zero if the piece is
        wider than either way; never less than the wider of them, into which it slides sideways.

    Notes
    -----
    The least of ``(a sin t + b cos t - w) / (sin t cos t)`` over a quarter turn.

    Source
    ------
    Derived and checked numerically, sources §3; at ``w = 0`` the ladder formula
    ``(a^(2/3) + b^(2/3))^(3/2)``.
    """
    if w_mm > min(a_mm, b_mm):
        return 0.0

    def longest_at(t: float) -> float:
        return (a_mm * math.sin(t) + b_mm * math.cos(t) - w_mm) / (math.sin(t) * math.cos(t))

    turning = -_greatest(lambda t: -longest_at(t))
    return max(turning, a_mm, b_mm)


def _greatest(of: Callable[[float], float]) -> float:
    """Greatest value over the open quarter turn: a look at every step, then thirds of the best."""
    step = math.pi / 2 / _ANGLES
    best = max(range(1, _ANGLES), key=lambda i: of(i * step)) * step
    low, high = max(best - step, step / 1e6), min(best + step, math.pi / 2 - step / 1e6)
    for _ in range(80):
        third = (high - low) / 3
        if of(low + third) < of(high - third):
            low += third
        else:
            high -= third
    return of((low + high) / 2)


def longest_across(width_mm: float, depth_mm: float, w_mm: float) -> float:
    """Longest piece of a width in plan that lies in a rectangle of floor, askew or not, in mm.

    Zero if it fits no way round.

    Source
    ------
    Geometry; at ``w = 0`` the diagonal.
    """
    if w_mm > min(width_mm, depth_mm):
        return 0.0
    askew = _greatest(
        lambda t: min(
            (width_mm - w_mm * math.sin(t)) / math.cos(t),
            (depth_mm - w_mm * math.cos(t)) / math.sin(t),
        )
    )
    return max(askew, width_mm, depth_mm)


def stands_up(length_mm: float, depth_mm: float, height_mm: float) -> bool:
    """Return whether a piece on edge can be turned up on its end under a ceiling.

    Source
    ------
    Geometry: its diagonal passes the vertical on the way; sources §3.
    """
    return math.hypot(length_mm, depth_mm) <= height_mm + 1e-9


def least_tilt_degrees(piece: CarriedBox, plan_mm: float, height_mm: float) -> float | None:
    """Least tilt in degrees, in its own upright plane, at which a piece fits in plan, or None.

    Parameters
    ----------
    plan_mm
        Greatest length in plan, ``L cos t + D sin t``.
    height_mm
        Clear height while it is tilted: ``L sin t + D cos t``, and its diagonal once it is steeper
        than that.

    Source
    ------
    Geometry, sources §3.
    """
    long, deep = piece.length_mm, piece.depth_mm
    if long <= plan_mm:
        return 0.0 if deep <= height_mm else None
    if deep > plan_mm:
        return None
    tilt = math.atan2(deep, long) + math.acos(min(1.0, plan_mm / math.hypot(long, deep)))
    if tilt >= math.atan2(long, deep):
        passes = stands_up(long, deep, height_mm)
    else:
        passes = long * math.sin(tilt) + deep * math.cos(tilt) <= height_mm + 1e-9
    return math.degrees(tilt) if passes else None


def tilt_in_lift_degrees(piece: CarriedBox, lift: Lift) -> float | None:
    """Return the least tilt in degrees at which a piece fits in a lift's car; None if none does.

    The door must be as wide as the piece is thick across; its height is not in the order.

    Source
    ------
    As ``least_tilt_degrees``.
    """
    if piece.across_mm > lift.door.mm:
        return None
    room = longest_across(lift.width.mm, lift.depth.mm, piece.across_mm)
    return least_tilt_degrees(piece, room, lift.height.mm)
