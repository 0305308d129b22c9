"""In what order ribbons of faces are painted: each after all that it covers."""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Sequence
from heapq import heapify, heappop, heappush

from ledgerstone.drawing.camera import LEVEL, Pose
from ledgerstone.drawing.solid import Ribbon
from ledgerstone.outline import XY


def back_to_front(ribbons: Sequence[Ribbon], pose: Pose = LEVEL) -> list[Ribbon]:
    """Order ribbons so that each is painted after all that it covers."""
    courses = [ribbon.places(pose) for ribbon in ribbons]
    over = _covering(courses)
    waits = [0] * len(ribbons)
    for covers in over:
        for i in covers:
            waits[i] += 1
    # A ribbon that waits for fewer is put in again; what it was put in as before is passed over.
    left, ordered = [(wait, i) for i, wait in enumerate(waits)], []
    heapify(left)
    painted: set[int] = set()
    while left:
        _, first = heappop(left)
        if first not in painted:
            painted.add(first)
            ordered.append(ribbons[first])
            for i in over[first]:
                waits[i] -= 1
                heappush(left, (waits[i], i))
    return ordered


def _covering(courses: Sequence[Sequence[XY]]) -> list[list[int]]:
    """For each course, those that may cover it: nearer where both are seen."""
    over: list[list[int]] = [[] for _ in courses]
    by_start = sorted(range(len(courses)), key=lambda i: courses[i][0][0])
    for rank, i in enumerate(by_start):
        for j in by_start[rank + 1 :]:
            if courses[j][0][0] >= courses[i][-1][0]:
                break
            farther = _farther(courses[i], courses[j])
            if farther > 0:
                over[i].append(j)
            elif farther < 0:
                over[j].append(i)
    return over


def _farther(one: Sequence[XY], other: Sequence[XY]) -> float:
    """How much farther away the first course lies where both are seen, mm; 0 if none is."""
    low, high = max(one[0][0], other[0][0]), min(one[-1][0], other[-1][0])
    if high - low < 1e-6:
        return 0.0
    at = (low + high) / 2
    return _away(one, at) - _away(other, at)


def _away(course: Sequence[XY], across: float) -> float:
    """Distance from the eye, mm, of a course at a place across."""
    i = min(max(bisect_right(course, (across, math.inf)), 1), len(course) - 1)
    (x0, y0), (x1, y1) = course[i - 1], course[i]
    return y0 if x1 == x0 else y0 + (y1 - y0) * (across - x0) / (x1 - x0)
