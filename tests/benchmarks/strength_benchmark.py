"""Time of all strength cases of one slab, over the mesh and factor of 28 November 2026.

That day's mesh and factor is frozen in ``support.reference``; the bar is 2.5 times as much. The
ratio to today's own mesh and factor stands beside it.

Run ``python tests/benchmarks/strength_benchmark.py``. A dozen slabs, each from an empty store and
again with its plate kept (other rests, another thickness). BLAS runs on one thread. Times are of
this process alone (``process_time``), but other load on the machine still stretches them: the
ratio is what to compare.
"""

from __future__ import annotations

import os

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ[name] = "1"

import sys
import time
from collections.abc import Callable
from pathlib import Path
from statistics import median

HERE = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(HERE), str(HERE.parent / "service")]

from ledgerstone.codec.order_in import read_order
from ledgerstone.order import Slab
from ledgerstone.shape import Shape, shape_of
from ledgerstone.strength.slabs import Plates, concrete_of, plate_of, slab_strength
from ledgerstone.transport import slab_kg
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.calibration import JOBS, on_units
from support.reference import reference_ms
from support.slabs import box, cut, hole, slab_json

TIMES = 5
WORKSHOP_TEMP_C = 10.0
WORKSHOP = load_profile(DEMONSTRATION)
TWO_CUTOUTS = {
    "a basin and a tap": slab_json(
        box(1450, 560),
        hole(360, 980, 270),
        hole(35, 980, 505, rim="covered"),
        rests=on_units(650, (800, "basin"), front=20),
    ),
    "two bowls": JOBS["a vanity with two bowls"]["slabs"][0],
    "a sink and a hob": slab_json(
        box(2400, 620),
        cut("rectangle", (500, 400), (500, 310)),
        cut("rectangle", (560, 490), (1700, 310), rim="covered"),
        rests=on_units((600, "basin"), 600, 600, 600, front=20),
    ),
}
OTHERS = {name: job["slabs"][0] for name, job in JOBS.items() if "two bowls" not in name}


def plan(document: dict[str, object]) -> tuple[Slab, Shape]:
    """Read one slab and work out its plan."""
    slab = read_order({"slabs": [document]}, WORKSHOP).slabs[0]
    return slab, shape_of(slab, WORKSHOP)


def strength(slab: Slab, shape: Shape, plates: Plates) -> None:
    """Try every case of a slab."""
    kg = slab_kg(slab, shape, WORKSHOP)
    slab_strength(slab, shape, WORKSHOP, slab_kg=kg, workshop_temp_c=WORKSHOP_TEMP_C, plates=plates)


def times_ms(work: Callable[[], object]) -> list[float]:
    """Time some work, in ms of this process."""
    found = []
    for _ in range(TIMES):
        start = time.process_time()
        work()
        found.append(1e3 * (time.process_time() - start))
    return found


def measured(name: str, document: dict[str, object]) -> tuple[list[float], float]:
    """Time one slab, print it, and return its times and its ratio to the frozen reference."""
    slab, shape = plan(document)
    concrete = concrete_of(WORKSHOP)
    strength(slab, shape, Plates())
    whole = times_ms(lambda: strength(slab, shape, Plates()))
    bare = median(times_ms(lambda: plate_of(slab, shape, concrete, Plates())))
    kept = Plates()
    strength(slab, shape, kept)
    again = median(times_ms(lambda: strength(slab, shape, kept)))
    frozen = reference_ms(name)
    ratio = median(whole) / frozen
    print(
        f"  {name:28s} {median(whole):4.0f} ms; reference {frozen:3.0f} ms, ratio {ratio:.1f};"
        f" plate alone {bare:3.0f} ms, ratio {median(whole) / bare:.1f}; plate kept {again:4.0f} ms"
    )
    return whole, ratio


def group(title: str, slabs: dict[str, dict[str, object]]) -> None:
    """Time some slabs and print what they have in common."""
    print(title)
    found = [measured(name, document) for name, document in slabs.items()]
    every = sorted(ms for whole, _ in found for ms in whole)
    ratios = sorted(ratio for _, ratio in found)
    print(
        f"  p50 {median(every):.0f} ms, p95 {every[int(0.95 * (len(every) - 1))]:.0f} ms;"
        f" ratio to the reference: median {median(ratios):.1f}, largest {ratios[-1]:.1f}"
    )


if __name__ == "__main__":
    print(f"load average before: {os.getloadavg()[0]:.1f}")
    group("two cut-outs (bar: p50 80 ms, p95 150 ms)", TWO_CUTOUTS)
    group("the other calibration jobs", OTHERS)
