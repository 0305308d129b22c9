"""Uniform-cost search over combinations of changes, with ladders of like changes bisected."""

from __future__ import annotations

import heapq
from collections.abc import Callable, Collection, Iterable, Sequence
from dataclasses import replace
from itertools import count
from typing import Final

from ledgerstone.checks import Finding, group_of, stop_of_plans
from ledgerstone.checks.strength import CRACKS, still_cracks
from ledgerstone.remedies.budget import Budget, layout_units, plan_units
from ledgerstone.remedies.keeping import keeps
from ledgerstone.remedies.offers import steps
from ledgerstone.remedies.option import Option
from ledgerstone.remedies.policy import (
    HEAVY,
    NOTHING,
    SIZES_WITHIN,
    ChangeWeight,
    added,
    kind_of,
    weight,
)
from ledgerstone.remedies.state import State
from ledgerstone.remedies.trial import Outcome, Trial
from ledgerstone.stages import Planned, StageContext, plan
from ledgerstone.stages.keys import OrderKey

MAX_STATES = 32  # of one search, which bounds the work
MAX_STATES_TRIED = 100  # of all searches of one answer, which bounds the work
# An option that does not settle a finding by itself is tried after all that do.
PARTIAL: Final[ChangeWeight] = weight("thicker", 4.0)
LOOK = 0.5  # of a slab's strength: its handling, or in place


class TriedStates:
    """Outcomes of states of an order, each tried once, within the budget."""

    def __init__(self, trial: Trial, context: StageContext, budget: Budget, by: str) -> None:
        self._trial = trial
        self.context = context
        self._known: dict[OrderKey, Outcome | None] = {}
        self._looks: dict[tuple[OrderKey, str], bool] = {}
        self.budget = budget
        self.by = by
        self.full = 0
        self.verified = 0

    def outcome(self, state: State) -> Outcome | None:
        """Try a state; None if it is not understood, or all is spent."""
        key = state.key
        if key not in self._known:
            if self.full <= 0 or len(self._known) >= MAX_STATES_TRIED:
                return None
            if not self.budget.tries(state.order, by=self.by):
                return None
            self._known[key] = found = self._trial(state)
            if found is not None and "strength" not in found.checked.not_checked:
                self.full -= 1
                self.verified += 1
        return self._known[key]

    def cannot_fix(self, state: State, stop: Finding) -> bool:
        """Return whether a state leaves a crack as it is, computed before a whole trial.

        Only a look that spares the trial is counted.
        """
        key = state.key
        if key in self._known or stop.check not in CRACKS or stop.slab is None:
            return False
        new = (key, stop.check) not in self._looks and self.full > 0
        if new and self.budget.tries(state.order, LOOK, self.by):
            planned = self.planned(state)
            whole = stop_of_plans(planned) is None
            self._looks[key, stop.check] = whole and still_cracks(
                stop.check, stop.slab, planned, self.context
            )
            self.full -= self._looks[key, stop.check]
        return self._looks.get((key, stop.check), False)

    def planned(self, state: State) -> Planned:
        """The plans of the current order."""
        return plan(state.order, self.context)

    def then(self, state: State, option: Option) -> State | None:
        """Return the order after an option; None if a cut cannot be described."""
        return option.after(state, self.context.workshop.shaping.fitting_gap_mm)

    def stops(self, state: State) -> bool:
        """Return whether something stops a state, or it cannot be tried."""
        outcome = self.outcome(state)
        return outcome is None or bool(outcome.stops)


def cheapest(
    tried: TriedStates, start: State, most_share: float, without: Collection[str] = ()
) -> State | None:
    """The state of least weight that no finding stops, or None.

    ``most_share`` is the largest share by which a size may change; options of the names in
    ``without`` are not tried. A state is expanded by the
    lighter options of its first stopping finding, and later, once no lighter state is left, by the
    heavier ones. The first state taken from the queue that no finding stops is the least.
    """
    ticket = count()
    queue: list[tuple[ChangeWeight, int, State, bool]] = [(NOTHING, next(ticket), start, False)]
    seen: set[tuple[OrderKey, bool]] = set()
    while queue and len(seen) < MAX_STATES:
        weighs, _, state, heavy = heapq.heappop(queue)
        known = (state.key, heavy)
        if known in seen or (most_share <= SIZES_WITHIN and not keeps(state)):
            continue
        seen.add(known)
        slabs = state.order.slabs
        if not tried.budget.spends(max(map(layout_units, slabs)) + sum(map(plan_units, slabs))):
            return None
        stop, planned = _first_stop(tried, state)
        if stop is None and planned is not None:
            return state
        if stop is None or planned is None:
            continue
        every = steps(stop, planned, tried.context, most_share, heavy=heavy)
        every = [option for option in every if option.name not in without]
        for option in _options(tried, stop, every, state):
            then = tried.then(state, option)
            if then is not None:
                heapq.heappush(queue, (added(weighs, option.weight), next(ticket), then, False))
        if not heavy:
            heapq.heappush(queue, (added(weighs, HEAVY), next(ticket), state, True))
    return None


def _first_stop(tried: TriedStates, state: State) -> tuple[Finding | None, Planned | None]:
    """What first stops a changed order, with its plans; no plans where all is spent."""
    planned = tried.planned(state)
    stop = stop_of_plans(planned)
    if stop is not None:
        return stop, planned
    outcome = tried.outcome(state)
    if outcome is None:
        return None, None
    return next(iter(outcome.checked.stops), None), outcome.checked.planned


def _options(
    tried: TriedStates, stop: Finding, every: list[Option], state: State
) -> Iterable[Option]:
    """What may settle a stop: every option of a plan; of a ladder its least good rung.

    Where a ladder's top does not settle it, the top may still do so with another's help.
    """
    if group_of(stop) == "shape":
        yield from every
        return
    best: ChangeWeight | None = None
    settled: ChangeWeight | None = None

    def settles(option: Option) -> bool:
        then = tried.then(state, option)
        if then is None or tried.cannot_fix(then, stop):
            return False
        outcome = tried.outcome(then)
        return outcome is not None and stop.id not in outcome.stops

    for rungs in ladders(every):
        if best is not None and rungs[0].weight >= best:
            return
        if settled is not None and kind_of(rungs[0].weight) > kind_of(settled):
            yield rungs[0]  # it is only tried where what is lighter leads nowhere
            continue
        rung = least(rungs, settles)
        if rung is None:
            yield replace(rungs[-1], beside=added(rungs[-1].beside, PARTIAL))
            continue
        settled = rung.weight if settled is None else settled
        then = tried.then(state, rung)
        outcome = tried.outcome(then) if then is not None else None
        if outcome is not None and not outcome.stops:
            best = rung.weight if best is None else min(best, rung.weight)
        yield rung


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
