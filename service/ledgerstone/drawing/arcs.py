"""Path data with true arcs: chords that are on a circle are written as that circle.

A shape's arcs come as short chords of one length that turn by one angle. Written as arcs they are
exact again, and short.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final

import numpy as np
import numpy.typing as npt

from ledgerstone.drawing.camera import Camera
from ledgerstone.drawing.svg import number, pairs_of
from ledgerstone.outline import XY

_CHORDS: Final = 3  # fewer in a row are drawn as they are
_SHARPEST: Final = math.radians(12.0)
_SLIGHTEST: Final = math.radians(0.05)
_WIDEST: Final = math.radians(100.0)
_SAME: Final = 1e-4

PointRows = Sequence[Sequence[float]] | npt.NDArray[np.float64]
Stretch = tuple[
    XY, float, bool
]  # to where; round which radius, 0 if straight; whether it turns left
Curved = tuple[XY, list[Stretch]]  # where it starts, and how it goes round


def curved_path(points: PointRows, places: int = 2) -> str:
    """Write a closed course, its first point not repeated, with true arcs."""
    return written(curved(points), places)


def curved(points: PointRows) -> Curved:
    """Find the true arcs of a closed course, its first point not repeated."""
    at = np.asarray(points, dtype=np.float64)[:, :2]
    xs, ys = at.T.tolist()
    lengths, turns, goes_on = _chords(at)
    if all(goes_on):
        return _circle(xs, ys)
    first, n = goes_on.index(False), len(xs)
    turns, goes_on = turns * 2, goes_on * 2  # round once more, from wherever an arc begins
    stretches: list[Stretch] = []
    done = 0
    while done < n:
        i = (first + done) % n
        run = _run(turns, goes_on, i, n - done) if goes_on[i + 1] else 1
        if run >= _CHORDS:
            turn = turns[i + 1]
            radius = lengths[i] / (2 * math.sin(abs(turn) / 2))
            end = (i + run) % n
            stretches.append(((xs[end], ys[end]), radius, turn > 0))
            done += run
        else:
            end = (i + 1) % n
            stretches.append(((xs[end], ys[end]), 0.0, False))
            done += 1
    return (xs[first], ys[first]), stretches


def written(course: Curved, places: int = 2, camera: Camera | None = None) -> str:
    """Write a course as path data: in plane mm, or on the sheet as a camera sees the top.

    The projection turns the plane, which leaves a circle as it is, and then compresses it: on the
    sheet an arc is one of an ellipse, whose wider axis is level where the plane is.
    """
    wide, high = (1.0, 1.0) if camera is None else camera.circle
    way = (1.0, 0.0) if camera is None else camera.across
    turn = number(math.degrees(math.atan2(way[1], way[0])))
    start, stretches = course
    ends: list[XY] = [start, *(end for end, _, _ in stretches)]
    if camera is not None:
        ends = camera.all_at((x, y, 0.0) for x, y in ends)
    first, *ats = pairs_of(ends, places)
    size: dict[float, str] = {}
    data = [f"M{first}"]
    for (_, radius, is_left), at in zip(stretches, ats, strict=True):
        if radius:
            sweep = int(is_left is (camera is None))
            if radius not in size:
                size[radius] = f"A{number(radius * wide)} {number(radius * high)} {turn} 0 "
            data.append(f"{size[radius]}{sweep} {at}")
        else:
            data.append(f"L{at}")
    return "".join(data) + "Z"


def _chords(at: npt.NDArray[np.float64]) -> tuple[list[float], list[float], list[bool]]:
    """Length of each chord, the turn to it from the one before (radians), and if it goes on.

    Parameters
    ----------
    at
        The course's points, shape ``(n, 2)``.

    Returns
    -------
    lengths, turns, goes_on
        The last says whether a chord may carry on an arc: it turns slightly, and is as long as
        the one before.
    """
    steps = np.roll(at, -1, axis=0) - at
    lengths = np.hypot(steps[:, 0], steps[:, 1])
    before = np.roll(steps, 1, axis=0)
    across = before[:, 0] * steps[:, 1] - before[:, 1] * steps[:, 0]
    turns = np.arctan2(across, (before * steps).sum(axis=1))
    slight = (np.abs(turns) > _SLIGHTEST) & (np.abs(turns) < _SHARPEST)
    alike = np.abs(lengths - np.roll(lengths, 1)) < _SAME * (lengths + 1.0)
    return lengths.tolist(), turns.tolist(), (slight & alike).tolist()


def _run(turns: Sequence[float], goes_on: Sequence[bool], start: int, most: int) -> int:
    """Count the chords from a point that lie on one circle, as far as a quarter and a little.

    A half circle between rounded ends would have its centre anywhere near: the shorter an arc,
    the less its ends' rounding moves it.
    """
    turn = turns[start + 1]
    most = min(most, max(1, int(_WIDEST / max(abs(turn), _SLIGHTEST))))
    least, greatest = turn - _SAME, turn + _SAME
    for i in range(start + 1, start + most):
        if not goes_on[i] or not least < turns[i] < greatest:
            return i - start
    return max(1, most)


def _circle(xs: Sequence[float], ys: Sequence[float]) -> Curved:
    """Find a full circle's quarters: half a circle's middle hangs on how its ends are rounded."""
    x, y = (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2
    r = math.dist((x, y), (xs[0], ys[0]))
    quarters = ((x, y - r), (x + r, y), (x, y + r), (x - r, y))
    return (x - r, y), [(end, r, True) for end in quarters]
