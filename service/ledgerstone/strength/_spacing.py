"""How fine the mesh is at each place: the rule of methods §1.2."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from scipy.spatial.distance import cdist

from ledgerstone.arrays import FloatArray, IntArray
from ledgerstone.strength._outline import widths_mm
from ledgerstone.strength._turning import SHARPLY

GROWTH = 0.3  # element size gained per millimetre of distance
COARSEST_MM = 45.0  # methods §1.2
ELEMENTS_ACROSS = 14.0  # methods §1.2
ELEMENTS_IN_STRIP = 3.0  # methods §1.2
FINEST_STRIP_MM = 12.0  # methods §1.2
ELEMENTS_ROUND_HOLE = 32.0  # methods §1.2
CHORD_ERROR_MM = 0.4  # greatest distance of a curve from its chord
COVERED = 1.2  # a source that another one brings within this of its size is left out
MAX_SOURCES = 500  # of fine sizes; beyond it they are thinned, which bounds the work
EQUILATERAL = 0.866  # height of an equilateral triangle over its side; twice its area, squared
STRIP_STEP, MOST_STEPS = 0.7, 80  # of the coarse size between places where strips are measured
STRAIGHT_TURN = 0.02  # radians; an inward vertex that turns less is on a straight side
THINNED_FROM, THINNED_MORE = 0.5, 1.5  # cells in which one source stays, of its size; each time
SHORT_STEP = 0.85  # of the size asked for: a boundary step shorter than that asks for its own
SHORTEST_STEP_MM = 2.5  # no boundary step is shorter than this


@dataclass(frozen=True, slots=True)
class Spacing:
    """Element size over the plane: a coarse size, finer near sources and growing away from them.

    Away from a source the size grows by `GROWTH` of the distance, up to the coarse one.

    Parameters
    ----------
    coarse_mm
        Size far from every source.
    sources_mm
        Places where the mesh is finer, shape (k, 2).
    sizes_mm
        Size wanted at each source, shape (k,).
    """

    coarse_mm: float
    sources_mm: FloatArray
    sizes_mm: FloatArray

    def at(self, points: FloatArray) -> FloatArray:
        """Element size at each of ``points`` (n, 2), shape (n,), mm.

        Source
        ------
        methods §1.2: it grows by 0.3 mm for each millimetre of distance.
        """
        if len(self.sizes_mm) == 0:
            return np.full(len(points), self.coarse_mm)
        wanted = cdist(self.sources_mm, points)  # a source a row: least of rows is quicker
        wanted *= GROWTH
        wanted += self.sizes_mm[:, None]
        return np.asarray(np.minimum(wanted.min(axis=0), self.coarse_mm))

    def scaled(self, factor: float) -> Spacing:
        """Spacing with every size multiplied by ``factor``, a pure number."""
        return Spacing(self.coarse_mm * factor, self.sources_mm, self.sizes_mm * factor)


def ruled_mm(width_mm: float) -> float:
    """Coarse element size of a slab whose shorter side is ``width_mm``, mm.

    Source
    ------
    As ``spacing_for``.
    """
    return min(width_mm / ELEMENTS_ACROSS, COARSEST_MM)


def spacing_for(
    starts: FloatArray,
    ends: FloatArray,
    *,
    width_mm: float,
    thickness_mm: float,
    mesh_mm: float | None,
    turning: tuple[FloatArray, FloatArray],
) -> Spacing:
    """Spacing that the meshing rule asks for.

    Parameters
    ----------
    starts, ends
        Ends of the boundary's segments, mm, slab on the left, shape (m, 2) each.
    width_mm
        Shorter side of the smallest upright rectangle around the slab.
    thickness_mm
        Slab's thickness; corners that turn inward are meshed at half of it.
    mesh_mm
        Coarse size wanted instead of the rule's, or None.
    turning
        Places about which it turns, mm, shape (k, 2), and the size wanted at each, (k,).

    Source
    ------
    methods §1.2: trials against the tables of §1.6.
    """
    rule = ruled_mm(width_mm)
    coarse = rule if mesh_mm is None else mesh_mm
    strips = _strip_sources(starts, ends, coarse, ELEMENTS_IN_STRIP * max(coarse, rule))
    corners = _corner_sources(starts, ends, thickness_mm)
    places = np.concatenate([strips[0], corners[0], turning[0]])
    sizes = np.concatenate([strips[1], corners[1], turning[1]]) * min(coarse / rule, 1.0)
    fine = sizes < coarse
    return Spacing(coarse, *_thinned(places[fine], sizes[fine]))


def _strip_sources(
    starts: FloatArray, ends: FloatArray, coarse: float, within_mm: float
) -> tuple[FloatArray, FloatArray]:
    """Places along the boundary where a strip is narrow, and a third of its width.

    A strip wider than ``within_mm`` asks for no finer mesh.
    """
    side = ends - starts
    length = np.linalg.norm(side, axis=1)
    inward = np.column_stack([-side[:, 1], side[:, 0]]) / length[:, None]
    counts = np.clip(np.ceil(length / (STRIP_STEP * coarse)), 1, MOST_STEPS).astype(int)
    owner = np.repeat(np.arange(len(starts)), counts)
    step = np.concatenate([(np.arange(c) + 0.5) / c for c in counts])
    places = starts[owner] + step[:, None] * side[owner]
    width = widths_mm(places, inward[owner], starts, ends, within_mm=within_mm)
    sizes = np.maximum(width / ELEMENTS_IN_STRIP, FINEST_STRIP_MM)
    finite = np.isfinite(width)
    feet = places[finite] + inward[owner][finite] * width[finite, None]
    return np.concatenate([places, feet]), np.concatenate([sizes, sizes[finite]])


def _corner_sources(
    starts: FloatArray, ends: FloatArray, thickness_mm: float
) -> tuple[FloatArray, FloatArray]:
    """Corners that turn inward, and the size wanted at each.

    A corner turning more than 50 degrees gets half the thickness (not under 12 mm); a vertex of a
    curve gets what puts thirty-two elements round its circle.
    """
    order = {tuple(end): k for k, end in enumerate(np.round(ends, 6).tolist())}
    before = np.array([order.get(tuple(p), -1) for p in np.round(starts, 6).tolist()])
    known = before >= 0
    u = (ends - starts)[before]
    v = ends - starts
    cross = u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]
    turn = np.arctan2(cross, np.einsum("ij,ij->i", u, v))
    radius = 0.5 * (np.linalg.norm(u, axis=1) + np.linalg.norm(v, axis=1)) / np.maximum(-turn, 1e-3)
    half = max(thickness_mm / 2.0, FINEST_STRIP_MM)
    by_count = 2.0 * math.pi * radius / ELEMENTS_ROUND_HOLE
    by_rise = np.sqrt(8.0 * CHORD_ERROR_MM * radius)  # an arc rises c² / 8 r over its chord c
    curve = np.maximum(np.minimum(by_count, by_rise), FINEST_STRIP_MM)
    sizes = np.where(turn < -SHARPLY, half, curve)
    inward_turn = known & (turn < -STRAIGHT_TURN)
    return starts[inward_turn], sizes[inward_turn]


def _thinned(places: FloatArray, sizes: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Sources without those that a finer or equal one nearby already covers."""
    order = np.lexsort((places[:, 1], places[:, 0], sizes))
    places, sizes = places[order], sizes[order]
    share = THINNED_FROM
    while len(sizes) > MAX_SOURCES:
        cell = np.floor(places / (share * sizes[:, None])).astype(np.int64)
        _, first = np.unique(cell, axis=0, return_index=True)
        places, sizes = places[np.sort(first)], sizes[np.sort(first)]
        share *= THINNED_MORE
    reach = cdist(places, places) * GROWTH + sizes
    covered = np.tril(reach <= COVERED * sizes[:, None], -1).any(axis=1)
    return places[~covered], sizes[~covered]


