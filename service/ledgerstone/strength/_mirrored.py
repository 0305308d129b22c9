"""A plan's mirror images: the same one of the four is meshed for each of them.

So the mirror image of a plan gets the mirror image of its mesh.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone.arrays import FloatArray, IntArray

SAME_MM = 1e-3  # corners of images nearer to each other than this are the same
DIGITS = 6  # of coordinates in mm that are meshed: what else differs is rounding
OFF_A_STEP = 0.317  # added before rounding down: no usual length ends in this fraction of a step
# As it is, and mirrored along x, y and both.
IMAGES = ((1.0, 1.0), (-1.0, 1.0), (1.0, -1.0), (-1.0, -1.0))


@dataclass(frozen=True, slots=True)
class Image:
    """The mirror image of a plan that is meshed.

    Parameters
    ----------
    middle
        Of the box around the plan, mm, shape (2,): the image has its middle at the origin.
    sign
        What is mirrored, along x and along y, shape (2,).
    alike
        Whether the plan is its own mirror image along x, and along y.
    """

    middle: FloatArray
    sign: FloatArray
    alike: tuple[bool, bool]

    def of(self, shape: Polygon) -> Polygon:
        """Image of a plan, mm, its rings normalised to begin at the same corners."""
        seen = shapely.transform(
            shape, lambda p: np.round((p - self.middle) * self.sign, DIGITS) + 0.0
        )
        return shapely.normalize(seen)

    def points(self, points: FloatArray) -> FloatArray:
        """Images of points, mm, shape (k, 2) each.

        Source
        ------
        Geometry.
        """
        return np.asarray((points - self.middle) * self.sign)

    def back(self, points: FloatArray) -> FloatArray:
        """Points of the plan from their images, mm, shape (k, 2) each.

        Source
        ------
        Geometry.
        """
        return np.asarray(points * self.sign + self.middle)

    @property
    def turns_over(self) -> bool:
        """Whether what runs anticlockwise in the image runs clockwise in the plan."""
        return bool(self.sign.prod() < 0.0)


def image_of(outline: Polygon, zones: Sequence[BaseGeometry]) -> Image:
    """The one of a plan's four mirror images that is meshed: the same for all four."""
    x0, y0, x1, y1 = outline.bounds
    middle = np.array([0.5 * (x0 + x1), 0.5 * (y0 + y1)])
    shapes = [outline, *zones]
    images = [_corners(shapes, middle, np.array(sign)) for sign in IMAGES]
    first = min(range(4), key=lambda k: images[k].tolist())
    alike = (np.array_equal(images[0], images[1]), np.array_equal(images[0], images[2]))
    return Image(middle, np.array(IMAGES[first]), alike)


def _corners(shapes: Sequence[BaseGeometry], middle: FloatArray, sign: FloatArray) -> IntArray:
    """Every corner of an image of some shapes as one whole number each, in order."""
    every = [np.zeros(0, dtype=np.int64)]
    for shape in shapes:
        seen = (shapely.get_coordinates(shape) - middle) * sign
        x, y = np.floor(seen / SAME_MM + OFF_A_STEP).astype(np.int64).T
        every.append(np.unique(x * 2**32 + y))
    return np.concatenate(every)
