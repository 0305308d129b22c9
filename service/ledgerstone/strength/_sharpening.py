"""Rounded corners of an outline made sharp, as the mesh has them."""

from __future__ import annotations

from itertools import pairwise

import numpy as np

from ledgerstone.arrays import FloatArray

SHARPENED_RADIUS_MM = 60.0  # corner radii up to this become sharp corners
# Which vertices are an arc, and which arcs round a corner: our own choice.
FEWEST_OF_AN_ARC = 3  # vertices: two are a chamfer
SMOOTH_TURN = 0.9  # radians, at most, at a vertex of an arc
LEAST_SINE = 0.5  # of the angle between the two sides: a corner turns by 30 degrees at least
MOST_COSINE_BACK = 0.87  # and by 150 degrees at most
FARTHEST = 1.5  # times the arc's chord: how far from its ends the corner may lie


def sharpened(ring: FloatArray) -> FloatArray:
    """Ring with each small arc of a rounded corner replaced by its corner, mm, shape (k, 2).

    Parameters
    ----------
    ring
        Vertices, mm, shape (n, 2), anticlockwise or clockwise, the first not repeated.

    Source
    ------
    Geometry; which arcs are small, methods §1.2.
    """
    count = len(ring)
    turns = _turns(ring)
    lengths = np.linalg.norm(np.roll(ring, -1, axis=0) - ring, axis=1)
    start = int(np.argmax(lengths))  # begin after the longest side, so that no arc is cut in two
    order = [(start + 1 + k) % count for k in range(count)]
    kept: list[FloatArray] = []
    position = 0
    while position < count:
        run = _arc_length(order[position:], turns, lengths)
        is_arc = run >= FEWEST_OF_AN_ARC
        corner = _corner(ring, order[position : position + run]) if is_arc else None
        if corner is None:
            kept.extend(ring[i] for i in order[position : position + run])
        else:
            kept.append(corner)
        position += run
    return np.array(kept)


def _arc_length(order: list[int], turns: FloatArray, lengths: FloatArray) -> int:
    """Count of vertices that belong to one small arc beginning at the first of them."""
    run, total, path = 1, float(turns[order[0]]), 0.0
    for before, here in pairwise(order):
        path += float(lengths[before])
        total += float(turns[here])
        same_way = turns[here] * turns[order[0]] > 0.0 and abs(turns[here]) < SMOOTH_TURN
        if not same_way or path > SHARPENED_RADIUS_MM * abs(total):
            break
        run += 1
    return run


def _corner(ring: FloatArray, arc: list[int]) -> FloatArray | None:
    """Corner that an arc rounds off; None if the arc turns too little or too much."""
    count = len(ring)
    before, first = ring[arc[0] - 1], ring[arc[0]]
    last, after = ring[arc[-1]], ring[(arc[-1] + 1) % count]
    u, v = first - before, after - last
    cross = u[0] * v[1] - u[1] * v[0]
    both = float(np.linalg.norm(u) * np.linalg.norm(v))
    if abs(cross) < LEAST_SINE * both or np.dot(u, v) < -MOST_COSINE_BACK * both:
        return None
    step = last - first
    along = (step[0] * v[1] - step[1] * v[0]) / cross
    corner: FloatArray = first + along * u
    reach = float(np.linalg.norm(step))
    return corner if along >= 0.0 and np.linalg.norm(corner - first) <= FARTHEST * reach else None


def _turns(ring: FloatArray) -> FloatArray:
    """Signed turn at each vertex, radians, anticlockwise positive."""
    forward = np.roll(ring, -1, axis=0) - ring
    back = np.roll(forward, 1, axis=0)
    cross = back[:, 0] * forward[:, 1] - back[:, 1] * forward[:, 0]
    return np.asarray(np.arctan2(cross, np.einsum("ij,ij->i", back, forward)))
