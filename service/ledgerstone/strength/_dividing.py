"""A boundary divided into steps of the sizes that a spacing asks for."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
from shapely.geometry import Polygon

from ledgerstone.arrays import FloatArray, IntArray
from ledgerstone.strength._spacing import SHORTEST_STEP_MM, Spacing

SMOOTH_TURN = 0.6  # radians; a vertex that turns more is a corner
FEWEST_OF_A_RING = 8  # steps: a round hole stays round
SAMPLES = 9  # of the size along a segment
STRETCHED = 0.15  # of a step: so much more is shared out among the others


def rounded_off(ring: FloatArray, spacing: Spacing) -> FloatArray:
    """Ring with its curves divided into even steps of the wanted size, mm, shape (p, 2).

    A corner is a vertex that turns by more than `SMOOTH_TURN`, or ends a side longer than the
    size wanted there; it stays. A ring without one keeps the area that it encloses.

    Parameters
    ----------
    ring
        Vertices, mm, shape (n, 2), the first not repeated.

    Source
    ------
    Geometry; what counts as a corner, from trials (methods §1.2).
    """
    forward = np.roll(ring, -1, axis=0) - ring
    length = np.linalg.norm(forward, axis=1)
    back = np.roll(forward, 1, axis=0)
    cross = back[:, 0] * forward[:, 1] - back[:, 1] * forward[:, 0]
    turn = np.abs(np.arctan2(cross, np.einsum("ij,ij->i", back, forward)))
    longer = np.maximum(length, np.roll(length, 1))
    corners = np.flatnonzero((turn > SMOOTH_TURN) | (longer > spacing.at(ring)))
    if len(corners) == 0:
        return _same_area(
            _even(np.concatenate([ring, ring[:1]]), spacing, least=FEWEST_OF_A_RING)[:-1], ring
        )
    chains = [
        ring[np.arange(a, b + 1) % len(ring)]
        for a, b in pairwise([*corners.tolist(), int(corners[0]) + len(ring)])
    ]
    steps = [c if len(c) == 2 else _even(c, spacing, least=1) for c in chains]
    return np.concatenate([s[:-1] for s in steps])


def _same_area(smooth: FloatArray, ring: FloatArray) -> FloatArray:
    """Ring of chords drawn out until it encloses what the curve did."""
    was, now = Polygon(ring), Polygon(smooth)
    middle = np.array([now.centroid.x, now.centroid.y])
    drawn: FloatArray = middle + (smooth - middle) * math.sqrt(was.area / max(now.area, 1e-9))
    return drawn


def _even(chain: FloatArray, spacing: Spacing, *, least: int) -> FloatArray:
    """Open chain of points divided again into steps of the wanted size; its ends stay."""
    length = np.linalg.norm(np.diff(chain, axis=0), axis=1)
    along = np.concatenate([[0.0], np.cumsum(length)])
    rate = 1.0 / spacing.at(chain)
    done = np.concatenate([[0.0], np.cumsum(0.5 * (rate[1:] + rate[:-1]) * length)])
    count = max(least, round(float(done[-1])))
    at = np.interp(np.linspace(0.0, done[-1], count + 1), done, along)
    return np.column_stack([np.interp(at, along, chain[:, k]) for k in range(2)])


def divided(
    vertices: FloatArray, segments: IntArray, spacing: Spacing
) -> tuple[FloatArray, IntArray]:
    """Boundary divided into steps of the wanted size.

    Parameters
    ----------
    vertices, segments
        Corners of the boundary, mm, shape (n, 2), and its segments as pairs of them, shape (m, 2).

    Returns
    -------
    points, steps
        Shape (p, 2), mm, of which the first n are ``vertices``; and pairs of them, shape (q, 2).

    Source
    ------
    Geometry: even steps of the integral of one over the size.
    """
    starts, ends = vertices[segments[:, 0]], vertices[segments[:, 1]]
    length = np.linalg.norm(ends - starts, axis=1)
    samples = np.linspace(0.0, 1.0, SAMPLES)
    places = starts[:, None] + samples[None, :, None] * (ends - starts)[:, None]
    sizes = spacing.at(places.reshape(-1, 2)).reshape(len(segments), -1)
    rate = length[:, None] / np.maximum(sizes, SHORTEST_STEP_MM)
    done = np.concatenate(
        [
            np.zeros((len(segments), 1)),
            np.cumsum(0.5 * (rate[:, 1:] + rate[:, :-1]) / (SAMPLES - 1), axis=1),
        ],
        axis=1,
    )
    whole = done[:, -1]
    count = np.maximum(np.ceil(whole - STRETCHED), 1.0).astype(np.intp)
    owner, nth = _counted(count - 1)
    wanted, reached = (nth + 1) / count[owner] * whole[owner], done[owner]
    last = np.minimum((reached[:, 1:] <= wanted[:, None]).sum(axis=1), len(samples) - 2)
    low, high = (reached[np.arange(len(last)), last + k] for k in (0, 1))
    share = (last + (wanted - low) / (high - low)) * samples[1]
    inner = starts[owner] + share[:, None] * (ends - starts)[owner]
    first_inner = len(vertices) + np.cumsum(count - 1) - (count - 1)
    owner, nth = _counted(count)
    begin = np.where(nth == 0, segments[owner, 0], first_inner[owner] + nth - 1)
    end = np.where(nth == count[owner] - 1, segments[owner, 1], first_inner[owner] + nth)
    return np.concatenate([vertices, inner]), np.column_stack([begin, end]).astype(np.intp)


def _counted(many: IntArray) -> tuple[IntArray, IntArray]:
    """For so many things of each owner (m,): whose each is, and which of the owner's, (k,) each."""
    owner = np.repeat(np.arange(len(many)), many)
    return owner, np.arange(len(owner)) - np.repeat(np.cumsum(many) - many, many)
