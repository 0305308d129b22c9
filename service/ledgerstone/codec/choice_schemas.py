"""Schema of a workshop's public choices: no costs, no hours, no margins."""

from __future__ import annotations

from typing import Final

from marshmallow import fields, validate

from ledgerstone.codec.answer_fields import (
    Amount,
    AnswerSchema,
    AnyJson,
    Many,
    NestedPart,
    Number,
    OneOf,
    Text,
    YesNo,
)
from ledgerstone.order import CORNERS, PLACES, USES

PAGE_TEXTS: Final = {
    "type": "object",
    "additionalProperties": {
        "oneOf": [
            {"type": "string"},
            {"type": "object", "additionalProperties": {"type": "string"}},
        ]
    },
}
_PERCENT_PATTERN = "^[0-9]+(\\.[0-9]+)?$"


class WorkshopSchema(AnswerSchema):
    """The workshop's name and address."""

    name = Text("The workshop's name.")
    town = Text("The town it is in.")
    country = Text("The country, as its ISO 3166 code.")
    email = Text("The workshop's email address.")
    telephone = Text("The workshop's telephone number.")
    ring = Text("The telephone number with the times when it is answered, if the workshop has any.")
    demonstration = YesNo("Whether it is the invented demonstration workshop.")


class FormatsSchema(AnswerSchema):
    """Formats of values in the workshop's country, for a page that formats some itself."""

    locale = Text(
        "The locale of numbers, amounts and days: a language tag (RFC 5646), like `en-US`."
    )
    lengths = OneOf("The unit of lengths that the service sets itself.", ("mm", "cm", "m", "in"))
    masses = OneOf("The unit of slabs' masses.", ("kg", "lb"))


class TaxSchema(AnswerSchema):
    """The tax that the workshop charges."""

    name = Text("The tax's name.")
    percent = Text("Its rate, in percent, as decimal text.", keywords={"pattern": _PERCENT_PATTERN})


class ShadeChoiceSchema(AnswerSchema):
    """One shade of the palette."""

    name = Text("Its name in an order.")
    hex = Text("The colour dry and unsealed, sRGB as `#rrggbb`.")
    by_eye = YesNo("Whether the colour is judged by eye, and not from readings of tiles.")
    cement = OneOf("The cement it is made with.", ("grey", "white"), attribute="recipe.cement")
    says = Text("How sure the colour is, for the customer.")


class FinishChoiceSchema(AnswerSchema):
    """One surface."""

    surface = Text("Its name in an order.")
    says = Text("A description for the customer.")


class SealerChoiceSchema(AnswerSchema):
    """One sealer."""

    name = Text("Its name in an order.")
    says = Text("A description for the customer.")
    places = Many("The places it is suitable for.", fields.String())


class EdgeChoiceSchema(AnswerSchema):
    """One edge profile that is made."""

    profile = Text("Its name in an order.")
    smallest_mm = Number("The smallest size that is made, in mm.")
    largest_mm = Number("The largest size that is made, in mm.")


class LimitsSchema(AnswerSchema):
    """What can be cast, and what one order may hold."""

    length_mm = Number("The casting table's length, in mm: a slab's box fits it either way round.")
    width_mm = Number("The casting table's width, in mm.")
    thinnest_mm = Number("The thinnest slab, in mm.")
    thickest_mm = Number("The thickest slab, in mm.")
    smallest_side_mm = Number("The narrowest slab, in mm.")
    inside_radius_mm = Number("The smallest radius of an inside corner, in mm.")
    fitting_gap_mm = Number("The fitting gap that is deducted at each wall, in mm.")
    slabs = Number("The most slabs in an order.")
    quantity = Number("The most pieces of one slab.")
    cutouts = Number("The most cut-outs in a slab, and the most reliefs.")
    rests = Number("The most units, legs or ledges under a slab.")
    points = Number("The most points of a polygon.")


class StartSchema(AnswerSchema):
    """A plain slab that the workshop makes, for a form to start with."""

    length_mm = Number("The most that it is long, in mm.")
    width_mm = Number("The most that it is wide, in mm.")
    thickness_mm = Number("Its thickness, in mm.")


class AreaSchema(AnswerSchema):
    """One area that the workshop delivers to."""

    area = Text("The area's name.", attribute="name")
    postcodes = Many("The beginnings of its postcodes.", fields.String())
    kinds = Many("The kinds of delivery there; collection is always possible.", fields.String())


class SampleTileSchema(AnswerSchema):
    """A sample tile, cast first."""

    price = Amount("The price of one tile, before tax.")
    says = Text("The same as a sentence for the customer.")


class TemplatingSchema(AnswerSchema):
    """Measuring on site."""

    visit = Amount("The price of the visit, before tax.")
    each = Amount("The additional price of each piece, before tax.")
    says = Text("The same as a sentence for the customer.")


class HeatedCuringSchema(AnswerSchema):
    """Curing in the heated tent."""

    warmth_c = Number("The temperature in the tent, in °C.")
    says = Text("Its effect, for the customer.")


class ChoicesSchema(AnswerSchema):
    """What this workshop offers in public."""

    workshop = NestedPart("The workshop's name and address.", WorkshopSchema)
    language = Text("The language of answers to requests that name no supported one: `en` or `de`.")
    languages = Many("The languages that the page offers a link to.", fields.String())
    formats = NestedPart("How values are formatted, in the requested language.", FormatsSchema)
    words = AnyJson(
        "Texts that replace the page's own, in the requested language, by message name: the"
        " country's words, and the maker's own sentences.",
        keywords=PAGE_TEXTS,
    )
    currency = Text("The currency of every price, as its ISO 4217 code.")
    tax = NestedPart("The tax; null if the workshop charges none.", TaxSchema, or_null=True)
    uses = Many("The uses that a slab can have.", fields.String(validate=validate.OneOf(USES)))
    places = Many(
        "The places that a slab can be made for.", fields.String(validate=validate.OneOf(PLACES))
    )
    corners = Many(
        "The names of the corners of a box.", fields.String(validate=validate.OneOf(CORNERS))
    )
    thicknesses_mm = Many(
        "The thicknesses that are stocked, in mm.", fields.Raw(metadata={"type": "number"})
    )
    start = NestedPart("A plain slab that the workshop makes.", StartSchema)
    shades = Many("The shades of the palette.", ShadeChoiceSchema)
    matching = YesNo("Whether a colour can be matched.")
    screens_say = Text("The caution to show beside every swatch.")
    finishes = Many("The surfaces that a slab can have.", FinishChoiceSchema)
    sealers = Many("The sealers that a slab can have.", SealerChoiceSchema)
    edges = Many("The edge profiles.", EdgeChoiceSchema)
    limits = NestedPart("What can be cast, and what one order may hold.", LimitsSchema)
    deliveries = Many("The areas that the workshop delivers to.", AreaSchema)
    sample_tile = NestedPart(
        "A sample tile; null if the workshop casts none.", SampleTileSchema, or_null=True
    )
    templating = NestedPart(
        "Measuring on site; null if the workshop does not offer it.", TemplatingSchema, or_null=True
    )
    heated_curing = NestedPart(
        "Heated curing; null if the workshop has no heated tent.", HeatedCuringSchema, or_null=True
    )
    answering = Text("Who answers a request, by when, and that a request is not binding.")
    requests = YesNo("Whether `POST /v1/requests` is available.")


CHOICES: Final = ChoicesSchema()
