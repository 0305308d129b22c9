"""Outlines of slabs and reliefs as JSON."""

from __future__ import annotations

from types import MappingProxyType
from typing import Any

from marshmallow import post_load

from ledgerstone import order as records
from ledgerstone.codec._record_schema import Kinded, Record, is_corner, points_field
from ledgerstone.codec.fields import BySideField, ChoiceField, LengthField, ObjectField, Strict


class _Outlined(Kinded):
    corner_radius = LengthField("the corner radius", zero=True)

    @post_load(pass_original=False)
    def _make(self, data: dict[str, Any], **_: object) -> Any:  # noqa: ANN401  one outline or another
        if "corner_radii" in data:
            data["corner_radii"] = MappingProxyType(data["corner_radii"])
        if "points" in data:
            data["points"] = tuple(data["points"])
        return self.record(**data)


class _Cornered(_Outlined):
    length = LengthField("the slab's length", required=True)
    width = LengthField("the slab's width", required=True)
    corner_radii = BySideField("the corner radii", LengthField("the radius", zero=True), is_corner)


class RectangleSchema(_Cornered):
    """A rectangle."""

    about, record = "a rectangle", records.Rectangle


class NotchSchema(Record):
    """What an L leaves out."""

    about, record = "a notch", records.Notch
    corner = ChoiceField("the notch's corner", records.CORNERS, required=True)
    length = LengthField("the notch's length", required=True)
    width = LengthField("the notch's width", required=True)


class LShapeSchema(_Cornered):
    """An L."""

    about, record = "an L-shape", records.LShape
    notch = ObjectField(NotchSchema, "the L's notch", required=True)


class RoundSchema(Kinded):
    """A disc."""

    about, record = "a round slab", records.Round
    diameter = LengthField("the slab's diameter", required=True)


class PolygonSchema(_Outlined):
    """Straight sides between points."""

    about, record = "a polygon", records.Polygon
    points = points_field("the outline's points", required=True)


OUTLINES: dict[str, type[Strict]] = {
    "rectangle": RectangleSchema,
    "l-shape": LShapeSchema,
    "round": RoundSchema,
    "polygon": PolygonSchema,
}
