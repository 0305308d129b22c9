"""The mesh and factor of 28 November 2026, frozen as a measure of time.

A fixed piece of work of the same kinds (three Delaunay triangulations, points in a polygon, a
banded Cholesky factor, many small array operations) is timed in the same run. What meshing and
factoring each benchmark slab took on that day, over that work's time on the same machine, is
written down once: the product is that day's mesh and factor on the machine of today, whatever has
been done to the code since.
"""

from __future__ import annotations

import time
from collections.abc import Callable

import numpy as np
import shapely
from scipy.linalg import cholesky_banded
from scipy.spatial import Delaunay

POINTS, UNKNOWNS, BAND = 800, 2400, 90
ROUNDS = 9
QUIET_MS = 8.1  # ``work`` on two quiet cores of 29 November 2026, the least of 75 runs

# Mesh and factor of 28 November 2026 over ``work``, medians of 15 interleaved runs of each.
MESH_AND_FACTOR = {
    "a basin and a tap": 2.63,
    "two bowls": 3.66,
    "a sink and a hob": 3.33,
    "a 2.4 m run round a hob": 3.82,
    "a 300 mm breakfast overhang": 2.95,
    "a round table on a pedestal": 1.62,
    "an outdoor top round an oven": 2.5,
    "a bench on legs": 2.22,
    "a 3 m run in two pieces": 1.59,
    "a hearth": 1.57,
    "a shelf on ledges": 2.17,
    "an island on units": 2.84,
}


def work() -> float:
    """Do the fixed work; the sum keeps any of it from being left out."""
    points = np.random.default_rng(20261128).random((POINTS, 2)) * [2000.0, 600.0]
    total = 0.0
    for shift in (0.0, 0.1, 0.2):
        moved = points + shift * np.sin(points)
        total += float(Delaunay(moved).simplices.sum())
    ring = shapely.Point(0.5, 0.5).buffer(0.4, quad_segs=40)
    total += float(shapely.contains_xy(ring, points[:, 0] / 2000.0, points[:, 1] / 600.0).sum())
    for k in range(300):
        total += float(np.hypot(*(points[k : k + 40] - points[k]).T).max())
    band = np.zeros((BAND, UNKNOWNS))
    band[0], band[1:] = 2.0 * BAND, 0.5
    return total + float(cholesky_banded(band, lower=True)[0].sum())


def time_ms(job: Callable[[], object]) -> float:
    """Processor time of one run of some work, ms."""
    start = time.process_time()
    job()
    return 1e3 * (time.process_time() - start)


def slowness() -> float:
    """How many times as long as the day's quiet machine this one takes now for the fixed work."""
    work()
    return float(np.median([time_ms(work) for _ in range(ROUNDS)])) / QUIET_MS


def reference_ms(name: str) -> float:
    """That day's mesh and factor of one benchmark slab, on this machine and now, ms."""
    work()
    return MESH_AND_FACTOR[name] * float(np.median([time_ms(work) for _ in range(ROUNDS)]))
