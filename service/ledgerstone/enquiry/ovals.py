"""An oval as the polygon that it is drafted as."""

from __future__ import annotations

import math
from typing import Final

from ledgerstone.enquiry.scene import Claim
from ledgerstone.quantities import Length

_CORNERS: Final = 72  # 5 degrees apart: within 0.1 % of the oval


def oval_points(length: Claim, width: Claim) -> list[tuple[Length, Length]]:
    """Return an ellipse's corners, anticlockwise from its right end, in the units it is told in."""
    points = []
    for i in range(_CORNERS):
        turn = 2 * math.pi * i / _CORNERS
        x_mm = length.mm / 2 * (1 + math.cos(turn))
        y_mm = width.mm / 2 * (1 + math.sin(turn))
        points.append((Length.of_mm(round(x_mm, 1)), Length.of_mm(round(y_mm, 1))))
    return points
