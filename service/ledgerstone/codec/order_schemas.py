"""The order as JSON: marshmallow schemas that turn it into the records of ``ledgerstone.order``."""

from __future__ import annotations

import re
from datetime import date
from typing import Any

from marshmallow import ValidationError, post_load

from ledgerstone import order as records
from ledgerstone.codec._delivery_schemas import DeliverySchema
from ledgerstone.codec._opening_schemas import CUTOUTS, RELIEFS
from ledgerstone.codec._outline_schemas import OUTLINES
from ledgerstone.codec._record_schema import (
    MOST_CUTOUTS,
    MOST_POINTS,
    MOST_QUANTITY,
    MOST_RESTS,
    SIDE_PATTERN,
    Record,
    is_side,
)
from ledgerstone.codec._rest_schemas import RESTS
from ledgerstone.codec.fields import (
    BySideField,
    ChoiceField,
    KindField,
    LengthField,
    ListField,
    NumberField,
    ObjectField,
    Strict,
    TextField,
    YesNoField,
)
from ledgerstone.codec.least_sizes import LEAST_THICKNESS_MM
from ledgerstone.codec.tokens import LONGEST_TOKEN
from ledgerstone.order import MOST_SLABS

__all__ = [
    "CUTOUTS",
    "MOST_CUTOUTS",
    "MOST_POINTS",
    "MOST_QUANTITY",
    "MOST_RESTS",
    "MOST_SLABS",
    "OUTLINES",
    "RELIEFS",
    "RESTS",
    "SIDE_PATTERN",
    "OrderSchema",
    "SlabSchema",
]


class DropSchema(Record):
    """A downstand or waterfall end."""

    about, record = "a drop", records.Drop
    depth = LengthField("the drop's depth", required=True)
    mitred = YesNoField("mitred")


class EdgeSchema(Record):
    """How one side is made."""

    about, record = "an edge", records.Edge
    profile = ChoiceField("the edge's profile", ("square", "bevel", "round", "wall"))
    size = LengthField("the edge's size")
    drip = YesNoField("drip")
    drop = ObjectField(DropSchema, "the drop")


class ShadeSchema(Record):
    """A shade by name, or a colour to match."""

    about, record = "a shade", records.Shade
    name = TextField("the shade's name")
    match = TextField("the colour to match", longest=7)

    @post_load
    def _make(self, data: dict[str, Any], **_: object) -> records.Shade:
        if len(data) != 1:
            raise ValidationError("Give the shade by its name, or a colour to match, and not both.")
        if "match" in data and not re.fullmatch(r"#[0-9a-fA-F]{6}", data["match"]):
            raise ValidationError({"match": ['The colour to match is written like "#5b5d5a".']})
        return records.Shade(**data)


class FinishSchema(Strict):
    """The surface and what seals it; what is left out is the workshop's usual."""

    about = "a finish"
    surface = TextField("the surface", longest=40)
    sealer = TextField("the sealer", longest=40)


class SlabSchema(Strict):
    """One slab; names of shades, finishes and sides are settled by ``codec.order_in``."""

    about = "a slab"
    label = TextField("the slab's label")
    quantity = NumberField("the quantity", at_least=1, at_most=MOST_QUANTITY, whole=True)
    use = ChoiceField("the use", records.USES)
    size_from = ChoiceField(
        "where the size came from",
        ("finished", "between-walls", "over-units", "template-to-follow"),
    )
    outline = KindField("the slab's outline", OUTLINES, required=True)
    thickness = LengthField(
        "the slab's thickness",
        required=True,
        above_mm=LEAST_THICKNESS_MM,
        zero=True,
        at_most_mm=1000.0,
    )
    cutouts = ListField(KindField("the cut-out", CUTOUTS), "the cut-outs", at_most=MOST_CUTOUTS)
    reliefs = ListField(KindField("the relief", RELIEFS), "the reliefs", at_most=MOST_CUTOUTS)
    edges = BySideField("the edges", ObjectField(EdgeSchema, "the edge"), is_side)
    shade = ObjectField(ShadeSchema, "the shade")
    finish = ObjectField(FinishSchema, "the finish")
    place = ChoiceField("the place", records.PLACES)
    rests = KindField("what the slab rests on", RESTS)


class JoinEndSchema(Record):
    """One slab's side at a join."""

    about, record = "a join's side", records.JoinEnd
    slab = NumberField(
        "the slab's number (from 0)", at_least=0, at_most=MOST_SLABS - 1, whole=True, required=True
    )
    side = TextField("the side", longest=20, required=True)


class JoinSchema(Record):
    """Two sides that meet."""

    about, record = "a join", records.Join
    one = ObjectField(JoinEndSchema, "one side of the join", required=True)
    other = ObjectField(JoinEndSchema, "the other side of the join", required=True)
    gap = LengthField("the join's gap", zero=True, required=True)


class DayField(TextField):
    """An ISO 8601 day."""

    def _deserialize(self, value: Any, *args: Any, **more: Any) -> Any:  # noqa: ANN401  marshmallow
        text = super()._deserialize(value, *args, **more)
        if re.fullmatch(r"[0-9]{4}-[0-9]{2}-[0-9]{2}", text, re.ASCII):
            try:
                return date.fromisoformat(text)
            except ValueError:
                pass
        raise ValidationError(f'{self.capital} is written like "2027-03-25".')


class OrderSchema(Strict):
    """A whole order."""

    about = "an order"
    slabs = ListField(
        ObjectField(SlabSchema, "a slab"),
        "the slabs",
        at_least=1,
        at_most=MOST_SLABS,
        required=True,
    )
    joins = ListField(ObjectField(JoinSchema, "a join"), "the joins", at_most=MOST_SLABS * 2)
    delivery = ObjectField(DeliverySchema, "the delivery")
    needed_by = DayField("the needed-by day", longest=20)
    sample_tile = YesNoField("a sample tile")
    templating = YesNoField("coming to measure")
    heated_curing = YesNoField("heated curing")
    since = TextField("the earlier quote's token", longest=LONGEST_TOKEN)
