"""The surfaces of a slab: the appearance of each, and its requirements on an edge.

Hours, consumables and days of a surface are the workshop's own, in its profile.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

Surface = Literal["as-cast", "honed", "polished"]
MIN_FACE_MM = 5.0  # a thinner edge chips as the mould comes off; common practice, no source


@dataclass(frozen=True, slots=True)
class SurfaceKind:
    """One surface.

    Attributes
    ----------
    gloss
        How far it mirrors, 0 to 1, before any film of a sealer; by eye, no source.
    voids_per_m2
        Small air voids that the drawing shows; by eye, no source.
    least_face_mm
        Upright edge that it needs so that a pad does not break it away; common practice, no source.
    frees_dust
        Whether hardened concrete is worked for it, which frees silica dust.
    stands_in
        Whether a remedy may offer it in place of another: not where it looks like none of them.
    """

    gloss: float
    voids_per_m2: int
    least_face_mm: float
    frees_dust: bool
    stands_in: bool = True


# The plainest first: in this order remedies offer those that stand in for another.
SURFACES: Mapping[Surface, SurfaceKind] = MappingProxyType(
    {
        "as-cast": SurfaceKind(0.05, 240, MIN_FACE_MM, frees_dust=False),
        "honed": SurfaceKind(0.2, 120, 10.0, frees_dust=True),
        "polished": SurfaceKind(0.65, 60, 15.0, frees_dust=True),
    }
)
