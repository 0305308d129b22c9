"""Finding changes that are proved to work: for one finding, and for the whole order at once.

Slabs stand apart in the checks of shape and strength, so each is put right by itself; what they
then come to together is put right as a whole, and only the whole, read anew, counts as proof.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace

from ledgerstone.checks import Facts, Finding, Stage, check_order
from ledgerstone.order import Order
from ledgerstone.price import Price
from ledgerstone.remedies.budget import Budget, allowed, plan_units
from ledgerstone.remedies.change import Changes, Outcome, Trial, changed
from ledgerstone.remedies.cheapest import Tried, cheapest, ladders, least
from ledgerstone.remedies.offers import WITHIN, last_resort, options
from ledgerstone.remedies.option import Option, merged
from ledgerstone.remedies.words import say_changes

FAR = 0.6
OF_A_SLAB: tuple[Stage, ...] = ("shape", "strength")
MOST_REMEDIES = 3
MOST_THINGS = 2
FULL_FOR_A_SLAB = 10  # strength worked out so often, at most, for one slab
FULL_FOR_ALL = 8  # whole orders verified
FULL_FOR_REMEDIES = 6  # and for the remedies of all findings together
LOOKS = 3  # what all ways to lay one plan out anew cost, beside a look at it
MOST_FINDINGS = 12  # remedies are sought for so many findings


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
    search.whole.full = FULL_FOR_REMEDIES
    search.whole.budget = Budget(search.allowed.remedies)
    remedies = {
        finding.id: tuple(search.remedies(finding)) for finding in search.stops[:MOST_FINDINGS]
    }
    why_not = None
    if fix is None and nearest is None:
        why_not = "We looked for a change that would do, and found none. Ask us: we may know one."
    return Found(remedies, fix, nearest, why_not)


class _Search:
    """The search of one order, and what whole orders came to when they were tried."""

    def __init__(
        self, order: Order, facts: Facts, findings: tuple[Finding, ...], trial: Trial
    ) -> None:
        self.order, self.facts = order, facts
        self.stops = [finding for finding in findings if finding.level == "stops"]
        self.before = frozenset(stop.id for stop in self.stops)
        self.allowed = allowed(order)
        self.whole = Tried(trial, order, Budget(self.allowed.the_whole))

    def fix(self, most_share: float) -> Fix | None:
        """The least change found after which nothing stops the order."""
        changes: Changes = ()
        for i in range(len(self.order.slabs)):
            mended = self._slab(i, most_share)
            if mended is None:
                return None
            changes = merged(changes, _moved_to(mended, i, self.order, changes))
        self.whole.full = FULL_FOR_ALL
        found = cheapest(self.whole, self.order, self.facts, changes, most_share)
        outcome = self.whole.outcome(found) if found is not None else None
        if found is None or outcome is None or outcome.price is None:
            return None
        return Fix(say_changes(self.order, found), found, outcome.price)

    def _slab(self, i: int, most_share: float) -> Changes | None:
        """Put one slab right by itself: in its shape and in its strength."""
        alone = Order(slabs=(self.order.slabs[i],))
        facts = self._facts(alone)

        def trial(changes: Changes) -> Outcome:
            order = changed(alone, changes)
            at = self._facts(order)
            return Outcome(order, check_order(at, OF_A_SLAB), at)

        tried = Tried(trial, alone, Budget(self.allowed.a_slab))
        tried.full = FULL_FOR_A_SLAB
        found = cheapest(tried, alone, facts, (), most_share)
        if found is not None or most_share <= WITHIN:
            return found
        tried.full += FULL_FOR_A_SLAB
        tried.budget = Budget(self.allowed.a_slab)
        first = next(iter(check_order(facts, OF_A_SLAB).stops))
        plain = last_resort(first, alone, facts)
        return next((o.changes for o in plain if not tried.stops(o.changes)), None)

    def _facts(self, order: Order) -> Facts:
        old = self.facts
        return Facts(order, old.workshop, old.bookings, old.today, old.plates)

    def remedies(self, finding: Finding) -> Iterable[Remedy]:
        """Up to three changes that settle a finding, no two of the same effect."""
        shown: list[frozenset[str]] = []
        slab = 0 if finding.slab is None else finding.slab
        if not self.whole.budget.spends(LOOKS * plan_units(self.order.slabs[slab])):
            return
        for rungs in ladders(options(finding, self.order, self.facts)):
            rung = least(self.whole, rungs, (), self._settles(finding))
            outcome = self.whole.outcome(rung.changes) if rung is not None else None
            if rung is None or outcome is None or _shown_already(rung, shown):
                continue
            shown.append(frozenset(map(repr, rung.changes)))
            settled = tuple(stop.id for stop in self.stops if stop.id not in outcome.stops)
            says = " ".join(say_changes(self.order, rung.changes))
            yield Remedy(says, rung.changes, settled, outcome.price)
            if len(shown) == MOST_REMEDIES:
                return

    def _settles(self, finding: Finding) -> Callable[[Outcome], bool]:
        """A test of outcomes: the finding is settled, and nothing new stops the order."""
        return lambda outcome: finding.id not in outcome.stops and outcome.stops <= self.before


def _shown_already(rung: Option, shown: list[frozenset[str]]) -> bool:
    """Whether a change holds one that was shown, or changes much where something simpler did."""
    parts = frozenset(map(repr, rung.changes))
    if any(parts >= other for other in shown):
        return True
    return bool(shown) and len({change.path[:4] for change in rung.changes}) > MOST_THINGS


def _moved_to(changes: Changes, i: int, order: Order, before: Changes) -> Changes:
    """Changes of a slab alone, as changes of slab ``i`` among the others."""
    added = sum(len(c.path) == 2 and c.path[0] == "slabs" for c in before if c.path[1] != i)
    extra = len(order.slabs) + added // 2
    moved = []
    for change in changes:
        if change.path[0] == "slabs":
            index = i if change.path[1] == 0 else extra
            moved.append(replace(change, path=("slabs", index, *change.path[2:])))
        elif change.path == ("joins",):
            joins = next((c.new for c in before if c.path == ("joins",)), order.joins)
            ends = {0: i, 1: extra}
            own = tuple(
                replace(
                    join,
                    one=replace(join.one, slab=ends[join.one.slab]),
                    other=replace(join.other, slab=ends[join.other.slab]),
                )
                for join in change.new
            )
            moved.append(replace(change, new=(*joins, *own)))
    return tuple(moved)
