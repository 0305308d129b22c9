"""What must carry across units for a slab to hold: the first kind of rail that suffices.

Where the order does not say, each unit begins with the cabinet's own rails. Units over which the
slab would crack get a hardwood rail, a steel one, or a hardwood one with a post under its middle:
the first with which every case that failed holds. The places that are tried first settle most of
that; the worst place is searched for on the rails that hold under those.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from ledgerstone.order import Rests
from ledgerstone.outline import XY
from ledgerstone.strength._judging import every_batch
from ledgerstone.strength._lying import Lying
from ledgerstone.strength._tried import Batch, Tried
from ledgerstone.strength.places import Place
from ledgerstone.strength.rests import Level, crowded_units, on_rails
from ledgerstone.strength.verdict import CAUTIONS

LEVELS: tuple[Level, ...] = ("cabinet", "hardwood", "steel", "post")
MOST_ROUNDS = 6
MOST_FAILING = 8
MOST_AGAIN = 24  # worst places so far that are tried first on other rails

Levels = dict[int, Level]


def settled_on_rails(lying: Lying) -> tuple[Lying, tuple[Batch, ...], Levels]:
    """Settle every case of a slab on the rails that its units have, or must be given.

    Returns
    -------
    The slab on its rails, its cases, and what carries across each unit. Where nothing that could
    be fitted suffices, on the strongest, and then nothing is asked for across any unit.
    """
    rests = lying.slab.rests
    units = sorted({b.unit for b in lying.carrying if b.unit is not None})
    if rests is None or not units:
        return lying, every_batch(lying), {}
    levels: Levels = dict.fromkeys(units, rests.rails or "cabinet")
    railed = on_levels(lying, levels)
    batches: tuple[Batch, ...] = (railed.first,)
    for _ in range(MOST_ROUNDS if rests.rails is None else 0):
        failing = list(_failing(railed, batches))
        raised = _raised(lying, rests, levels, [where for _, where in failing])
        if failing and raised is not None:
            tried = [one for one, _ in failing[:MOST_FAILING]]
            worst = _worst_places(railed, batches)
            for levels in raised:
                railed = on_levels(lying, levels, worst)
                if _holds(railed, tried):
                    break
            batches = (railed.first,)
        elif failing or len(batches) > 1:
            break
        else:
            batches = every_batch(railed)
    batches = batches if len(batches) > 1 else every_batch(railed)
    if any(True for _ in _failing(railed, batches)):
        return railed, batches, {}
    return railed, batches, levels


def on_levels(
    lying: Lying, levels: Mapping[int, Level], places: tuple[Place, ...] | None = None
) -> Lying:
    """Return the slab with other rails at the same places, and where a person is tried first."""
    rests = lying.slab.rests
    if rests is None:
        return lying
    rails = lying.workshop.rails
    upright = crowded_units(rests, lying.shape, rails)
    carrying = on_rails(lying.carrying, rests, rails, levels, upright=upright)
    other = replace(lying, carrying=carrying)
    for shared in ("hull", "places", "seats", "equilibrium"):
        other.__dict__[shared] = getattr(lying, shared)
    if places is not None:
        other.__dict__["places"] = places
    other.__dict__["rested"] = lying.rested.giving_way([one.support for one in carrying])
    return other


def _worst_places(lying: Lying, batches: Sequence[Batch]) -> tuple[Place, ...]:
    """The places where a person used the slab most; narrow strips and free corners among them."""
    found = [
        (-round(one.mpa / lying.limit_mpa(tried.case), 6), tried.place)
        for batch in batches
        for tried, one in zip(batch.tried, batch.found, strict=True)
        if tried.place is not None and tried.low is None
    ]
    found.sort(key=lambda row: row[0])
    anywhere = [place for _, place in found if place.kind == "anywhere"]
    others = [place for _, place in found if place.kind != "anywhere"]
    return tuple(dict.fromkeys([*anywhere[:MOST_AGAIN], *others]))


def _failing(lying: Lying, batches: Sequence[Batch]) -> Iterable[tuple[Tried, XY]]:
    """Cases in which the slab would crack, and where, the worst first."""
    found = [
        (one.mpa / lying.limit_mpa(tried.case), tried, one.where_mm)
        for batch in batches
        for tried, one in zip(batch.tried, batch.found, strict=True)
        if tried.case not in CAUTIONS and not one.tips
    ]
    found.sort(key=lambda row: -round(row[0], 6))
    return ((tried, where) for used, tried, where in found if used > 1.0)


def _raised(lying: Lying, rests: Rests, levels: Levels, where: Sequence[XY]) -> list[Levels] | None:
    """Stronger rails, kind by kind, under the places that fail; None where none is stronger."""
    spans: dict[int, tuple[float, float]] = {}
    for bearing in lying.carrying:
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


def _holds(lying: Lying, tried: Sequence[Tried]) -> bool:
    batch = lying.settled(tried)
    return all(
        one.mpa <= lying.limit_mpa(each.case)
        for each, one in zip(batch.tried, batch.found, strict=True)
    )
