"""Uniform-cost search over combinations of changes, with ladders of like changes bisected."""

from __future__ import annotations

import heapq
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from itertools import count

from ledgerstone.checks import Facts, Finding, stage_of, stop_of_plans
from ledgerstone.checks.strength import CRACKS, still_cracks
from ledgerstone.order import LShape, Order, Outline, Round
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.remedies.budget import Budget, order_units, plan_units
from ledgerstone.remedies.change import Changes, Outcome, changed
from ledgerstone.remedies.offers import steps
from ledgerstone.remedies.option import WITHIN, Option, merged
from ledgerstone.shape import cutout_size_mm

MOST_STATES = 24
MOST_TRIED = 100
HELPED = 4.0


class Tried:
    """What changes of an order came to, each tried once, within what may be spent."""

    def __init__(
        self, trial: Callable[[Changes], Outcome | None], facts: Facts, budget: Budget
    ) -> None:
        self._trial = trial
        self.facts = facts
        self._known: dict[str, Outcome | None] = {}
        self._looks: dict[tuple[str, str], bool] = {}
        self.budget = budget
        self.full = 0
        self.verified = 0

    def outcome(self, changes: Changes) -> Outcome | None:
        """Try changes; None where they are not understood, or all is spent."""
        key = key_of(changes)
        if key not in self._known:
            if self.full <= 0 or len(self._known) >= MOST_TRIED:
                return None
            if not self.budget.spends(self._units(changes)):
                return None
            self._known[key] = found = self._trial(changes)
            if found is not None and "strength" not in found.checked.not_checked:
                self.full -= 1
                self.verified += 1
        return self._known[key]

    def in_vain(self, changes: Changes, stop: Finding) -> bool:
        """Say whether changes leave a crack as it is: a look at that alone, before a whole trial.

        Only a look that spares the trial is counted.
        """
        key = key_of(changes)
        if key in self._known or stop.check not in CRACKS or stop.slab is None:
            return False
        new = (key, stop.check) not in self._looks and self.full > 0
        if new and self.budget.spends(self._units(changes) / 2):
            at = self.facts_with(changes)
            whole = stop_of_plans(at.planned) is None
            self._looks[key, stop.check] = whole and still_cracks(
                stop.check, stop.slab, at.planned, at.context
            )
            self.full -= self._looks[key, stop.check]
        return self._looks.get((key, stop.check), False)

    def _units(self, changes: Changes) -> float:
        """What the changed order costs to try: a plain slab in place of an intricate one little."""
        return order_units(changed(self.facts.order, changes))

    def facts_with(self, changes: Changes) -> Facts:
        """Facts of the changed order."""
        like = self.facts
        order = changed(like.order, changes)
        return Facts(order, like.workshop, like.bookings, like.today, like.plates)

    def stops(self, changes: Changes) -> bool:
        """Say whether something stops what changes come to, or it cannot be tried."""
        outcome = self.outcome(changes)
        return outcome is None or bool(outcome.stops)


def key_of(changes: Changes) -> str:
    """Name a set of changes, whatever their order."""
    return repr(sorted(changes, key=lambda change: str(change.path)))


def cheapest(tried: Tried, start: Changes, most_share: float) -> Changes | None:
    """The least set of changes found after which nothing stops the order.

    A state is a set of changes to the order as sent; it is left by the options of the first thing
    that stops it. The first state taken that nothing stops is the least one found.
    """
    ticket = count()
    queue: list[tuple[float, int, Changes]] = [(0.0, next(ticket), start)]
    seen: set[str] = set()
    while queue and len(seen) < MOST_STATES:
        cost, _, changes = heapq.heappop(queue)
        at = tried.facts_with(changes)
        known = key_of(changes)
        if known in seen or (most_share <= WITHIN and not keeps(tried.facts.order, at.order)):
            continue
        seen.add(known)
        if not tried.budget.spends(sum(map(plan_units, at.order.slabs))):
            return None
        stop, at_last = _first_stop(tried, at, changes)
        if stop is None and at_last is not None:
            return changes
        if stop is None or at_last is None:
            continue
        for option in _options(tried, stop, at_last, changes, most_share):
            then = merged(changes, option.changes)
            heapq.heappush(queue, (cost + option.cost, next(ticket), then))
    return None


