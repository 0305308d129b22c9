"""Joints in the view: a fine dark line along two tops that meet, and down their nearer edge."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from ledgerstone.drawing.camera import LEVEL
from ledgerstone.drawing.joining import PlanTransform, drawn_joins
from ledgerstone.drawing.scene import Scene
from ledgerstone.drawing.standing import Standing
from ledgerstone.drawing.svg import SvgElement, element, path_of
from ledgerstone.drawing.tint import mixed
from ledgerstone.order import Join

_SAME_HEIGHT_MM: Final = 1.0
_THINNEST_PX: Final = 1.4
_DARK, _SHARE = (20, 20, 20), 0.6


def seams(
    standings: Sequence[Standing], scenes: Sequence[Scene], joins: Sequence[Join]
) -> Iterator[SvgElement]:
    """Draw each joint between level slabs of one height.

    Parameters
    ----------
    standings
        The slabs in the room: the level ones come first.
    joins
        Those between level slabs, by their indices among them.
    """
    level = [standing for standing in standings if standing.upright is None]
    shapes = [standing.piece.shape for standing in level]
    for drawn in drawn_joins(shapes, joins, (PlanTransform(),) * len(level)):
        one, other = drawn.join.one.slab, drawn.join.other.slab
        if abs(level[one].height_mm - level[other].height_mm) > _SAME_HEIGHT_MM:
            continue
        scene = scenes[one]
        far, near = sorted(drawn.line, key=lambda point: -LEVEL.seen(point)[1])
        down = -min(shapes[one].thickness_mm, shapes[other].thickness_mm)
        course = [(*far, 0.0), (*near, 0.0), (*near, down)]
        yield element(
            "path",
            d=path_of([scene.camera.at(*point) for point in course], closed=False),
            fill="none",
            stroke=mixed(scene.colour, _DARK, _SHARE),
            stroke_width=max(_THINNEST_PX, drawn.join.gap.mm * scene.camera.per_mm),
            data_part="joint",
        )
