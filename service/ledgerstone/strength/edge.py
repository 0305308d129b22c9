"""A slab standing on its long edge: stress in its own plane, at and between its cut-outs.

Beam theory along the slab: at each upright section the pieces of concrete above and below the
openings bend together about their joint centre (net section), and each piece bends by itself as
it carries its share of the shear past the opening (chord bending). Along an opening's rim the
two are multiplied by a concentration factor.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
import shapely
from shapely.geometry import Polygon

from ledgerstone.arrays import FloatArray
from ledgerstone.errors import OutlineUnusableError, SlabTipsError

SECTIONS = 240  # places along a slab where its section is looked at: our own choice
_CLOSEST_MM, _CLOSEST = 0.25, 0.4  # sections as near as that are one; of an even step
_TINY = 1e-9  # least area, mm², and second moment, mm⁴, that is divided by
CHORD_ERROR_MM = 0.25  # a circle keeps a chord for every few degrees
RIM_FACTOR = (
    2.0  # a hole about the middle of a bent strip: Peterson's chart tends to 2; from memory
)


@dataclass(frozen=True, slots=True)
class EdgeStress:
    """Largest stress in the slab's plane, MPa, and where it is, plane slab millimetres."""

    mpa: float
    x_mm: float
    y_mm: float


@dataclass(frozen=True, slots=True)
class _Sections:
    """Upright sections through a slab that lies along x.

    Parameters
    ----------
    at
        Places of the sections, shape (n,).
    low, high
        Ends of each piece of concrete, shape (n, k); a piece that is missing has ``low == high``.
    """

    at: FloatArray
    low: FloatArray
    high: FloatArray

    @property
    def depth(self) -> FloatArray:
        return self.high - self.low


def on_edge_stress(
    outline: Polygon,
    *,
    thickness_mm: float,
    n_per_mm3: float,
    held_mm: tuple[float, float],
    more_n_per_mm: float = 0.0,
    along_y: bool = False,
) -> EdgeStress:
    """Largest tension, MPa, in a slab on its long edge, held at two places along it.

    Either long edge may be the lower one: the greater answer of the two is given.

    Parameters
    ----------
    outline
        Slab in plan, mm.
    thickness_mm
        Thickness.
    n_per_mm3
        Weight of a unit of concrete, times the handling factor.
    held_mm
        Where it is held: two coordinates along its length, mm.
    more_n_per_mm
        Weight of mould, sides and formers on each millimetre of its length, times the factor.
    along_y
        Whether the edge it stands on lies along y.

    Raises
    ------
    SlabTipsError
        If the weight's resultant is not between the two places.
    OutlineUnusableError
        If an opening goes from one long edge to the other.

    Source
    ------
    Beam theory with chord bending: strength of materials; the rim's factor of 2 as `RIM_FACTOR`.
    """
    sections = _sections(outline, along_y=along_y)
    load = n_per_mm3 * thickness_mm * sections.depth.sum(axis=1) + more_n_per_mm
    shear, moment = _beam(sections.at, load, held_mm)
    stress, place = _stresses(sections, shear, moment, load, thickness_mm)
    k = int(np.argmax(stress))
    x, y = float(sections.at[k]), float(place[k])
    return EdgeStress(float(stress[k]), *((y, x) if along_y else (x, y)))


@lru_cache(maxsize=4)
def _sections(outline: Polygon, *, along_y: bool) -> _Sections:
    """Sections across an outline's length; the same ones serve every way to hold it."""
    outline = shapely.simplify(outline, CHORD_ERROR_MM)
    if along_y:
        outline = shapely.transform(outline, lambda p: p[:, ::-1])
    x0, _, x1, _ = outline.bounds
    corners = shapely.get_coordinates(outline)[:, 0]
    near = np.concatenate([corners - 0.5, corners + 0.5])
    even = np.linspace(x0 + 0.5, x1 - 0.5, SECTIONS)
    at = np.unique(np.concatenate([even, near[(near > x0) & (near < x1)]]))
    closest = min(_CLOSEST_MM, _CLOSEST * (x1 - x0) / SECTIONS)
    at = at[np.concatenate([[True], np.diff(at) > closest])]
    rings = [shapely.get_coordinates(ring) for ring in shapely.get_rings(outline)]
    start = np.concatenate([ring[:-1] for ring in rings])
    end = np.concatenate([ring[1:] for ring in rings])
    return _cut(at, start, end)


