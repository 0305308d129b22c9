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
from ledgerstone.cutouts import CUTOUT_KINDS, CutoutKind


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


def _size_fields(kind: CutoutKind) -> dict[str, Any]:
    """The fields that give the size and the place of a kind of cut-out."""
    fields: dict[str, Any] = {
        name: points_field("the cut-out's points", required=True)
        if name == "points"
        else LengthField(f"the cut-out's {name}", required=True)
        for name in kind.sizes
    }
    if "points" not in kind.sizes:
        fields["centre"] = ObjectField(PointSchema, "the cut-out's centre", required=True)
    if kind.has_corners:
        fields["corner_radius"] = LengthField("the cut-out's corner radius", zero=True)
    return fields


def _schema_of(kind: CutoutKind) -> type[Strict]:
    """Make the schema of a kind of cut-out."""
    name = f"{kind.name.capitalize()}CutoutSchema"
    members = {"about": kind.about, "__doc__": kind.docstring, **_size_fields(kind)}
    return type(name, (_CutoutSchema,), members)


CUTOUTS: dict[str, type[Strict]] = {name: _schema_of(kind) for name, kind in CUTOUT_KINDS.items()}


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
