"""How often a sent-back order carries a fix that keeps to the rule, and how long the search takes.

``python tests/benchmarks/remedies_benchmark.py [orders] [seed] [usual|wrong|any]...`` prints, for
each generator, what came of its orders. A ``fix_all`` counts where it keeps every opening, every
appliance's size and turn and every size that walls or units fix, and others within 5 %, as a second
reading of its patch finds. Orders for which an independent search finds no room are left out of the
share, and counted by their reasons. Times are processor time of one process on one thread; the
baseline, one full check of the same order (read, and every stage of checks, whether or not one
stops it), is measured beside each answer, both from empty caches.
"""

from __future__ import annotations

import os

from support.documents import Json

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS"):
    os.environ[name] = "1"

import sys
import time
from collections import Counter
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path

HERE = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(HERE), str(HERE.parent / "service")]

from hypothesis import HealthCheck, Phase, given, seed, settings

from ledgerstone.application.answering import answer_order
from ledgerstone.checks import check_plan, check_promise, check_strength
from ledgerstone.codec.order_in import read_order
from ledgerstone.errors import OutlineUnusableError
from ledgerstone.quote import Quote, SentBack
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.contexts import context_of
from support.oracles.patched_orders import liberties
from support.oracles.placement import room
from support.oracles.remedy_laws import patched
from support.stages import Stages
from support.strategies.orders import TODAY, modest_orders, orders
from support.strategies.wrong_orders import wrong_order
from support.written import write_fixes

KINDS = ("usual", "wrong", "any")
WORKSHOP = load_profile(DEMONSTRATION)


@dataclass
class Tally:
    """The results of the orders of one generator.

    Attributes
    ----------
    outcome
        Of those with room, or for which room is not looked for: ``fix_all``, a ``fix_all`` that
        takes a ``liberty``, the ``nearest`` makeable with a plain ``reason`` or without, or
        ``neither``.
    no_room, reasons
        Why there is no room; and how many of all without a ``fix_all`` have a plain reason.
    search_ms, check_ms
        For each sent back, the answer and one full check.
    """

    orders: int = 0
    quoted: int = 0
    outcome: Counter[str] = field(default_factory=Counter)
    no_room: Counter[str] = field(default_factory=Counter)
    reasons: Counter[str] = field(default_factory=Counter)
    stopped: Counter[str] = field(default_factory=Counter)
    left: Counter[str] = field(default_factory=Counter)
    search_ms: list[float] = field(default_factory=list)
    check_ms: list[float] = field(default_factory=list)
    verified: list[int] = field(default_factory=list)

    @property
    def sent_back(self) -> int:
        """How many were sent back."""
        return len(self.search_ms)

    def share(self, *outcomes: str) -> float:
        """The share of these outcomes among orders with room, in per cent."""
        return 100.0 * sum(self.outcome[one] for one in outcomes) / max(1, self.outcome.total())

    @property
    def ratios(self) -> list[float]:
        """How many full checks each answer took, in ascending order."""
        return sorted(a / b for a, b in zip(self.search_ms, self.check_ms, strict=True))


