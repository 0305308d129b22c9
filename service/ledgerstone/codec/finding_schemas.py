"""Findings in answers, and the changes that settle them."""

from __future__ import annotations

from typing import Final

from marshmallow import fields

from ledgerstone.checks.occasions import WHENS
from ledgerstone.codec.answer_fields import (
    AnswerSchema,
    Free,
    Many,
    Number,
    OneOf,
    Part,
    Quantities,
    Text,
    Whole,
)
from ledgerstone.codec.price_schemas import MoneySchema, PriceSchema

LEVELS: Final = ("stops", "caution", "note")
_SETTLES = "The `id` of every finding that it settles; empty for a way to save."
_PATCH = (
    "A JSON Patch (RFC 6902) onto the order exactly as it was sent. It begins by testing what it"
    " changes."
)


class PlaceSchema(AnswerSchema):
    """A place in GeoJSON's shape (RFC 7946 §4), in plane slab millimetres."""

    type = OneOf("The kind of place.", ("Point", "LineString", "Polygon", "MultiPolygon"))
    coordinates = Free(
        "Millimetres from the slab's front-left corner, x to the right, y to the back.",
        keywords={"type": "array"},
    )


class OperationSchema(AnswerSchema):
    """One operation of a JSON Patch (RFC 6902)."""

    op = OneOf("What is done at the path.", ("test", "replace", "add", "remove"))
    path = Text(
        "Where in the order, as a JSON Pointer (RFC 6901).", keywords={"format": "json-pointer"}
    )
    value = Free("What is tested for, or written there.", absent="Absent where `op` is `remove`.")


class RemedySchema(AnswerSchema):
    """A change that settles a finding, or a way to save."""

    says = Text("The change, in the customer's words and units.")
    patch = Many(_PATCH, OperationSchema)
    settles = Many(_SETTLES, fields.String())
    verified = Free(
        "The patched order was read again and passed by every check.", keywords={"const": True}
    )
    price = Part(
        "What the patched order would cost.",
        PriceSchema,
        absent="Absent where something else still stops it.",
    )
    price_change = Part(
        "How much the total changes by.", MoneySchema, absent="Absent but for ways to save."
    )
    lighter_by_kg = Number(
        "Of a way to save: how much lighter all slabs together are, in kg.",
        absent="Absent where they are no lighter.",
    )
    sooner_by_days = Whole(
        "Of a way to save: how many days sooner it arrives.", absent="Absent where it is no sooner."
    )


class FixSchema(AnswerSchema):
    """One patch after which the order quotes, and what it would then cost."""

    says = Many("Each change, in the customer's words and units.", fields.String())
    patch = Many(_PATCH, OperationSchema)
    settles = Many(_SETTLES, fields.String())
    price = Part("What the patched order would cost.", PriceSchema)
    verified = Free(
        "The patched order was read again and passed by every check.", keywords={"const": True}
    )


class FindingSchema(AnswerSchema):
    """One thing that a check has to say."""

    id = Text("Stays the same while the finding does: its check, slab and part.")
    check = Text("Which check says it, in kebab-case.")
    level = OneOf(
        "`stops`: it cannot be made as asked; `caution`: it can, and the customer should know;"
        " `note`: the rest.",
        LEVELS,
    )
    when = OneOf(
        "When the customer acts on it: `before-order`, `on-delivery` (as it comes and is laid) or"
        " `in-use`.",
        WHENS,
    )
    slab = Whole(
        "The slab's number in the order, from 0.",
        absent="Absent where it is about the whole order.",
    )
    at = Many(
        "The parts of the order that it is about, as JSON Pointers (RFC 6901).",
        fields.String(metadata={"format": "json-pointer"}),
    )
    says = Text("What happened, and by how much, for the customer; remedies say what settles it.")
    follows_from = Text(
        "The id of the finding that it follows from at the same place, and is settled with.",
        absent="Absent where it follows from none.",
    )
    measured = Quantities("What was measured; each key ends in its unit, or names a day.")
    limit = Quantities("What it is held against, under the same keys.")
    where_mm = Part(
        "Where on the slab it is.", PlaceSchema, absent="Absent where it has no one place."
    )
    source = Text("The rule behind it: a standard, the workshop's own limit, or common practice.")
    remedies = Many(
        "What would settle it, the cheapest first; empty where nothing was looked for or found.",
        RemedySchema,
    )


FINDING: Final = FindingSchema()
