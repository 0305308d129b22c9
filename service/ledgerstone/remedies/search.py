"""Finding changes that are proved to work: for one finding, and for the whole order at once.

The checks of shape and strength treat slabs separately, so each slab is corrected by itself. What
the slabs then fail together is corrected on the whole order, and only the whole order, read and
checked again, counts as proof.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable

from ledgerstone.checks import CheckGroup, Finding
from ledgerstone.containment import Contain, uncontained
from ledgerstone.order import MAX_SLABS, Order
from ledgerstone.remedies.budget import Budget, layout_units, plan_units, proof_units
from ledgerstone.remedies.buttons import shown_once
from ledgerstone.remedies.change import Change
from ledgerstone.remedies.cheapest import TriedStates, cheapest, ladders, least
from ledgerstone.remedies.found import Fix, Found, Remedy
from ledgerstone.remedies.keeping import keeps
from ledgerstone.remedies.offers import last_resort, options
from ledgerstone.remedies.option import Option
from ledgerstone.remedies.policy import BASES, NEAREST_WITHIN, SIZES_WITHIN
from ledgerstone.remedies.reasons import reason
from ledgerstone.remedies.state import State, start
from ledgerstone.remedies.trial import Outcome, Trials
from ledgerstone.remedies.words import say
from ledgerstone.stages import Planned, StageContext, plan
from ledgerstone.wording import Message

OF_A_SLAB: tuple[CheckGroup, ...] = ("shape", "strength")
MAX_REMEDIES = 3  # of one finding: more would not be read
FULL_FOR_A_SLAB = 14  # strength computations for one slab, at most
FULL_WITHOUT_A_BASE = 4  # more, where the change found puts masonry under a slab
FOR_A_BASE = 0.5  # of what may be spent then
FULL_FOR_ALL = 8  # whole orders verified
FULL_FOR_REMEDIES = 2  # and for the remedies of all findings together
KEPT_FOR_REMEDIES, KEPT_FOR_FAR = 0.2, 0.5  # shares of the units left at the start of each
# Units kept until the last resort, a plain slab in its place: for each slab, and for all of them.
PLAIN_SLAB, PLAIN_SLABS = 9.0, 32.0
FOR_THE_SLABS = 0.85  # of the budget; the rest is for the order as a whole
LAYOUTS_IN_PLANS = 3  # cost of all layouts of one plan, in looks at it
MAX_SEARCHED = 12  # most findings that remedies are searched for


def find(
    planned: Planned,
    context: StageContext,
    findings: tuple[Finding, ...],
    trials: Trials,
    *,
    budget: Budget,
    contain: Contain = uncontained,
) -> Found:
    """Search for remedies of every stopping finding, and for one change that settles all."""
    search = _Search(planned, context, findings, trials, budget=budget, contain=contain)
    may_prove = budget.spends(sum(map(proof_units, planned.order.slabs)))
    plain = _plain_slab_reserve(planned.order) * len(planned.order.slabs)
    fix = search.contained_fix(SIZES_WITHIN, max(KEPT_FOR_REMEDIES * budget.left, plain))
    budget.keep(max(KEPT_FOR_FAR * budget.left, plain) if fix is None else 0.0)
    search.whole.full = FULL_FOR_REMEDIES
    remedies = {
        finding.id: search.contained_remedies(finding)
        for finding in [stop for stop in search.stops if stop.follows_from is None][:MAX_SEARCHED]
    }
    remedies = shown_once(remedies, search.stops)
    if not _is_bedded(search.start):
        remedies = {name: _bases_last(each) for name, each in remedies.items()}
    fix = _or_a_remedy(fix, remedies)
    nearest = None if fix is not None else search.contained_fix(NEAREST_WITHIN, 0.0)
    if nearest is not None and keeps(nearest.state):  # it was there, further than was looked before
        fix, nearest = nearest, None
    why_not = None if fix is not None else search.why_not(nearest, may_prove)
    return Found(remedies, fix, nearest, why_not, search.verified)


def _plain_slab_reserve(order: Order) -> float:
    """Units kept for each slab's last resort; several share what all of them may keep."""
    return min(PLAIN_SLAB, PLAIN_SLABS / len(order.slabs))


