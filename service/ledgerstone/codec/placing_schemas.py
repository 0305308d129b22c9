"""Schemas of a request to lay out a slab, and of its answer."""

from __future__ import annotations

from typing import Final

from marshmallow import fields

from ledgerstone.codec.answer_fields import AnswerSchema, Described, Many, Text, YesNo
from ledgerstone.codec.fields import (
    ChoiceField,
    ListField,
    NumberField,
    ObjectField,
    Strict,
    YesNoField,
)
from ledgerstone.codec.order_schemas import MAX_CUTOUTS, JoinSchema, SlabSchema
from ledgerstone.codec.request_schemas import UnparsedField
from ledgerstone.layout import PIECE_NAMES, START_NAMES

MAX_FREE: Final = 8
_NUMBER: Final = "Its index in the slab, from 0."


def _numbers(label: str, about: str) -> ListField:
    number = NumberField(
        "number-in-the-slab", at_least=0, at_most=MAX_CUTOUTS - 1, whole=True, about=_NUMBER
    )
    return ListField(number, label, at_most=MAX_FREE, about=about)


class FreeSchema(Strict):
    """The parts of a slab whose position is not given."""

    about = "what-is-free"
    cutouts = _numbers("free-cut-outs", "Cut-outs to be placed, by index. Left out, none.")
    reliefs = _numbers("free-reliefs", "Reliefs to be placed, by index. Left out, none.")
    rests = YesNoField(
        "free-rests",
        about=(
            "Whether the rests are laid out as is usual for their kind, keeping the overhangs. Left"
            " out, they stay as they are."
        ),
    )


class PlacingAskSchema(Strict):
    """A slab, and the parts of it to lay out."""

    about = "a-placing"
    slab = UnparsedField(
        "a-slab",
        SlabSchema,
        about=(
            "A slab as an order has it. Where what is free lies is not read, and may be left out;"
            " so may all of its rests but their kind."
        ),
    )
    start = ChoiceField(
        "start",
        START_NAMES,
        about=(
            "A slab to start from, in the place of this one: it has its thickness, shade and"
            " surface. Left out, this one is laid out."
        ),
    )
    add = ChoiceField(
        "piece", PIECE_NAMES, about="An opening or a relief to add. Left out, none is."
    )
    free = ObjectField(
        FreeSchema,
        "what-is-free",
        about="The parts to lay out again. Left out, only what is added.",
    )
    unit = ChoiceField(
        "unit",
        ("mm", "cm", "m", "in"),
        about="The unit of lengths that the service sets. Left out, millimetres.",
    )


class FreeNumbersSchema(AnswerSchema):
    """The parts of a slab that were laid out: the `free` of the next request."""

    cutouts = Many("Cut-outs, by index.", fields.Integer())
    reliefs = Many("Reliefs, by index.", fields.Integer())
    rests = YesNo("Whether the rests were laid out.")


class PlacingSchema(AnswerSchema):
    """The slab laid out; a start may have two, joined."""

    fits = YesNo("Whether a position was found. If not, the slab is as it was sent.")
    says = Text("What was done, or why it fits nowhere, for the customer.")
    slabs = Many(
        "The slabs, as an order has them: what was sent stays as it was written.",
        Described("A slab.", SlabSchema),
    )
    joins = Many(
        "Their joins, by index in `slabs`.",
        Described("A join.", JoinSchema),
    )
    free = Many("The parts of each slab that were laid out.", FreeNumbersSchema)


PLACING: Final = PlacingSchema()
ASK: Final = PlacingAskSchema()
