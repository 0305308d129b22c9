"""Finding changes that are proved to work: for one finding, and for the whole order at once."""

from __future__ import annotations

import heapq
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from itertools import count

from ledgerstone.checks import Facts, Finding, run_stage, stage_of
from ledgerstone.order import Order, Outline, Round
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.price import Price
from ledgerstone.remedies.change import Changes, Outcome, Trial, changed
from ledgerstone.remedies.offers import options
from ledgerstone.remedies.option import Option, merged
from ledgerstone.remedies.words import say_changes
from ledgerstone.shape import cutout_size_mm

WITHIN = 0.1
FAR = 0.6
MOST_REMEDIES = 3
MOST_THINGS = 2
MOST_STATES = 120
MOST_TRIED = 200
FULL_FOR_ALL = 16  # full verifications that one search for a fix may spend
FULL_FOR_ONE = 6  # and the remedies of one finding
HELPED = 4.0


@dataclass(frozen=True, slots=True)
class Remedy:
    """A change that settles findings, proved by every check."""

    says: str
    changes: Changes
    settles: tuple[str, ...]
    price: Price | None


@dataclass(frozen=True, slots=True)
class Fix:
    """Changes after which the whole order quotes, proved by every check."""

    says: tuple[str, ...]
    changes: Changes
    price: Price


@dataclass(frozen=True, slots=True)
class Found:
    """Everything the search came to.

    Attributes
    ----------
    remedies
        By finding id, up to three each.
    fix_all
        Keeps every cut-out and each size within a tenth.
    nearest_makeable
        A bigger change, only where there is no ``fix_all``.
    why_not
        The plain reason where nothing was found.
    """

    remedies: dict[str, tuple[Remedy, ...]] = field(default_factory=dict)
    fix_all: Fix | None = None
    nearest_makeable: Fix | None = None
    why_not: str | None = None


def find(order: Order, facts: Facts, findings: tuple[Finding, ...], trial: Trial) -> Found:
    """Search for remedies of every stopping finding, and for one change that settles all."""
    search = _Search(order, facts, findings, trial)
    fix = search.fix(WITHIN)
    nearest = None if fix is not None else search.fix(FAR)
    remedies = {finding.id: tuple(search.remedies(finding)) for finding in search.stops}
    why_not = None
    if fix is None and nearest is None:
        why_not = "We looked for a change that would do, and found none. Ask us: we may know one."
    return Found(remedies, fix, nearest, why_not)


