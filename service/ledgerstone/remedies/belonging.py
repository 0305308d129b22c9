"""What belongs to what on a slab: a tap to its bowl, a bowl or a hob to its unit."""

from __future__ import annotations

from collections.abc import Mapping

from ledgerstone.cutouts import cutout_size_mm
from ledgerstone.order import Cutout, Slab, UnitFor
from ledgerstone.remedies.policy import is_bowl, is_hob, is_tap
from ledgerstone.shape import Shape

_SMALL_MM = 60.0
_BOWL_FROM_MM = 200.0
_NEAR_MM = 200.0  # a tap stands about so near to its bowl; common practice, no source
_OTHERWISE = ("cable", "socket", "plug", "pipe", "post", "umbrella", "parasol")


def unit_for(cutout: Cutout) -> UnitFor | None:
    """Say for which unit an opening is, by what goes into it."""
    if is_hob(cutout):
        return "hob"
    return "basin" if is_bowl(cutout) else None


def belongings(slab: Slab, shape: Shape) -> Mapping[int, int]:
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
        if max(cutout_size_mm(cutout)) > _SMALL_MM or opening.polygon.is_empty:
            continue
        if not is_tap(cutout) and any(word in cutout.label.lower() for word in _OTHERWISE):
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
