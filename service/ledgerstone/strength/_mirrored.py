"""A plan's mirror images: one of them is meshed, and what is alike on both sides is meshed once.

So the mirror image of a plan gets the mirror image of its mesh, and a plan that is its own mirror
image gets a mesh that is.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from shapely import affinity
from shapely.geometry import Polygon, box
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.strength._exchange import BoolArray
from ledgerstone.strength._outline import FloatArray, IntArray

SAME_MM = 1e-3  # corners of images that lie so near to each other are the same
DIGITS = 6  # of coordinates in mm that are meshed: what else differs is rounding
ON_THE_AXIS_MM = 1e-6
OFF_A_STEP = 0.317  # added before rounding down: no length that people name lies so far off a step
SHARPEST, SHORTEST_MM = 1.2, 5.0  # corner, radians, and side that a fold may leave on its axis
IMAGES = ((1.0, 1.0), (-1.0, 1.0), (1.0, -1.0), (-1.0, -1.0))


@dataclass(frozen=True, slots=True)
class Image:
    """Where a plan's mirror image lies that is meshed.

    Parameters
    ----------
    middle
        Of the box around the plan, mm, shape (2,): the image has its middle at nothing.
    sign
        What is mirrored, along x and along y, shape (2,).
    folds
        Along which axes one half is meshed for both, shape (2,).
    """

    middle: FloatArray
    sign: FloatArray
    folds: FloatArray

    def of(self, shape: Polygon) -> Polygon:
        """Image of a plan, its rings begun at the same corners whatever they were begun at."""
        seen = shapely.transform(
            shape, lambda p: np.round((p - self.middle) * self.sign, DIGITS) + 0.0
        )
        return shapely.normalize(seen)

    def points(self, points: FloatArray) -> tuple[FloatArray, IntArray]:
        """Images of points (k, 2) in the part that is meshed, and which copy of it each is in."""
        seen = (points - self.middle) * self.sign
        beyond = (seen < 0.0) & (self.folds > 0.0)
        seen = np.where(beyond, -seen, seen)
        return seen, (beyond[:, 0] + (1 + (self.folds[0] > 0.0)) * beyond[:, 1]).astype(np.intp)

    @property
    def copies(self) -> int:
        """How many copies of what is meshed make the whole."""
        return int(2 ** (self.folds > 0.0).sum())

    def part(self, shape: Polygon, smoothed: Callable[[Polygon], Polygon]) -> tuple[Image, Polygon]:
        """Part of an image that is meshed, smoothed.

        It is all of it where one half comes in pieces, or has a sharp tip or a short side there.
        """
        if self.copies == 1:
            return self, smoothed(shape)
        reach = 1.0 + float(np.abs(shape.bounds).max())
        x, y = (0.0 if fold else -reach for fold in self.folds)
        met = plane.intersection(shape, box(x, y, reach, reach))
        if isinstance(met, Polygon) and abs(self.copies * met.area - shape.area) < 1.0:
            part = smoothed(met)
            if self._is_plain(shapely.get_coordinates(part.exterior)[:-1]):
                return self, part
        return Image(self.middle, self.sign, np.zeros(2)), smoothed(shape)

    def _is_plain(self, ring: FloatArray) -> bool:
        """Whether a ring (n, 2) has no sharp tip and no short side where it is folded."""
        cut = self.on_an_axis(ring)
        to, back = np.roll(ring, -1, axis=0) - ring, np.roll(ring, 1, axis=0) - ring
        across = to[:, 0] * back[:, 1] - to[:, 1] * back[:, 0]
        angle = np.abs(np.arctan2(across, np.einsum("ij,ij->i", to, back)))
        side = np.minimum(np.hypot(*to.T), np.hypot(*back.T))
        return bool((angle[cut] > SHARPEST).all() and (side[cut] > SHORTEST_MM).all())

    def whole(self, part: Polygon) -> Polygon:
        """The plan of which a polygon is the part that is meshed."""
        parts = [part]
        for axis in np.flatnonzero(self.folds).tolist():
            x, y = (-1.0 if axis == k else 1.0 for k in range(2))
            parts += [affinity.scale(one, x, y, origin=(0.0, 0.0)) for one in parts]
        whole = plane.polygons_in(plane.union(parts).simplify(ON_THE_AXIS_MM))[0]
        return shapely.transform(whole, lambda p: p * self.sign + self.middle)

    def on_an_axis(self, points: FloatArray) -> BoolArray:
        """Whether points (k, 2) of the part that is meshed lie where it is folded, shape (k,)."""
        return np.asarray(((np.abs(points) < ON_THE_AXIS_MM) & (self.folds > 0.0)).any(axis=1))

    def unfolded(self, nodes: FloatArray) -> tuple[FloatArray, list[IntArray]]:
        """Nodes of every copy in the plan (n, 2), and each copy's node numbers."""
        every, numbers = nodes, [np.arange(len(nodes))]
        for axis in np.flatnonzero(self.folds).tolist():
            off = np.abs(every[:, axis]) > ON_THE_AXIS_MM
            number = np.where(off, len(every) + np.cumsum(off) - 1, np.arange(len(every)))
            mirrored = every[off]
            mirrored[:, axis] *= -1.0
            numbers += [number[one] for one in numbers]
            every = np.concatenate([every, mirrored])
        return every * self.sign + self.middle, numbers

    def turns_over(self, copy: int) -> bool:
        """Whether a copy runs clockwise in the plan where the part that is meshed does not."""
        mirrored = copy.bit_count() + int((self.sign < 0.0).sum())
        return mirrored % 2 == 1


def image_of(outline: Polygon, zones: Sequence[Polygon]) -> Image:
    """The one of a plan's four mirror images that is meshed: the same for all four."""
    x0, y0, x1, y1 = outline.bounds
    middle = np.array([0.5 * (x0 + x1), 0.5 * (y0 + y1)])
    shapes = [outline, *zones]
    images = [_corners(shapes, middle, np.array(sign)) for sign in IMAGES]
    alike = [np.array_equal(images[0], other) for other in images]
    plain = len(images[0]) == 4  # rows of points are alike both ways on a plain rectangle
    folds = np.array([one and not plain and not zones for one in alike[1:3]], dtype=float)
    first = min(range(4), key=lambda k: images[k].tolist())
    return Image(middle, np.where(folds > 0.0, 1.0, IMAGES[first]), folds)


def _corners(shapes: Sequence[BaseGeometry], middle: FloatArray, sign: FloatArray) -> IntArray:
    """Every corner of an image of some shapes as one whole number each, in order."""
    every = [np.zeros(0, dtype=np.int64)]
    for shape in shapes:
        seen = (shapely.get_coordinates(shape) - middle) * sign
        x, y = np.floor(seen / SAME_MM + OFF_A_STEP).astype(np.int64).T
        every.append(np.unique(x * 2**32 + y))
    return np.concatenate(every)
