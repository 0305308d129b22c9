"""The laws of remedies over thousands of orders, in parts, with which checks they tripped.

With ``PYTHONPATH=service:tests``, ``python -m laws.remedy_run part K N [orders]`` does the K-th of
N parts, writes what came of it to ``build/remedy-laws/K-of-N.json``, and goes on from there when it
is started again; ``python -m laws.remedy_run sum [FILES]`` adds the parts up, and fails where a law
was broken or a check tripped too seldom.
"""

import json
import math
import sys
import time
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from hashlib import sha256
from pathlib import Path
from typing import Any, Final

from hypothesis import HealthCheck, Phase, given, seed, settings
from hypothesis import strategies as st

from ledgerstone.application.context import QuoteContext
from ledgerstone.checks import GROUP_OF
from ledgerstone.quote import Quote
from support.contexts import context_of
from support.documents import Json
from support.oracles.remedy_laws import hold_the_laws
from support.strategies.orders import TODAY, aimed_orders, modest_orders, orders
from support.strategies.other_workshops import WORKSHOPS
from support.strategies.tripping_orders import TRIPS

ROOT: Final = Path(__file__).resolve().parents[2]
ORDERS: Final = 6000
LEAST: Final = 20  # so often every check is to trip in a whole run
USUAL, ANY = 0.25, 0.15  # shares; the rest is aimed at one check after another
SEED: Final = 2026
RESULTS: Final = ROOT / "build" / "remedy-laws"
NAMES: Final = list(GROUP_OF)


@dataclass
class Tally:
    """What came of some orders."""

    orders: int = 0
    tripped: Counter[str] = field(default_factory=Counter)
    outcomes: Counter[str] = field(default_factory=Counter)
    broken: list[dict[str, Any]] = field(default_factory=list)

    def add(self, other: "Tally") -> None:
        """Add what came of others."""
        self.orders += other.orders
        self.tripped += other.tripped
        self.outcomes += other.outcomes
        self.broken += other.broken

    def seldom(self) -> list[str]:
        """Checks that tripped too seldom for a whole run."""
        return [name for name in NAMES if self.tripped[name] < LEAST]


def drawn(strategy: st.SearchStrategy[Json], count: int, number: int) -> list[Json]:
    """Draw so many different orders, the same for the same number."""
    found: dict[str, Json] = {}

    @seed(number)
    @settings(
        max_examples=6 * count,
        deadline=None,
        database=None,
        phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    @given(strategy)
    def draw(order: Json) -> None:
        if len(found) < count:
            found.setdefault(repr(order), order)

    draw()
    return list(found.values())


def cases(part: int, parts: int, count: int) -> list[tuple[str, Json]]:
    """The orders of one part, each with the workshop it is sent to, in mixed order."""
    every = _drawn_in_turn(part, parts, count)
    return sorted(every, key=lambda case: sha256(repr(case).encode()).digest())


def _drawn_in_turn(part: int, parts: int, count: int) -> Iterator[tuple[str, Json]]:
    number = SEED + part
    for share, strategy in ((USUAL, modest_orders()), (ANY, orders())):
        for order in drawn(strategy, round(share * count / parts), number):
            yield "usual", order
    each = math.ceil((1.0 - USUAL - ANY) * count / parts / len(TRIPS))
    for name, (workshop, _) in TRIPS.items():
        for order in drawn(aimed_orders(name), each, number):
            yield workshop, order


def tally_of(workshop: str, order: Json, context: QuoteContext) -> Tally:
    """Hold the laws on one order; what breaks them, or falls over, is kept to be looked at."""
    one = Tally(orders=1)
    try:
        answer = hold_the_laws(order, context)
    except Exception as fault:  # noqa: BLE001  whatever it is, the other orders are still tried
        one.broken.append({"workshop": workshop, "order": order, "why": repr(fault)[:400]})
        return one
    one.tripped.update(finding.check for finding in answer.findings)
    if isinstance(answer, Quote):
        one.outcomes["quoted"] += 1
    elif answer.found is not None:
        found = answer.found
        kind = "nearest_makeable" if found.nearest_makeable else "neither"
        one.outcomes["fix_all" if found.fix_all else kind] += 1
        if not found.fix_all and not found.nearest_makeable:
            stops = sorted({f.check for f in answer.findings if f.level == "stops"})
            one.outcomes[f"neither for {', '.join(stops)}"] += 1
    return one


def run_part(part: int, parts: int, count: int = ORDERS, path: Path | None = None) -> Tally:
    """Do one part; with a path, write down every so often how far it is, and go on from there."""
    total = _read(path) if path is not None and path.exists() else Tally()
    contexts = {name: context_of(workshop, TODAY) for name, workshop in WORKSHOPS.items()}
    began = time.monotonic()
    for k, (workshop, order) in enumerate(cases(part, parts, count)):
        if k < total.orders:
            continue
        total.add(tally_of(workshop, order, contexts[workshop]))
        if path is not None and (k % 10 == 0 or total.broken):
            _write(path, total)
    if path is not None:
        _write(path, total)
    print(f"part {part} of {parts}: {total.orders} orders, {time.monotonic() - began:.0f} s")
    return total


def _read(path: Path) -> Tally:
    kept = json.loads(path.read_text(encoding="utf-8"))
    return Tally(
        kept["orders"], Counter(kept["tripped"]), Counter(kept["outcomes"]), kept["broken"]
    )


def _write(path: Path, tally: Tally) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    kept = {name: getattr(tally, name) for name in ("orders", "tripped", "outcomes", "broken")}
    path.write_text(json.dumps(kept), encoding="utf-8")


def show(total: Tally) -> None:
    """Print how many there were, what came of them, and which checks they tripped."""
    print(f"{total.orders} orders: {dict(total.outcomes)}; laws broken by {len(total.broken)}")
    for name in sorted(NAMES, key=lambda check: -total.tripped[check]):
        print(f"  {total.tripped[name]:6d} {name}")
    print(f"fewer than {LEAST} times: {', '.join(total.seldom()) or 'none'}")
    for fault in total.broken[:5]:
        print(f"broken at {fault['workshop']}: {fault['why']}\n  {json.dumps(fault['order'])}")


def main() -> int:
    """Do a part, or add parts up."""
    if sys.argv[1:2] == ["part"]:
        part, parts, *more = map(int, sys.argv[2:])
        path = RESULTS / f"{part}-of-{parts}.json"
        run_part(part, parts, more[0] if more else ORDERS, path)
        return 0
    total = Tally()
    for path in [Path(name) for name in sys.argv[2:]] or sorted(RESULTS.glob("*.json")):
        total.add(_read(path))
    show(total)
    return 1 if total.broken or total.seldom() else 0


if __name__ == "__main__":
    raise SystemExit(main())