def _cut(at: FloatArray, start: FloatArray, end: FloatArray) -> _Sections:
    """Sections at given places through a boundary's pieces, shape (m, 2) each end.

    A piece counts at its left end and not at its right one, so that every section crosses the
    boundary an even number of times.
    """
    left, right = np.minimum(start[:, 0], end[:, 0]), np.maximum(start[:, 0], end[:, 0])
    crossed = (left <= at[:, None]) & (at[:, None] < right)
    section, piece = np.nonzero(crossed)
    share = (at[section] - start[piece, 0]) / (end[piece, 0] - start[piece, 0])
    y = start[piece, 1] + share * (end[piece, 1] - start[piece, 1])
    y = y[np.lexsort((y, section))]
    count = np.bincount(section, minlength=len(at))
    if count.min() == 0:
        raise OutlineUnusableError("The slab is open from one long edge to the other.")
    place = np.arange(len(y)) - np.repeat(np.cumsum(count) - count, count)
    ends = np.zeros((len(at), int(count.max())))
    ends[section, place] = y
    return _Sections(at, ends[:, ::2], ends[:, 1::2])


def _beam(
    at: FloatArray, load: FloatArray, held_mm: tuple[float, float]
) -> tuple[FloatArray, FloatArray]:
    """Shear and moment along a beam on two supports, shape (n,) each, N and N·mm."""
    first, second = sorted(held_mm)
    step = np.diff(at)
    weight = _running(0.5 * (load[1:] + load[:-1]) * step)
    turning = _running(0.5 * (load[1:] * at[1:] + load[:-1] * at[:-1]) * step)
    whole, middle = float(weight[-1]), float(turning[-1] / weight[-1])
    if not first < middle < second:
        raise SlabTipsError((middle, 0.0), max(first - middle, middle - second, 0.0))
    right = whole * (middle - first) / (second - first)
    left = whole - right
    shear = left * (at > first) + right * (at > second) - weight
    return shear, _running(0.5 * (shear[1:] + shear[:-1]) * step)


def _running(steps: FloatArray) -> FloatArray:
    return np.concatenate([[0.0], np.cumsum(steps)])


def _stresses(
    sections: _Sections, shear: FloatArray, moment: FloatArray, load: FloatArray, thickness: float
) -> tuple[FloatArray, FloatArray]:
    """Largest fibre stress of each section, MPa, and how far up it is, mm, shape (n,) each."""
    depth = sections.depth
    area = np.maximum(depth.sum(axis=1), _TINY)  # a tip has none
    middle = 0.5 * (sections.low + sections.high)
    centre = (depth * middle).sum(axis=1) / area
    second = (depth**3 / 12.0 + depth * (middle - centre[:, None]) ** 2).sum(axis=1)
    inertia = thickness * np.maximum(second, _TINY)
    own = _chord_moments(sections, shear, load)
    # A rectangle's section modulus is t d² / 6, its second moment t d³ / 12.
    bent = 6.0 * own / (thickness * np.maximum(depth, 1.0) ** 2)
    fibres, place = [], []
    for edge in (sections.low, sections.high):
        together = np.abs(moment / inertia)[:, None] * np.abs(edge - centre[:, None])
        fibres.append(np.where(depth > 0.0, together * _rim(sections, edge) + bent, 0.0))
        place.append(edge)
    every, where = np.concatenate(fibres, axis=1), np.concatenate(place, axis=1)
    best = np.argmax(every, axis=1)
    row = np.arange(len(every))
    return every[row, best], where[row, best]


def _rim(sections: _Sections, edge: FloatArray) -> FloatArray:
    """Concentration factor of each fibre: it lies on an opening's rim, or on the outer edge."""
    outer = edge == sections.low.min(axis=1, where=sections.depth > 0.0, initial=np.inf)[:, None]
    outer |= edge == sections.high.max(axis=1)[:, None]
    return np.where(outer, 1.0, RIM_FACTOR)


def _chord_moments(sections: _Sections, shear: FloatArray, load: FloatArray) -> FloatArray:
    """Moment of each piece by itself where an opening parts the section, N·mm, shape (n, k)."""
    depth = sections.depth
    moments = np.zeros_like(depth)
    parted = (depth > 0.0).sum(axis=1)
    change = np.flatnonzero(np.diff(parted) != 0) + 1
    for run in np.split(np.arange(len(parted)), change):
        if parted[run[0]] < 2:
            continue
        at = sections.at[run]
        middle, length = 0.5 * (at[0] + at[-1]), at[-1] - at[0]
        stiff = depth[run].min(axis=0) ** 3
        share = stiff / max(float(stiff.sum()), 1e-9)
        lever = np.abs(at - middle)
        hung = (
            (load[run] * length**2 / 12.0)[:, None] * depth[run] / depth[run].sum(axis=1)[:, None]
        )
        across = abs(float(np.interp(middle, at, shear[run]))) * lever
        moments[run] = across[:, None] * share + hung
    return moments
