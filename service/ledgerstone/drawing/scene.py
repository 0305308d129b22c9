"""One view's scene: what is drawn, its camera, light and fineness."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Final

import shapely
from shapely.geometry import Point

from ledgerstone.drawing import surroundings
from ledgerstone.drawing.camera import LEVEL, Camera
from ledgerstone.drawing.fittings import TAP_HIGH_MM, Fitting, fittings_of
from ledgerstone.drawing.frame import leading_length
from ledgerstone.drawing.standing import DrawnSlab, Standing
from ledgerstone.drawing.tint import RGB
from ledgerstone.order import Slab
from ledgerstone.shape import Shape

VIEW_WIDTH: Final = 800.0
_TALLEST: Final = 600.0
_MARGIN: Final = 44.0
_BUSY: Final = 12  # hollows from which on they are drawn coarser, to keep the picture light
_FULL: Final = 17  # hollows from which on each is lit evenly
_MANY_POINTS: Final = 260  # points of an outline above which its faces are drawn flat
_FINE: Final = 0.32  # how far, in units, a drawn course may stray from a round one
_STOPS: Final = 16
_CONTRAST: Final = 0.7  # of an upright face, which is large: the room throws light back on it
_FEW_STOPS: Final = 5


@dataclass(frozen=True)
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
    fittings: Mapping[int, Fitting]

    @cached_property
    def face(self) -> RGB:
        """The shade as the room lights the slab's face: as it is where the face is level."""
        share = 1.0 - _CONTRAST * (1.0 - min(1.0, self.camera.pose.brightness((0.0, 0.0, 1.0))))
        red, green, blue = (round(part * share) for part in self.colour)
        return red, green, blue

    @property
    def is_level(self) -> bool:
        """Whether the slab lies as worktops do."""
        return self.camera.pose == LEVEL

    @cached_property
    def has_many_points(self) -> bool:
        """Whether the outline has so many points that its faces are drawn flat."""
        return int(shapely.get_num_points(self.shape.outline.exterior)) > _MANY_POINTS

    @property
    def is_plain(self) -> bool:
        """Whether there is little enough to draw that all of it may be drawn finely."""
        return self._hollows <= _BUSY and not self.has_many_points

    @property
    def is_full(self) -> bool:
        """Whether there are so many openings and reliefs that each is drawn very plainly."""
        return self._hollows > _FULL

    @property
    def _hollows(self) -> int:
        return len(self.shape.openings) + len(self.shape.reliefs)

    @cached_property
    def fine_mm(self) -> float:
        """Greatest distance of a drawn course from the true curve, mm."""
        coarser = 1.0 if self.is_plain else 2.0 if self.is_full else 1.25
        return _FINE * coarser / self.camera.per_mm

    @cached_property
    def stops(self) -> int:
        """How many stops a face's changing light may take."""
        if self.has_many_points or self.is_full:
            return 1
        return _STOPS if self.is_plain else _FEW_STOPS


def camera_for(standings: Sequence[Standing]) -> tuple[Camera, float]:
    """Fit slabs, shadows and the rule into the picture; return its height too, sheet units.

    Heights are below and above the first slab's top.
    """
    bare, first = Camera(), standings[0]
    floor = -first.height_mm
    longest = longest_mm(standings)
    rod_mm, _, _ = surroundings.rod_of(leading_length(first.piece.slab), longest)
    near, far = surroundings.rod_corners(bounds_of(standings), rod_mm, 0.03 * max(longest, rod_mm))
    points = [bare.at(x, y, floor) for x, y in (near, far, (far[0], near[1]))]
    for standing in standings:
        x0, y0, x1, y1 = standing.bounds
        points += [bare.at(x, y, floor) for x in (x0, x1) for y in (y0, y1)]
        points += [bare.at(x, y, floor + z) for x, y, z in standing.corners()]
        if standing.upright is None:
            points += surroundings.shadow_ends(standing.piece.shape, bare, floor)
            tall = floor + standing.height_mm + TAP_HIGH_MM
            points += [bare.at(place.x, place.y, tall) for place in taps_of(standing.piece)]
    low_x, high_x = min(p[0] for p in points), max(p[0] for p in points)
    low_y, high_y = min(p[1] for p in points), max(p[1] for p in points)
    per_mm = min((VIEW_WIDTH - 2 * _MARGIN) / (high_x - low_x), _TALLEST / (high_y - low_y))
    left = (VIEW_WIDTH - per_mm * (high_x - low_x)) / 2
    camera = Camera(per_mm, (left - per_mm * low_x, _MARGIN - per_mm * low_y))
    tall = per_mm * (high_y - low_y) + 2 * _MARGIN + surroundings.LETTERS
    return camera, float(math.ceil(tall))


def taps_of(piece: DrawnSlab) -> list[Point]:
    """Return where taps stand on a slab, plane mm."""
    found = fittings_of(piece.slab, piece.shape)
    return [o.polygon.centroid for o in piece.shape.openings if found.get(o.index) == "tap"]


def bounds_of(standings: Sequence[Standing]) -> surroundings.Bounds:
    """Box about all slabs, in the room's plane, mm."""
    every = [standing.bounds for standing in standings]
    low_x, low_y, high_x, high_y = zip(*every, strict=True)
    return min(low_x), min(low_y), max(high_x), max(high_y)


def longest_mm(standings: Sequence[Standing]) -> float:
    """Longest side of any slab's outline, mm."""
    every = [standing.piece.shape.outline.bounds for standing in standings]
    return max(max(x1 - x0, y1 - y0) for x0, y0, x1, y1 in every)
