"""Stations along a line: at the nodes on it, with others added where there are none."""

from __future__ import annotations

from itertools import pairwise

import numpy as np

from ledgerstone.arrays import FloatArray


def spaced(along: FloatArray, closest: float) -> FloatArray:
    """Distances without those nearer than ``closest`` to the last one kept, mm, shape (k,).

    It goes from both ends alike, and keeps both. Where the two halves meet, one distance in the
    middle replaces two that are too near.

    Parameters
    ----------
    along
        Distances along a line from 0 to its length, rising, shape (n,), mm.
    closest
        mm.

    Source
    ------
    Geometry.
    """
    length = float(along[-1])
    first = _thinned(along[along < 0.5 * length], closest)
    last = [length - here for here in _thinned(length - along[along > 0.5 * length][::-1], closest)]
    if last[-1] - first[-1] >= 2.0 * closest and bool((along == 0.5 * length).any()):
        first.append(0.5 * length)
    elif last[-1] - first[-1] < closest and len(first) > 1 and len(last) > 1:
        first[-1] = 0.5 * (first[-1] + last.pop())
    return np.array([*first, *last[::-1]])


def _thinned(along: FloatArray, closest: float) -> list[float]:
    kept = [float(along[0])]
    for here in along[1:].tolist():
        if here - kept[-1] >= closest:
            kept.append(here)
    return kept


def filled(along: FloatArray, step: float) -> FloatArray:
    """Distances with others added where two are further apart than about a step, mm, shape (k,).

    Parameters
    ----------
    along
        Distances along a line, rising, shape (n,), mm.
    step
        mm.

    Source
    ------
    Geometry.
    """
    found: list[float] = []
    for a, b in pairwise(along.tolist()):
        count = max(1, round((b - a) / step))
        found += [a + k * (b - a) / count for k in range(count)]
    return np.array([*found, float(along[-1])])
