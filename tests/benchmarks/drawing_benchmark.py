"""Time and size of drawings, over the awkward gallery.

Run ``python tests/benchmarks/drawing_benchmark.py``. The bars: a plan and a view together 15 ms,
a PNG 600 px wide 120 ms and one 1200 px wide 400 ms. Time is the process's own, so that a busy
machine changes it least; medians are given.
"""

from __future__ import annotations

import statistics
import sys
import time
from collections.abc import Callable
from pathlib import Path

from ledgerstone.wording import speech_in

HERE = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(HERE), str(HERE.parent / "service")]

from ledgerstone.drawing import (
    DrawnSlab,
    cutout_drawn,
    draw_plan,
    draw_view,
    rasterise,
    true_size_pdf,
)
from ledgerstone.shape import shape_of
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.drawn_slabs import GALLERY, TITLE, Drawn

RUNS = 25
PAINTED = 5
BOTH_MS = 15.0
PNG_MS = {600: 120.0, 1200: 400.0}
WORKSHOP = load_profile(DEMONSTRATION)


def median_ms(work: Callable[[], object], runs: int) -> float:
    """Median of the process's own time for a piece of work."""
    took = []
    for _ in range(runs):
        begun = time.process_time()
        work()
        took.append(1000 * (time.process_time() - begun))
    return statistics.median(took)


def drawn_as_svg(name: str, drawn: Drawn) -> tuple[str, str]:
    """Time a plan and a view; return both."""
    slab, shape = drawn.slab, shape_of(drawn.slab, WORKSHOP)

    def plan() -> str:
        return draw_plan(slab, shape, title=TITLE, pins=drawn.pins)

    def view() -> str:
        return draw_view([DrawnSlab(slab, shape, "#5b5d5a", 0.3, "x")], title="View")

    plan_ms, view_ms = median_ms(plan, RUNS), median_ms(view, RUNS)
    both = plan_ms + view_ms
    sizes = [len(svg.encode()) / 1000 for svg in (plan(), view())]
    print(
        f"{name:14s} plan {plan_ms:5.1f} ms {sizes[0]:5.1f} kB   view {view_ms:5.1f} ms"
        f" {sizes[1]:5.1f} kB   both {both:5.1f} ms, {both / BOTH_MS:.2f} of the bar"
    )
    return plan(), view()


def painted(name: str, svgs: tuple[str, str]) -> None:
    """Time the PNGs of both."""
    said = []
    for what, svg in zip(("plan", "view"), svgs, strict=True):
        for width, bar in PNG_MS.items():
            took = median_ms(lambda s=svg, w=width: rasterise(s, w, speech_in("en")), PAINTED)  # type: ignore[misc]  # bound now
            said.append(f"{what} {width} px {took:4.0f} ms, {took / bar:.2f}")
    print(f"{name:14s} {'   '.join(said)} of the bar")


def printed(name: str, drawn: Drawn) -> None:
    """Time the first cut-out at true size."""
    shape = shape_of(drawn.slab, WORKSHOP)
    paper = cutout_drawn(drawn.slab, shape, 0, WORKSHOP.shaping.inside_radius_mm)
    if paper is not None:
        took = median_ms(lambda: true_size_pdf(paper, "a4", speech_in("en"), workshop="x"), PAINTED)
        print(f"{name:14s} first cut-out at true size on A4 {took:4.0f} ms")


if __name__ == "__main__":
    pictures = {name: drawn_as_svg(name, drawn) for name, drawn in GALLERY.items()}
    print("\nas PNG")
    for name, svgs in pictures.items():
        painted(name, svgs)
    print("\nas PDF")
    for name, drawn in GALLERY.items():
        printed(name, drawn)
