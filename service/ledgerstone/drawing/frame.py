"""Mapping from a slab's millimetres to the sheet, and how its lengths are written there."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from operator import attrgetter

import numpy as np
import shapely
from numpy.typing import NDArray

from ledgerstone.drawing.placing import Box
from ledgerstone.message import Message
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.order import Round, Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape

SHEET_WIDTH = 600.0  # units
PHONE_WIDTH = 440.0  # so that a phone 390 px wide shows small letters 12 px high
SMALL = 15.0
TALL = 1.2 * SMALL  # height of a line of small letters, ascenders and descenders included
PLAIN = 16.0
LARGE = 21.0
MARGIN = 16.0

_TRIANGLE = 4  # points of a closed ring, its first again at its end
_BEYOND = 0.35  # of the longer side: how far off the slab a cut-out is still drawn


@dataclass(frozen=True, slots=True)
class Frame:
    """A scale and an origin: the front of a slab is at the bottom of its sheet.

    Attributes
    ----------
    per_mm
        Sheet units in a millimetre.
    origin
        Where (0, 0) of the plane lies on the sheet.
    slab, zone
        The outline's box and the box of all that is drawn to scale, on the sheet.
    start_mm, end_mm
        Corners of the outline's box in plane mm; dimensions run from the first.
    is_round
        Whether the overall is a diameter.
    point
        The decimal separator of its figures.
    sheet_width
        Units that the whole sheet is across.

    """

    per_mm: float
    origin: XY
    slab: Box
    zone: Box
    start_mm: XY
    end_mm: XY
    is_round: bool
    point: str = "."
    sheet_width: float = SHEET_WIDTH

    def at(self, point: XY) -> XY:
        """Return a plane point, mm, in sheet units, y down."""
        return self.origin[0] + self.per_mm * point[0], self.origin[1] - self.per_mm * point[1]

    def box(self, bounds: tuple[float, float, float, float]) -> Box:
        """Return a box in plane mm (x0, y0, x1, y1) as one in sheet units."""
        (x0, y1), (x1, y0) = self.at((bounds[0], bounds[1])), self.at((bounds[2], bounds[3]))
        return Box(x0, y0, x1, y1)

    @property
    def transform(self) -> str:
        """Plane millimetres to the sheet, y upwards, for a group that is drawn to scale."""
        x, y = self.origin
        return f"matrix({self.per_mm:.6f} 0 0 {-self.per_mm:.6f} {x:.3f} {y:.3f})"

    def units(self, sheet: float) -> float:
        """Return a length in sheet units in mm, for pens inside the scaled group."""
        return sheet / self.per_mm


def fit(shape: Shape, others: Iterable[XY], room: Box) -> Frame:
    """Fit a slab, and points a little off it (plane mm), into a box of the sheet, at its top."""
    x0, y0, x1, y1 = shape.outline.bounds
    reach = _BEYOND * max(x1 - x0, y1 - y0)
    near_x = [min(max(x, x0 - reach), x1 + reach) for x, _ in others_of(shape, others)]
    near_y = [min(max(y, y0 - reach), y1 + reach) for _, y in others_of(shape, others)]
    left, right = min([x0, *near_x]), max([x1, *near_x])
    low, high = min([y0, *near_y]), max([y1, *near_y])
    per_mm = min((room.x1 - room.x0) / (right - left), (room.y1 - room.y0) / (high - low))
    slack = (room.x1 - room.x0) - per_mm * (right - left)
    origin = (room.x0 + slack / 2 - per_mm * left, room.y0 + per_mm * high)
    bare = Frame(per_mm, origin, room, room, (x0, y0), (x1, y1), is_round=not shape.corners)
    slab, zone = bare.box((x0, y0, x1, y1)), bare.box((left, low, right, high))
    return replace(bare, slab=slab, zone=zone)


def others_of(shape: Shape, others: Iterable[XY]) -> list[XY]:
    """Corners, plane mm, of everything but the outline that should be seen."""
    boxes = [o.polygon.bounds for o in shape.openings if not o.polygon.is_empty]
    boxes += [relief.bounds for relief in shape.reliefs if not relief.is_empty]
    return [*others, *((b[0], b[1]) for b in boxes), *((b[2], b[3]) for b in boxes)]


def leading_length(slab: Slab) -> Length:
    """Return the length whose unit the whole sheet uses: the outline's first."""
    outline = slab.outline
    if isinstance(outline, Round):
        return outline.diameter
    if isinstance(outline, OrderPolygon):
        return max((c for p in outline.points for c in (p.x, p.y)), key=attrgetter("mm"))
    return outline.length


def shown(like: Length, mm: float) -> Length:
    """Round a computed length, mm, in another's unit: to 0.1 mm, or to a 64th of an inch."""
    if like.unit not in {"in", "ft"}:
        return like.in_unit(round(mm, 1))
    exact = like.in_unit(round(mm, 6))
    return exact if "." not in exact.text() else like.like(mm)


def length_text(like: Length, mm: float, point: str = ".") -> str:
    """Write a computed length, mm, in another's unit."""
    return shown(like, mm).text().replace(".", point)


def figures(like: Length, mm: float, point: str = ".") -> str:
    """Write a length, mm, for a dimension line, without the unit; feet as 4' 9"."""
    text = length_text(like, mm, point)
    if like.unit != "ft":
        return text.removesuffix(f" {like.unit}")
    if text == "0 in":
        return "0"
    return text.replace(" ft", "'").replace(" in", '"')


def unit_note(like: Length) -> Message:
    """State in which unit the figures are."""
    return Message("plan-figures", unit=like.unit)


def course_of(ring: shapely.Geometry) -> list[list[float]]:
    """Return a closed ring's points, plane mm, the first not repeated."""
    points: list[list[float]] = ring_points(ring).tolist()
    return points


def simpler(line: shapely.Geometry, within_mm: float) -> shapely.Geometry:
    """Leave out points of a ring or a line that lie near the course of the others.

    A ring that would come to nothing keeps a triangle. Where no part of the course comes near
    another, it is what GEOS leaves where it looks at that too, which takes twenty times as long.
    """
    left = shapely.simplify(line, within_mm, preserve_topology=False)
    return left if shapely.get_num_points(left) > _TRIANGLE else shapely.simplify(line, within_mm)


def ring_points(ring: shapely.Geometry) -> NDArray[np.float64]:
    """Return the same as an array, shape ``(n, 2)``."""
    return shapely.get_coordinates(ring)[:-1]
