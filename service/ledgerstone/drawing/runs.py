"""Upright slabs along the sides of tops.

A join says it. Where none does, an upstand or a splashback stands behind the top whose back is
nearest to its own length, an end panel at an end that no wall and no other top takes; several
stand in a row.
"""

from __future__ import annotations

import math
from collections.abc import Container, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Final

from ledgerstone.drawing.joining import straight
from ledgerstone.drawing.standing import DrawnSlab, Standing
from ledgerstone.order import Join, JoinEnd
from ledgerstone.outline import XY

_SAME_MM: Final = 5.0
_MEET_MM: Final = 15.0  # sides in line are one wall's, whatever the joint
_IN_LINE: Final = 0.999
_MAX_COPIES: Final = 2  # of one slab, as at both ends of a top: more would make the file large
ALONE_APART_MM: Final = 120.0  # between those that are along no top


@dataclass(slots=True)
class TopSide:
    """A side of a top, and the upright pieces along it.

    ``start`` and ``along`` are its left end and the way to its right one as whoever stands before
    it sees them, ``out`` the way out of the top.
    """

    host: int | None
    start: XY
    along: XY
    out: XY
    length_mm: float
    uprights: list[UprightPlacement] = field(default_factory=list)

    @property
    def free_mm(self) -> float:
        """The length of it that is free, mm."""
        return self.length_mm - sum(upright.piece.shape.length_mm for upright in self.row)

    @property
    def row(self) -> list[UprightPlacement]:
        """What stands along it; panels stand beyond it."""
        return [upright for upright in self.uprights if self.host is None or not upright.is_panel]


@dataclass(frozen=True, slots=True)
class UprightPlacement:
    """An upright piece at a run; ``gap_mm`` and ``side`` are its join's, where it has one."""

    piece: DrawnSlab
    gap_mm: float = 0.0
    side: str = ""

    @property
    def is_panel(self) -> bool:
        """Whether it stands at an end."""
        return self.piece.slab.use == "end-panel"

    def is_on_end(self, depth_mm: float) -> bool:
        """Whether its own left side is down: where its width is nearer to the top's depth."""
        if self.side:
            return self.side in ("left", "right")
        shape = self.piece.shape
        return abs(shape.width_mm - depth_mm) < abs(shape.length_mm - depth_mm)


def runs_of(
    pieces: Sequence[DrawnSlab],
    joins: Sequence[Join],
    level: Sequence[int],
    hosts: Sequence[Standing],
) -> list[TopSide]:
    """Assign each upright piece to a side of a top."""
    runs = _sides(pieces, hosts)
    taken = {(at, end.side) for at, end, other in _ends(joins, level) if other in level}
    loose: list[DrawnSlab] = []
    for number, piece in enumerate(pieces):
        if number in level:
            continue
        joined = _joined(number, joins, level)
        if joined is not None and joined[0] in runs:
            runs[joined[0]].uprights.append(UprightPlacement(piece, joined[1], joined[2]))
        else:
            loose.append(piece)
    for piece in loose:
        _place(piece, runs, hosts, taken)
    for run in runs.values():
        if run.free_mm < -_SAME_MM:
            _lengthen(run, runs.values())
    return list(runs.values())


def _sides(
    pieces: Sequence[DrawnSlab], hosts: Sequence[Standing]
) -> dict[tuple[int, str], TopSide]:
    """Return every straight side of every top; the line behind, where there is none."""
    runs: dict[tuple[int, str], TopSide] = {}
    for i, host in enumerate(hosts):
        for side in host.piece.shape.sides:
            if not side.line.is_ring:
                runs[i, side.name] = _run(i, straight(side, host.piece.shape))
    if not runs:
        runs[0, "back"] = _run_behind(0, hosts[0]) if hosts else _lone(pieces)
    return runs


def _run(host: int | None, ends: tuple[XY, XY]) -> TopSide:
    """Make a run of a top's side, which goes anticlockwise round it."""
    (ax, ay), (bx, by) = ends
    length = math.dist(*ends) or 1.0
    ahead = ((bx - ax) / length, (by - ay) / length)
    return TopSide(host, (bx, by), (-ahead[0], -ahead[1]), (ahead[1], -ahead[0]), length)


