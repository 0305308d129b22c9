"""A thin plate by scikit-fem's Morley element on rails that bend and panels that crush.

The plate is solved on three pins, for its load and for a unit force at each place of its rests;
what pushes then follows from the flexibility of plate and rests, and from balance. Nothing of the
service's contact is used but what each support is: its line, its stiffness.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

import numpy as np
import shapely
from scipy.sparse import csr_matrix

from ledgerstone.strength import LineSupport
from ledgerstone.strength._beams import Beam
from support.oracles.morley_rested import RestedPlate

STEP_MM = 20.0
IN_FROM_THE_EDGE_MM = 0.05  # so that a place lies in a triangle
NEARLY_RIGID = 1e-6  # mm/N, so that no two places of a rail share a force as they like
PERSON = 25  # points each way of a person's square
ROUNDS = 300
BLOCKS = 30  # rounds in which all that offend change sides; then the worst alone does


def person_on(
    plate: RestedPlate, slab: shapely.Polygon, xy: np.ndarray, newtons: float
) -> np.ndarray:
    """Forces (N,) of a person on a square of 100 mm, all on the part of it that meets the slab."""
    step = 100.0 * ((np.arange(PERSON) + 0.5) / PERSON - 0.5)
    gx, gy = np.meshgrid(xy[0] + step, xy[1] + step)
    places = np.column_stack([gx.ravel(), gy.ravel()])
    on = shapely.contains_xy(slab.buffer(-IN_FROM_THE_EDGE_MM), places[:, 0], places[:, 1])
    rows = csr_matrix(plate.plate.basis.probes(places[on].T))
    return np.asarray(rows.T @ np.full(on.sum(), newtons / on.sum())).ravel()


def pushed(plate: RestedPlate, rests: Sequence[LineSupport], force: np.ndarray) -> np.ndarray:
    """Unknowns (N,) under one load, on a slab whose rests lie along its axes.

    Raises
    ------
    RuntimeError
        If what pushes does not settle.
    """
    basis = plate.plate.basis
    places, gives = _places_and_flexibility(rests)
    low, high = plate.plate.nodes.min(axis=0), plate.plate.nodes.max(axis=0)
    places = np.clip(places, low + IN_FROM_THE_EDGE_MM, high - IN_FROM_THE_EDGE_MM)
    rows = csr_matrix(basis.probes(places.T))
    pinned = plate.plate.solved(np.column_stack([force[:, None], rows.T.toarray()]))
    motions = np.column_stack([basis.project(lambda p, k=k: _motion(p, k)) for k in range(3)])
    free, flexibility = rows @ pinned[:, 0], rows @ pinned[:, 1:] + gives
    moved, pull = rows @ motions, motions.T @ force
    reactions, motion = _settled(free, flexibility, moved, pull)
    return np.asarray(pinned[:, 0] - pinned[:, 1:] @ reactions + motions @ motion)


def _motion(places: np.ndarray, which: int) -> np.ndarray:
    return np.asarray(1.0 + 0.0 * places[0] if which == 0 else places[which - 1])


def _settled(
    free: np.ndarray, flexibility: np.ndarray, moved: np.ndarray, pull: np.ndarray
) -> tuple[np.ndarray, np.ndarray]:
    """Reactions (k,) that push, and the three rigid motions."""
    touching = np.ones(len(free), dtype=bool)
    for done in range(ROUNDS):
        at = np.flatnonzero(touching)
        whole = np.block(
            [[flexibility[np.ix_(at, at)], -moved[at]], [moved[at].T, np.zeros((3, 3))]]
        )
        found = np.linalg.solve(whole, np.concatenate([free[at], pull]))
        reactions = np.zeros(len(free))
        reactions[at], motion = found[:-3], found[-3:]
        sunk = free - flexibility @ reactions + moved @ motion
        offends = np.where(touching, -1e-3 * reactions, np.where(sunk > 1e-7, sunk, 0.0))
        if not (offends > 1e-9).any():
            return reactions, motion
        single = np.arange(len(free)) == np.argmax(offends)
        touching = touching ^ (offends > 1e-9 if done < BLOCKS else single)
    raise RuntimeError("What pushes does not settle.")


def _places_and_flexibility(rests: Sequence[LineSupport]) -> tuple[np.ndarray, np.ndarray]:
    """Places of all rests (k, 2), and how each gives for a unit force at each, mm/N, (k, k)."""
    places, parts = [], []
    for rest in rests:
        start, end = (np.array(p, dtype=float) for p in (rest.points[0], rest.points[-1]))
        length = math.dist(start, end)
        share = np.linspace(0.0, 1.0, max(2, round(length / STEP_MM)) + 1)
        if rest.beam is not None:
            share = np.union1d(share[1:-1], rest.beam.posts)
            gives = _cut_at_posts(share * length, length, rest.beam)
        else:
            part = np.full(len(share), length / (len(share) - 1))
            part[[0, -1]] *= 0.5
            gives = np.diag(1.0 / ((rest.crushes_n_per_mm2 or math.inf) * part))
        places.append(start + share[:, None] * (end - start))
        parts.append(gives + NEARLY_RIGID * np.eye(len(share)))
    whole = np.zeros((sum(map(len, parts)),) * 2)
    first = 0
    for part in parts:
        whole[first : first + len(part), first : first + len(part)] = part
        first += len(part)
    return np.concatenate(places), whole


def _cut_at_posts(at: np.ndarray, length: float, beam: Beam) -> np.ndarray:
    """Deflection of a rail at each place for a unit force at each: a beam from post to post."""
    gives = np.zeros((len(at), len(at)))
    for start, end in pairwise([0.0, *(share * length for share in beam.posts), length]):
        on = np.flatnonzero((at > start) & (at < end))
        gives[np.ix_(on, on)] = _beam(at[on] - start, end - start, beam.ei_nmm2, beam.ga_n)
    return gives


def _beam(at: np.ndarray, length: float, ei: float, ga: float) -> np.ndarray:
    """Deflection of a simply supported beam at each place for a unit force at each.

    By the area under the product of the two unit moments (Mohr), and of the two unit shears.
    """
    x = (np.arange(2000) + 0.5) * length / 2000
    before = x < at[:, None]
    moment = np.where(before, x * (1 - at[:, None] / length), at[:, None] * (1 - x / length))
    shear = np.where(before, 1 - at[:, None] / length, -at[:, None] / length)
    step = length / 2000
    return np.asarray((moment @ moment.T / ei + shear @ shear.T / ga) * step)
