"""Rings of points that are no ordinary polygon: needles, slits, spirals, coincident points."""

import math
from collections.abc import Sequence

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn

RingPoints = list[tuple[float, float]]


@st.composite
def rings(draw: DrawFn, long_mm: float, wide_mm: float) -> RingPoints:
    """A ring of points that is no ordinary polygon, in a box of about that size."""
    a, b = long_mm, wide_mm
    tiny = draw(st.sampled_from((0.0, 0.0004, 0.001, 0.003, 0.9, 1.0, 1.1, 5.0, 10.0, 40.0)))
    kinds: dict[str, RingPoints] = {
        "needle": [(0, 0), (a, 0), (a / 2, max(tiny, 0.003))],
        "long wedge": [(0, 0), (a, 0), (a, a * math.tan(math.radians(4.9 + tiny)))],
        "sloping needle": [(0, 0), (a, b), (a - 0.7 * tiny, b + 0.7 * tiny)],
        "coincident": [(0, 0), (tiny, 0), (a, 0), (a, b), (a, b + tiny), (0, b)],
        "collinear": [(0, 0), (a / 3, 0), (a / 2, 0), (a, 0), (a, b), (a / 2, b), (0, b)],
        "nearly collinear": [(0, 0), (a / 2, tiny), (a, 0), (a, b), (0, b)],
        "pinched": [(0, 0), (a, 0), (a, b), (a / 2, tiny), (0, b)],
        "slit": [(0, 0), (a, 0), (a, b), (a / 2 + tiny, b), (a / 2, 20), (a / 2 - tiny, b), (0, b)],
        "comb": [(x, b if i % 4 in (1, 2) else 60.0) for i, x in enumerate(_steps(a, 40))]
        + [(a, 0.0), (0.0, 0.0)],
        "spiral": _spiral(min(a, b), 24),
        "star": _star(min(a, b), 100),
        "bow tie": [(0, 0), (a, b), (a, 0), (0, b)],
        "spike": [(0, 0), (a / 2, 0), (a / 2, -b), (a / 2 + tiny, 0), (a, 0), (a, b), (0, b)],
        "square": [(0, 0), (a, 0), (a, b), (0, b)],
        "far away": [(x + 15_000, y - 15_000) for x, y in [(0, 0), (a, 0), (a, b), (0, b)]],
    }
    ring = kinds[draw(st.sampled_from(sorted(kinds)))]
    return ring if draw(st.booleans()) else ring[::-1]


def _steps(long_mm: float, count: int) -> list[float]:
    return [long_mm * (i // 2) / (count // 2) for i in range(count)]


def _spiral(across_mm: float, count: int) -> RingPoints:
    """A band that winds round its middle."""
    out = [(0.1 + 0.4 * i / count, 0.5 * i) for i in range(count)]
    both = out + [(share + 0.09, turn) for share, turn in reversed(out)]
    return _polar(across_mm, both)


def _star(across_mm: float, count: int) -> RingPoints:
    spikes = [(0.5 if i % 2 else 0.35, 2 * math.pi * i / count) for i in range(count)]
    return _polar(across_mm, spikes)


def _polar(across_mm: float, places: Sequence[tuple[float, float]]) -> RingPoints:
    half = across_mm / 2
    return [
        (
            round(half + share * across_mm * math.cos(turn), 2),
            round(half + share * across_mm * math.sin(turn), 2),
        )
        for share, turn in places
    ]