def _first_stop(tried: Tried, at: Facts, changes: Changes) -> tuple[Finding | None, Facts | None]:
    """What first stops a changed order, with its facts; no facts where all is spent."""
    plan = stop_of_plans(at.planned)
    if plan is not None:
        return plan, at
    outcome = tried.outcome(changes)
    if outcome is None:
        return None, None
    return next(iter(outcome.checked.stops), None), outcome.facts


def _options(
    tried: Tried, stop: Finding, at: Facts, changes: Changes, most_share: float
) -> Iterable[Option]:
    """What may settle a stop: every option of a plan; of a ladder its least good rung.

    Where a ladder's top does not settle it, the top may still do so with another's help.
    """
    every = [
        option
        for option in steps(stop, at.order, at, most_share)
        if not _turns_again(option, changes)
    ]
    if stage_of(stop) == "shape":
        yield from every
        return
    best = float("inf")

    def settles(option: Option) -> bool:
        then = merged(changes, option.changes)
        if tried.in_vain(then, stop):
            return False
        outcome = tried.outcome(then)
        return outcome is not None and stop.id not in outcome.stops

    for rungs in ladders(every):
        if rungs[0].cost >= best:
            return
        rung = least(rungs, settles)
        if rung is None:
            yield replace(rungs[-1], cost=rungs[-1].cost + HELPED)
            continue
        outcome = tried.outcome(merged(changes, rung.changes))
        if outcome is not None and not outcome.stops:
            best = min(best, rung.cost)
        yield rung


def _turns_again(option: Option, changes: Changes) -> bool:
    """Whether an option turns what was turned already: it would stand as it did."""
    turned = {change.path for change in changes if change.path[-1] == "turn_degrees"}
    return any(change.path in turned for change in option.changes)


def least(rungs: Sequence[Option], good: Callable[[Option], bool]) -> Option | None:
    """The least rung of a ladder that is good: the first, else by bisection below the top."""
    if good(rungs[0]):
        return rungs[0]
    low, high = 1, len(rungs) - 1
    if high < low or not good(rungs[high]):
        return None
    while low < high:
        middle = (low + high) // 2
        if good(rungs[middle]):
            high = middle
        else:
            low = middle + 1
    return rungs[high]


def ladders(every: list[Option]) -> list[list[Option]]:
    """Options by effect, each ladder from its least rung to its top; the least ladder first."""
    by_effect: dict[str, list[Option]] = {}
    for option in every:
        by_effect.setdefault(option.effect, []).append(option)
    return list(by_effect.values())


def keeps(before: Order, after: Order) -> bool:
    """Whether every cut-out is kept, and each size in plan within a tenth."""
    if len(before.slabs) != len(after.slabs):
        return False
    for one, other in zip(before.slabs, after.slabs, strict=True):
        if len(one.cutouts) != len(other.cutouts):
            return False
        sizes = [(_outline_sizes(one.outline), _outline_sizes(other.outline))]
        sizes += [
            (cutout_size_mm(a), cutout_size_mm(b))
            for a, b in zip(one.cutouts, other.cutouts, strict=True)
        ]
        for old, new in sizes:
            if len(old) != len(new) or _far(old, new):
                return False
    return True


def _far(old: tuple[float, ...], new: tuple[float, ...]) -> bool:
    return any(abs(n - o) > WITHIN * o + 1e-6 for o, n in zip(old, new, strict=True))


def _outline_sizes(outline: Outline) -> tuple[float, ...]:
    if isinstance(outline, Round):
        return (outline.diameter.mm, outline.diameter.mm)
    if isinstance(outline, OrderPolygon):
        xs = [point.x.mm for point in outline.points]
        ys = [point.y.mm for point in outline.points]
        return (max(xs) - min(xs), max(ys) - min(ys))
    sizes = (outline.length.mm, outline.width.mm)
    if isinstance(outline, LShape):
        return (*sizes, outline.notch.length.mm, outline.notch.width.mm)
    return sizes
