"""Records that a drawing takes beside the slab: its title block and its pins."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Any

from ledgerstone.checks.finding import Level
from ledgerstone.outline import XY


@dataclass(frozen=True, slots=True, kw_only=True)
class TitleBlock:
    """Contents of the title block; an empty text is left out.

    Attributes
    ----------
    reference, label, date
        As they are to be read; nothing here knows a clock.
    shade, colour
        The shade's name and its colour, ``#rrggbb``; None draws no swatch.
    workshop
        Whose drawing it is.
    lies
        How the slab lies against those that it is joined to.

    """

    reference: str = ""
    label: str = ""
    date: str = ""
    shade: str = ""
    colour: str | None = None
    workshop: str = ""
    lies: str = ""


@dataclass(frozen=True, slots=True)
class Pin:
    """A finding's number, shown where it is.

    ``at_mm`` is one point for a spot, two for the line across a strip, more for a course of
    sides, and more with the last like the first for an area; plane mm, as the slab's own.
    """

    number: int
    level: Level
    at_mm: tuple[XY, ...]

    @property
    def is_strip(self) -> bool:
        """Whether it marks a width between two points."""
        return len(self.at_mm) == 2

    @property
    def is_area(self) -> bool:
        """Whether its points close."""
        return len(self.at_mm) > 3 and self.at_mm[0] == self.at_mm[-1]


def pin_at(number: int, level: Level, where_mm: Mapping[str, Any] | None) -> Pin | None:
    """Make a pin of a finding's GeoJSON-shaped place; None if it has none that can be shown."""
    if where_mm is None:
        return None
    coordinates = where_mm.get("coordinates", ())
    kind = where_mm.get("type")
    points: Sequence[Any]
    if kind == "Point":
        points = [coordinates]
    elif kind in {"LineString", "MultiPoint"}:
        points = coordinates
    elif kind in {"Polygon", "MultiLineString"}:
        points = coordinates[0] if coordinates else ()
    elif kind == "MultiPolygon":
        points = max((rings[0] for rings in coordinates), key=_area_mm2, default=())
    else:
        return None
    at_mm = tuple((float(point[0]), float(point[1])) for point in points)
    return Pin(number, level, at_mm) if at_mm else None


def _area_mm2(ring: Sequence[Sequence[float]]) -> float:
    """Return a closed ring's area (the shoelace formula)."""
    pairs = pairwise((float(x), float(y)) for x, y in ring)
    return abs(sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in pairs)) / 2
