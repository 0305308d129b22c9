"""Schemas of findings, and of the changes that settle them."""

from __future__ import annotations

from typing import Final

from marshmallow import fields

from ledgerstone.checks.finding import LEVELS
from ledgerstone.checks.occasions import OCCASIONS
from ledgerstone.codec.answer_fields import (
    AnswerSchema,
    AnyJson,
    Many,
    NestedPart,
    Number,
    OneOf,
    Quantities,
    Text,
    Whole,
)
from ledgerstone.codec.price_schemas import MoneySchema, PriceSchema

_SETTLES = "The `id` of every finding that it settles; empty for a way to save."
_PATCH = (
    "A JSON Patch (RFC 6902) onto the order exactly as it was sent. It begins by testing what it"
    " changes."
)


class PlaceSchema(AnswerSchema):
    """A place in GeoJSON's shape (RFC 7946 §4), in plane slab millimetres."""

    type = OneOf("The kind of place.", ("Point", "LineString", "Polygon", "MultiPolygon"))
    coordinates = AnyJson(
        "Millimetres from the slab's front-left corner, x to the right, y to the back.",
        keywords={"type": "array"},
    )


class OperationSchema(AnswerSchema):
    """One operation of a JSON Patch (RFC 6902)."""

    op = OneOf("The kind of operation.", ("test", "replace", "add", "remove"))
    path = Text("JSON Pointer into the order (RFC 6901).", keywords={"format": "json-pointer"})
    value = AnyJson(
        "The value that is tested for or written.", absent="Absent if `op` is `remove`."
    )


class RemedySchema(AnswerSchema):
    """A change that settles a finding, or a way to save."""

    says = Text("The change, in the customer's words and units.")
    patch = Many(_PATCH, OperationSchema)
    settles = Many(_SETTLES, fields.String())
    verified = AnyJson(
        "True: the patched order was parsed again and passes every check.", keywords={"const": True}
    )
    price = NestedPart(
        "The price of the patched order.",
        PriceSchema,
        absent="Absent if another finding still stops it.",
    )
    price_change = NestedPart(
        "The change of the total.", MoneySchema, absent="Only for ways to save."
    )
    lighter_by_kg = Number(
        "For a way to save: the mass saved over all slabs, in kg.",
        absent="Absent if none is saved.",
    )
    sooner_by_days = Whole(
        "For a way to save: how many days earlier it arrives.",
        absent="Absent if it is not earlier.",
    )


class FixSchema(AnswerSchema):
    """One patch after which the order quotes, and the price it would have."""

    says = Many("Each change, in the customer's words and units.", fields.String())
    patch = Many(_PATCH, OperationSchema)
    settles = Many(_SETTLES, fields.String())
    price = NestedPart("The price of the patched order.", PriceSchema)
    verified = AnyJson(
        "True: the patched order was parsed again and passes every check.", keywords={"const": True}
    )


class FindingSchema(AnswerSchema):
    """One result of a check."""

    id = Text("Identifier, the same for the same check, slab and part.")
    check = Text("The check's name, in kebab-case.")
    level = OneOf(
        "`stops`: it cannot be made as asked; `caution`: it can, and the customer should know;"
        " `note`: for information.",
        LEVELS,
    )
    when = OneOf(
        "When the customer acts on it: `before-order`, `on-delivery` (as it comes and is laid) or"
        " `in-use`.",
        OCCASIONS,
    )
    slab = Whole(
        "The slab's index in the order, from 0.",
        absent="Absent if it is about the whole order.",
    )
    at = Many(
        "The parts of the order that it is about, as JSON Pointers (RFC 6901).",
        fields.String(metadata={"format": "json-pointer"}),
    )
    says = Text("The finding as a sentence for the customer; the remedies say what settles it.")
    follows_from = Text(
        "The id of the finding at the same place that causes this one.",
        absent="Absent if there is none.",
    )
    measured = Quantities("The measured quantities; each key ends in its unit, or names a day.")
    limit = Quantities("The limits, under the same keys.")
    where_mm = NestedPart(
        "Its place on the slab.", PlaceSchema, absent="Absent if it has no single place."
    )
    source = Text("The source of the rule: a standard, the workshop's limit, or common practice.")
    remedies = Many(
        "Changes that settle it, the cheapest first; empty if none was searched for or found.",
        RemedySchema,
    )


FINDING: Final = FindingSchema()
