"""How supports give under the slab: rails that bend, panels and pads that crush."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

import numpy as np

from ledgerstone.arrays import FloatArray
from ledgerstone.strength._beams import crushing
from ledgerstone.strength._supports import (
    AreaSupport,
    LineSupport,
    PointSupport,
    Stations,
    Support,
)

ON_THE_EDGE_MM = 1.0  # nearer than this to a box's side is on it: over any rounding


def compliance_of(supports: Sequence[Support], stations: Stations) -> FloatArray | None:
    """How the supports give under unit reactions, mm/N, shape (k, k); None if all are stiff.

    Source
    ------
    ``Beam.compliance`` and ``crushing``, one after the other: flexibilities add.
    """
    if not any(_is_compliant(support) for support in supports):
        return None
    found = np.zeros((len(stations.owner), len(stations.owner)))
    forces = stations.owner[stations.is_force]  # they come first, support by support
    ends = np.searchsorted(forces, np.arange(len(supports) + 1)).tolist()
    for support, (start, end) in zip(supports, pairwise(ends), strict=True):
        if not _is_compliant(support) or isinstance(support, PointSupport):
            continue
        places, own = stations.places[start:end], found[start:end, start:end]
        if isinstance(support, AreaSupport):
            own.flat[:: end - start + 1] += _bedding(support, places)
            continue
        along = np.hypot(*(places - support.points[0]).T)
        if support.beam is not None:
            length = math.dist(support.points[0], support.points[-1])
            own += support.beam.compliance(length, along)
        if support.crushes_n_per_mm2 is not None:
            own += crushing(support.crushes_n_per_mm2, along)
    return found


def _is_compliant(support: Support) -> bool:
    match support:
        case LineSupport():
            return support.beam is not None or support.crushes_n_per_mm2 is not None
        case AreaSupport():
            return support.crushes_n_per_mm3 is not None
    return False


def _bedding(support: AreaSupport, places: FloatArray) -> FloatArray:
    """Compliance of an area at each place (k, 2) of a grid over it, mm/N, shape (k,).

    A place on an edge has half the tributary area of one inside, one on a corner a quarter.
    """
    low, high = places.min(axis=0), places.max(axis=0)
    edge = (places - low < ON_THE_EDGE_MM) | (high - places < ON_THE_EDGE_MM)
    share = np.where(edge, 0.5, 1.0).prod(axis=1)
    rate = (support.crushes_n_per_mm3 or 0.0) * max(support.polygon.area, 1.0)
    return np.asarray(share.sum() / (rate * share))
