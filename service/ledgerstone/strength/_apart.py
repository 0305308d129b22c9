"""Places that lie apart from each other: of some too near together the first one is taken."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from scipy.spatial.distance import cdist

from ledgerstone.outline import XY


def first_apart(wished: Sequence[XY], closest_mm: float, before: Sequence[XY] = ()) -> list[int]:
    """Numbers of those places that lie apart from ``before`` and from the earlier ones taken.

    Parameters
    ----------
    wished, before
        Places, mm.
    closest_mm
        Places nearer to each other than this do not lie apart.
    """
    places = np.array(wished, dtype=float).reshape(-1, 2)
    taken = np.array(before, dtype=float).reshape(-1, 2)
    apart = np.asarray((cdist(places, taken) >= closest_mm).all(axis=1))
    near = cdist(places, places) < closest_mm
    found: list[int] = []
    for k in np.flatnonzero(apart).tolist():
        if apart[k]:
            found.append(k)
            apart[near[k]] = False
    return found
