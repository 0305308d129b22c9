"""What a workshop offers in public: no costs, no hours, no margins."""

from __future__ import annotations

from typing import Final

from marshmallow import fields, validate

from ledgerstone.codec.answer_fields import (
    Amount,
    AnswerSchema,
    Free,
    Many,
    Number,
    OneOf,
    Part,
    Text,
    YesNo,
)
from ledgerstone.order import CORNERS, PLACES, USES

_PERCENT_PATTERN = "^[0-9]+(\\.[0-9]+)?$"


class WorkshopSchema(AnswerSchema):
    """Whose workshop it is."""

    name = Text("The workshop's name.")
    town = Text("Where it is.")
    country = Text("The country, as its ISO 3166 code.")
    email = Text("Where to write to.")
    telephone = Text("Where to ring.")
    demonstration = YesNo("Whether it is an invented workshop, for show.")


class FormatsSchema(AnswerSchema):
    """How the workshop's place writes values, for a page that writes some itself."""

    locale = Text("Whose numbers, amounts and days: a language tag (RFC 5646), like `en-US`.")
    lengths = OneOf("The unit of lengths that nobody typed.", ("mm", "cm", "m", "in"))
    masses = OneOf("What slabs are weighed in.", ("kg", "lb"))


class TaxSchema(AnswerSchema):
    """The tax that the workshop charges."""

    name = Text("What the tax is called there.")
    percent = Text("Its rate, a decimal number of percent.", keywords={"pattern": _PERCENT_PATTERN})


class ShadeChoiceSchema(AnswerSchema):
    """One shade of the palette."""

    name = Text("What an order calls it.")
    hex = Text("The colour dry and unsealed, sRGB.")
    by_eye = YesNo("Whether the colour is judged by eye, and not from readings of tiles.")
    cement = OneOf("The cement it is made with.", ("grey", "white"), attribute="recipe.cement")
    says = Text("How sure the colour is, for the customer.")


class FinishChoiceSchema(AnswerSchema):
    """One surface."""

    surface = Text("What an order calls it.")
    says = Text("What it is, for the customer.")


class SealerChoiceSchema(AnswerSchema):
    """One sealer."""

    name = Text("What an order calls it.")
    says = Text("What it is, for the customer.")
    places = Many("Where it may be used.", fields.String())


class EdgeChoiceSchema(AnswerSchema):
    """One edge profile that is made."""

    profile = Text("What an order calls it.")
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
    fitting_gap_mm = Number("What comes off at each wall between walls, in mm.")
    slabs = Number("The most slabs in an order.")
    quantity = Number("The most pieces of one slab.")
    cutouts = Number("The most cut-outs in a slab, and the most reliefs.")
    rests = Number("The most units, legs or ledges under a slab.")
    points = Number("The most points of a polygon.")


class AreaSchema(AnswerSchema):
    """One area that the workshop delivers to."""

    area = Text("What the area is called.", attribute="name")
    postcodes = Many("How the postcodes in it begin.", fields.String())
    kinds = Many("How it delivers there; everywhere an order may be collected.", fields.String())


class SampleTileSchema(AnswerSchema):
    """A sample tile, cast first."""

    price = Amount("What one costs, before tax.")
    says = Text("The same for the customer.")


class TemplatingSchema(AnswerSchema):
    """Coming to measure."""

    visit = Amount("What the visit costs, before tax.")
    each = Amount("What each piece costs beside it, before tax.")
    says = Text("The same for the customer.")


class HeatedCuringSchema(AnswerSchema):
    """The heated tent."""

    warmth_c = Number("How warm it is in it, in °C.")
    says = Text("What it does, for the customer.")


class ChoicesSchema(AnswerSchema):
    """What this workshop offers in public."""

    workshop = Part("Whose workshop it is.", WorkshopSchema)
    language = Text("The language of whoever asks for none that is spoken here: `en` or `de`.")
    formats = Part("How values are written there, in the language asked for.", FormatsSchema)
    words = Free(
        "What the page says otherwise, in the language asked for, by the names of its messages:"
        " words of the country, and the maker's own sentences.",
        keywords={
            "type": "object",
            "additionalProperties": {
                "oneOf": [
                    {"type": "string"},
                    {"type": "object", "additionalProperties": {"type": "string"}},
                ]
            },
        },
    )
    currency = Text("The currency of every price, as its ISO 4217 code.")
    tax = Part("The tax; null where the workshop charges none.", TaxSchema, or_null=True)
    uses = Many("What a slab can be used as.", fields.String(validate=validate.OneOf(USES)))
    places = Many("Where a slab can go.", fields.String(validate=validate.OneOf(PLACES)))
    corners = Many(
        "How the corners of a box are called.", fields.String(validate=validate.OneOf(CORNERS))
    )
    thicknesses_mm = Many(
        "The thicknesses that are stocked, in mm.", fields.Raw(metadata={"type": "number"})
    )
    shades = Many("The shades of the palette.", ShadeChoiceSchema)
    matching = YesNo("Whether a colour can be matched.")
    screens_say = Text("What to say beside every swatch.")
    finishes = Many("The surfaces that a slab can have.", FinishChoiceSchema)
    sealers = Many("The sealers that a slab can have.", SealerChoiceSchema)
    edges = Many("The edge profiles.", EdgeChoiceSchema)
    limits = Part("What can be cast, and what one order may hold.", LimitsSchema)
    deliveries = Many("The areas that it delivers to.", AreaSchema)
    sample_tile = Part(
        "A sample tile; null where the workshop casts none.", SampleTileSchema, or_null=True
    )
    templating = Part(
        "Coming to measure; null where the workshop does not come.", TemplatingSchema, or_null=True
    )
    heated_curing = Part(
        "The heated tent; null where there is none.", HeatedCuringSchema, or_null=True
    )
    requests = YesNo("Whether a quote can be asked for here, by `POST /v1/requests`.")


CHOICES: Final = ChoicesSchema()
