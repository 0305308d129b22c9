"""Places for labels: boxes that never overlap, and points on a line kept apart."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import Final, NamedTuple

from ledgerstone.outline import XY

_CELL: Final = 40.0


class Box(NamedTuple):
    """An upright rectangle on the sheet."""

    x0: float
    y0: float
    x1: float
    y1: float

    @classmethod
    def round(cls, centre: XY, width: float, height: float) -> Box:
        """Return a box about a centre, sheet units."""
        x, y = centre
        return cls(x - width / 2, y - height / 2, x + width / 2, y + height / 2)

    def overlaps(self, other: Box, gap: float = 0.0) -> bool:
        """Return whether two boxes are closer than a gap, sheet units."""
        return (
            self.x0 < other.x1 + gap
            and other.x0 < self.x1 + gap
            and self.y0 < other.y1 + gap
            and other.y0 < self.y1 + gap
        )

    def holds(self, other: Box) -> bool:
        """Return whether another box lies wholly within."""
        return (
            self.x0 <= other.x0
            and self.y0 <= other.y0
            and self.x1 >= other.x1
            and self.y1 >= other.y1
        )


class _Cells:
    """Boxes by the cells of the sheet that they reach into, so that few are looked at.

    Parameters
    ----------
    sheet
        Only places on it are looked up, so boxes are stored only where they are on it: the number
        of cells is bounded, however far away an order places things.
    """

    def __init__(self, sheet: Box) -> None:
        self._sheet = sheet
        self._by_cell: dict[tuple[int, int], list[Box]] = {}

    def add(self, box: Box) -> None:
        """Keep a box, where it reaches on to the sheet."""
        if not self._sheet.overlaps(box):
            return
        x0, x1 = max(box.x0, self._sheet.x0), min(box.x1, self._sheet.x1)
        y0, y1 = max(box.y0, self._sheet.y0), min(box.y1, self._sheet.y1)
        for x in range(int(x0 // _CELL), int(x1 // _CELL) + 1):
            for y in range(int(y0 // _CELL), int(y1 // _CELL) + 1):
                self._by_cell.setdefault((x, y), []).append(box)

    def meets(self, box: Box, gap: float = 0.0) -> bool:
        """Return whether any box is closer than a gap, sheet units."""
        x0, y0, x1, y1 = box.x0 - gap, box.y0 - gap, box.x1 + gap, box.y1 + gap
        for x in range(int(x0 // _CELL), int(x1 // _CELL) + 1):
            for y in range(int(y0 // _CELL), int(y1 // _CELL) + 1):
                for other in self._by_cell.get((x, y), ()):
                    if x0 < other.x1 and other.x0 < x1 and y0 < other.y1 and other.y0 < y1:
                        return True
        return False


class Places:
    """Occupied boxes on a sheet; labels are placed one by one, the most constrained first.

    Parameters
    ----------
    within
        No label leaves this box.

    """

    def __init__(self, within: Box) -> None:
        self.within = within
        sheet = Box(within.x0 - _CELL, within.y0 - _CELL, within.x1 + _CELL, within.y1 + _CELL)
        self._taken = _Cells(sheet)
        self._lines = _Cells(sheet)

    def take(self, box: Box) -> None:
        """Exclude a box from all later labels."""
        self._taken.add(box)

    def avoid(self, boxes: Iterable[Box]) -> None:
        """Keep later labels off these lines while there is room elsewhere."""
        for box in boxes:
            self._lines.add(box)

    def place(
        self, centres: Iterable[XY], width: float, height: float, *, clear: bool = False
    ) -> XY | None:
        """Take the first of some centres where a label fits: clear of lines, else only of labels.

        Centres and sizes are in sheet units.

        Parameters
        ----------
        clear
            Take no place that crosses a line, even if there is no other.

        """
        free: XY | None = None
        for centre in centres:
            box = Box.round(centre, width, height)
            if not self.within.holds(box) or self._taken.meets(box, 2):
                continue
            if not self._lines.meets(box):
                self.take(box)
                return centre
            free = centre if free is None else free
        if free is None or clear:
            return None
        self.take(Box.round(free, width, height))
        return free


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
    preferred: Sequence[float], widths: Sequence[float], low: float, high: float
) -> list[float]:
    """Centres of labels along a line, sheet units, each as near its preferred place as possible.

    Neighbours are pooled until none overlap (isotonic regression by pooling), then moved within
    ``low`` to ``high``; labels that are wider than the room run over ``high``.

    Parameters
    ----------
    preferred
        Preferred centres, ascending.
    widths
        Room that each needs, gaps included.

    """
    before = [sum(widths[:i]) + widths[i] / 2 for i in range(len(widths))]
    pools: list[tuple[float, int]] = []
    for wish, offset in zip(preferred, before, strict=True):
        mean, count = wish - offset, 1
        while pools and pools[-1][0] > mean:
            above, many = pools.pop()
            mean = (mean * count + above * many) / (count + many)
            count += many
        pools.append((mean, count))
    room = high - sum(widths)
    starts = [max(low, min(mean, room)) for mean, count in pools for _ in range(count)]
    return [start + offset for start, offset in zip(starts, before, strict=True)]
