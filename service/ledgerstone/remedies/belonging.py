"""Openings that move together: a tap with its bowl, a bowl or a hob with its unit."""

from __future__ import annotations

from collections.abc import Mapping

from ledgerstone.cutouts import cutout_size_mm
from ledgerstone.goes_in import TAP_SIZED_MM, is_apart, is_bowl, is_hob, is_tap
from ledgerstone.order import Slab
from ledgerstone.shape import Shape

# A basin is larger, a tap, a waste or a socket smaller: common practice, no source.
_BOWL_FROM_MM = 200.0
_NEAR_MM = 200.0  # greatest distance of a tap from its bowl; common practice, no source


def companions(slab: Slab, shape: Shape) -> Mapping[int, int]:
    """By cut-out that moves with another: which one."""
    bowls = [
        o
        for o in shape.openings
        if is_bowl(slab.cutouts[o.index])
        or (o.longer_mm >= _BOWL_FROM_MM and not is_hob(slab.cutouts[o.index]))
    ]
    found: dict[int, int] = {}
    for opening in shape.openings:
        cutout = slab.cutouts[opening.index]
        if max(cutout_size_mm(cutout)) > TAP_SIZED_MM or opening.polygon.is_empty:
            continue
        if not is_tap(cutout) and is_apart(cutout):
            continue
        near = [
            (bowl.polygon.distance(opening.polygon), bowl.index)
            for bowl in bowls
            if bowl.index != opening.index
        ]
        away, bowl = min(near, default=(_NEAR_MM + 1.0, -1))
        if away <= _NEAR_MM:
            found[opening.index] = bowl
    return found
