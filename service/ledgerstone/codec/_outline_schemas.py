"""Outlines of slabs and reliefs as JSON."""

from __future__ import annotations

from types import MappingProxyType
from typing import Any

from marshmallow import post_load

from ledgerstone import order as records
from ledgerstone.codec._record_schema import Kinded, Record, is_corner, points_field
from ledgerstone.codec.fields import BySideField, ChoiceField, LengthField, ObjectField, Strict


class _Outlined(Kinded):
    corner_radius = LengthField(
        "corner-radius",
        zero=True,
        about="One radius for every corner. Left out, inside corners have the workshop's smallest.",
    )

    @post_load(pass_original=False)
    def _make(self, data: dict[str, Any], **_: object) -> Any:  # noqa: ANN401  one outline or another
        if "corner_radii" in data:
            data["corner_radii"] = MappingProxyType(data["corner_radii"])
        if "points" in data:
            data["points"] = tuple(data["points"])
        return self.record(**data)


class _Cornered(_Outlined):
    length = LengthField("slab-length", required=True, about="The length along the front.")
    width = LengthField("slab-width", required=True, about="The width from the front to the back.")
    corner_radii = BySideField(
        "corner-radii",
        LengthField("radius", zero=True),
        is_corner,
        about="Radii by corner, which override `corner_radius`. Left out, `corner_radius` applies.",
    )


class RectangleSchema(_Cornered):
    """A rectangle."""

    about, record = "a-rectangle", records.Rectangle


class NotchSchema(Record):
    """The notch of an L."""

    about, record = "a-notch", records.Notch
    corner = ChoiceField(
        "notch-corner",
        records.CORNERS,
        required=True,
        about="The corner of the box that is cut out.",
    )
    length = LengthField("notch-length", required=True, about="The notch's length along the front.")
    width = LengthField(
        "notch-width", required=True, about="The notch's width from the front to the back."
    )


class LShapeSchema(_Cornered):
    """An L."""

    about, record = "an-l-shape", records.LShape
    notch = ObjectField(
        NotchSchema, "l-notch", required=True, about="The notch that is cut out of the L's box."
    )


class RoundSchema(Kinded):
    """A disc."""

    about, record = "a-round-slab", records.Round
    diameter = LengthField("slab-diameter", required=True, about="The slab's diameter.")


class PolygonSchema(_Outlined):
    """Straight sides between points."""

    about, record = "a-polygon", records.Polygon
    points = points_field(
        "outline-points",
        required=True,
        about="Its corners in order, either way round; side 1 runs from the first to the second.",
    )


OUTLINES: dict[str, type[Strict]] = {
    "rectangle": RectangleSchema,
    "l-shape": LShapeSchema,
    "round": RoundSchema,
    "polygon": PolygonSchema,
}
