"""A parallel projection from the front right and above: where a point of the slab is seen.

Plane x and y as everywhere; z upwards, the slab's top at 0 and its underside at minus its
thickness. On the sheet y runs down.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from ledgerstone.outline import XY

XYZ = tuple[float, float, float]

_TURN: Final = math.radians(24.0)  # the front's right end comes nearer by this
_RISE: Final = math.radians(37.0)  # the eye looks down by this
_COS_TURN, _SIN_TURN = math.cos(_TURN), math.sin(_TURN)
_COS_RISE, _SIN_RISE = math.cos(_RISE), math.sin(_RISE)
_LIGHT: Final = (-0.36, -0.27, 0.893)  # across, away and up; from the left, over the shoulder
_AMBIENT: Final = 0.5


@dataclass(frozen=True, slots=True)
class Camera:
    """A scale and an origin for the projection."""

    per_mm: float = 1.0
    origin: XY = (0.0, 0.0)

    def at(self, x: float, y: float, z: float) -> XY:
        """Return where a point is seen."""
        across, away = x * _COS_TURN + y * _SIN_TURN, y * _COS_TURN - x * _SIN_TURN
        up = away * _SIN_RISE + z * _COS_RISE
        return self.origin[0] + self.per_mm * across, self.origin[1] - self.per_mm * up

    @property
    def circle(self) -> XY:
        """How wide and how high a flat circle of 1 mm is seen."""
        return self.per_mm, self.per_mm * _SIN_RISE

    def plane(self, z: float) -> str:
        """Return the transform that lays plane millimetres at a height onto the sheet."""
        k = self.per_mm
        x, y = self.at(0.0, 0.0, z)
        ends = [k * _COS_TURN, k * _SIN_TURN * _SIN_RISE]
        ends += [k * _SIN_TURN, -k * _COS_TURN * _SIN_RISE]
        return f"matrix({' '.join(f'{end:.6f}' for end in ends)} {x:.3f} {y:.3f})"


def behind(drop_mm: float) -> XY:
    """Return how far a place on a floor so far below lies from what hides it at the top, mm."""
    away = drop_mm * _COS_RISE / _SIN_RISE
    return -away * _SIN_TURN, away * _COS_TURN


def seen(point: XY) -> XY:
    """Return how far across and how far away a plane point lies, in mm."""
    x, y = point
    return x * _COS_TURN + y * _SIN_TURN, y * _COS_TURN - x * _SIN_TURN


def facing(normal: XYZ) -> float:
    """Return how squarely a face is seen: 1 head on, none or less from behind."""
    _, away = seen(normal[:2])
    return normal[2] * _SIN_RISE - away * _COS_RISE


def brightness(normal: XYZ) -> float:
    """Return how bright a face is: 1 for the slab's top, so that its colour is the shade's own."""
    across, away = seen(normal[:2])
    lit = across * _LIGHT[0] + away * _LIGHT[1] + normal[2] * _LIGHT[2]
    return _AMBIENT + (1 - _AMBIENT) * max(0.0, lit) / _LIGHT[2]


def shadow_of(point: XY, drop_mm: float) -> XY:
    """Return where a point's shadow falls on a floor so far below, in plane mm."""
    across, away = (-_LIGHT[0] / _LIGHT[2] * drop_mm, -_LIGHT[1] / _LIGHT[2] * drop_mm)
    x, y = point
    return x + across * _COS_TURN - away * _SIN_TURN, y + across * _SIN_TURN + away * _COS_TURN
