"""Time and size of a plan and a view together, over the awkward gallery.

Run ``python tests/benchmarks/drawing_benchmark.py``. The bar is 15 ms for both. Time is the
process's own, so that a busy machine does not change it; the median of 25 is given.
"""

from __future__ import annotations

import statistics
import sys
import time
from pathlib import Path

HERE = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(HERE), str(HERE.parent / "service")]

from ledgerstone.drawing import draw_plan, draw_view  # noqa: E402 - after paths
from ledgerstone.shape import shape_of  # noqa: E402 - after paths
from ledgerstone.workshop import DEMONSTRATION, load_profile  # noqa: E402 - after paths
from unit.drawn_slabs import GALLERY, TITLE, Drawn  # noqa: E402 - after paths

RUNS = 25
BAR_MS = 15.0


def measured(drawn: Drawn) -> tuple[float, float, int, int]:
    """Median times of a plan and of a view, ms, and their sizes, bytes."""
    slab, shape = drawn.slab, shape_of(drawn.slab, WORKSHOP)
    plans, views = [], []
    for _ in range(RUNS):
        begun = time.process_time()
        plan = draw_plan(slab, shape, title=TITLE, pins=drawn.pins)
        between = time.process_time()
        view = draw_view(slab, shape, colour="#5b5d5a", gloss=0.3, seed="x", title="View")
        plans.append(1000 * (between - begun))
        views.append(1000 * (time.process_time() - between))
    sizes = len(plan.encode()), len(view.encode())
    return statistics.median(plans), statistics.median(views), *sizes


WORKSHOP = load_profile(DEMONSTRATION)

if __name__ == "__main__":
    for name, drawn in GALLERY.items():
        plan_ms, view_ms, plan_bytes, view_bytes = measured(drawn)
        both = plan_ms + view_ms
        print(
            f"{name:14s} plan {plan_ms:5.1f} ms {plan_bytes / 1000:5.1f} kB"
            f"   view {view_ms:5.1f} ms {view_bytes / 1000:5.1f} kB"
            f"   both {both:5.1f} ms, {both / BAR_MS:.2f} of the bar"
        )
