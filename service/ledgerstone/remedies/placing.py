"""Where openings can go: the least movement of all together, in round steps.

Each opening moves by whole steps along and across, may shrink by a share, and a slab may grow. Two
convex shapes are apart by at least ``c`` where for one of some directions ``n``

    n · (q - p) >= (1 - s_p) h_p(n) + (1 - s_q) h_q(-n) + c

with their support functions ``h``: a choice of one linear row among several, so the whole is a
mixed-integer linear programme. Movements, and how far a tap strays from its bowl, are least.

Source
------
Support functions and separating directions of convex bodies; big-M disjunctions (textbook
methods), with ``M`` no larger than the room lets a row become. The programme is solved by HiGHS
through scipy, on one thread and by a count of nodes, so that an answer repeats.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Any

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import csr_array

from ledgerstone.arrays import FloatArray
from ledgerstone.outline import XY
from ledgerstone.remedies.placeable import (
    Coefficients,
    Item,
    Limited,
    Obstacle,
    Plane,
    Room,
    directions,
    nearest_chosen,
)
from ledgerstone.stages.placement import Placement

SLACK_MM = -0.04  # widths are rounded to 0.1 mm before they are compared with their rule
MAX_SEARCH_NODES = 60  # of branch and bound, which bounds the work
_INFEASIBLE = 2  # the status of scipy.optimize.milp
# What is weighed against a millimetre of movement of one opening; common practice, no source.
_A_MOVE_COSTS_MM = 12.0  # to move at all, and along each axis: one opening far before two a little
_STRAYS_COST = 4.0  # for each mm that a tap strays from its bowl: they are used together
_FOLLOWS_COSTS = 0.05  # of what an opening that belongs to another moves with it: next to nothing
_SHRINK_COSTS_MM = 2000.0  # for all of an opening: a twentieth less counts like 100 mm of movement
_GROW_COSTS = 3.0  # for each mm of the slab: what is around it was measured for its size
_COLUMNS = 7  # of one opening: right, left, back, front, smaller; moves along, moves across
_RIGHT, _LEFT, _BACK, _FRONT, _SMALLER, _ALONG, _ACROSS = range(_COLUMNS)
_NEAR_MM, _MANY, _FEW = 600.0, 8, 2


def place(items: Sequence[Item], room: Room) -> Placement | None:
    """Return the least movement after which every item is clear; None if none is found."""
    programme = _Programme(items, room)
    programme.build()
    return programme.solve()


def has_no_room(items: Sequence[Item], room: Room) -> bool:
    """Return whether it is shown that items cannot all be placed."""
    programme = _Programme(items, room)
    programme.build()
    return programme.is_infeasible()


class _Programme:
    """The mixed-integer programme: columns of each item, two of growth, then of choices.

    ``are_met_unmoved`` is whether every row holds while nothing moves.
    """

    def __init__(self, items: Sequence[Item], room: Room) -> None:
        self.items, self.room = items, room
        self.are_met_unmoved = True
        # Farther than anything on the slab has to go.
        self.far = 1.5 * max(room.size_mm) + max(
            (float(np.abs(item.centre).max()) for item in items), default=0.0
        )
        self.impossible = False
        self.cost: list[float] = []
        self.upper: list[float] = []
        self.whole: list[int] = []
        self.rows: list[Limited] = []
        for k, item in enumerate(items):
            self._item(k, item)
        self.grows = len(self.cost)
        for most, step in zip(room.grows_mm, room.grow_step_mm, strict=True):
            self._column(_GROW_COSTS * step, float(int(most / step)), whole=True)

    def _column(self, cost: float, upper: float, *, whole: bool) -> int:
        self.cost.append(cost)
        self.upper.append(upper)
        self.whole.append(int(whole))
        return len(self.cost) - 1

    def _item(self, k: int, item: Item) -> None:
        weight = _FOLLOWS_COSTS if item.follows is not None else 1.0
        share = self.room.most_share if item.shrinks else 0.0
        most = [self._most_steps(item, share, axis) for axis in (0, 1)]
        for axis in (0, 1):
            for steps in most[axis]:
                self._column(weight * item.step_mm[axis], steps, whole=True)
        self._column(_SHRINK_COSTS_MM, share, whole=False)
        for axis in (0, 1):
            self._column(weight * _A_MOVE_COSTS_MM, float(item.moves), whole=True)
            first = _COLUMNS * k + 2 * axis
            moves = {first: 1.0, first + 1: 1.0}
            if item.moves:
                self.rows.append(
                    ({**moves, _COLUMNS * k + _ALONG + axis: -max(1.0, *most[axis])}, 0.0)
                )

    def _most_steps(self, item: Item, share: float, axis: int) -> XY:
        """How far an item may go up and down an axis at the most, for it ends on the slab."""
        if not item.moves:
            return 0.0, 0.0
        step = item.step_mm[axis]
        if item.outward is not None:
            return float(int(self.far / step)), float(int(self.far / step))
        n = np.eye(2)[axis]
        low, high = self.room.box_mm[axis], self.room.box_mm[axis + 2] + self.room.grows_mm[axis]
        up = high - float(item.centre[axis]) - (1.0 - share) * item.support(n)
        down = float(item.centre[axis]) - (1.0 - share) * item.support(-n) - low
        return max(0.0, float(int(up / step) + 1)), max(0.0, float(int(down / step) + 1))

    def build(self) -> None:
        """Write every row."""
        for k, item in enumerate(self.items):
            if item.moves or item.shrinks or max(self.room.grows_mm) > 0.0:
                self._in_room(k, item)
            for j in range(k):
                self._choose(self._apart(j, k))
            if item.outward is not None:
                self._stays_open(k, item, np.array(item.outward))
            if item.follows is not None and item.moves and self.items[item.follows].moves:
                self._follow(k, item.follows)

    def _in_room(self, k: int, item: Item) -> None:
        """An item lies within every plane, and passes every obstacle."""
        for i, plane in enumerate(self.room.planes):
            if i not in item.passes:
                self.rows.append(self._within(k, item, plane))
                self.are_met_unmoved &= self.rows[-1][1] >= 0.0
        if item.within_mm is not None:
            for plane in (Plane((-1.0, 0.0), -item.within_mm[0], is_edge=False),
                          Plane((1.0, 0.0), item.within_mm[1], is_edge=False)):  # fmt: skip
                self.rows.append(self._within(k, item, plane))
                self.are_met_unmoved &= self.rows[-1][1] >= 0.0
        beside = [
            list(self._beside(k, item, obstacle))
            for i, obstacle in enumerate(self.room.obstacles, len(self.room.planes))
            if i not in item.passes
        ]
        for rows in nearest_chosen(beside, sum(item.moves or item.shrinks for item in self.items)):
            self._choose(rows)

    def _reach(self, k: int, n: FloatArray) -> Coefficients:
        """How far item ``k`` reaches along ``n`` as its columns change."""
        return self._reach_of(self.items[k], k, n)

    def _reach_of(self, item: Item, k: int, n: FloatArray) -> Coefficients:
        first = _COLUMNS * k
        x, y = n[0] * item.step_mm[0], n[1] * item.step_mm[1]
        row = {first + _RIGHT: x, first + _LEFT: -x, first + _BACK: y, first + _FRONT: -y}
        if item.shrinks:
            row[first + _SMALLER] = -item.support(n)
        return {column: value for column, value in row.items() if value}

    def _within(self, k: int, item: Item, plane: Plane) -> Limited:
        n = np.array(plane.n)
        row = self._reach(k, n)
        for axis in (0, 1):
            if self.room.grows_mm[axis] > 0.0 and n[axis] > 0.0:
                row[self.grows + axis] = -n[axis] * self.room.grow_step_mm[axis]
        clear = item.clear_mm + SLACK_MM if plane.is_edge else 0.0
        return row, plane.reach_mm - float(n @ item.centre) - item.support(n) - clear

    def _stays_open(self, k: int, item: Item, n: FloatArray) -> None:
        """What is open to a side does not draw back from it, nor leave through it."""
        fixed = replace(item, shrinks=False)
        row = self._reach_of(fixed, k, n)
        self.rows += [({c: -v for c, v in row.items()}, 0.0), (row, item.most_out_mm)]

    def _beside(self, k: int, item: Item, obstacle: Obstacle) -> Iterable[Limited]:
        clear = item.clear_mm + SLACK_MM if obstacle.is_edge else 0.0
        clear = clear if obstacle.clear_mm is None else obstacle.clear_mm
        for direction in obstacle.directions:
            n = np.array(direction)  # from the item towards the obstacle
            near = float((obstacle.points @ n).min())
            yield self._reach(k, n), near - float(n @ item.centre) - item.support(n) - clear

    def _apart(self, j: int, k: int) -> list[Limited]:
        one, other = self.items[j], self.items[k]
        if not (one.moves or other.moves or one.shrinks or other.shrinks):
            return []
        clear = min(one.clear_mm, other.clear_mm) + SLACK_MM
        rows, gaps, inside = [], [], self._inside(other) - self._inside(one)
        for n in directions(one, other, len(self.items) <= _FEW):
            reach = one.support(n) + other.support(-n)
            row = self._reach(j, n)
            row |= self._reach(k, -n)
            rows.append((row, float(n @ (other.centre - one.centre)) - reach - clear))
            gaps.append(float(n @ inside) - reach)
        if max(gaps) > _NEAR_MM or len(self.items) > _MANY:
            return [rows[int(np.argmax(gaps))]]  # apart already, or too many to choose from
        return rows

    def _inside(self, item: Item) -> FloatArray:
        """The middle of an item where it lies, or the nearest to it on the slab."""
        box = self.room.box_mm
        return np.clip(item.centre, box[:2], box[2:]) if item.moves else item.centre

    def _choose(self, rows: Iterable[Limited]) -> None:
        """Require one of some rows: of the feasible ones, unless one holds already."""
        every = list(rows)
        self.are_met_unmoved &= not every or any(limit >= 0.0 for _, limit in every)
        spans = [self._span(row) for row, _ in every]
        pairs = list(zip(every, spans, strict=True))
        if not every or any(most <= limit for (_, limit), (_, most) in pairs):
            return
        can = [(row, limit, most) for (row, limit), (least, most) in pairs if least <= limit]
        self.impossible |= not can
        if len(can) == 1:
            self.rows.append(can[0][:2])
        if len(can) <= 1:
            return
        chosen = []
        for row, limit, most in can:
            column = self._column(0.0, 1.0, whole=True)
            chosen.append(column)
            self.rows.append(({**row, column: most - limit}, most))
        self.rows.append((dict.fromkeys(chosen, -1.0), -1.0))

    def _span(self, row: Coefficients) -> XY:
        """Lower and upper bound of a row."""
        each = [value * self.upper[column] for column, value in row.items()]
        return sum(min(0.0, value) for value in each), sum(max(0.0, value) for value in each)

    def _follow(self, k: int, j: int) -> None:
        """Penalise an opening that moves apart from the one it belongs to."""
        one, other = self.items[k], self.items[j]
        for axis in (0, 1):
            first, second = _COLUMNS * k + 2 * axis, _COLUMNS * j + 2 * axis
            ahead, behind = (self._column(_STRAYS_COST, self.far, whole=False) for _ in range(2))
            strays = {
                first: one.step_mm[axis],
                first + 1: -one.step_mm[axis],
                second: -other.step_mm[axis],
                second + 1: other.step_mm[axis],
            }
            self.rows.append(({**strays, ahead: -1.0}, 0.0))
            self.rows.append(({**{c: -v for c, v in strays.items()}, behind: -1.0}, 0.0))

    def solve(self) -> Placement | None:
        """Solve it, and read what was found."""
        if self.are_met_unmoved:
            return Placement({}, {}, (0.0, 0.0))
        if self.impossible:
            return None
        solved = self._solved()
        return None if solved.x is None else self._read(np.asarray(solved.x))

    def is_infeasible(self) -> bool:
        """Return whether no placement is shown to exist: a search cut short shows nothing."""
        if self.are_met_unmoved or self.impossible:
            return self.impossible
        return bool(self._solved().status == _INFEASIBLE)

    def _solved(self) -> Any:  # noqa: ANN401  scipy has no type for it
        at = [(i, c, v) for i, (row, _) in enumerate(self.rows) for c, v in row.items()]
        matrix = csr_array(
            ([v for _, _, v in at], ([i for i, _, _ in at], [c for _, c, _ in at])),
            shape=(len(self.rows), len(self.cost)),
        )
        return milp(
            np.array(self.cost),
            constraints=LinearConstraint(matrix, ub=np.array([limit for _, limit in self.rows])),
            bounds=Bounds(0.0, np.array(self.upper)),
            integrality=np.array(self.whole),
            options={"node_limit": MAX_SEARCH_NODES, "mip_rel_gap": 0.1},
        )

    def _read(self, x: FloatArray) -> Placement:
        moved: dict[int, tuple[float, float]] = {}
        shrunk: dict[int, float] = {}
        for k, item in enumerate(self.items):
            own = x[_COLUMNS * k : _COLUMNS * (k + 1)]
            right = round(own[_RIGHT] - own[_LEFT])
            back = round(own[_BACK] - own[_FRONT])
            if right or back:
                moved[k] = (right * item.step_mm[0], back * item.step_mm[1])
            if own[_SMALLER] > 1e-6:
                shrunk[k] = float(own[_SMALLER])
        grown = [round(x[self.grows + a]) * self.room.grow_step_mm[a] for a in (0, 1)]
        return Placement(moved, shrunk, (grown[0], grown[1]))
