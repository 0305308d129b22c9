"""Base schemas and bounds shared by the order's schemas."""

from __future__ import annotations

import re
from typing import Any

from marshmallow import fields, post_load

from ledgerstone import order as records
from ledgerstone.codec.fields import CoordinateField, ListField, ObjectField, Strict

MAX_QUANTITY = 24
MAX_CUTOUTS = 20
MAX_RESTS = 20
MAX_POINTS = 200
SIDE_PATTERN = "front|back|left|right|notch-x|notch-y|rim|[1-9][0-9]{0,2}"
_SIDE = re.compile(SIDE_PATTERN)


def is_side(name: str) -> bool:
    """Return whether a name can be a side of an outline."""
    return _SIDE.fullmatch(name) is not None


def is_corner(name: str) -> bool:
    """Return whether a name is that of a corner."""
    return name in records.CORNERS


class Record(Strict):
    """A schema whose data is loaded into a record."""

    record: type[Any]

    @post_load
    def _make(self, data: dict[str, Any], **_: object) -> Any:  # noqa: ANN401  one record or another
        return self.record(**data)


class PointSchema(Record):
    """A place in plan."""

    about, record = "a-point", records.Point
    x = CoordinateField("x", required=True, about="From the slab's left end, to the right.")
    y = CoordinateField("y", required=True, about="From the slab's front, to the back.")


def points_field(label: str, **more: Any) -> ListField:
    """Return a field for the corners of a polygon."""
    return ListField(
        ObjectField(PointSchema, "a-point"), label, at_least=3, at_most=MAX_POINTS, **more
    )


class Kinded(Record):
    """A schema selected by ``kind``, which is passed on to the record."""

    kind = fields.String(
        required=True, metadata={"description": "The kind, which determines the other members."}
    )
