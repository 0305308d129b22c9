"""What carries the pieces of a slab that is cut: both sides of the joint are carried."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

from shapely.geometry import LineString, box

from ledgerstone import plane
from ledgerstone.order import Ledge, Point, Rests, Unit
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.remedies.cut_outlines import Axis, Sides

FROM_JOINT_MM = 60.0  # distance of a leg or a bearer from the joint; common practice, no source
_NEAR_MM = 150.0  # a leg that stands so near does for the joint too: common practice, no source
_TOUCH_MM = 1.5  # half a joint, and a little more
_SHORTEST_MM = 30.0  # of a line that carries a piece: our own choice


@dataclass(frozen=True, slots=True)
class PiecePlace:
    """Where one piece lies in the slab that was cut, and where its joint is."""

    axis: Axis
    span_mm: tuple[float, float]
    second: bool
    size_mm: XY
    sides: Sides
    joint: str

    @property
    def joint_mm(self) -> float:
        """Where it ends at the joint, in the plan of the slab that was cut."""
        return self.span_mm[0] if self.second else self.span_mm[1]

    def own(self, place: Point) -> Point:
        """Return a place in the piece's own plan."""
        by = self.span_mm[0]
        x = place.x.in_unit(place.x.mm - by) if self.axis == "x" and by else place.x
        y = place.y.in_unit(place.y.mm - by) if self.axis == "y" and by else place.y
        return Point(x, y)


@dataclass(frozen=True, slots=True)
class PieceRests:
    """The rests of a piece, and what of them is new at the joint: rail, legs, bearer or nothing."""

    rests: Rests | None
    beneath: str = ""


def cut_rests(rests: Rests | None, place: PiecePlace) -> PieceRests | None:
    """Return what carries one piece; None if the rests cannot be divided."""
    if rests is None or rests.kind == "full":
        return PieceRests(rests)
    cut = _KINDS.get(rests.kind)
    return cut(rests, place) if cut is not None else None


def _units(rests: Rests, place: PiecePlace) -> PieceRests | None:
    """The units of one piece; one that the joint runs through has a rail across it there."""
    if place.axis != "x":
        return None
    over = dict(rests.overhang)
    start = over["left"].mm if "left" in over else 0.0
    low, high = place.span_mm
    units, beneath = [], ""
    for unit in rests.units:
        end = start + unit.width.mm
        left, right = max(start, low), min(end, high)
        whole = left - start < 2 * _TOUCH_MM and end - right < 2 * _TOUCH_MM
        if right - left > 2 * _TOUCH_MM:
            if not whole and unit.use == "gap":
                return None  # nothing carries the joint over a gap
            beneath = beneath if whole else "rail"
            units.append(unit if whole else Unit(unit.width.in_unit(right - left), unit.use))
        start = end
    over.pop("left" if place.second else "right", None)
    if not units:
        return None
    own = replace(rests, units=tuple(units), overhang=MappingProxyType(over))
    return PieceRests(own, beneath)


def _frame(rests: Rests, place: PiecePlace) -> PieceRests:
    """A frame under the same sides, and under the joint."""
    if not rests.sides:
        return PieceRests(rests)
    kept = [place.sides[side][0] for side in rests.sides if side in place.sides]
    sides = tuple(dict.fromkeys([*kept, place.joint]))
    return PieceRests(replace(rests, sides=sides), "bearer" if place.joint not in kept else "")


def _ends(rests: Rests, place: PiecePlace) -> PieceRests:
    """A bearing at both ends; the one at the joint is new."""
    return PieceRests(rests, "bearer" if place.axis == "x" else "")


def _legs(rests: Rests, place: PiecePlace) -> PieceRests:
    """Return the legs beneath a piece, and two beside the joint if none is near."""
    k = 0 if place.axis == "x" else 1
    low, high = place.span_mm
    own = [leg for leg in rests.at if low <= (leg.x.mm, leg.y.mm)[k] <= high]
    across = [(leg.x.mm, leg.y.mm)[1 - k] for leg in rests.at]
    by = place.joint_mm + (FROM_JOINT_MM if place.second else -FROM_JOINT_MM)
    added = []
    for at in sorted({min(across), max(across)}):
        x, y = (by, at) if k == 0 else (at, by)
        near = [leg for leg in own if abs(leg.x.mm - x) + abs(leg.y.mm - y) < _NEAR_MM]
        if not near:
            added.append(_point(rests.at[0], x, y))
    every = tuple(place.own(leg) for leg in (*own, *added))
    return PieceRests(replace(rests, at=every), "legs" if added else "")


def _ledges(rests: Rests, place: PiecePlace) -> PieceRests | None:
    """The ledges beneath a piece, and a bearer beside the joint."""
    low, high = place.span_mm
    far = 2 * max(place.size_mm)
    room = box(low, -far, high, far) if place.axis == "x" else box(-far, low, far, high)
    lines = []
    for ledge in rests.lines:
        line = LineString([(ledge.start.x.mm, ledge.start.y.mm), (ledge.end.x.mm, ledge.end.y.mm)])
        part = plane.intersection(line, room)
        if isinstance(part, LineString) and part.length >= _SHORTEST_MM:
            lines.append(_ledge(ledge, [(x, y) for x, y in part.coords], place))
    depth = rests.lines[0].depth
    at = place.joint_mm + (depth.mm / 2 if place.second else -depth.mm / 2)
    across = place.size_mm[1] if place.axis == "x" else place.size_mm[0]
    ends = [(at, 0.0), (at, across)] if place.axis == "x" else [(0.0, at), (across, at)]
    lines.append(_ledge(rests.lines[0], ends, place))
    return PieceRests(replace(rests, lines=tuple(lines)), "bearer")


def _ledge(like: Ledge, ends: Iterable[XY], place: PiecePlace) -> Ledge:
    start, end = (place.own(_point(like.start, x, y)) for x, y in ends)
    return Ledge(start, end, like.depth)


def _point(like: Point, x_mm: float, y_mm: float) -> Point:
    return Point(_length(like.x, x_mm), _length(like.y, y_mm))


def _length(like: Length, mm: float) -> Length:
    return like if abs(like.mm - mm) < _TOUCH_MM / 10 else like.like(mm)


_KINDS: Mapping[str, Callable[[Rests, PiecePlace], PieceRests | None]] = {
    "units": _units,
    "frame": _frame,
    "ends": _ends,
    "legs": _legs,
    "ledges": _ledges,
}
