"""Ways to save on an order that can be made: money, weight or days, and nothing is harmed."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal

from ledgerstone.checks import Checked, StageRecords
from ledgerstone.order import Order, Shade
from ledgerstone.price import Price
from ledgerstone.remedies.budget import Budget
from ledgerstone.remedies.change import Change, Changes
from ledgerstone.remedies.state import State, start
from ledgerstone.remedies.trial import Outcome, Trial
from ledgerstone.remedies.words import Sentences, say
from ledgerstone.strength.concrete import flexural_factor

MAX_WAYS_TO_SAVE = 3  # shown: more would not be read
MIN_SHARE = Decimal("0.015")  # of the price: a smaller saving is not offered
LIGHTER_SHARE, SOONER_DAYS = 0.1, 3  # lighter or sooner by this, any saving is offered
# Not with a low rest: a thinner slab bends down to it more easily.
_BY_LOAD = ("own-weight", "even-load", "somebody-sitting", "somebody-standing", "somebody-leaning")


@dataclass(frozen=True, slots=True)
class Saving:
    """A change that saves, verified by every check: its price, and the mass and days saved.

    Attributes
    ----------
    lighter_kg
        How much less all slabs weigh.
    sooner_days
        How many days sooner it arrives, at the latest.
    """

    sentences: tuple[Sentences, ...]
    state: State
    price: Price
    lighter_kg: float
    sooner_days: int


def ways_to_save(checked: Checked, trial: Trial, budget: Budget) -> tuple[Saving, ...]:
    """Up to three changes that make an order cheaper, lighter or sooner, the cheapest first.

    Each is proved by every check, adds no caution, costs less, comes no later, and keeps sizes in
    plan, cut-outs and finish.
    """
    now = checked.records
    if now is None:
        return ()
    order, total = now.planned.order, now.priced.price.total
    known = {finding.check for finding in checked.findings if finding.level == "caution"}
    found = []
    for changes in _candidates(order, now):
        state = start(order).after(changes)
        outcome = trial(state) if budget.tries(state.order, by="ways") else None
        then = outcome.checked.records if outcome is not None else None
        if outcome is None or then is None or _adds_a_caution(outcome, known):
            continue
        price = then.priced.price
        lighter = max(0.0, round(_kg(now) - _kg(then), 1))
        sooner = (now.lead_time.arrives_latest - then.lead_time.arrives_latest).days
        if sooner < 0:
            continue
        much = lighter >= LIGHTER_SHARE * _kg(now) or sooner >= SOONER_DAYS
        if total - price.total >= total * MIN_SHARE or (much and price.total < total):
            found.append(Saving(say(state), state, price, lighter, sooner))
    return tuple(sorted(found, key=lambda way: way.price.total)[:MAX_WAYS_TO_SAVE])


def _kg(records: StageRecords) -> float:
    planned = records.planned
    pairs = zip(planned.slab_kg, planned.order.slabs, strict=True)
    return sum(kg * slab.quantity for kg, slab in pairs)


def _adds_a_caution(outcome: Outcome, known: set[str]) -> bool:
    cautions = {f.check for f in outcome.checked.findings if f.level == "caution"}
    return not cautions <= known


def _candidates(order: Order, now: StageRecords) -> Iterable[Changes]:
    yield from _thinner(order, now)
    yield from _other_delivery(order, now)
    yield from _ordinary_shade(order, now)
    if order.heated_curing:
        yield (Change(("heated_curing",), new=False),)


def _thinner(order: Order, now: StageRecords) -> Iterable[Changes]:
    """Yield every slab at the next thinner stocked thickness, unless one surely cracks."""
    changes = []
    for i, slab in enumerate(order.slabs):
        stocked = now.planned.workshop.shaping.thicknesses_mm
        thinner = [usual for usual in stocked if usual < slab.thickness.mm - 0.5]
        if thinner:
            new = slab.thickness.like(max(thinner))
            if _cracks_for_sure(now, i, new.mm):
                return
            changes.append(Change(("slabs", i, "thickness"), new))
    if changes:
        yield tuple(changes)


def _cracks_for_sure(now: StageRecords, i: int, thickness_mm: float) -> bool:
    """Return whether a slab of less thickness cracks in its place: this needs no trial.

    A lower bound of its stress: it rises as ``1 / h`` under its own weight, which falls with ``h``,
    and as ``1 / h²`` under other loads. The trusted strength rises by the flexural factor.

    Source
    ------
    Strength of materials; EN 1992-1-1 (3.23) for the factor.
    """
    old_mm = now.planned.order.slabs[i].thickness.mm
    trusted = flexural_factor(thickness_mm) / flexural_factor(old_mm)
    verdicts = [v for v in now.assessed.strength[i].in_place.verdicts if v.case in _BY_LOAD]
    return any(v.utilisation * old_mm / thickness_mm > trusted for v in verdicts)


def _other_delivery(order: Order, now: StageRecords) -> Iterable[Changes]:
    """Collection; or a pallet to the kerb in place of a van."""
    if order.delivery.kind == "collect":
        return
    yield (Change(("delivery", "kind"), "collect"),)
    area = now.planned.area
    if order.delivery.kind == "own-van" and area is not None and area.pallet is not None:
        yield (Change(("delivery", "kind"), "pallet"),)


def _ordinary_shade(order: Order, now: StageRecords) -> Iterable[Changes]:
    """The palette's first shade, where a slab asked for one that costs extra."""
    palette = {shade.name: shade for shade in now.planned.workshop.palette}
    usual = next((shade for shade in palette.values() if not shade.extra_per_m3), None)
    changes = tuple(
        Change(("slabs", i, "shade"), Shade(name=usual.name))
        for i, slab in enumerate(order.slabs)
        if usual is not None
        and slab.shade.name in palette
        and palette[slab.shade.name].extra_per_m3 > 0
    )
    if changes:
        yield changes
