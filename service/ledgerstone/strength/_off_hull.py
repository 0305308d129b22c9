"""How far places lie off a convex hull: by its edges, for all places at once."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final, Self

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from ledgerstone.arrays import FloatArray

_AT_ONCE: Final = 50_000  # distances from an edge that are held at once: 0.4 MB an array


@dataclass(frozen=True, slots=True)
class HullEdges:
    """Edges of a convex hull, anticlockwise; a hull without area is one edge, or a point.

    Parameters
    ----------
    start, unit
        Where each edge begins, mm, and its direction, shape (e, 2) each.
    length
        Shape (e,), mm.
    """

    start: FloatArray
    unit: FloatArray
    length: FloatArray

    @classmethod
    def of(cls, hull: BaseGeometry) -> Self:
        """Edges of a polygon, a line or a point; none of an empty hull."""
        corners = shapely.get_coordinates(shapely.orient_polygons(hull))
        if len(corners) == 1:
            corners = np.concatenate([corners, corners])
        along = np.diff(corners, axis=0)
        length = np.hypot(*along.T)
        some = (length > 0.0)[:, None]  # a point has no direction: any will do
        unit = np.where(some, along / np.where(some, length[:, None], 1.0), [1.0, 0.0])
        return cls(corners[:-1], unit, length)

    def distance_mm(self, xy: FloatArray) -> FloatArray:
        """Distance of places from the hull, 0 within it, mm.

        Parameters
        ----------
        xy
            Places, mm, shape (n, 2), or with more axes before them; the distances have
            shape (n,), or as many.

        Source
        ------
        Geometry: the least distance from an edge.
        """
        places = xy.reshape(-1, 2)
        step = max(1, _AT_ONCE // max(1, len(self.length)))
        parts = [self._of_some(places[k : k + step]) for k in range(0, len(places) or 1, step)]
        return np.concatenate(parts).reshape(xy.shape[:-1])

    def _of_some(self, xy: FloatArray) -> FloatArray:
        """Distance of so many places (n, 2) as are worked out at once, shape (n,), mm."""
        away = [xy[:, k, None] - self.start[:, k] for k in (0, 1)]
        out = away[0] * self.unit[:, 1] - away[1] * self.unit[:, 0]
        along = away[0] * self.unit[:, 0] + away[1] * self.unit[:, 1]
        past = along - np.clip(along, 0.0, self.length)
        squares = (past * past + out * out).min(axis=-1, initial=np.inf)
        within = (out <= 0.0).all(axis=-1) & (len(self.length) > 2)
        return np.asarray(np.where(within, 0.0, np.sqrt(squares)))
