"""One view's scene: what is drawn, from where, in which light and how finely."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from ledgerstone.drawing import surroundings
from ledgerstone.drawing.camera import Camera
from ledgerstone.drawing.frame import leading_length
from ledgerstone.drawing.tint import RGB
from ledgerstone.order import Slab
from ledgerstone.shape import Shape

WIDTH: Final = 800.0
_TALLEST: Final = 600.0
_MARGIN: Final = 44.0
_REST_SHARE: Final = 0.16
_REST_MOST_MM: Final = 380.0
_BED_MM: Final = 40.0
_BUSY: Final = 12  # hollows from which on they are drawn coarser, to keep the picture light
_FULL: Final = 17  # hollows from which on each is lit evenly
_FRILLS: Final = 260  # points of an outline above which its faces are drawn flat
_FINE: Final = 0.32  # how far, in units, a drawn course may stray from a round one
_STOPS: Final = 16
_FEW_STOPS: Final = 5


@dataclass(frozen=True, slots=True)
class Scene:
    """All that the parts of one view share."""

    slab: Slab
    shape: Shape
    camera: Camera
    floor_mm: float
    colour: RGB
    gloss: float
    seed: str
    prefix: str

    @property
    def is_frilly(self) -> bool:
        """Whether the outline has so many points that its faces are drawn flat."""
        return len(self.shape.outline.exterior.coords) > _FRILLS

    @property
    def is_plain(self) -> bool:
        """Whether there is little enough to draw that all of it may be drawn finely."""
        return self._hollows <= _BUSY and not self.is_frilly

    @property
    def is_full(self) -> bool:
        """Whether there are so many openings and reliefs that each is drawn very plainly."""
        return self._hollows > _FULL

    @property
    def _hollows(self) -> int:
        return len(self.shape.openings) + len(self.shape.reliefs)

    @property
    def fine_mm(self) -> float:
        """How far a drawn course may stray from a round one."""
        coarser = 1.0 if self.is_plain else 2.0 if self.is_full else 1.25
        return _FINE * coarser / self.camera.per_mm

    @property
    def stops(self) -> int:
        """How many stops a face's changing light may take."""
        if self.is_frilly or self.is_full:
            return 1
        return _STOPS if self.is_plain else _FEW_STOPS


def floor_of(slab: Slab, shape: Shape) -> float:
    """Height of the floor: as low as the deepest drop, and under short rests."""
    depths = [edge.drop.depth.mm for edge in slab.edges.values() if edge.drop is not None]
    if slab.rests is not None:
        longest = max(shape.length_mm, shape.width_mm)
        tall = min(_REST_MOST_MM, _REST_SHARE * longest)
        depths.append(_BED_MM if slab.rests.kind == "full" else tall)
    return -shape.thickness_mm - max(depths, default=0.0)


def camera_for(slab: Slab, shape: Shape, floor_mm: float) -> tuple[Camera, float]:
    """Fit the slab, its shadow and the rule into the picture; say how tall it comes out."""
    bare = Camera()
    x0, y0, x1, y1 = shape.outline.bounds
    longest = max(x1 - x0, y1 - y0)
    rod_mm, _, _ = surroundings.rod_of(leading_length(slab), longest)
    near, far = surroundings.rod_corners(shape, rod_mm, 0.03 * max(longest, rod_mm))
    points = [bare.at(x, y, z) for x in (x0, x1) for y in (y0, y1) for z in (0.0, floor_mm)]
    points += [bare.at(x, y, floor_mm) for x, y in (near, far, (far[0], near[1]))]
    points += surroundings.shadow_ends(shape, bare, floor_mm)
    low_x, high_x = min(p[0] for p in points), max(p[0] for p in points)
    low_y, high_y = min(p[1] for p in points), max(p[1] for p in points)
    per_mm = min((WIDTH - 2 * _MARGIN) / (high_x - low_x), _TALLEST / (high_y - low_y))
    left = (WIDTH - per_mm * (high_x - low_x)) / 2
    camera = Camera(per_mm, (left - per_mm * low_x, _MARGIN - per_mm * low_y))
    tall = per_mm * (high_y - low_y) + 2 * _MARGIN + surroundings.LETTERS
    return camera, float(math.ceil(tall))
