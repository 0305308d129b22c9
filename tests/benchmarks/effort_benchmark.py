"""What one check of an order is charged over what it takes: over everyday, random and hard orders.

A unit of ``strength/effort.py`` is a thirtieth of a second of a quiet machine. Each order of one
slab is planned and checked from empty stores; its processor time is told in units, by the fixed
work of ``support.reference`` beside it. Under 1.0 a request may take longer than its budget says;
far over it, orders are refused that could be answered.

Run ``python tests/benchmarks/effort_benchmark.py [COUNT]``.
"""

from __future__ import annotations

import os

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ[name] = "1"

import random
import sys
from collections.abc import Iterator
from contextlib import suppress
from datetime import date
from pathlib import Path
from statistics import median

HERE = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(HERE), str(HERE.parent / "service")]

from ledgerstone.codec.order_in import read_order
from ledgerstone.errors import NotUnderstood
from ledgerstone.quote import run_stages
from ledgerstone.remedies import Budget
from ledgerstone.stages import StageCache, StageContext
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.calibration import JOBS
from support.documents import Json
from support.everyday import EVERYDAY
from support.hardest import beginnings, changed
from support.reference import QUIET_MS, time_ms, work
from support.strategies.ordinary_slabs import ordinary_slab

UNIT_MS = 1000.0 / 30.0
SLOWEST_UNITS = 0.5  # what costs less is told by neither
PLENTY = 1e6
TODAY = date(2026, 11, 25)
WORKSHOP = load_profile(DEMONSTRATION)


def slabs_of(count: int) -> dict[str, list[Json]]:
    """Slabs to check, by kind."""
    rng = random.Random(1)  # noqa: S311 - the same slabs each time
    begin = beginnings()
    hard = [changed(rng, rng.choice(begin), begin) for _ in range(count)]
    return {
        "everyday": [s for job in (*JOBS.values(), *EVERYDAY.values()) for s in job["slabs"]],
        "ordinary": [ordinary_slab(seed) for seed in range(count)],
        "hard": [slab for order in hard for slab in order["slabs"][:1]],
    }


def charged_over_taken(slabs: list[Json]) -> Iterator[tuple[float, float, Json]]:
    """Units charged and units taken of one check of each slab that strength is worked out of."""
    for slab in slabs:
        with suppress(NotUnderstood, KeyError, TypeError, AttributeError):
            order = read_order({"slabs": [slab]}, WORKSHOP)
            budget = Budget(PLENTY)
            budget.begin(order, TODAY)
            context = StageContext(WORKSHOP, (), TODAY, StageCache())
            fixed_ms = median(time_ms(work) for _ in range(3))
            took_ms = time_ms(lambda o=order, c=context: run_stages(o, c))  # type: ignore[misc]  # bound now
            taken = took_ms / fixed_ms * QUIET_MS / UNIT_MS
            if taken > SLOWEST_UNITS:
                yield PLENTY - budget.left, taken, slab


def main() -> None:
    """Print how what is charged scatters about what it takes."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 60
    for kind, slabs in slabs_of(count).items():
        found = list(charged_over_taken(slabs))
        shares = sorted(charged / taken for charged, taken, _ in found)
        at = [shares[int(q * (len(shares) - 1))] for q in (0.0, 0.05, 0.5, 0.95, 1.0)]
        print(
            f"{kind:10s} {len(found):4d} slabs; charged over taken: least {at[0]:.2f},"
            f" 5 % {at[1]:.2f}, median {at[2]:.2f}, 95 % {at[3]:.2f}, most {at[4]:.2f};"
            f" median taken {median(taken for _, taken, _ in found):.1f} units"
        )


if __name__ == "__main__":
    main()