def sample(count: int, number: int, kind: str = "any") -> list[Json]:
    """Draw ``count`` well-formed orders: ``any``, ``usual`` ones, or ``wrong`` ones.

    Hypothesis varies an order it has drawn; only the first of each set of outlines is kept.
    """
    if kind == "wrong":
        return [wrong_order(number, n) for n in range(count)]
    drawn: dict[str, Json] = {}

    @seed(number)
    @settings(
        max_examples=8 * count,
        deadline=None,
        database=None,
        phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    @given(modest_orders() if kind == "usual" else orders())
    def draw(order: Json) -> None:
        drawn.setdefault(repr([slab["outline"] for slab in order["slabs"]]), order)

    draw()
    return list(drawn.values())[:count]


def tally(kind: str, count: int, number: int) -> Tally:
    """Answer every order of a generator, and tally the results."""
    made = Tally()
    for order in sample(count, number, kind):
        made.orders += 1
        began = time.process_time()
        answer = answer_order(order, context_of(WORKSHOP, TODAY))
        spent = time.process_time() - began
        if isinstance(answer, Quote):
            made.quoted += 1
            continue
        made.search_ms.append(1e3 * spent)
        made.check_ms.append(1e3 * full_check_s(order))
        made.verified.append(answer.found.verified if answer.found is not None else 0)
        _add(made, order, answer, kind)
    return made


def full_check_s(order: Json) -> float:
    """Processor time of one full check: read, and every stage though an earlier one stops it."""
    began = time.process_time()
    stages = Stages(read_order(order, WORKSHOP), WORKSHOP, None, TODAY)
    with suppress(OutlineUnusableError):  # what the plate has no answer for is not scheduled
        check_plan(stages.planned)
        check_strength(stages.known)
        check_promise(stages.judged)
    return time.process_time() - began


def _add(made: Tally, order: Json, answer: SentBack, kind: str) -> None:
    checks = {finding.check for finding in answer.findings if finding.level == "stops"}
    made.stopped.update(checks)
    fixes = write_fixes(order, answer.found, [])
    reason = answer.found is not None and answer.found.why_not is not None
    if "fix_all" not in fixes:
        made.reasons["plain" if reason else "none"] += 1
    full = room(order, WORKSHOP) if kind == "wrong" else ""
    if full:
        made.no_room[full] += 1
        made.no_room["… with a fix_all or a plain reason"] += "fix_all" in fixes or reason
        made.no_room["… with a fix_all or a nearest"] += bool(fixes.keys() - {"why_no_fix"})
        return
    outcome = _outcome(order, fixes, reason=reason)
    made.outcome[outcome] += 1
    if outcome != "fix_all":
        made.left.update(f"{check} ({outcome})" for check in checks)


def _outcome(order: Json, fixes: Json, *, reason: bool) -> str:
    if "fix_all" in fixes:
        taken = list(liberties(order, patched(order, fixes["fix_all"]["patch"])))
        return "liberty" if taken else "fix_all"
    if "nearest_makeable" in fixes:
        return "nearest and reason" if reason else "nearest"
    return "reason" if reason else "neither"


def part(ordered: Sequence[float], share: float) -> float:
    """The value that this share of a sorted list does not pass."""
    return ordered[int(share * (len(ordered) - 1))]


def show(kind: str, made: Tally) -> None:
    """Print the shares, the times and the histograms."""
    counted = made.outcome.total()
    print(f"{kind}: {made.orders} orders, quoted {made.quoted}, sent back {made.sent_back}")
    if kind == "wrong":
        share = 100.0 * (made.sent_back - counted) / max(1, made.sent_back)
        print(f"  left out for no room: {made.sent_back - counted} ({share:.1f} %)")
        for why, number in made.no_room.most_common():
            print(f"    {number:5d} {why}")
    either = made.share("fix_all", "liberty", "nearest", "nearest and reason")
    told = made.share("fix_all", "reason", "nearest and reason")
    print(f"  of {counted}: fix_all {made.share('fix_all'):.1f} %, that or nearest {either:.1f} %,")
    print(f"    that or a plain reason {told:.1f} %; {dict(made.outcome)}")
    print(f"  why not, of those without a fix_all: {dict(made.reasons)}")
    for name, times in (("sent back", made.search_ms), ("one full check", made.check_ms)):
        ms = sorted(times)
        p50, p95 = part(ms, 0.5), part(ms, 0.95)
        print(f"  {name}: p50 {p50:.0f} ms, p95 {p95:.0f} ms, most {ms[-1]:.0f} ms")
    ratios = made.ratios
    print(
        f"  ratio: p50 {part(ratios, 0.5):.1f}, p95 {part(ratios, 0.95):.1f}, most {ratios[-1]:.1f}"
    )
    spent = sorted(made.verified)
    print(
        f"  full verifications: p50 {part(spent, 0.5)}, p95 {part(spent, 0.95)}, most {spent[-1]}"
    )
    for title, counts in (("stopped by", made.stopped), ("no fix_all for", made.left)):
        print(f"  {title}")
        for check, number in counts.most_common(12):
            print(f"    {number:5d} {check}")


def main() -> None:
    """Tally the orders of each generator that is named, or of all three."""
    numbers = [int(one) for one in sys.argv[1:] if one.isdigit()]
    kinds = [one for one in sys.argv[1:] if not one.isdigit()] or KINDS
    count, number = (*numbers, *(200, 1)[len(numbers) :])
    for kind in kinds:
        show(kind, tally(kind, count, number))


if __name__ == "__main__":
    main()
