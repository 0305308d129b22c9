"""A parallel projection from the front right and above: where a point of a plate is seen.

Every plate is drawn in its own plane: x and y as in its order, z out of its face, which is at 0,
its underside at minus its thickness. A ``Pose`` says how those axes lie in the room, whose x and
y are the floor's and whose z is up; a level slab's are the room's own. On the sheet y runs down.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property
from typing import Final

from ledgerstone.outline import XY

XYZ = tuple[float, float, float]

_TURN: Final = math.radians(24.0)  # the front's right end is turned towards the eye by this
_RISE: Final = math.radians(37.0)  # the eye looks down by this
_COS_TURN, _SIN_TURN = math.cos(_TURN), math.sin(_TURN)
_COS_RISE, _SIN_RISE = math.cos(_RISE), math.sin(_RISE)
_LIGHT: Final = (-0.36, -0.27, 0.893)  # across, away and up; from the left, over the shoulder
_AMBIENT: Final = 0.5
# In the room: where the sheet's right and its up point, and where the eye and the light are.
_RIGHT: Final[XYZ] = (_COS_TURN, _SIN_TURN, 0.0)
_UP: Final[XYZ] = (-_SIN_TURN * _SIN_RISE, _COS_TURN * _SIN_RISE, _COS_RISE)
_EYE: Final[XYZ] = (_SIN_TURN * _COS_RISE, -_COS_TURN * _COS_RISE, _SIN_RISE)
_WINDOW: Final[XYZ] = (
    _LIGHT[0] * _COS_TURN - _LIGHT[1] * _SIN_TURN,
    _LIGHT[0] * _SIN_TURN + _LIGHT[1] * _COS_TURN,
    _LIGHT[2],
)


def _dot(first: XYZ, second: XYZ) -> float:
    return first[0] * second[0] + first[1] * second[1] + first[2] * second[2]


@dataclass(frozen=True)
class Pose:
    """A plate's axes in the room: three orthogonal unit vectors."""

    x: XYZ = (1.0, 0.0, 0.0)
    y: XYZ = (0.0, 1.0, 0.0)
    z: XYZ = (0.0, 0.0, 1.0)

    def own(self, way: XYZ) -> XYZ:
        """Return a direction of the room, a pure number an axis, as the plate has it."""
        return _dot(way, self.x), _dot(way, self.y), _dot(way, self.z)

    def in_room(self, point: XYZ) -> XYZ:
        """Return a point of the plate in the room, mm from the plate's origin."""
        columns = zip(self.x, self.y, self.z, strict=True)
        x, y, z = (_dot(point, column) for column in columns)
        return x, y, z

    @cached_property
    def on_sheet(self) -> tuple[XYZ, XYZ]:
        """How far right and how far up on the sheet 1 mm along each own axis is seen, mm."""
        return self.own(_RIGHT), self.own(_UP)

    @cached_property
    def eye(self) -> XYZ:
        """Direction of the eye as the plate has it, length 1."""
        return self.own(_EYE)

    @cached_property
    def _away(self) -> XY:
        """Which way in its plane leads from the eye."""
        x, y, _ = self.eye
        length = math.hypot(x, y) or 1.0
        return -x / length, -y / length

    def seen(self, point: XY) -> XY:
        """Return how far across and how far away a point of its plane lies, in mm."""
        (x, y), (dx, dy) = point, self._away
        return x * dy - y * dx, x * dx + y * dy

    def facing(self, normal: XYZ) -> float:
        """Cosine of the angle between a face and the view, a pure number: at most 0 from behind."""
        return _dot(normal, self.eye)

    def brightness(self, normal: XYZ) -> float:
        """Brightness of a face, a pure number: 1 where it looks up, in the shade's own colour."""
        lit = _dot(normal, self._window)
        return _AMBIENT + (1 - _AMBIENT) * max(0.0, lit) / _LIGHT[2]

    @cached_property
    def _window(self) -> XYZ:
        return self.own(_WINDOW)


LEVEL: Final = Pose()


def standing_pose(front: XY) -> Pose:
    """Pose of a plate that stands on its length, its face to ``front``, a pure number an axis."""
    x, y = front
    return Pose((-y, x, 0.0), (0.0, 0.0, 1.0), (x, y, 0.0))


def on_end_pose(front: XY) -> Pose:
    """Pose of a plate that stands on its left end, its face to ``front``, a pure number an axis."""
    x, y = front
    return Pose((0.0, 0.0, 1.0), (y, -x, 0.0), (x, y, 0.0))


@dataclass(frozen=True, slots=True)
class Camera:
    """A parallel projection: scale, image of a plate's origin, and the plate's pose."""

    per_mm: float = 1.0
    origin: XY = (0.0, 0.0)
    pose: Pose = LEVEL

    def at(self, x: float, y: float, z: float) -> XY:
        """Return where a point, mm, is seen, sheet units."""
        (ax, ay, az), (bx, by, bz) = self.pose.on_sheet
        k, (left, top) = self.per_mm, self.origin
        return left + k * (x * ax + y * ay + z * az), top - k * (x * bx + y * by + z * bz)

    def all_at(self, points: Iterable[XYZ]) -> list[XY]:
        """Return where each point, mm, is seen, sheet units."""
        (ax, ay, az), (bx, by, bz) = self.pose.on_sheet
        k, (left, top) = self.per_mm, self.origin
        return [
            (left + k * (x * ax + y * ay + z * az), top - k * (x * bx + y * by + z * bz))
            for x, y, z in points
        ]

    def set_down(self, at: XYZ, pose: Pose = LEVEL) -> Camera:
        """Return the camera of a plate whose origin stands at a point of this one's plate."""
        return Camera(self.per_mm, self.at(*at), pose)

    @property
    def circle(self) -> XY:
        """Axes of the ellipse that a circle of 1 mm in the plate is seen as, sheet units."""
        return self.per_mm, self.per_mm * self.pose.eye[2]

    @property
    def across(self) -> XY:
        """Direction on the sheet of that ellipse's wider axis, a pure number an axis."""
        (_, _, right), (_, _, up) = self.pose.on_sheet
        length = math.hypot(right, up) or 1.0
        return up / length, right / length

    def plane(self, z: float) -> str:
        """Return the SVG transform from plane mm at height ``z``, mm, to the sheet."""
        k, (x, y) = self.per_mm, self.at(0.0, 0.0, z)
        (ax, ay, _), (bx, by, _) = self.pose.on_sheet
        ends = (k * ax, -k * bx, k * ay, -k * by)
        return f"matrix({' '.join(f'{end:.6f}' for end in ends)} {x:.3f} {y:.3f})"


def behind(drop_mm: float) -> XY:
    """Distance in plan, mm, from a place on a floor ``drop_mm`` below to what hides it."""
    away = drop_mm * _COS_RISE / _SIN_RISE
    return -away * _SIN_TURN, away * _COS_TURN


def shadow_of(point: XY, drop_mm: float) -> XY:
    """Return where a point's shadow falls on a floor ``drop_mm`` below, plane mm."""
    across, away = (-_LIGHT[0] / _LIGHT[2] * drop_mm, -_LIGHT[1] / _LIGHT[2] * drop_mm)
    x, y = point
    return x + across * _COS_TURN - away * _SIN_TURN, y + across * _SIN_TURN + away * _COS_TURN
