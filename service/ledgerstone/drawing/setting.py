"""Positions of an order's slabs in the room of the view: joined, each at its own height."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

import numpy as np
import shapely
from shapely.geometry.polygon import orient

from ledgerstone.drawing.beneath import rest_polygons
from ledgerstone.drawing.joining import PlanTransform, assemble
from ledgerstone.drawing.standing import Coordinates, DrawnSlab, Standing, moved
from ledgerstone.drawing.uprights import panels_mm, stand_upright
from ledgerstone.order import UPRIGHT_USES, Join, JoinEnd, Slab
from ledgerstone.shape import Shape

# How high a top stands above the floor, mm; common practice, no source.
_UNITS_MM: Final = 870.0
_TABLE_MM: Final = 730.0
_SHELF_MM: Final = 700.0
_BED_MM: Final = 40.0  # a hearth on its bed
_SHARE: Final = 0.36  # of the order's longest slab: more would leave little room for the concrete
_STEM_SHARE: Final = 0.66  # on one stem: less would hide it behind the top, seen from so high
_PANEL_BED_MM: Final = 9.0  # how far a bed or a block is shown inside the slab's outline


def stand_together(pieces: Sequence[DrawnSlab], joins: Sequence[Join]) -> list[Standing]:
    """Set an order's slabs together by their joins: the level ones first, then the upright.

    One level slab stays where its own plane has it. Where more of them turn their backs to the
    right than to the left the room is mirrored, so that their fronts are seen; ``is_mirrored``
    says so.
    """
    mirrored = is_mirrored(pieces, joins)
    longest = max(max(piece.shape.length_mm, piece.shape.width_mm) for piece in pieces)
    level = _level(pieces)
    stands = zip(level, _stands(pieces, joins), strict=True)
    hosts = [_standing(pieces[i], stand, longest, mirrored=mirrored) for i, stand in stands]
    uprights = [i for i in range(len(pieces)) if i not in level]
    if not uprights:
        return hosts
    tall = panels_mm(pieces, joins, level, hosts)
    hosts = [_raised(host, tall) for host in hosts]
    return hosts + stand_upright(pieces, joins, level, hosts, mirrored=mirrored)


def is_mirrored(pieces: Sequence[DrawnSlab], joins: Sequence[Join]) -> bool:
    """Return whether the room is shown from its other side."""
    backs = [stand.along((0.0, 1.0))[0] for stand in _stands(pieces, joins)]
    return sum(round(x) for x in backs) > 0


def _level(pieces: Sequence[DrawnSlab]) -> list[int]:
    """Number the slabs that lie level."""
    return [i for i, piece in enumerate(pieces) if piece.slab.use not in UPRIGHT_USES]


def _stands(pieces: Sequence[DrawnSlab], joins: Sequence[Join]) -> tuple[PlanTransform, ...]:
    """Where the level slabs stand to each other."""
    level = _level(pieces)
    if len(level) <= 1:
        return (PlanTransform(),) * len(level)
    return assemble([pieces[i].shape for i in level], level_joins(pieces, joins)).stands


def level_joins(pieces: Sequence[DrawnSlab], joins: Sequence[Join]) -> list[Join]:
    """Return the joins between level slabs, which are numbered among themselves."""
    at = {number: i for i, number in enumerate(_level(pieces))}
    return [
        replace(
            join,
            one=JoinEnd(at[join.one.slab], join.one.side),
            other=JoinEnd(at[join.other.slab], join.other.side),
        )
        for join in joins
        if join.one.slab in at and join.other.slab in at
    ]


def _standing(
    piece: DrawnSlab, stand: PlanTransform, longest_mm: float, *, mirrored: bool
) -> Standing:
    flip = -1.0 if mirrored else 1.0
    (ax, ay), (bx, by) = stand.along((1.0, 0.0)), stand.along((0.0, 1.0))
    turn = np.array([[flip * ax, ay], [flip * bx, by]])
    move = np.array([flip * stand.move_mm[0], stand.move_mm[1]])

    def placed(points: Coordinates) -> Coordinates:
        return np.asarray(points @ turn + move)

    slab, shape = piece.slab, piece.shape
    rests = () if slab.rests is None else rest_polygons(slab.rests, shape, _PANEL_BED_MM)
    height = _height_mm(slab, shape, longest_mm)
    if stand == PlanTransform() and not mirrored:
        return Standing(piece, tuple(orient(rest) for rest in rests), (0.0, -1.0), height)
    there = replace(piece, shape=moved(shape, placed, mirrored=mirrored))
    rests_in_place = tuple(orient(shapely.transform(rest, placed)) for rest in rests)
    return Standing(there, rests_in_place, (-flip * bx, -by), height)


def _raised(host: Standing, tall_mm: float) -> Standing:
    """Set a top at the height of the order's end panels, which reach from it to the floor."""
    if not tall_mm or host.hangs or host.piece.slab.use == "hearth":
        return host
    return replace(host, height_mm=tall_mm)


def _height_mm(slab: Slab, shape: Shape, longest_mm: float) -> float:
    """Height of a top above the floor: never below its deepest drop, less under short slabs."""
    depths = [edge.drop.depth.mm for edge in slab.edges.values() if edge.drop is not None]
    least = shape.thickness_mm + max(depths, default=0.0)
    if slab.rests is None:
        return least
    if slab.use == "hearth":
        return max(least, shape.thickness_mm + _BED_MM)
    tall, share = _UNITS_MM, _SHARE
    if slab.rests.kind in ("legs", "pedestal"):
        tall = _TABLE_MM
    if slab.rests.kind == "pedestal":
        share = _STEM_SHARE
    if slab.use == "shelf":
        tall = _SHELF_MM
    return max(least, shape.thickness_mm + min(tall, share * longest_mm))