def _lengthen(run: TopSide, runs: Iterable[TopSide]) -> None:
    """Carry a run on along the sides of other tops that are in line with it and begin at its end.

    So a long upstand goes into the corner of two tops that meet.
    """
    for other in runs:
        at = _in_line(run, other)
        if at is not None and at > 0:
            run.length_mm = at + other.length_mm
        elif at is not None:
            run.start, run.length_mm = other.start, run.length_mm - at


def _in_line(run: TopSide, other: TopSide) -> float | None:
    """How far along a run another top's side begins that goes on from one of its ends, mm."""
    ahead = other.out[0] * run.out[0] + other.out[1] * run.out[1]
    dx, dy = other.start[0] - run.start[0], other.start[1] - run.start[1]
    aside = abs(dx * run.out[0] + dy * run.out[1])
    if other.host == run.host or ahead < _IN_LINE or aside > _MEET_MM:
        return None
    at = dx * run.along[0] + dy * run.along[1]
    meets = min(abs(at - run.length_mm), abs(at + other.length_mm)) < _MEET_MM
    return at if meets else None


def _run_behind(host: int, standing: Standing) -> TopSide:
    """Make a run of the line behind a top that has no straight side."""
    x0, _, x1, y1 = standing.bounds
    return _run(host, ((x1, y1), (x0, y1)))


def _lone(pieces: Sequence[DrawnSlab]) -> TopSide:
    """Make a run along a wall for pieces that come with no top."""
    long = sum(piece.shape.length_mm for piece in pieces) + ALONE_APART_MM * (len(pieces) - 1)
    return _run(None, ((long, 0.0), (0.0, 0.0)))


def _ends(joins: Sequence[Join], level: Sequence[int]) -> Iterator[tuple[int, JoinEnd, int]]:
    """Each end of a join that is a top's: its place among them, the end, and what it meets."""
    at = {number: i for i, number in enumerate(level)}
    for join in joins:
        for here, there in ((join.one, join.other), (join.other, join.one)):
            if here.slab in at:
                yield at[here.slab], here, there.slab


def _joined(
    number: int, joins: Sequence[Join], level: Sequence[int]
) -> tuple[tuple[int, str], float, str] | None:
    """Which side of which top a piece is joined to, the gap, and by which side of its own."""
    at = {piece: i for i, piece in enumerate(level)}
    for join in joins:
        for here, there in ((join.one, join.other), (join.other, join.one)):
            if here.slab == number and there.slab in at:
                return (at[there.slab], there.side), join.gap.mm, here.side
    return None


def _place(
    piece: DrawnSlab,
    runs: Mapping[tuple[int, str], TopSide],
    hosts: Sequence[Standing],
    taken: Container[tuple[int, str]],
) -> None:
    """Stand a piece that no join places where there is room; its first copy in any case."""
    backs = [run for (_, name), run in runs.items() if name == "back"]
    for copy in range(min(piece.slab.quantity, _MAX_COPIES)):
        if piece.slab.use == "end-panel":
            free = list(_free_ends(runs, hosts, taken))
        else:
            length = piece.shape.length_mm
            free = [run for run in backs if run.free_mm >= length - _SAME_MM]
            free.sort(key=lambda run: abs(run.length_mm - length))
        if not free and copy:
            return
        spare = [*(run for run in backs if not run.uprights), *backs, *runs.values()]
        [*free, *spare][0].uprights.append(UprightPlacement(piece))


def _free_ends(
    runs: Mapping[tuple[int, str], TopSide],
    hosts: Sequence[Standing],
    taken: Container[tuple[int, str]],
) -> Iterator[TopSide]:
    """Yield the ends of tops where a panel may stand: no wall, no other top, no panel yet."""
    backs = [run for (_, name), run in runs.items() if name == "back"]
    for i, host in enumerate(hosts):
        for name in ("right", "left"):
            run = runs.get((i, name))
            if run is None or run.uprights or (i, name) in taken or _is_walled(host, name):
                continue
            if all(_in_line(run, back) is None for back in backs):
                yield run


def _is_walled(host: Standing, side: str) -> bool:
    edge = host.piece.slab.edges.get(side)
    return edge is not None and edge.profile == "wall"
