"""How supports give under the slab: rails that bend, panels that crush."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from ledgerstone.strength._beams import crushing
from ledgerstone.strength._outline import FloatArray
from ledgerstone.strength._supports import LineSupport, Stations, Support


def compliance_of(supports: Sequence[Support], stations: Stations) -> FloatArray | None:
    """How the supports give under unit reactions, mm/N, shape (k, k); None where all are stiff."""
    found: FloatArray | None = None
    for number, support in enumerate(supports):
        if not isinstance(support, LineSupport):
            continue
        if support.beam is None and support.crushes_n_per_mm2 is None:
            continue
        if found is None:
            found = np.zeros((len(stations.owner), len(stations.owner)))
        at = np.flatnonzero((stations.owner == number) & stations.is_force)
        along = np.hypot(*(stations.places[at] - np.array(support.points[0])).T)
        if support.beam is not None:
            length = math.dist(support.points[0], support.points[-1])
            found[np.ix_(at, at)] += support.beam.compliance(length, along)
        if support.crushes_n_per_mm2 is not None:
            found[np.ix_(at, at)] += crushing(support.crushes_n_per_mm2, along)
    return found
