"""Places for labels: boxes that never overlap, and points on a line kept apart."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from ledgerstone.outline import XY


@dataclass(frozen=True, slots=True)
class Box:
    """An upright rectangle on the sheet."""

    x0: float
    y0: float
    x1: float
    y1: float

    @classmethod
    def round(cls, centre: XY, width: float, height: float) -> Box:
        """Return a box about a centre."""
        x, y = centre
        return cls(x - width / 2, y - height / 2, x + width / 2, y + height / 2)

    def overlaps(self, other: Box, gap: float = 0.0) -> bool:
        """Whether two boxes come nearer than a gap."""
        return (
            self.x0 < other.x1 + gap
            and other.x0 < self.x1 + gap
            and self.y0 < other.y1 + gap
            and other.y0 < self.y1 + gap
        )

    def holds(self, other: Box) -> bool:
        """Whether another box lies wholly within."""
        return (
            self.x0 <= other.x0
            and self.y0 <= other.y0
            and self.x1 >= other.x1
            and self.y1 >= other.y1
        )


@dataclass(slots=True)
class Places:
    """What is taken on a sheet so far; labels are set down in turn, the most bound first.

    Attributes
    ----------
    within
        No label leaves this box.
    taken
        Where other labels stand: never overlapped.
    lines
        Where lines run: kept clear of while there is room elsewhere.

    """

    within: Box
    taken: list[Box] = field(default_factory=list)
    lines: list[Box] = field(default_factory=list)

    def take(self, box: Box) -> None:
        """Keep a place from every later label."""
        self.taken.append(box)

    def avoid(self, boxes: Iterable[Box]) -> None:
        """Keep later labels off these lines while there is room elsewhere."""
        self.lines.extend(boxes)

    def place(
        self, centres: Sequence[XY], width: float, height: float, *, clear: bool = False
    ) -> XY | None:
        """Take the first of some places where a label fits: clear of lines, else of labels.

        Parameters
        ----------
        clear
            Take no place that crosses a line, though there be no other.

        """
        free = []
        for centre in centres:
            box = Box.round(centre, width, height)
            if not self.within.holds(box) or any(box.overlaps(other, 2) for other in self.taken):
                continue
            if not any(box.overlaps(line) for line in self.lines):
                self.taken.append(box)
                return centre
            free.append(centre)
        if not free or clear:
            return None
        self.taken.append(Box.round(free[0], width, height))
        return free[0]


def rings(anchor: XY, distances: Iterable[float], *, first: float = 45.0) -> list[XY]:
    """Points about an anchor, twelve to a ring, beginning at an angle in degrees, y down."""
    turns = [0, 90, -90, 45, -45, 180, 135, -135, 20, -20, 110, -110]
    return [
        (
            anchor[0] + distance * math.cos(math.radians(first + turn)),
            anchor[1] - distance * math.sin(math.radians(first + turn)),
        )
        for distance in distances
        for turn in turns
    ]


def spread(
    wished: Sequence[float], widths: Sequence[float], low: float, high: float
) -> list[float]:
    """Set labels along a line, each as near its wished place as the others allow.

    Neighbours are pooled until none overlap (isotonic regression by pooling), then moved within
    ``low`` to ``high``; labels that are wider than the room run over ``high``.

    Parameters
    ----------
    wished
        Centres wished for, ascending.
    widths
        Room that each needs, gaps included.

    """
    before = [sum(widths[:i]) + widths[i] / 2 for i in range(len(widths))]
    pools: list[tuple[float, int]] = []
    for wish, offset in zip(wished, before, strict=True):
        mean, count = wish - offset, 1
        while pools and pools[-1][0] > mean:
            above, many = pools.pop()
            mean = (mean * count + above * many) / (count + many)
            count += many
        pools.append((mean, count))
    room = high - sum(widths)
    starts = [max(low, min(mean, room)) for mean, count in pools for _ in range(count)]
    return [start + offset for start, offset in zip(starts, before, strict=True)]
