"""Faults of shapes that are too small or too sharp to be concrete in any workshop.

A shape that a workshop does not cast (a sliver, a thin strip) is a finding with its remedies. One
below these bounds is a fault of the request: mostly a wrong unit.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import Final

import numpy as np
import numpy.typing as npt
import shapely

from ledgerstone.errors import Fault
from ledgerstone.message import Message
from ledgerstone.order import Cutout, LShape, Outline, Point, Relief, Round, Slab
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.quantities import Length

MIN_SLAB_MM: Final = 10.0  # width in every direction; common practice, no source
MIN_THICKNESS_MM: Final = 5.0  # finer than the thinnest sprayed skin; the same
MIN_OPENING_MM: Final = 3.0  # a knockout thinner than a nail does not come out; the same
MIN_NOTCH_MM: Final = 1.0
MIN_ANGLE_DEGREES: Final = 5.0  # no grain of 6 mm goes into its last 69 mm
MIN_APART_MM: Final = 1.0
_FINE_MM: Final = 1e-6

Points = npt.NDArray[np.float64]


def min_size_faults(slab: Slab, size_mm: tuple[float, float] | None) -> Iterable[Fault]:
    """Yield the faults of a slab, its openings and its reliefs, by pointer from the slab.

    ``size_mm`` is its finished length and width, if its outline has them.
    """
    yield from _outline_faults(slab.outline, "/outline", MIN_SLAB_MM, "slab", size_mm)
    for i, cutout in enumerate(slab.cutouts):
        yield from _cutout_faults(cutout, f"/cutouts/{i}")
    for i, relief in enumerate(slab.reliefs):
        yield from _relief_faults(relief, f"/reliefs/{i}")


def _outline_faults(
    outline: Outline,
    pointer: str,
    least_mm: float,
    what: str,
    size_mm: tuple[float, float] | None = None,
) -> Iterable[Fault]:
    if isinstance(outline, Round):
        yield from _too_small(outline.diameter, least_mm, f"{pointer}/diameter", what)
    elif isinstance(outline, OrderPolygon):
        yield from polygon_faults(_points(outline.points), f"{pointer}/points", least_mm, what)
    else:
        size = size_mm or (outline.length.mm, outline.width.mm)
        for length, mm, name in zip(
            (outline.length, outline.width), size, ("length", "width"), strict=True
        ):
            yield from _too_small(length, least_mm, f"{pointer}/{name}", what, mm)
        if isinstance(outline, LShape):
            yield from _notch_faults(outline, pointer, least_mm, size)


def _notch_faults(
    outline: LShape, pointer: str, least_mm: float, size_mm: tuple[float, float]
) -> Iterable[Fault]:
    """Yield the faults of an L: a notch that is almost nothing, or leaves almost nothing."""
    notch = outline.notch
    for name, cut, whole in (
        ("length", notch.length, size_mm[0]),
        ("width", notch.width, size_mm[1]),
    ):
        here = f"{pointer}/notch/{name}"
        yield from _too_small(cut, MIN_NOTCH_MM, here, "notch")
        left = whole - cut.mm
        if 0.0 < left < least_mm - _FINE_MM:
            least = cut.like(least_mm, "up")
            yield Fault(here, Message("least-beside-notch", least=least))


def _cutout_faults(cutout: Cutout, pointer: str) -> Iterable[Fault]:
    what = "cutout"
    if cutout.kind == "polygon":
        points = _points(cutout.points)
        yield from polygon_faults(points, f"{pointer}/points", MIN_OPENING_MM, what)
    for name in ("diameter", "length", "width"):
        size: Length | None = getattr(cutout, name)
        if size is not None:
            yield from _too_small(size, MIN_OPENING_MM, f"{pointer}/{name}", what)


def _relief_faults(relief: Relief, pointer: str) -> Iterable[Fault]:
    yield from _outline_faults(relief.outline, f"{pointer}/outline", MIN_OPENING_MM, "relief")


def _too_small(
    length: Length, least_mm: float, pointer: str, what: str, mm: float | None = None
) -> Iterable[Fault]:
    measured = length.mm if mm is None else mm
    if 0.0 < measured < least_mm - _FINE_MM:
        least, is_now = length.like(least_mm, "up"), length.in_unit(measured)
        yield Fault(pointer, Message("least-across", what=what, least=least, measured=is_now))


# --- polygons -------------------------------------------------------------------------------


def polygon_faults(points: Points, pointer: str, least_mm: float, what: str) -> Iterable[Fault]:
    """Yield the faults of a ring that encloses an area: too slim, too sharp, or nearly touching.

    Parameters
    ----------
    points
        Corners in plane mm, shape (n, 2), the first not repeated.
    """
    if min_width_mm(points) < least_mm - _FINE_MM:
        yield Fault(
            pointer,
            Message("least-across-everywhere", what=what, least=Length.of_mm(least_mm)),
        )
        return
    sharp = np.flatnonzero(corner_degrees(points) < MIN_ANGLE_DEGREES)
    for i in sharp:
        yield Fault(
            f"{pointer}/{i}",
            Message("corner-too-sharp", least=MIN_ANGLE_DEGREES),
        )
    close = next(iter(np.flatnonzero(_nearest_side_mm(points) < MIN_APART_MM)), None)
    if not sharp.size and close is not None:
        yield Fault(
            f"{pointer}/{close}",
            Message("point-near-a-side", least=Length.of_mm(MIN_APART_MM)),
        )


def min_width_mm(points: Points) -> float:
    """Return the least distance between two parallel lines that a ring lies between, in mm.

    It lies along a side of the convex hull.

    Source
    ------
    Houle and Toussaint, Computing the Width of a Set, IEEE PAMI 10 (1988), theorem 1.
    """
    hull = shapely.get_coordinates(shapely.convex_hull(shapely.multipoints(points)))
    if len(hull) < 4:
        return 0.0
    along = np.diff(hull, axis=0)
    normals = np.column_stack([-along[:, 1], along[:, 0]]) / np.hypot(*along.T)[:, None]
    reach = hull @ normals.T
    return float(np.ptp(reach, axis=0).min())


def corner_degrees(points: Points) -> Points:
    """Return the angle between the two sides at each corner, 0 to 180 degrees, shape (n,)."""
    back, ahead = np.roll(points, 1, axis=0) - points, np.roll(points, -1, axis=0) - points
    cross = back[:, 0] * ahead[:, 1] - back[:, 1] * ahead[:, 0]
    angles: Points = np.degrees(np.arctan2(np.abs(cross), (back * ahead).sum(axis=1)))
    return angles


def _nearest_side_mm(points: Points) -> Points:
    """Return each corner's distance from the nearest side that does not meet it, shape (n,)."""
    n = len(points)
    if n < 4:
        return np.full(n, math.inf)
    ends = np.stack([points, np.roll(points, -1, axis=0)], axis=1)
    sides, corners = np.asarray(shapely.linestrings(ends)), np.asarray(shapely.points(points))
    apart = np.asarray(shapely.distance(corners[:, None], sides[None, :]))
    at = np.arange(n)
    apart[at, at] = apart[at, at - 1] = math.inf
    nearest: Points = apart.min(axis=1)
    return nearest


def _points(points: Sequence[Point]) -> Points:
    return np.array([(point.x.mm, point.y.mm) for point in points])
