"""A plate on its rests, ready for any number of load cases, thicknesses and gaps."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

import numpy as np
import shapely
from shapely.geometry import MultiPoint
from shapely.geometry.base import BaseGeometry

from ledgerstone.arrays import BoolArray, FloatArray
from ledgerstone.errors import SlabTipsError
from ledgerstone.strength import contact
from ledgerstone.strength._compliance import compliance_of
from ledgerstone.strength._loads import OwnWeight, PlateLoad, unit_of
from ledgerstone.strength._model import Model
from ledgerstone.strength._supports import (
    Stations,
    Support,
    stations_of,
)
from ledgerstone.strength._together import Contact

CLEAR_OF_THE_HULL = 1e-5  # of half the slab's length
STATIONS_AT_ONCE = 48  # right sides solved at once, which bounds the memory


@dataclass(frozen=True, slots=True)
class Footing:
    """Rests of one slab: where they act, what they do to the plate, and how they give.

    Parameters
    ----------
    stations
        Places where the supports act.
    rows
        Forward substitutions of the unit reactions, shape (3 n, k).
    rests, contact
        The contact problem's matrices, and what settles many of its cases together.
    hull
        Of the reactions' pulls on the two slopes.
    loaded
        What unit loads do to the pinned slab at the stations, for unit ``D``, shape (k,), as far
        as it was asked for.
    slab_flexibility, compliance
        The slab's own flexibility at the stations for unit ``D``, and how the supports themselves
        give, mm/N, shapes (k, k); None if they are stiff.
    """

    stations: Stations
    rows: FloatArray
    slab_flexibility: FloatArray
    compliance: FloatArray | None
    rests: contact.SupportFlexibility
    contact: Contact
    hull: BaseGeometry
    loaded: dict[PlateLoad, FloatArray] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Settled:
    """Cases of one slab on one set of rests.

    Parameters
    ----------
    u
        Unknowns for unit ``D``, shape (3 n, k); zeros where the slab tips.
    reactions
        Of every station, N, up positive, shape (stations, k).
    tips
        For each case, how it tips; None if it rests.
    """

    u: FloatArray
    reactions: FloatArray
    tips: tuple[SlabTipsError | None, ...]


def footing_of(model: Model, supports: Sequence[Support], rigidity: float) -> Footing:
    """Footing of a model on supports: one forward substitution, no new factor.

    Parameters
    ----------
    rigidity
        ``D`` of the slab, N·mm.

    Raises
    ------
    OffTheSlabError
        If no part of a support meets the slab.
    """
    stations = stations_of(supports, model.mesh)
    rows, moved = _carried(model, stations)
    flexibility, compliance = rows.T @ rows, compliance_of(supports, stations)
    whole = flexibility if compliance is None else flexibility + rigidity * compliance
    rests = contact.rests_of(whole, moved, stations.pushes_only)
    hull = MultiPoint(rests.rigid[stations.is_force, 1:]).convex_hull
    shapely.prepare(hull)
    return Footing(stations, rows, flexibility, compliance, rests, Contact(rests), hull)


def _carried(model: Model, stations: Stations) -> tuple[FloatArray, FloatArray]:
    """``L⁻¹`` of the unit reactions, (3 n, k), and each rigid motion at the stations, (k, 3).

    Some stations at a time: each takes several columns as long as the model, and more of them
    than the factor solves together would leave the processor's cache.
    """
    count, motions = len(stations.owner), model.motions.columns
    rows = np.empty((len(motions), count), order="F")
    moved = np.empty((count, motions.shape[1]))
    for start in range(0, count, STATIONS_AT_ONCE):
        part = slice(start, start + STATIONS_AT_ONCE)
        columns = stations.columns(model.mesh, part)
        rows[:, part], moved[part] = model.factor.forward(columns), columns.T @ motions
    return rows, moved


def with_compliance(
    footing: Footing, rigidity: float, supports: Sequence[Support] | None = None
) -> Footing:
    """Same footing under a slab of another rigidity, or on supports of another compliance.

    Parameters
    ----------
    rigidity
        ``D`` of the slab, N·mm.
    supports
        Supports at the places of the footing's own; None keeps those.
    """
    compliance = footing.compliance
    if supports is not None:
        compliance = compliance_of(supports, footing.stations)
    elif compliance is None:
        return footing
    flexibility = footing.slab_flexibility
    whole = flexibility if compliance is None else flexibility + rigidity * compliance
    rests = contact.rests_of(whole, footing.rests.rigid, footing.stations.pushes_only)
    made = Contact(rests, footing.contact)
    return replace(footing, compliance=compliance, rests=rests, contact=made)


def held_down(footing: Footing) -> Footing:
    """Same footing, holding the slab down as well; the solutions at the rests are shared."""
    free = np.zeros_like(footing.stations.pushes_only)
    stations = replace(footing.stations, pushes_only=free)
    rests = replace(footing.rests, pushes_only=free)
    return replace(footing, stations=stations, rests=rests, contact=Contact(rests))


def settled_cases(
    model: Model,
    footing: Footing,
    cases: Sequence[Sequence[PlateLoad]],
    *,
    thickness_mm: float,
    rigidity: float,
    gaps_mm: Sequence[float] | FloatArray | None,
) -> Settled:
    """Every case settled on its rests.

    Parameters
    ----------
    cases
        Loads of each case; they act together.
    thickness_mm, rigidity
        The slab's own thickness, mm, and ``D``, N·mm.
    gaps_mm
        How low each support lies, mm, shape (supports,) or (supports, cases); None is all level.

    Raises
    ------
    OffTheSlabError
        If a load does not meet the slab.
    ContactNotSettledError
        If a case's contact does not balance.
    """
    units, shares = _shares(cases, thickness_mm)
    rows, pulls = model.carried(units), model.pulls(units).T @ shares
    free = _free(footing, units, rows).T @ shares
    low = None
    if gaps_mm is not None:
        gaps = np.asarray(gaps_mm, dtype=float)[footing.stations.owner] * rigidity
        gaps[~footing.stations.is_force] = 0.0
        gaps = np.broadcast_to(gaps.reshape(len(gaps), -1), free.shape)
        free, low = free - gaps, gaps > 0.0
    reactions, motions, tips = _each(model, footing, free, pulls, low)
    if None not in tips:
        return Settled(np.zeros((len(footing.rows), len(tips))), reactions, tips)
    loaded = rows.T @ (shares * [tip is None for tip in tips])
    loaded -= footing.rows @ reactions  # those of a slab that tips are zeros, as its motions are
    u = model.factor.backward(loaded)
    u += model.motions.columns @ motions
    return Settled(u, reactions, tips)


def tips_of(
    model: Model, footing: Footing, cases: Sequence[Sequence[PlateLoad]], *, thickness_mm: float
) -> tuple[SlabTipsError | None, ...]:
    """How the slab tips in each case; None if it rests."""
    if not cases:
        return ()
    units, shares = _shares(cases, thickness_mm)
    return _tips(model, footing, model.pulls(units).T @ shares)


def _free(footing: Footing, units: Sequence[PlateLoad], rows: FloatArray) -> FloatArray:
    """Deflections of the pinned slab at the stations under unit loads, shape (loads, k).

    ``rows`` are ``L⁻¹`` of the loads, shape (loads, 3 n).
    """
    new = [k for k, unit in enumerate(units) if unit not in footing.loaded]
    if new:
        some = rows if len(new) == len(units) else rows[new]
        footing.loaded.update(zip((units[k] for k in new), some @ footing.rows, strict=True))
    return np.array([footing.loaded[unit] for unit in units])


def _shares(
    cases: Sequence[Sequence[PlateLoad]], thickness_mm: float
) -> tuple[list[PlateLoad], FloatArray]:
    """Distinct unit loads, and how much of each is in each case, shape (loads, cases)."""
    sized = [[unit_of(load) for load in case] for case in cases]
    units = list(dict.fromkeys(unit for case in sized for unit, _ in case))
    place = {unit: k for k, unit in enumerate(units)}
    shares = np.zeros((len(units), len(cases)))
    for k, case in enumerate(sized):
        for unit, size in case:
            # a slab's own weight is kept for one millimetre of its thickness
            shares[place[unit], k] += size * (thickness_mm if isinstance(unit, OwnWeight) else 1.0)
    return units, shares


def _each(
    model: Model, footing: Footing, free: FloatArray, pulls: FloatArray, low: BoolArray | None
) -> tuple[FloatArray, FloatArray, tuple[SlabTipsError | None, ...]]:
    """Reactions (stations, k), rigid motions (3, k) and tips of every case."""
    tips = _tips(model, footing, pulls)
    reactions, motions = np.zeros_like(free), np.zeros((3, free.shape[1]))
    resting = [k for k, tip in enumerate(tips) if tip is None]
    if resting:
        apart = None if low is None else low[:, resting]
        found = footing.contact.balances(free[:, resting], pulls[:, resting], apart)
        reactions[:, resting] = np.column_stack([balance.reactions for balance in found])
        motions[:, resting] = np.column_stack([balance.motion for balance in found])
    return reactions, motions, tips


def _tips(model: Model, footing: Footing, pulls: FloatArray) -> tuple[SlabTipsError | None, ...]:
    """How each case tips, or None; one whose resultant lies well among the rests does not."""
    hull = footing.hull
    at = pulls[1:] / np.where(pulls[0] == 0.0, np.inf, pulls[0])
    down = pulls[0] > 0.0
    among = shapely.contains_xy(hull, *at) & down
    pushes, spans = footing.stations.pushes_only, footing.rests.spans
    if among.all() or (spans and not pushes.any()):
        return (None,) * len(among)
    away = np.asarray(shapely.distance(hull, shapely.points(*at)))
    # where every rest only pushes, a resultant clear of their hull is held by none of them
    tips = down & (away > CLEAR_OF_THE_HULL) & bool(pushes.all())
    return tuple(
        None
        if among[k]
        else _tip(model, footing, pulls[:, k], float(away[k]), holds=spans and not tips[k])
        for k in range(len(among))
    )


def _tip(
    model: Model, footing: Footing, pull: FloatArray, away: float, *, holds: bool
) -> SlabTipsError | None:
    """How one case tips, its resultant ``away`` from the hull in scaled lengths; None if not."""
    if holds and contact.imbalance(footing.rests, pull) <= contact.TIPS:
        return None
    if abs(pull[0]) <= 1e-9 * float(np.abs(pull).max()):
        return SlabTipsError(model.motions.middle, 0.0)
    (x, y), reach = model.motions.middle, model.motions.reach
    at = (float(x + reach * pull[1] / pull[0]), float(y + reach * pull[2] / pull[0]))
    return SlabTipsError(at, reach * away)
