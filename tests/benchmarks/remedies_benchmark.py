"""How often a sent-back order carries a fix, how long the search takes, and which checks trip.

``python tests/benchmarks/remedies_benchmark.py [orders] [seed] [any|usual]`` prints the shares,
the process times of one worker on one core, and the histogram of the checks that stopped an order.
"""

import os

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS"):
    os.environ[name] = "1"

import sys
import time
from collections import Counter
from pathlib import Path

HERE = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(HERE), str(HERE.parent / "service")]

from hypothesis import HealthCheck, Phase, given, seed, settings

from laws.plan_strategies import Json
from laws.strategies import TODAY, modest_orders, orders
from ledgerstone.application.answering import answer_order
from ledgerstone.quote import Quote
from ledgerstone.workshop import DEMONSTRATION, load_profile
from unit.contexts import context_of

CONTEXT = context_of(load_profile(DEMONSTRATION), TODAY)


def sample(count: int, number: int, kind: str = "any") -> list[Json]:
    """Draw so many well-formed orders: ``any``, or ``usual`` ones as customers send them.

    The generator varies an order it has drawn; only the first of each set of outlines is kept.
    """
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


def main() -> None:
    """Answer every order and print what came of it."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    number = int(sys.argv[2]) if len(sys.argv) > 2 else 1
    kind = sys.argv[3] if len(sys.argv) > 3 else "any"
    tripped: Counter[str] = Counter()
    outcome: Counter[str] = Counter()
    left: Counter[str] = Counter()
    times: list[float] = []
    verified: list[int] = []
    for order in sample(count, number, kind):
        began = time.process_time()
        answer = answer_order(order, CONTEXT)
        spent = time.process_time() - began
        if isinstance(answer, Quote):
            outcome["quoted"] += 1
            continue
        times.append(spent * 1e3)
        checks = {finding.check for finding in answer.findings if finding.level == "stops"}
        tripped.update(checks)
        found = answer.found
        verified.append(found.verified if found is not None else 0)
        if found is None or (found.fix_all is None and found.nearest_makeable is None):
            outcome["neither"] += 1
            left.update(checks)
        elif found.fix_all is not None:
            outcome["fix_all"] += 1
        else:
            outcome["nearest_makeable"] += 1
            left.update(f"{check} (nearest)" for check in checks)
    show(outcome, tripped, left, sorted(times))
    spent_on = sorted(verified)
    half, most = spent_on[len(spent_on) // 2], spent_on[int(0.95 * (len(spent_on) - 1))]
    print(f"full verifications: p50 {half}, p95 {most}, most {spent_on[-1]}")


def show(
    outcome: Counter[str], tripped: Counter[str], left: Counter[str], times: list[float]
) -> None:
    """Print the shares, the times and the histograms."""
    sent = len(times)
    print(f"orders {sum(outcome.values())}, quoted {outcome['quoted']}, sent back {sent}")
    either = outcome["fix_all"] + outcome["nearest_makeable"]
    print(f"fix_all {100 * outcome['fix_all'] / sent:.1f} %, either {100 * either / sent:.1f} %")
    p50, p95 = times[sent // 2], times[int(0.95 * (sent - 1))]
    print(f"sent back: p50 {p50:.0f} ms, p95 {p95:.0f} ms, worst {times[-1]:.0f} ms")
    for title, counts in (("stopped by", tripped), ("no fix_all for", left)):
        print(title)
        for check, number in counts.most_common():
            print(f"  {number:5d} {check}")


if __name__ == "__main__":
    main()
