"""Cut-outs and reliefs as JSON."""

from __future__ import annotations

from typing import Any

from marshmallow import post_load

from ledgerstone import order as records
from ledgerstone.codec._outline_schemas import OUTLINES
from ledgerstone.codec._record_schema import Kinded, PointSchema, points_field
from ledgerstone.codec.fields import (
    ChoiceField,
    KindField,
    LengthField,
    NumberField,
    ObjectField,
    Strict,
    TextField,
    YesNoField,
)


class _CutoutSchema(Kinded):
    record = records.Cutout
    label = TextField("the cut-out's label")
    turn_degrees = NumberField("the turn in degrees", at_least=-360, at_most=360)
    rim = ChoiceField("the rim", ("shown", "covered"))
    open_to = TextField("the side the cut-out is open to", longest=20)
    heat = YesNoField("heat")
    size_from = ChoiceField("where the size came from", ("measured", "template-to-follow"))

    @post_load
    def _make(self, data: dict[str, Any], **_: object) -> Any:  # noqa: ANN401  a Cutout
        if "points" in data:
            data["points"] = tuple(data["points"])
        return records.Cutout(**data)


class _Centred(_CutoutSchema):
    centre = ObjectField(PointSchema, "the cut-out's centre", required=True)


class CircleCutoutSchema(_Centred):
    """A round opening."""

    about = "a round cut-out"
    diameter = LengthField("the cut-out's diameter", required=True)


class _Sized(_Centred):
    length = LengthField("the cut-out's length", required=True)
    width = LengthField("the cut-out's width", required=True)


class RectangleCutoutSchema(_Sized):
    """A rectangular opening."""

    about = "a rectangular cut-out"
    corner_radius = LengthField("the cut-out's corner radius", zero=True)


class SlotCutoutSchema(_Sized):
    """A slot with round ends."""

    about = "a slot"


class PolygonCutoutSchema(_CutoutSchema):
    """An opening with straight sides."""

    about = "a cut-out polygon"
    points = points_field("the cut-out's points", required=True)
    corner_radius = LengthField("the cut-out's corner radius", zero=True)


CUTOUTS: dict[str, type[Strict]] = {
    "circle": CircleCutoutSchema,
    "rectangle": RectangleCutoutSchema,
    "slot": SlotCutoutSchema,
    "polygon": PolygonCutoutSchema,
}


class _ReliefSchema(Kinded):
    about, record = "a relief", records.Relief
    label = TextField("the relief's label")
    outline = KindField("the relief's outline", OUTLINES, required=True)
    at = ObjectField(PointSchema, "where the relief's outline is set down", required=True)
    depth = LengthField("the relief's depth", required=True)


class DrainerSchema(_ReliefSchema):
    """Grooves that lead water off."""

    about = "a drainer"
    grooves = NumberField("the number of grooves", at_least=1, at_most=60, whole=True)
    fall = LengthField("the drainer's fall", zero=True)


RELIEFS: dict[str, type[Strict]] = {
    "drainer": DrainerSchema,
    "recess": _ReliefSchema,
    "rebate": _ReliefSchema,
}
