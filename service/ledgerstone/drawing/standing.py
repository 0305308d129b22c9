"""The position of a slab in the room of the view: level on its rests, or upright."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry import LineString, MultiPolygon, Polygon
from shapely.geometry.polygon import orient

from ledgerstone import plane
from ledgerstone.drawing.camera import LEVEL, XYZ, Pose
from ledgerstone.order import Slab
from ledgerstone.outline import XY, Side
from ledgerstone.shape import Opening, Shape

Coordinates = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class DrawnSlab:
    """One slab to be seen.

    Attributes
    ----------
    shape
        The slab's, from ``shape_of``.
    colour
        The shade, ``#rrggbb``: the mean colour of the slab's top.
    gloss
        From 0, matt, to 1, polished under a film.
    seed
        Where its voids and mottling lie: the same seed, the same picture.
    """

    slab: Slab
    shape: Shape
    colour: str
    gloss: float
    seed: str


@dataclass(frozen=True, slots=True)
class Upright:
    """The position of a slab that is on its edge.

    Attributes
    ----------
    pose
        Which way its own axes run.
    at_mm
        Origin of its plane: the room's x and y, and height above the floor, mm.
    host
        Index of the level slab that it belongs to; None if there is none.
    is_near
        Whether it is on the viewer's side of that slab.
    has_wall
        Whether there is a wall behind it.
    """

    pose: Pose
    at_mm: XYZ
    host: int | None
    is_near: bool
    has_wall: bool


@dataclass(frozen=True, slots=True)
class Standing:
    """A piece in the room.

    Attributes
    ----------
    piece
        The piece, its shape in the room's plane, mm; in its own plane where it stands upright.
    rests
        What carries it, in the room's plane, mm.
    front
        Which way its front, or an upright one's face, looks, length one.
    height_mm
        How far its top is above the floor.
    upright
        How it stands, where it does not lie level.
    """

    piece: DrawnSlab
    rests: tuple[Polygon, ...]
    front: XY
    height_mm: float
    upright: Upright | None = None

    @property
    def hangs(self) -> bool:
        """Whether it is a shelf, which hangs on a wall above no floor that is shown."""
        rests = self.piece.slab.rests
        return self.piece.slab.use == "shelf" and rests is not None and rests.kind == "ledges"

    @property
    def pose(self) -> Pose:
        """Which way its own axes run in the room."""
        return LEVEL if self.upright is None else self.upright.pose

    @property
    def at_mm(self) -> XYZ:
        """Where its plane's origin stands: the room's x and y, and above the floor."""
        return (0.0, 0.0, self.height_mm) if self.upright is None else self.upright.at_mm

    @property
    def has_wall(self) -> bool:
        """Whether it stands at a wall."""
        return self.upright is not None and self.upright.has_wall

    def corners(self) -> Iterator[XYZ]:
        """Corners of the box about it, its face and its underside: in the room, above the floor."""
        x0, y0, x1, y1 = self.piece.shape.outline.bounds
        left, back, up = self.at_mm
        for point in ((x, y, z) for x in (x0, x1) for y in (y0, y1) for z in (0.0, -self._thick)):
            x, y, z = self.pose.in_room(point)
            yield left + x, back + y, up + z

    @property
    def _thick(self) -> float:
        return self.piece.shape.thickness_mm

    @property
    def bounds(self) -> tuple[float, float, float, float]:
        """Box about it in the room's plane, mm."""
        if self.upright is None:
            x0, y0, x1, y1 = self.piece.shape.outline.bounds
            return x0, y0, x1, y1
        xs, ys, _ = zip(*self.corners(), strict=True)
        return min(xs), min(ys), max(xs), max(ys)


def moved(shape: Shape, placed: Callable[[Coordinates], Coordinates], *, mirrored: bool) -> Shape:
    """Return a shape elsewhere in its plane, its courses anticlockwise still."""
    backward = -1 if mirrored else 1

    def polygon(part: Polygon) -> Polygon:
        return part if part.is_empty else orient(shapely.transform(part, placed))

    corners = placed(np.array(shape.corners).reshape(-1, 2))[::backward].tolist()
    return replace(
        shape,
        outline=polygon(shape.outline),
        corners=tuple((x, y) for x, y in corners),
        sides=tuple(
            Side(
                side.name,
                LineString(placed(shapely.get_coordinates(side.line))[::backward]),
                side.length_mm,
            )
            for side in shape.sides
        ),
        openings=tuple(
            Opening(o.index, polygon(o.polygon), o.area_mm2, o.longer_mm, o.radius_mm)
            for o in shape.openings
        ),
        net=MultiPolygon([polygon(part) for part in plane.polygons_in(shape.net)]),
        reliefs=tuple(polygon(relief) for relief in shape.reliefs),
    )


def mirrored_across(shape: Shape, axis: int) -> Shape:
    """Return a shape with its x (axis 0) or its y (axis 1) turned about."""
    flip = np.array([-1.0, 1.0] if axis == 0 else [1.0, -1.0])
    return moved(shape, lambda points: points * flip, mirrored=True)
