"""The rails across units: the first kind with which the slab does not crack.

Where the order does not say, each unit begins with the cabinet's own rails. Units over which the
slab would crack get a hardwood rail, a steel one, or a hardwood one with a post under its middle:
the first with which every case that failed passes. The places tried first decide most of that; the
worst place is then searched for on the rails that pass under those.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from ledgerstone.order import Rests
from ledgerstone.outline import XY
from ledgerstone.strength._judging import every_batch, with_the_rest
from ledgerstone.strength._placed import PlacedSlab
from ledgerstone.strength._search import worst_seats
from ledgerstone.strength._tried import CaseBatch, TriedCase
from ledgerstone.strength.places import LoadPlace
from ledgerstone.strength.rests import RestKind, crowded_units, on_rails
from ledgerstone.strength.verdict import CAUTIONS

LEVELS: tuple[RestKind, ...] = ("cabinet", "hardwood", "steel", "post")
MAX_ROUNDS = 9  # of looking for rails that do, which bounds the work
WHOLE = 2  # the extent at which every case was tried; at 1 the worst place was searched for
MAX_FAILING = 8  # cases that each rail is tried on first, which bounds the work
# Utilisation on weaker rails from which a place is tried first on stronger ones. With 0.45 one of
# 107 slabs on units differs, by 3.5 % in the caution of a low rest; that no place is missed is held
# by tests/laws/test_seat_laws.py.
USED_MUCH = 0.6
FEWEST_AGAIN = 12  # places that are, whatever their utilisation

Levels = dict[int, RestKind]


def settled_on_rails(placed: PlacedSlab) -> tuple[PlacedSlab, tuple[CaseBatch, ...], Levels]:
    """Settle every case of a slab on the rails that its units have, or must be given.

    Returns
    -------
    The slab on its rails, its cases, and what carries across each unit. Where no rail suffices,
    the slab is on the strongest and the last is empty.
    """
    rests = placed.slab.rests
    units = sorted({b.unit for b in placed.carrying if b.unit is not None})
    if rests is None or not units:
        return placed, every_batch(placed), {}
    levels: Levels = dict.fromkeys(units, rests.rails or "cabinet")
    railed = on_levels(placed, levels)
    batches: tuple[CaseBatch, ...] = (railed.first,)
    extent = 0
    for _ in range(MAX_ROUNDS if rests.rails is None else 0):
        failing = list(_failing(railed, batches))
        raised = _raised(placed, rests, levels, [where for _, where in failing])
        if failing and raised is not None:
            tried = [case for case, _ in failing[:MAX_FAILING]]
            places = _places_again(railed, tried)
            for levels in raised:
                railed = on_levels(railed, levels, places)
                if _holds(railed, tried):
                    break
            batches, extent = (railed.first,), 0
        elif failing or extent == WHOLE:
            break
        else:
            batches, extent = _further(railed, batches, extent), extent + 1
    for later in range(extent, WHOLE):
        batches = _further(railed, batches, later)
    if any(True for _ in _failing(railed, batches)):
        return railed, batches, {}
    return railed, batches, levels


def _further(
    placed: PlacedSlab, batches: tuple[CaseBatch, ...], extent: int
) -> tuple[CaseBatch, ...]:
    """The worst place searched for, from the first batch; then all else tried."""
    return worst_seats(placed, placed.first) if extent == 0 else with_the_rest(placed, batches)


def on_levels(
    placed: PlacedSlab, levels: Mapping[int, RestKind], places: tuple[LoadPlace, ...] | None = None
) -> PlacedSlab:
    """Return the slab with other rails at the same places, and where a person is tried first."""
    rests = placed.slab.rests
    if rests is None:
        return placed
    rails = placed.workshop.rails
    upright = crowded_units(rests, placed.shape, rails)
    carrying = on_rails(placed.carrying, rests, rails, levels, upright=upright)
    other = replace(placed, carrying=carrying)
    for shared in ("seat_area", "places", "seats", "equilibrium"):
        other.__dict__[shared] = getattr(placed, shared)
    if places is not None:
        other.__dict__["places"] = places
    other.__dict__["rested"] = placed.rested.giving_way([bearing.support for bearing in carrying])
    return other


def _places_again(placed: PlacedSlab, failing: Sequence[TriedCase]) -> tuple[LoadPlace, ...]:
    """Where a person is tried first on stronger rails: where the slab is used much on these."""
    first = placed.first
    used = {
        tried.place: stress.mpa / placed.limit_mpa(tried.case)
        for tried, stress in zip(first.tried, first.found, strict=True)
        if tried.place is not None
    }
    most = sorted(used.values(), reverse=True)
    least = min(most[min(FEWEST_AGAIN, len(most) - 1)], USED_MUCH) if most else 0.0
    again = [p for p in placed.places if p.kind != "anywhere" or used[p] >= least]
    worst = [case.place for case in failing if case.place is not None]
    return tuple(dict.fromkeys([*again, *worst]))


def _failing(placed: PlacedSlab, batches: Sequence[CaseBatch]) -> Iterable[tuple[TriedCase, XY]]:
    """Cases in which the slab would crack, and where, the worst first."""
    found = [
        (stress.mpa / placed.limit_mpa(tried.case), tried, stress.where_mm)
        for batch in batches
        for tried, stress in zip(batch.tried, batch.found, strict=True)
        if tried.case not in CAUTIONS and not stress.tips
    ]
    found.sort(key=lambda row: -round(row[0], 6))
    return ((tried, where) for used, tried, where in found if used > 1.0)


def _raised(
    placed: PlacedSlab, rests: Rests, levels: Levels, where: Sequence[XY]
) -> list[Levels] | None:
    """Stronger rails, kind by kind, under the places that fail; None if none is stronger."""
    spans: dict[int, tuple[float, float]] = {}
    for bearing in placed.carrying:
        if bearing.unit is not None:
            x0, _, x1, _ = bearing.footprint.bounds
            low, high = spans.get(bearing.unit, (x0, x1))
            spans[bearing.unit] = min(low, x0), max(high, x1)
    under = {
        unit
        for x, _ in where
        for unit, (low, high) in spans.items()
        if low - rests.units[unit].width.mm / 10 <= x <= high + rests.units[unit].width.mm / 10
    }
    weakest = min((LEVELS.index(levels[unit]) for unit in under), default=len(LEVELS))
    stronger = LEVELS[weakest + 1 :]
    if not stronger:
        return None
    return [
        {
            unit: max(level, kind, key=LEVELS.index) if unit in under else level
            for unit, level in levels.items()
        }
        for kind in stronger
    ]


def _holds(placed: PlacedSlab, tried: Sequence[TriedCase]) -> bool:
    """Whether cases pass on the slab's rails: the worst by itself first, as it mostly decides."""
    if not _pass(placed, placed.settled(tried[:1])):
        return False
    first = placed.first
    again = [case for case in tried[1:] if case not in first.tried]
    return _pass(placed, first, tried) and (not again or _pass(placed, placed.settled(again)))


def _pass(placed: PlacedSlab, batch: CaseBatch, among: Sequence[TriedCase] | None = None) -> bool:
    """Return whether all cases of a batch pass, or those of them that are ``among`` some."""
    return all(
        stress.mpa <= placed.limit_mpa(tried.case)
        for tried, stress in zip(batch.tried, batch.found, strict=True)
        if among is None or tried in among
    )
