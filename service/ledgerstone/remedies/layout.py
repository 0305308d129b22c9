"""Moving, shrinking and making room: the least change of a plan, as a small linear programme.

Each opening may move by ``(dx, dy)`` and shrink by a share ``s``; a rectangular slab may grow.
Two convex shapes are apart by at least ``c`` along a direction ``n`` when
``n · (q - p) >= (1 - s_p) h_p(n) + (1 - s_q) h_q(-n) + c`` with their support functions ``h``, and
an opening keeps ``c`` from a side likewise: both are linear in the unknowns. The sum of all
movements and weighted shares is least at a corner of that polytope.

Source: support functions and separating directions of convex bodies (textbook geometry); the
programme is solved by HiGHS through scipy.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import linprog

from ledgerstone.order import LShape, Rectangle, Round, Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape

FloatArray = NDArray[np.float64]
SHRINK_COSTS_MM = 2000.0  # a tenth smaller weighs like 200 mm moved: an appliance has its size
GROW_COSTS = 1.5  # a millimetre of slab weighs like 1.5 mm moved
_MOVED_MM = 1e-6


@dataclass(frozen=True, slots=True)
class Freedom:
    """What a layout may change.

    Attributes
    ----------
    moves, shrinks
        Indices of the openings that may move, and that may shrink.
    grows
        ``"length"`` and ``"width"`` of the slab, where they may grow.
    most_share
        The largest share by which a size may change.
    """

    moves: frozenset[int] = frozenset()
    shrinks: frozenset[int] = frozenset()
    grows: frozenset[str] = frozenset()
    most_share: float = 0.1


# Along which directions two openings are kept apart: the one in which they are most so, or always
# side by side, or always one behind the other. Crowded openings often need one of the latter.
DIRECTIONS = ("apart", "beside", "behind")


@dataclass(frozen=True, slots=True)
class Layout:
    """A layout found: movements by opening, shares by opening, growth in mm."""

    moved_mm: dict[int, XY]
    shrunk: dict[int, float]
    grown_mm: dict[str, float]


def find_layout(
    slab: Slab,
    shape: Shape,
    clear_mm: Sequence[float],
    freedom: Freedom,
    *,
    margin_mm: float,
    direction: str = "apart",
) -> Layout | None:
    """Find the least change that keeps every opening clear, or None where there is none.

    Parameters
    ----------
    clear_mm
        What each opening's rule asks beside it.
    margin_mm
        Kept beyond that, so that the numbers can be rounded afterwards.
    direction
        One of ``DIRECTIONS``.
    """
    programme = _Programme(slab, shape, clear_mm, freedom)
    programme.margin_mm, programme.direction = margin_mm, direction
    rows, limits = programme.constraints()
    if len(rows) == 0:
        return Layout({}, {}, {})
    solved = linprog(
        programme.weights,
        A_ub=np.array(rows),
        b_ub=np.array(limits),
        bounds=programme.bounds,
        method="highs",
    )
    return programme.layout(np.asarray(solved.x)) if solved.status == 0 else None


class _Programme:
    """The linear programme of one slab: unknowns dx+, dx-, dy+, dy-, s by opening, then growth."""

    margin_mm = 0.0
    direction = "apart"

    def __init__(
        self, slab: Slab, shape: Shape, clear_mm: Sequence[float], freedom: Freedom
    ) -> None:
        self.slab, self.shape, self.clear_mm = slab, shape, clear_mm
        self.freedom = freedom
        self.touched = freedom.moves | freedom.shrinks
        self.count = 5 * len(shape.openings) + 2
        self.centres = [np.array(o.polygon.centroid.coords[0]) for o in shape.openings]
        self.points = [
            np.asarray(o.polygon.exterior.coords) - centre
            for o, centre in zip(shape.openings, self.centres, strict=True)
        ]

    @property
    def weights(self) -> FloatArray:
        each = [1.0, 1.0, 1.0, 1.0, SHRINK_COSTS_MM]
        return np.array(each * len(self.centres) + [GROW_COSTS, GROW_COSTS])

    @property
    def bounds(self) -> list[tuple[float, float]]:
        far = 20_000.0
        bounds: list[tuple[float, float]] = []
        for i in range(len(self.centres)):
            move = far if i in self.freedom.moves else 0.0
            shrink = self.freedom.most_share if i in self.freedom.shrinks else 0.0
            bounds += [(0.0, move)] * 4 + [(0.0, shrink)]
        share = self.freedom.most_share
        for name, size in (("length", self.shape.length_mm), ("width", self.shape.width_mm)):
            bounds.append((0.0, share * size if name in self.freedom.grows else 0.0))
        return bounds

    def constraints(self) -> tuple[list[FloatArray], list[float]]:
        """Rows ``a · x <= b`` for every opening that may change or stands in a changed slab."""
        rows: list[FloatArray] = []
        limits: list[float] = []
        touched = self.touched
        every = range(len(self.centres)) if self.freedom.grows else sorted(touched)
        for i in every:
            for row, limit in self._sides(i):
                if np.any(row):  # what no unknown touches is as it was
                    rows.append(row)
                    limits.append(limit)
        for i in range(len(self.centres)):
            for j in range(i):
                if i in touched or j in touched:
                    row, limit = self._pair(i, j)
                    rows.append(row)
                    limits.append(limit)
        return rows, limits

    def _support(self, i: int, n: FloatArray) -> float:
        return float((self.points[i] @ n).max())

    def _row(self, i: int, n: FloatArray, support: float) -> FloatArray:
        """How the reach of opening ``i`` along ``n`` depends on the unknowns."""
        row = np.zeros(self.count)
        row[5 * i : 5 * i + 5] = [n[0], -n[0], n[1], -n[1], -support]
        return row

    def _clear(self, i: int) -> float:
        return self.clear_mm[i] + self.margin_mm

    def _pair(self, i: int, j: int) -> tuple[FloatArray, float]:
        """Opening ``j`` stays clear of ``i`` along the direction in which they are most apart."""
        apart = self.centres[j] - self.centres[i]
        best = max(self._directions(apart), key=lambda n: self._gap(i, j, n))
        row = self._row(i, best, self._support(i, best))
        row = row + self._row(j, -best, self._support(j, -best))
        clear = min(self.clear_mm[i], self.clear_mm[j]) + self.margin_mm
        return row, self._gap(i, j, best) - clear

    def _gap(self, i: int, j: int, n: FloatArray) -> float:
        apart = float(n @ (self.centres[j] - self.centres[i]))
        return apart - self._support(i, n) - self._support(j, -n)

    def _directions(self, apart: FloatArray) -> Iterable[FloatArray]:
        length = float(np.hypot(*apart))
        if length > 1.0 and self.direction == "apart":
            yield apart / length
        if self.direction != "behind":
            yield np.array([1.0 if apart[0] >= 0 else -1.0, 0.0])
        if self.direction != "beside":
            yield np.array([0.0, 1.0 if apart[1] >= 0 else -1.0])

    def _sides(self, i: int) -> Iterable[tuple[FloatArray, float]]:
        """Opening ``i`` stays clear of every side it is not open to."""
        open_to = self.slab.cutouts[self.shape.openings[i].index].open_to
        for name, n, reach in self._half_planes(i):
            if name == open_to:
                # It stays open to that side: it does not move away from it, and is not measured.
                row = np.zeros(self.count)
                row[5 * i : 5 * i + 4] = [-n[0], n[0], -n[1], n[1]]
                yield row, 0.0
                continue
            support = self._support(i, n)
            row = self._row(i, n, support) if i in self.touched else np.zeros(self.count)
            if name == "right" and "length" in self.freedom.grows:
                row[-2] = -1.0
            if name == "back" and "width" in self.freedom.grows:
                row[-1] = -1.0
            at = float(n @ self.centres[i]) + support
            yield row, reach - at - self._clear(i)

    def _half_planes(self, i: int) -> Iterable[tuple[str, FloatArray, float]]:
        """Sides as ``n · p <= reach``, with ``n`` pointing out of the slab."""
        outline = self.slab.outline
        if isinstance(outline, Round):
            yield self._radial(i)
            return
        notch = []
        for side in self.shape.sides:
            (x0, y0), (x1, y1) = side.line.coords[0], side.line.coords[-1]
            length = float(np.hypot(x1 - x0, y1 - y0)) or 1.0
            n = np.array([(y1 - y0) / length, -(x1 - x0) / length])
            plane = (side.name, n, float(n @ np.array([(x0 + x1) / 2, (y0 + y1) / 2])))
            if side.name.startswith("notch"):
                notch.append(plane)
            elif isinstance(outline, Rectangle | LShape) or self._faces(i, n, plane[2]):
                yield plane
        if notch:
            yield min(notch, key=lambda p: float(p[1] @ self.centres[i]) - p[2])

    def _faces(self, i: int, n: FloatArray, reach: float) -> bool:
        """Whether a polygon's side has the opening's centre on its inner side."""
        return float(n @ self.centres[i]) <= reach + self._support(i, n)

    def _radial(self, i: int) -> tuple[str, FloatArray, float]:
        radius = self.shape.length_mm / 2
        middle = np.array([radius, radius])
        out = self.centres[i] - middle
        length = float(np.hypot(*out))
        n = out / length if length > 1.0 else np.array([1.0, 0.0])
        return "rim", n, float(n @ middle) + radius

    def layout(self, x: FloatArray) -> Layout:
        """Read the unknowns."""
        moved: dict[int, XY] = {}
        shrunk: dict[int, float] = {}
        for i in range(len(self.centres)):
            right, left, back, front, share = x[5 * i : 5 * i + 5]
            if abs(right - left) > _MOVED_MM or abs(back - front) > _MOVED_MM:
                moved[i] = (float(right - left), float(back - front))
            if share > 1e-9:
                shrunk[i] = float(share)
        names = ("length", "width")
        grown = {name: float(x[k - 2]) for k, name in enumerate(names) if x[k - 2] > _MOVED_MM}
        return Layout(moved, shrunk, grown)