class _Search:
    """The search of one order: what was tried, and what may still be spent."""

    def __init__(
        self, order: Order, facts: Facts, findings: tuple[Finding, ...], trial: Trial
    ) -> None:
        self.order, self.facts, self.trial = order, facts, trial
        self.stops = [finding for finding in findings if finding.level == "stops"]
        self.before = frozenset(stop.id for stop in self.stops)
        self.tried: dict[str, Outcome | None] = {}
        self.full = 0

    def outcome(self, changes: Changes) -> Outcome | None:
        """What changes come to, tried once; None where they are not understood or all is spent."""
        key = repr(sorted(changes, key=lambda change: str(change.path)))
        if key not in self.tried:
            if self.full <= 0 or len(self.tried) >= MOST_TRIED:
                return None
            self.tried[key] = found = self.trial(changes)
            if found is not None and "strength" not in found.checked.not_checked:
                self.full -= 1
        return self.tried[key]

    def remedies(self, finding: Finding) -> Iterable[Remedy]:
        """Up to three changes that settle a finding, no two of the same effect."""
        self.full = FULL_FOR_ONE
        shown: list[frozenset[str]] = []

        def settles(outcome: Outcome | None) -> bool:
            return (
                outcome is not None
                and finding.id not in outcome.stops
                and outcome.stops <= self.before
            )

        for rungs in _ladders(options(finding, self.order, self.facts, WITHIN)):
            rung = self._least(rungs, (), settles)
            if rung is None:
                continue
            outcome = self.outcome(rung.changes)
            parts = frozenset(map(repr, rung.changes))
            if outcome is None or any(parts >= other for other in shown):
                continue
            if shown and len({change.path[:4] for change in rung.changes}) > MOST_THINGS:
                continue  # it changes half the slab, and something simpler was found
            shown.append(parts)
            settled = tuple(stop.id for stop in self.stops if stop.id not in outcome.stops)
            says = " ".join(say_changes(self.order, rung.changes))
            yield Remedy(says, rung.changes, settled, outcome.price)
            if len(shown) == MOST_REMEDIES:
                return

    def _least(
        self, rungs: list[Option], base: Changes, good: Callable[[Outcome | None], bool]
    ) -> Option | None:
        """The least rung of a ladder that is good: none where the top is not; else by bisection."""
        low, high = 0, len(rungs) - 1
        if not good(self.outcome(merged(base, rungs[high].changes))):
            return None
        while low < high:
            middle = (low + high) // 2
            if good(self.outcome(merged(base, rungs[middle].changes))):
                high = middle
            else:
                low = middle + 1
        return rungs[high]

    def fix(self, most_share: float) -> Fix | None:
        """Uniform-cost search over combinations: the least change after which nothing stops.

        A state is a set of changes to the order as sent; it is left by the options of the first
        thing that stops it. The first state taken that nothing stops is the least one found.
        """
        self.full = FULL_FOR_ALL
        ticket = count()
        queue: list[tuple[float, int, Changes]] = [(0.0, next(ticket), ())]
        seen: set[str] = set()
        while queue and len(seen) < MOST_STATES:
            cost, _, changes = heapq.heappop(queue)
            here = changed(self.order, changes)
            known = repr(sorted(changes, key=lambda change: str(change.path)))
            if known in seen or (most_share <= WITHIN and not keeps(self.order, here)):
                continue
            seen.add(known)
            stop, at, price = self._first_stop(here, changes)
            if price is not None:
                return Fix(say_changes(self.order, changes), changes, price)
            if stop is None:
                continue
            for option in self._steps(stop, here, at, changes, most_share):
                then = merged(changes, option.changes)
                heapq.heappush(queue, (cost + option.cost, next(ticket), then))
        return None

    def _first_stop(
        self, here: Order, changes: Changes
    ) -> tuple[Finding | None, Facts, Price | None]:
        """What first stops a changed order, its facts, and its price where nothing does."""
        old = self.facts
        at = Facts(here, old.workshop, old.bookings, old.today, old.plates)
        plan = next((f for f in run_stage("shape", at) if f.level == "stops"), None)
        if plan is not None:
            return plan, at, None
        outcome = self.outcome(changes)
        if outcome is None:
            return None, at, None
        return next(iter(outcome.checked.stops), None), outcome.facts, outcome.price

    def _steps(
        self, stop: Finding, here: Order, at: Facts, changes: Changes, most_share: float
    ) -> Iterable[Option]:
        """What may settle a stop: every option of a plan; of a ladder its least good rung.

        Where a ladder's top does not settle it, the top may still do so with another's help.
        """
        every = options(stop, here, at, most_share)
        if stage_of(stop) == "shape":
            yield from every
            return

        def settles(outcome: Outcome | None) -> bool:
            return outcome is not None and stop.id not in outcome.stops

        best = float("inf")
        for rungs in _ladders(every):
            if rungs[0].cost >= best:
                return
            rung = self._least(rungs, changes, settles)
            if rung is None:
                yield replace(rungs[-1], cost=rungs[-1].cost + HELPED)
                continue
            outcome = self.outcome(merged(changes, rung.changes))
            if outcome is not None and not outcome.stops:
                best = min(best, rung.cost)
            yield rung


def _ladders(every: list[Option]) -> list[list[Option]]:
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
        sizes = [(_outline_size(one.outline), _outline_size(other.outline))]
        sizes += [
            (cutout_size_mm(a), cutout_size_mm(b))
            for a, b in zip(one.cutouts, other.cutouts, strict=True)
        ]
        for old, new in sizes:
            if any(abs(n - o) > WITHIN * o + 1e-6 for o, n in zip(old, new, strict=True)):
                return False
    return True


def _outline_size(outline: Outline) -> tuple[float, float]:
    if isinstance(outline, Round):
        return outline.diameter.mm, outline.diameter.mm
    if isinstance(outline, OrderPolygon):
        xs = [point.x.mm for point in outline.points]
        ys = [point.y.mm for point in outline.points]
        return max(xs) - min(xs), max(ys) - min(ys)
    return outline.length.mm, outline.width.mm
