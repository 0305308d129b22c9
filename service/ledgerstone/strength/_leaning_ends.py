"""Where the parts of corners that are leant on end: there a person first sits or stands."""

from __future__ import annotations

import numpy as np
import shapely

from ledgerstone.arrays import FloatArray, IntArray
from ledgerstone.strength._seat_area import NEAR_A_CORNER_MM, SeatArea

FINE_STEP_MM = 15.0  # between places along edges where a person's case changes
RAYS = np.radians(np.arange(0.0, 360.0, 5.0))  # from a corner, to where its case changes
SECTIONS, TENTHS = 3, np.arange(11) / 10.0  # of a step or a ray: under half a millimetre
HALVINGS = 7  # of the angle between two rays: under half a millimetre
CLEAR_MM = 0.01  # outside such a limit, so that rounding takes no place back in


def where_leaning_ends(area: SeatArea) -> FloatArray:
    """Places where corners end to be leant on only, shape (n, 2), mm.

    They lie along that limit, on rays from each corner, where it crosses the room's edges, and
    where the limits of two corners meet.

    Source
    ------
    Geometry; where a corner is leant on, as ``SeatArea.leant_on``.
    """
    count = len(area.leant_on.corners)
    if not count:
        return area.leant_on.corners
    by_ray = _limit(area, np.repeat(np.arange(count), len(RAYS)), np.tile(RAYS, count))
    places = np.concatenate(
        [_last_outside(area, *_leaving(area)), by_ray, _where_two_limits_meet(area, by_ray)]
    )
    return np.asarray(places[shapely.intersects_xy(area.room_and_rim, *places.T)])


def _leaving(area: SeatArea) -> tuple[FloatArray, IntArray]:
    """Steps along the edges that leave the part of a corner, (n, 2, 2), mm, and whose it is."""
    edges = _fine_edges(area)
    off = area.off_hull(edges)
    lines, of = [], []
    for which in range(len(area.leant_on.corners)):  # one by one: a slab may have 200 corners
        inner, outer = area.leant_on.depth_mm(edges, off, which).T >= -CLEAR_MM
        lines.append(edges[inner & ~outer])
        of.append(np.full(len(lines[-1]), which))
    return np.concatenate(lines), np.concatenate(of)


def _last_outside(area: SeatArea, lines: FloatArray, of: IntArray) -> FloatArray:
    """Where lines (n, 2, 2) leave the parts of their corners (n,), just outside, (n, 2), mm."""
    inner, outer = lines[:, 0], lines[:, 1]
    row, of = np.arange(len(lines)), of[:, None]
    for _ in range(SECTIONS):
        places = inner[:, None] + TENTHS[:, None] * (outer - inner)[:, None]
        near = area.leant_on.depth_mm(places, area.off_hull(places), of) >= -CLEAR_MM
        near[:, -1] = False
        first = near[:, 1:].argmin(axis=1) + 1
        inner, outer = places[row, first - 1], places[row, first]
    return np.asarray(outer)


def _limit(area: SeatArea, of: IntArray, turn: FloatArray) -> FloatArray:
    """Where rays, by their angles (n,), leave the parts of their corners (n,), (n, 2), mm."""
    corners = area.leant_on.corners[of]
    reach = area.off_hull(corners) + NEAR_A_CORNER_MM + FINE_STEP_MM
    ends = corners + reach[:, None] * np.column_stack([np.cos(turn), np.sin(turn)])
    return _last_outside(area, np.stack([corners, ends], axis=1), of)


def _where_two_limits_meet(area: SeatArea, by_ray: FloatArray) -> FloatArray:
    """Places on one corner's limit where another's begins, just outside both, (n, 2), mm.

    Between two corners that are leant on this is as far out as a person sits.

    Parameters
    ----------
    by_ray
        Where the rays leave each corner's part, corner by corner, mm, shape (corners · rays, 2).
    """
    near = area.is_near_a_free_corner(by_ray, CLEAR_MM).reshape(-1, len(RAYS))
    steps = [(of, k, way) for way in (1, -1)
             for of, k in np.argwhere(~near & np.roll(near, -way, axis=1)).tolist()]  # fmt: skip
    if not steps:
        return by_ray[:0]
    of, k, way = np.array(steps).T
    turn, step = RAYS[k], 0.5 * way * (RAYS[1] - RAYS[0])
    for _ in range(HALVINGS):
        is_near = area.is_near_a_free_corner(_limit(area, of, turn + step), CLEAR_MM)
        turn, step = np.where(is_near, turn, turn + step), 0.5 * step
    return _limit(area, of, turn)


def _fine_edges(area: SeatArea) -> FloatArray:
    """Edges of the room in fine steps, both ways, from one place to the next, (n, 2, 2), mm."""
    steps = [np.empty((0, 2, 2))]
    for rim in area.rims:
        at = rim.places(FINE_STEP_MM)
        steps += [np.stack([at, np.roll(at, by, axis=0)], axis=1) for by in (1, -1)]
    return np.concatenate(steps)
