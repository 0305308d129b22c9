"""What the order's schemas share: bounds, names of sides, records made of their data, points."""

from __future__ import annotations

import re
from typing import Any

from marshmallow import fields, post_load

from ledgerstone import order as records
from ledgerstone.codec.fields import CoordinateField, ListField, ObjectField, Strict

MOST_QUANTITY = 24
MOST_CUTOUTS = 20
MOST_RESTS = 20
MOST_POINTS = 200
SIDE_PATTERN = "front|back|left|right|notch-x|notch-y|rim|[1-9][0-9]{0,2}"
_SIDE = re.compile(SIDE_PATTERN)


def is_side(name: str) -> bool:
    """Whether a name can be a side's of any outline."""
    return _SIDE.fullmatch(name) is not None


def is_corner(name: str) -> bool:
    """Whether a name is a corner's."""
    return name in records.CORNERS


class Record(Strict):
    """A schema that makes one record of its data."""

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
    """Make a field of the corners of a straight-sided shape."""
    return ListField(
        ObjectField(PointSchema, "a-point"), label, at_least=3, at_most=MOST_POINTS, **more
    )


class Kinded(Record):
    """A schema chosen by ``kind``; the record is told which it was."""

    kind = fields.String(
        required=True, metadata={"description": "Which kind it is; its other members go by that."}
    )
