"""Path data with true arcs: a course whose chords stand on circles is written as those circles.

A shape's arcs come as short chords of one length that turn by one angle. Written as arcs they are
exact again, and short.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final

from ledgerstone.drawing.svg import number
from ledgerstone.outline import XY

_CHORDS: Final = 3  # fewer in a row are drawn as they are
_SHARPEST: Final = math.radians(12.0)
_SLIGHTEST: Final = math.radians(0.05)
_WIDEST: Final = math.radians(100.0)
_SAME: Final = 1e-4

Course = Sequence[Sequence[float]]


def curved_path(points: Course, places: int = 2) -> str:
    """Write a closed course, its first point not repeated, with true arcs."""
    course = [(float(p[0]), float(p[1])) for p in points]
    lengths, turns = _chords(course)
    first = _corner(lengths, turns)
    n = len(course)
    if first is None:
        return _circle(course)
    data = [f"M{_at(course[first], places)}"]
    at = 0
    while at < n:
        i = (first + at) % n
        run = _run(lengths, turns, i, n - at)
        end = course[(i + run) % n]
        if run >= _CHORDS:
            turn = turns[(i + 1) % n]
            radius = lengths[i] / (2 * math.sin(abs(turn) / 2))
            sweep = 1 if turn > 0 else 0
            data.append(f"A{number(radius)} {number(radius)} 0 0 {sweep} {_at(end, places)}")
            at += run
        else:
            data.append(f"L{_at(course[(i + 1) % n], places)}")
            at += 1
    return "".join(data) + "Z"


def _at(point: XY, places: int = 2) -> str:
    return f"{number(point[0], places)} {number(point[1], places)}"


def _chords(course: Sequence[XY]) -> tuple[list[float], list[float]]:
    """Length of each chord, and the turn from the chord before to each, radians."""
    steps = [
        (x1 - x0, y1 - y0)
        for (x0, y0), (x1, y1) in zip(course, [*course[1:], course[0]], strict=True)
    ]
    lengths = [math.hypot(dx, dy) for dx, dy in steps]
    turns = [
        math.atan2(a[0] * b[1] - a[1] * b[0], a[0] * b[0] + a[1] * b[1])
        for a, b in zip([steps[-1], *steps[:-1]], steps, strict=True)
    ]
    return lengths, turns


def _goes_on(lengths: Sequence[float], turns: Sequence[float], i: int, turn: float) -> bool:
    """Whether a chord carries on the arc of the one before."""
    return (
        _SLIGHTEST < abs(turns[i]) < _SHARPEST
        and abs(turns[i] - turn) < _SAME
        and abs(lengths[i] - lengths[i - 1]) < _SAME * (lengths[i] + 1.0)
    )


def _corner(lengths: Sequence[float], turns: Sequence[float]) -> int | None:
    """Return a point that no arc runs through; None where the whole course is one circle."""
    for i in range(len(turns)):
        if not _goes_on(lengths, turns, i, turns[i]):
            return i
    return None


def _run(lengths: Sequence[float], turns: Sequence[float], start: int, most: int) -> int:
    """Count the chords from a point that lie on one circle, as far as a quarter and a little.

    A half circle between rounded ends would have its centre anywhere near: the shorter an arc,
    the less its ends' rounding moves it.
    """
    n = len(turns)
    turn = turns[(start + 1) % n]
    most = min(most, max(1, int(_WIDEST / max(abs(turn), _SLIGHTEST))))
    run = 1
    while run < most and _goes_on(lengths, turns, (start + run) % n, turn):
        run += 1
    return run


def _circle(course: Sequence[XY]) -> str:
    """Write a full circle as two arcs, from its leftmost point round."""
    xs, ys = [p[0] for p in course], [p[1] for p in course]
    x, y = (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2
    r = math.dist((x, y), course[0])
    arc = f"a{number(r)} {number(r)} 0 1 0"
    return f"M{_at((x - r, y))}{arc} {number(2 * r)} 0{arc} {number(-2 * r)} 0Z"
