"""A slab cut in two along a straight joint: its pieces, and their origin in the slab."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

from ledgerstone.cutouts import kind_of
from ledgerstone.order import Cutout, Edge, LShape, Point, Rectangle, Relief, SizeFrom, Slab
from ledgerstone.outline import XY, outline_shape, wall_sides
from ledgerstone.quantities import Length
from ledgerstone.remedies.cut_outlines import (
    Axis,
    Plan,
    Sides,
    clipped,
    outline_of,
    plan_of,
    side_at,
    sides_on,
    with_given_sizes,
)
from ledgerstone.remedies.cut_rests import PiecePlace, cut_rests

JOINT_GAP_MM = 2.0  # a filled joint; common practice, no source
_MIDDLE_MM = 6.0  # a joint nearer than this to an opening's middle runs through it
_LONGEST_LABEL = 120  # as the contract has it
_FINE_MM = 0.1  # a piece's size is said to so much
_NAMES: Mapping[Axis, tuple[str, str]] = {"x": ("left", "right"), "y": ("front", "back")}


@dataclass(frozen=True, slots=True)
class SlabCut:
    """Which slab is cut, across which axis, and where in its finished plan the first piece ends.

    ``through`` is the opening that the joint runs through, if any; others go with their middle.
    """

    slab: int
    axis: Axis
    at_mm: float
    through: int | None = None


@dataclass(frozen=True, slots=True)
class CutPiece:
    """One of the two pieces.

    Attributes
    ----------
    at_mm
        Its front-left corner in the plan of the slab that was cut.
    cutouts, reliefs
        Which of the slab's own are in it; ``halved`` are those that the joint runs through.
    sides
        By side of the slab that was cut: this part's own on it, and how much of it, in mm.
    joint
        Its side at the joint.
    beneath
        What is new beneath it there: ``rail``, ``legs``, ``bearer``, or nothing.
    """

    slab: Slab
    at_mm: XY
    cutouts: tuple[int, ...]
    reliefs: tuple[int, ...]
    halved: frozenset[int]
    sides: Sides
    joint: str
    beneath: str


def apart(
    slab: Slab, cut: SlabCut, fitting_gap_mm: float
) -> tuple[CutPiece, CutPiece, Length] | None:
    """Cut a slab: its two pieces and their joint; None if the contract cannot describe them.

    Parameters
    ----------
    fitting_gap_mm
        What comes off each wall side of a slab between walls.
    """
    plan = plan_of(slab, fitting_gap_mm)
    if plan is None or not 0.0 < cut.at_mm < plan.along(cut.axis) - JOINT_GAP_MM:
        return None
    whole = plan.along(cut.axis)
    say: Length = getattr(slab.outline, "length", slab.thickness)
    rest = say.like(whole - cut.at_mm - JOINT_GAP_MM).mm
    if rest <= 0.0:
        return None
    one = _part(plan, cut, (0.0, cut.at_mm), second=False)
    other = _part(plan, cut, (whole - rest, whole), second=True)
    if one is None or other is None or not _is_all(slab, one, other):
        return None
    return one, other, say.like(whole - rest - cut.at_mm, to_mm=_FINE_MM)


def _is_all(slab: Slab, piece: CutPiece, other: CutPiece) -> bool:
    """Whether every opening and relief is in one of two parts, and in both only if it is halved."""
    twice = set(piece.cutouts) & set(other.cutouts)
    return (
        {*piece.cutouts, *other.cutouts} == {*range(len(slab.cutouts))}
        and twice == piece.halved == other.halved
        and sorted((*piece.reliefs, *other.reliefs)) == [*range(len(slab.reliefs))]
    )


def _part(plan: Plan, cut: SlabCut, span: tuple[float, float], *, second: bool) -> CutPiece | None:
    slab, axis = plan.slab, cut.axis
    ring = clipped(plan, axis, span)
    outline = outline_of(plan, ring) if ring is not None else None
    if ring is None or outline is None:
        return None
    at_mm = (min(x for x, _ in ring), min(y for _, y in ring))
    sides = sides_on(plan, outline, at_mm)
    joint = side_at(outline, axis, span[0] if second else span[1], at_mm)
    if joint is None:
        return None
    place = PiecePlace(axis, span, second, plan.size_mm, sides, joint)
    carried, openings = cut_rests(slab.rests, place), _openings(slab, place, at_mm, cut.through)
    if carried is None or openings is None:
        return None
    reliefs = [k for k, relief in enumerate(slab.reliefs) if _holds(place, _extent(relief, axis))]
    piece = replace(
        slab,
        label=f"{slab.label} {_NAMES[axis][second]}".strip()[:_LONGEST_LABEL],
        outline=with_given_sizes(plan, outline, sides),
        size_from=_size_from(slab, sides),
        cutouts=tuple(openings.values()),
        reliefs=tuple(
            replace(r, at=_seen(r.at, at_mm)) for k in reliefs for r in [slab.reliefs[k]]
        ),
        edges=_edges(slab, sides, joint),
        rests=carried.rests,
    )
    halved = frozenset(k for k, own in openings.items() if own.open_to == joint)
    halved -= {k for k, cutout in enumerate(slab.cutouts) if cutout.open_to is not None}
    return CutPiece(
        piece, at_mm, tuple(openings), tuple(reliefs), halved, sides, joint, carried.beneath
    )


def _openings(
    slab: Slab, place: PiecePlace, at_mm: XY, through: int | None
) -> dict[int, Cutout] | None:
    """The cut-outs of one piece in its own plan; None if the joint cannot run through one."""
    found: dict[int, Cutout] = {}
    k = 0 if place.axis == "x" else 1
    middle = place.joint_mm + (-JOINT_GAP_MM / 2 if place.second else JOINT_GAP_MM / 2)
    for index, cutout in enumerate(slab.cutouts):
        bounds = kind_of(cutout).placed(cutout, 0.0)[0].bounds
        low, high = bounds[k], bounds[k + 2]
        own = replace(
            cutout,
            centre=_seen(cutout.centre, at_mm) if cutout.centre is not None else None,
            points=tuple(_seen(point, at_mm) for point in cutout.points),
        )
        if index == through:
            if cutout.open_to is not None or abs((low + high) / 2 - place.joint_mm) > _MIDDLE_MM:
                return None
            found[index] = replace(own, open_to=place.joint)
        elif ((low + high) / 2 > middle) == place.second:
            if cutout.open_to is not None and cutout.open_to not in place.sides:
                return None
            side = place.sides[cutout.open_to][0] if cutout.open_to is not None else None
            found[index] = replace(own, open_to=side)
    return found


def _seen(place: Point, from_mm: XY) -> Point:
    """Return a place relative to a corner ``from_mm`` to the right and to the back."""
    x, y = place.x, place.y
    return Point(
        x.in_unit(x.mm - from_mm[0]) if from_mm[0] else x,
        y.in_unit(y.mm - from_mm[1]) if from_mm[1] else y,
    )


def _extent(relief: Relief, axis: Axis) -> tuple[float, float]:
    """From where to where a relief lies along an axis, in mm."""
    outline, size = relief.outline, (0.0, 0.0)
    if isinstance(outline, Rectangle | LShape):
        size = (outline.length.mm, outline.width.mm)
    bounds, k = outline_shape(outline, *size, 0.0)[0].bounds, 0 if axis == "x" else 1
    at = (relief.at.x.mm, relief.at.y.mm)[k]
    return bounds[k] + at, bounds[k + 2] + at


def _holds(place: PiecePlace, extent: tuple[float, float]) -> bool:
    """Return whether a relief lies on a piece's own side of the joint."""
    if place.second:
        return extent[0] >= place.joint_mm
    return extent[1] <= place.joint_mm


def _size_from(slab: Slab, sides: Sides) -> SizeFrom:
    """What a piece is measured from: one in the middle between walls meets none of them."""
    if slab.size_from == "between-walls" and not wall_sides(slab) & set(sides):
        return "finished"
    return slab.size_from


def _edges(slab: Slab, sides: Sides, joint: str) -> Mapping[str, Edge]:
    """Return a piece's edges as on the slab's sides; the one at the joint is unseen.

    Between walls every wall is named, so that the joint is taken for none.
    """
    own = {mine: slab.edges[side] for side, (mine, _) in sides.items() if side in slab.edges}
    if slab.size_from != "between-walls":
        return MappingProxyType({joint: Edge("wall"), **own})
    walls = wall_sides(slab)
    met = {
        mine: replace(own.get(mine, Edge()), profile="wall", size=None)
        for side, (mine, _) in sides.items()
        if side in walls
    }
    return MappingProxyType({**own, **met})
