"""Bars as somebody sets them out from a job sheet's list, read back from its English."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from support.documents import Json

EVERY = re.compile(r"([\d.]+) to ([\d.]+) every ([\d.]+)")


@dataclass(frozen=True)
class SetOut:
    """One bar: its mark, its cut length and the box around it, from the mould's left and front."""

    mark: str
    cut_mm: float
    left_mm: tuple[float, float]
    front_mm: tuple[float, float]


def bars_set_out(page: Json) -> Iterator[SetOut]:
    """Every bar of a page's lists; each row must have as many as it says."""
    for block in page["blocks"]:
        if block["kind"] == "table" and block["columns"][0] == "Mark":
            for row in block["rows"]:
                if row[0].startswith("B"):
                    yield from _row(*row[:5])


def _row(mark: str, count: str, cut: str, left: str, front: str) -> Iterator[SetOut]:
    lefts, fronts = _spans(left), _spans(front)
    many = max(len(lefts), len(fronts))
    assert many == int(count), (mark, count, left, front)
    assert min(len(lefts), len(fronts)) == 1
    for k in range(many):
        yield SetOut(mark, float(cut), lefts[k % len(lefts)], fronts[k % len(fronts)])


def _spans(told: str) -> list[tuple[float, float]]:
    """The places that a cell tells, or the one stretch: from and to, mm."""
    spans: list[tuple[float, float]] = []
    for part in told.split("; "):
        if even := EVERY.fullmatch(part):
            first, last, step = map(float, even.groups())
            spaces = round((last - first) / step)
            at = [first + k * (last - first) / spaces for k in range(spaces + 1)]
            spans += [(place, place) for place in at]
        else:
            ends = [float(end) for end in part.split(" to ")]
            spans.append((ends[0], ends[-1]))
    return spans
