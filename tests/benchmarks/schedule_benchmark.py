"""Time to lay an order of eight slabs into a calendar with 500 bookings over two years.

Run ``python tests/benchmarks/schedule_benchmark.py``. Bar: 20 ms warm, bookings parsed.
Time of the processor is what the work costs; time on the wall is longer on a machine in a crowd.
The first run fills the public holidays of its years, and is distinguished.
"""

from __future__ import annotations

import sys
from datetime import date, time, timedelta
from pathlib import Path
from statistics import median
from time import perf_counter, process_time

HERE = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(HERE), str(HERE.parent / "service")]

from ledgerstone.schedule import Booking, lead_time
from ledgerstone.schedule.booking import BookedResource
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.slabs import box, order_of, slab_json, steps_of

TODAY, TIMES = date(2026, 11, 25), 30
HOLDS: tuple[BookedResource, ...] = ("table", "people")


def main() -> None:
    """Print the first run, then the median and the slowest of some more."""
    workshop = load_profile(DEMONSTRATION)
    slabs = [slab_json(box(900 + 150 * n, 560)) for n in range(8)]
    steps = steps_of(order_of(workshop, *slabs), workshop)
    days = [TODAY + timedelta(days=1 + n * 730 // 500) for n in range(500)]
    taken = [Booking(d, d, "x", HOLDS[n % 9 == 0], *_hours(n)) for n, d in enumerate(days)]
    spent, wall = [], []
    for _ in range(TIMES):
        began, began_wall = process_time(), perf_counter()
        lead_time(steps, workshop, taken, TODAY, 3, by_carrier=True)
        spent.append(1000 * (process_time() - began))
        wall.append(1000 * (perf_counter() - began_wall))
    first, *warm = spent
    print(
        f"eight slabs, 500 bookings: median {median(warm):.1f} ms, slowest {max(warm):.1f} ms of"
        f" the processor (the first {first:.1f} ms); {median(wall[1:]):.1f} ms on the wall"
    )


def _hours(n: int) -> tuple[time, time]:
    return time(8 + n % 5), time(9 + n % 5)


if __name__ == "__main__":
    main()
