"""A finding: the result of a check, with its message."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any, Literal

import shapely
from shapely.geometry import LineString, mapping
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.checks.occasions import Occasion, occasion_of
from ledgerstone.json_types import JSON
from ledgerstone.outline import XY
from ledgerstone.wording import Message

Level = Literal["stops", "caution", "note"]
LEVELS: tuple[Level, ...] = ("stops", "caution", "note")
_NOTHING: Mapping[str, float] = MappingProxyType({})


@dataclass(frozen=True, slots=True)
class Finding:
    """One result of one check of an order.

    ``at`` holds JSON Pointers into the order; ``measured`` and ``limit`` have unit-bearing keys;
    ``where_mm`` is GeoJSON-shaped in plane slab millimetres (RFC 7946 §4); ``follows_from`` is the
    id of the finding that it follows from at the same place.
    """

    check: str
    level: Level
    message: Message
    source: str
    slab: int | None = None
    at: tuple[str, ...] = ()
    measured: Mapping[str, Any] = field(default_factory=lambda: _NOTHING)
    limit: Mapping[str, Any] = field(default_factory=lambda: _NOTHING)
    where_mm: Mapping[str, Any] | None = None
    key: str = ""
    follows_from: str | None = None

    @property
    def when(self) -> Occasion:
        """When the customer acts on it."""
        return occasion_of(self.check, self.level)

    @property
    def id(self) -> str:
        """A name that stays the same while the finding does: check, slab, part."""
        parts = [self.check, *([] if self.slab is None else [str(self.slab)]), self.key]
        return ".".join(part for part in parts if part)


def geojson(shape: BaseGeometry) -> Mapping[str, Any]:
    """Write a place in GeoJSON's shape, rounded to 0.1 mm.

    Of a place that is an area and a point, only the area is kept.
    """
    parts = shapely.get_parts(shape)
    most = shapely.get_dimensions(parts).max(initial=-1)
    if shape.geom_type == "GeometryCollection" and most >= 0:
        shape = plane.union(parts[shapely.get_dimensions(parts) == most])
    drawn: dict[str, Any] = mapping(shape)
    return {"type": drawn["type"], "coordinates": _rounded(drawn["coordinates"])}


def _rounded(coordinates: JSON) -> JSON:
    if isinstance(coordinates, int | float):
        return round(float(coordinates), 1) + 0.0
    return [_rounded(part) for part in coordinates]


def line_mm(line: tuple[XY, XY]) -> Mapping[str, Any]:
    """Write a line's place."""
    return geojson(LineString(line))


def only(indices: Sequence[int]) -> int | None:
    """Return the slab that a finding is about; None if there are several."""
    return indices[0] if len(indices) == 1 else None
