"""The order as JSON: marshmallow schemas that turn it into the records of ``ledgerstone.order``."""

from __future__ import annotations

import re
from datetime import date
from typing import Any

from ledgerstone import order as records
from ledgerstone.codec._delivery_schemas import DeliverySchema
from ledgerstone.codec._look_schemas import EdgeSchema, FinishSchema, ShadeSchema
from ledgerstone.codec._opening_schemas import CUTOUTS, RELIEFS
from ledgerstone.codec._outline_schemas import OUTLINES
from ledgerstone.codec._record_schema import (
    MAX_CUTOUTS,
    MAX_POINTS,
    MAX_QUANTITY,
    MAX_RESTS,
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
    refused,
)
from ledgerstone.codec.least_sizes import MIN_THICKNESS_MM
from ledgerstone.codec.tokens import LONGEST_TOKEN
from ledgerstone.json_types import JSON
from ledgerstone.message import Message
from ledgerstone.order import MAX_SLABS

LONGEST_LANGUAGE_TAG = 35  # RFC 5646 §4.4.1

__all__ = [
    "CUTOUTS",
    "MAX_CUTOUTS",
    "MAX_POINTS",
    "MAX_QUANTITY",
    "MAX_RESTS",
    "MAX_SLABS",
    "OUTLINES",
    "RELIEFS",
    "RESTS",
    "SIDE_PATTERN",
    "OrderSchema",
    "SlabSchema",
]


class SlabSchema(Strict):
    """One slab, cast ``quantity`` times."""

    about = "a-slab"
    label = TextField(
        "slab-label",
        about="The slab's name in sentences and drawings. Left out, it has a number.",
    )
    quantity = NumberField(
        "quantity",
        at_least=1,
        at_most=MAX_QUANTITY,
        whole=True,
        about="How many identical pieces. Left out, 1.",
    )
    use = ChoiceField("use", records.USES, about="What the slab is used as. Left out, `worktop`.")
    size_from = ChoiceField(
        "where-the-size-came-from",
        ("finished", "between-walls", "over-units", "template-to-follow"),
        about=(
            "Where its sizes come from: between walls the fitting gaps come off, over units the"
            " overhangs are added, with a template to follow the answer is an estimate. Left"
            " out, `finished`."
        ),
    )
    outline = KindField("slab-outline", OUTLINES, required=True, about="Its shape in plan.")
    thickness = LengthField(
        "slab-thickness",
        above_mm=MIN_THICKNESS_MM,
        zero=True,
        at_most_mm=1000.0,
        about=(
            "How thick it is, from its top to its underside. Left out, the workshop's usual, which"
            " a note then says."
        ),
    )
    cutouts = ListField(
        KindField("cut-out", CUTOUTS),
        "cut-outs",
        at_most=MAX_CUTOUTS,
        about="Openings through it. Left out, there are none.",
    )
    reliefs = ListField(
        KindField("relief", RELIEFS),
        "reliefs",
        at_most=MAX_CUTOUTS,
        about="Places that are thinner, and not open. Left out, there are none.",
    )
    edges = BySideField(
        "edges",
        ObjectField(EdgeSchema, "edge"),
        is_side,
        about="How each side is made, by its name. A side left out is `square`.",
    )
    shade = ObjectField(ShadeSchema, "shade", about="Its colour. Left out, the workshop's usual.")
    finish = ObjectField(
        FinishSchema,
        "finish",
        about="Its surface and what seals it. Left out, the workshop's usual.",
    )
    place = ChoiceField(
        "place", records.PLACES, about="The place it is made for. Left out, `indoors`."
    )
    rests = KindField(
        "what-the-slab-rests-on",
        RESTS,
        about="What carries it in place. Left out, the answer cautions that this is not known.",
    )


class JoinEndSchema(Record):
    """One slab's side at a join."""

    about, record = "a-join-side", records.JoinEnd
    slab = NumberField(
        "slab-number",
        at_least=0,
        at_most=MAX_SLABS - 1,
        whole=True,
        required=True,
        about="The slab's index in the order, from 0.",
    )
    side = TextField(
        "side", longest=20, required=True, about="The side of it that meets the other."
    )


class JoinSchema(Record):
    """A join between the sides of two slabs."""

    about, record = "a-join", records.Join
    one = ObjectField(
        JoinEndSchema, "one-side-of-the-join", required=True, about="The first side of the join."
    )
    other = ObjectField(
        JoinEndSchema, "other-side-of-the-join", required=True, about="The second side of the join."
    )
    gap = LengthField(
        "join-gap", zero=True, required=True, about="The width of the joint between the two sides."
    )


class DayField(TextField):
    """An ISO 8601 day."""

    def _deserialize(self, value: JSON, *args: Any, **more: Any) -> Any:  # noqa: ANN401  marshmallow
        text = super()._deserialize(value, *args, **more)
        if re.fullmatch(r"[0-9]{4}-[0-9]{2}-[0-9]{2}", text, re.ASCII):
            try:
                return date.fromisoformat(text)
            except ValueError:
                pass
        raise refused(Message("day-not-written-so", field=self.called))


class OrderSchema(Strict):
    """A whole order."""

    about = "an-order"
    slabs = ListField(
        ObjectField(SlabSchema, "a-slab"),
        "slabs",
        at_least=1,
        at_most=MAX_SLABS,
        required=True,
        about="The slabs to cast.",
    )
    joins = ListField(
        ObjectField(JoinSchema, "a-join"),
        "joins",
        at_most=MAX_SLABS * 2,
        about="Which sides of which slabs meet. Left out, none do.",
    )
    delivery = ObjectField(
        DeliverySchema,
        "delivery",
        about="The delivery, and the known dimensions of the way in. Left out, it is collected.",
    )
    needed_by = DayField(
        "needed-by-day",
        longest=20,
        about="The day by which it must arrive, ISO 8601. Left out, any day.",
    )
    sample_tile = YesNoField(
        "a-sample-tile", about="Whether a sample tile is cast first. Left out, no."
    )
    templating = YesNoField(
        "coming-to-measure", about="Whether the workshop measures on site. Left out, no."
    )
    heated_curing = YesNoField(
        "heated-curing", about="Whether it cures in the heated tent. Left out, no."
    )
    language = TextField(
        "language",
        longest=LONGEST_LANGUAGE_TAG,
        about=(
            "The language of the answer, as RFC 5646 writes it: `de`. Left out, or not spoken here,"
            " the one that `Accept-Language` asks for, else the workshop's own."
        ),
    )
    since = TextField(
        "earlier-quote-token",
        longest=LONGEST_TOKEN,
        about="The token of an earlier quote that this order changes. Left out, it is a new order.",
    )