def _or_a_remedy(fix: Fix | None, remedies: dict[str, tuple[Remedy, ...]]) -> Fix | None:
    """The fix, or the first remedy after which the order quotes and keeps what was asked for.

    A remedy also takes the place of a fix that puts masonry under a slab where it does not.
    """
    if fix is not None and not _is_bedded(fix.state):
        return fix
    for remedy in (option for each in remedies.values() for option in each):
        if remedy.price is None or not keeps(remedy.state):
            continue
        if fix is None or not _is_bedded(remedy.state):
            return Fix(say(remedy.state), remedy.state, remedy.price)
    return fix


class _Search:
    """The search of one order, and the outcomes of whole orders that were tried."""

    def __init__(
        self,
        planned: Planned,
        context: StageContext,
        findings: tuple[Finding, ...],
        trials: Trials,
        *,
        budget: Budget,
        contain: Contain,
    ) -> None:
        self.planned, self.context, self.contain = planned, context, contain
        self.order, self.start = planned.order, start(planned.order)
        self.trials = trials
        self.stops = [finding for finding in findings if finding.level == "stops"]
        self.before = frozenset(stop.id for stop in self.stops)
        self.budget = budget
        self.whole = TriedStates(trials.whole, context, budget, "whole")
        self._alone: dict[int, TriedStates] = {}
        self._corrected: dict[int, State] = {}

    def contained_fix(self, most_share: float, kept: float) -> Fix | None:
        """The least change after which nothing stops; none if an internal fault lost it."""
        with self.contain("remedy"):
            return self.fix(most_share, kept)
        return None

    def contained_remedies(self, finding: Finding) -> tuple[Remedy, ...]:
        """What settles a finding; an internal fault costs what was not found before it."""
        shown: list[Remedy] = []
        with self.contain("remedy"):
            for remedy in self.remedies(finding):
                shown.append(remedy)  # noqa: PERF402  what was found before a fault is kept
        return tuple(shown)

    def fix(self, most_share: float, kept: float) -> Fix | None:
        """The least change found after which nothing stops the order.

        Parameters
        ----------
        kept
            How much of the budget is kept for what comes after.
        """
        state, count = self.start, len(self.order.slabs)
        for k, i in enumerate(sorted(range(count), key=self._is_stopped)):
            self.budget.keep(kept, FOR_THE_SLABS, count - k)
            corrected = self._corrected[i] if i in self._corrected else self._slab(i, most_share)
            if corrected is None:
                return None
            self._corrected[i] = corrected  # it also holds where more is allowed
            state = state.with_slab(i, corrected)
        self.budget.keep(kept)
        if len(state.order.slabs) > MAX_SLABS:
            return None
        starts = [state.without_loose_joins()]
        if most_share > SIZES_WITHIN:
            starts.append(starts[0].after((Change(("delivery", "kind"), "collect"),)))
        return next(filter(None, (self._whole(start, most_share) for start in starts)), None)

    def _is_stopped(self, i: int) -> bool:
        """Return whether something is known to stop a slab: what others leave is then for it."""
        return any(stop.slab == i for stop in self.stops)

    def _whole(self, begin: State, most_share: float) -> Fix | None:
        """Correct what the slabs, each corrected by itself, fail together."""
        self.whole.full = FULL_FOR_ALL
        found = cheapest(self.whole, begin, most_share)
        outcome = self.whole.outcome(found) if found is not None else None
        if found is None or outcome is None or outcome.price is None:
            return None
        return Fix(say(found), found, outcome.price)

    def _slab(self, i: int, most_share: float) -> State | None:
        """Correct one slab by itself: its shape, then its strength."""
        alone = Order(slabs=(self.order.slabs[i],))

        def trial(state: State) -> Outcome:
            return Outcome(state.order, self.trials.alone(state.order))

        tried = self._alone.setdefault(i, TriedStates(trial, self.context, self.budget, "alone"))
        tried.full = FULL_FOR_A_SLAB
        begin = start(alone)
        if most_share <= SIZES_WITHIN:
            return self._without_a_base(tried, begin, cheapest(tried, begin, most_share))
        kept = _plain_slab_reserve(self.order) / 2
        self.budget.kept += kept
        found = cheapest(tried, begin, most_share)
        self.budget.kept -= kept
        if found is not None:
            return found
        tried.full += FULL_FOR_A_SLAB
        first = next(iter(self.trials.alone(alone).stops), None)
        if first is None:
            return begin
        last = last_resort(first, plan(alone, self.context), self.context)
        plain = (begin.after(option.changes) for option in last)
        return next((state for state in plain if not tried.stops(state)), None)

    def _without_a_base(
        self, tried: TriedStates, begin: State, found: State | None
    ) -> State | None:
        """Look a little further where a slab would lie on masonry: a thicker one may do."""
        if found is None or _is_bedded(begin) or not _is_bedded(found):
            return found
        tried.full = FULL_WITHOUT_A_BASE
        kept = self.budget.kept
        self.budget.keep(kept, FOR_A_BASE)
        lighter = cheapest(tried, begin, SIZES_WITHIN, without=BASES)
        self.budget.kept = kept
        return lighter or found

    @property
    def verified(self) -> int:
        """How many full verifications were spent."""
        return self.whole.verified + sum(tried.verified for tried in self._alone.values())

    def why_not(self, nearest: Fix | None, may_prove: bool) -> Message | None:
        """Say why no fix keeps all that was asked for: what has no room, or that none was found."""
        with self.contain("remedy"):
            shown = reason(self.planned, self.context.workshop) if may_prove else None
            if shown is not None or nearest is not None:
                return shown
        return Message("no-fix-found", stop=self.stops[0].message)

    def remedies(self, finding: Finding) -> Iterable[Remedy]:
        """Up to three changes that settle a finding, no two of the same effect."""
        shown: list[frozenset[str]] = []
        names: set[str] = set()
        slab = 0 if finding.slab is None else finding.slab
        here = self.order.slabs[slab]
        if not self.budget.spends(layout_units(here) + LAYOUTS_IN_PLANS * plan_units(here)):
            return
        for rungs in self._ladders(finding):
            if rungs[0].name in names:
                continue
            rung = least(rungs, self._settles(finding))
            state = self.whole.then(self.start, rung) if rung is not None else None
            outcome = self.whole.outcome(state) if state is not None else None
            if rung is None or state is None or outcome is None or _held(state, shown):
                continue
            names.add(rung.name)
            shown.append(frozenset(map(repr, state.changes())))
            settled = tuple(stop.id for stop in self.stops if stop.id not in outcome.stops)
            yield Remedy(say(state), state, settled, outcome.price)
            if len(shown) == MAX_REMEDIES:
                return

    def _ladders(self, finding: Finding) -> Iterable[list[Option]]:
        """Options by effect, the lighter ones first; the others only where those are not enough."""
        for heavy in (False, True):
            yield from ladders(options(finding, self.planned, self.context, heavy=heavy))

    def _settles(self, finding: Finding) -> Callable[[Option], bool]:
        """A test of options: the finding is settled, and nothing new stops the order."""

        def good(option: Option) -> bool:
            state = self.whole.then(self.start, option)
            if state is None or self.whole.cannot_fix(state, finding):
                return False
            outcome = self.whole.outcome(state)
            return (
                outcome is not None
                and finding.id not in outcome.stops
                and outcome.stops <= self.before
            )

        return good


def _bases_last(remedies: tuple[Remedy, ...]) -> tuple[Remedy, ...]:
    """Put masonry in place of what carries a slab after every other change."""
    return tuple(sorted(remedies, key=lambda remedy: _is_bedded(remedy.state)))


def _is_bedded(state: State) -> bool:
    """Return whether any slab of an order is bedded all over."""
    every = (slab.rests for slab in state.order.slabs)
    return any(rests is not None and rests.kind == "full" for rests in every)


def _held(state: State, shown: list[frozenset[str]]) -> bool:
    """Return whether a change holds one that was shown."""
    parts = frozenset(map(repr, state.changes()))
    return any(parts >= other for other in shown)
