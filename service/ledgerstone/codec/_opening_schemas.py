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
    label = TextField(
        "cut-out-label",
        about=(
            "What the opening is for, its name in sentences and drawings. Left out, it has a"
            " number."
        ),
    )
    turn_degrees = NumberField(
        "turn-in-degrees",
        at_least=-360,
        at_most=360,
        about="Its rotation about its centre, anticlockwise, in degrees. Left out, 0.",
    )
    rim = ChoiceField(
        "rim",
        ("shown", "covered"),
        about=(
            "`shown`: the edge is seen and finished; `covered`: a flange hides it. Left out,"
            " `shown`."
        ),
    )
    open_to = TextField(
        "side-the-cut-out-is-open-to",
        longest=20,
        about=(
            "The side of the slab that it runs out to, as an apron sink does. Left out, it is"
            " closed all round."
        ),
    )
    heat = YesNoField("heat", about="Whether a hot appliance sits in it. Left out, no.")
    size_from = ChoiceField(
        "where-the-size-came-from",
        ("measured", "template-to-follow"),
        about=(
            "Where its sizes come from: with `template-to-follow` the answer is an estimate."
            " Left out, `measured`."
        ),
    )

    @post_load
    def _make(self, data: dict[str, Any], **_: object) -> records.Cutout:
        if "points" in data:
            data["points"] = tuple(data["points"])
        return records.Cutout(**data, rim_taken="rim" not in data)


_SIZES: dict[str, str] = {
    "length": "The opening's length, along x before it is turned.",
    "width": "The opening's width, along y before it is turned.",
    "points": "Its corners in order, in either direction.",
}


def _size_fields(kind: CutoutKind) -> dict[str, Any]:
    """Return the fields of a cut-out kind's size and position."""
    fields: dict[str, Any] = {}
    for name in kind.sizes:
        make = points_field if name == "points" else LengthField
        about = _SIZES.get(name, f"The opening's {name}.")
        fields[name] = make(f"cut-out-{name}", required=True, about=about)
    if "points" not in kind.sizes:
        fields["centre"] = ObjectField(
            PointSchema, "cut-out-centre", required=True, about="The position of its centre."
        )
    if kind.has_corners:
        fields["corner_radius"] = LengthField(
            "cut-out-corner-radius",
            zero=True,
            about="The radius of its corners. Left out, the workshop's smallest.",
        )
    return fields


def _schema_of(kind: CutoutKind) -> type[Strict]:
    """Return the schema of a kind of cut-out."""
    name = f"{kind.name.capitalize()}CutoutSchema"
    members = {"about": f"a-{kind.name}-cut-out", "__doc__": kind.docstring, **_size_fields(kind)}
    return type(name, (_CutoutSchema,), members)


CUTOUTS: dict[str, type[Strict]] = {name: _schema_of(kind) for name, kind in CUTOUT_KINDS.items()}


class _ReliefSchema(Kinded):
    about, record = "a-relief", records.Relief
    label = TextField("relief-label", about="What it is for. Left out, it has a number.")
    outline = KindField("relief-outline", OUTLINES, required=True, about="Its shape in plan.")
    at = ObjectField(
        PointSchema,
        "where-the-relief-outline-is-set-down",
        required=True,
        about="The position of the front-left corner of its outline's bounding box.",
    )
    depth = LengthField("relief-depth", required=True, about="Its depth from the top of the slab.")


class DrainerSchema(_ReliefSchema):
    """A drainer: grooves that drain water."""

    about = "a-drainer"
    grooves = NumberField(
        "number-of-grooves",
        at_least=1,
        at_most=60,
        whole=True,
        about="How many grooves it has, from front to back. Left out, none.",
    )
    fall = LengthField(
        "drainer-fall",
        zero=True,
        about="How much deeper it is at its lower end. Left out, it is level.",
    )


RELIEFS: dict[str, type[Strict]] = {
    "drainer": DrainerSchema,
    "recess": _ReliefSchema,
    "rebate": _ReliefSchema,
}
