"""Places along the rims of a slab and of its openings, alike in every mirror image."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry import LineString

from ledgerstone.arrays import FloatArray

SHARPLY = 0.6  # radians that a corner turns
SAME_MM = 1e-3  # a corner this near to the side of a ring's box is on it


@dataclass(frozen=True, slots=True)
class Rim:
    """One ring, and how far along it spacing restarts, mm, shape (t + 1,)."""

    ring: LineString
    turns: FloatArray

    def places(self, step: float) -> FloatArray:
        """Return places on the ring at most ``step`` apart, mm, shape (n, 2).

        Spacing restarts at its sharp corners and at its extremes along x and y, so that the places
        are alike in a mirror image.

        Source
        ------
        Geometry.
        """
        length = np.diff(self.turns)
        many = np.where(length > 0.0, np.maximum(np.ceil(length / step - 1e-9), 1.0), 0.0)
        many = many.astype(np.intp)
        nth = np.arange(many.sum()) - np.repeat(np.cumsum(many) - many, many)
        part = np.repeat(length / np.maximum(many, 1), many)
        along = np.mod(np.repeat(self.turns[:-1], many) + nth * part, self.ring.length)
        return shapely.get_coordinates(shapely.line_interpolate_point(self.ring, along))


def rim_of(ring: LineString) -> Rim:
    """Return a ring with where spacing along it restarts."""
    corners = shapely.get_coordinates(ring)[:-1]
    before, after = corners - np.roll(corners, 1, axis=0), np.roll(corners, -1, axis=0) - corners
    cross = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    sharp = np.abs(np.arctan2(cross, np.einsum("ij,ij->i", before, after))) > SHARPLY
    box = np.array(ring.bounds)  # every corner on a side of it lies farthest to that side
    far = np.abs(corners[:, [0, 1, 0, 1]] - box) < SAME_MM
    ends = [corners[there] for there in far.T]
    middles = [0.5 * (end.min(axis=0) + end.max(axis=0)) for end in ends]
    places = shapely.points(np.concatenate([corners[sharp], middles]))
    turns = np.sort(shapely.line_locate_point(ring, places))
    return Rim(ring, np.append(turns, turns[0] + ring.length))