def refined_at(spacing: Spacing, points: FloatArray, cut: IntArray) -> Spacing:
    """Spacing that also grows from boundary steps shorter than it asked for.

    Parameters
    ----------
    points, cut
        Points of the boundary, shape (n, 2), mm, and its steps as pairs of them, shape (m, 2).
    """
    ends = points[cut]
    length = np.linalg.norm(ends[:, 1] - ends[:, 0], axis=1)
    middle = ends.mean(axis=1)
    short = length < SHORT_STEP * spacing.at(middle)
    places = np.concatenate([spacing.sources_mm, middle[short]])
    sizes = np.concatenate([spacing.sizes_mm, np.maximum(length[short], SHORTEST_STEP_MM)])
    return Spacing(spacing.coarse_mm, *_thinned(places, sizes))


def affordable(spacing: Spacing, area_mm2: float, places: FloatArray, most: int) -> Spacing:
    """Spacing made coarser all over until about ``most`` nodes would do.

    An equilateral mesh of size ``s`` has an area of ``0.866 s²`` per node.

    Parameters
    ----------
    places
        Places spread evenly over the slab, shape (k, 2), mm.
    """
    wanted = area_mm2 * float(np.mean(spacing.at(places) ** -2.0)) / EQUILATERAL
    return spacing if wanted <= most else spacing.scaled(math.sqrt(wanted / most))
