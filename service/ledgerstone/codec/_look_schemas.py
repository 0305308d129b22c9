"""How a slab looks, as JSON: its edges, its shade, its finish."""

from __future__ import annotations

import re
from typing import Any

from marshmallow import ValidationError, post_load

from ledgerstone import order as records
from ledgerstone.codec._record_schema import Record
from ledgerstone.codec.fields import (
    ChoiceField,
    LengthField,
    ObjectField,
    Strict,
    TextField,
    YesNoField,
    refused,
)
from ledgerstone.message import Message


class DropSchema(Record):
    """A downstand or waterfall end, below one side of the slab."""

    about, record = "a-drop", records.Drop
    depth = LengthField("drop-depth", required=True, about="Its height from the slab's top down.")
    mitred = YesNoField("mitred", about="Whether its corner is mitred. Left out, it is butted.")


class EdgeSchema(Record):
    """How one side is made."""

    about, record = "an-edge", records.Edge
    profile = ChoiceField(
        "edge-profile",
        ("square", "bevel", "round", "wall"),
        about="`square`: its arris eased; `bevel`; `round`; `wall`: unseen. Left out, `square`.",
    )
    size = LengthField(
        "edge-size",
        about="The bevel's width, or the round's radius. Left out, the smallest that is made.",
    )
    drip = YesNoField("drip", about="Whether there is a drip groove under the edge. Left out, no.")
    drop = ObjectField(
        DropSchema, "drop", about="A downstand or a waterfall end. Left out, there is none."
    )


class ShadeSchema(Record):
    """A shade by name, or a colour to match."""

    about, record = "a-shade", records.Shade
    name = TextField(
        "shade-name", about="A shade of the workshop's palette. Left out, `match` is given."
    )
    match = TextField(
        "colour-to-match",
        longest=7,
        about="A colour to match, sRGB, where that is offered. Left out, `name` is given.",
    )

    @post_load
    def _make(self, data: dict[str, Any], **_: object) -> records.Shade:
        if len(data) != 1:
            raise refused(Message("shade-by-name-or-match"))
        if "match" in data and not re.fullmatch(r"#[0-9a-fA-F]{6}", data["match"]):
            raise ValidationError({"match": [Message("colour-not-written-so")]})
        return records.Shade(**data)


class FinishSchema(Strict):
    """The surface and the sealer; a member left out is the workshop's usual."""

    about = "a-finish"
    surface = TextField(
        "surface",
        longest=40,
        about="The surface of the top, by the workshop's name. Left out, the workshop's usual.",
    )
    sealer = TextField(
        "sealer",
        longest=40,
        about="The sealer, by the workshop's name. Left out, the workshop's usual for the place.",
    )
