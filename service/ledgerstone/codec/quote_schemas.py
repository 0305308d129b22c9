"""The quote: the answer when nothing stops the order."""

from __future__ import annotations

from typing import Final

from marshmallow import fields

from ledgerstone.codec.answer_fields import (
    COLOUR_PATTERN,
    Amount,
    AnswerSchema,
    Day,
    Described,
    Facet,
    Many,
    Number,
    OneOf,
    Part,
    Text,
    Whole,
    YesNo,
)
from ledgerstone.codec.drawing_schemas import DrawingsSchema
from ledgerstone.codec.finding_schemas import FindingSchema, PlaceSchema, RemedySchema
from ledgerstone.codec.order_schemas import OrderSchema
from ledgerstone.codec.price_schemas import CostsSchema, MoneySchema, PriceSchema

STANDINGS: Final = ("estimate", "quotation")
MORE_FINDINGS: Final = "How many more findings there are; the gravest are listed."
ALL_LISTED: Final = "Absent where all are listed."


class StageSchema(AnswerSchema):
    """One stage of the work."""

    name = Text("What is done, or waited for.")
    starts = Day("Its first day.")
    ends = Day("Its last day.")
    why = Text("Why it takes so long; empty where that is plain.")


class ArrivalSchema(AnswerSchema):
    """The days on which the order can arrive; the ready day itself where it is collected."""

    earliest = Day("The first of them.", attribute="arrives_earliest")
    latest = Day("The last of them.", attribute="arrives_latest")


class LeadTimeSchema(AnswerSchema):
    """Days in the workshop's time zone. The day is held once the workshop books it."""

    ready_on = Day("The day on which it is ready to leave the workshop.")
    if_ordered_by = Day("The last day to order for that.")
    arrives = Facet("When it arrives.", ArrivalSchema)
    stages = Many("What happens until it is ready, in turn.", StageSchema)


class SlabWeightSchema(AnswerSchema):
    """What one slab weighs."""

    label = Text("The slab's label; empty where it has none.")
    slab_kg = Number("The mass of one piece with its steel, in kg, to 0.1 kg.", 1)
    people_to_lift = Whole("How many people lift it: the workshop's own share of mass for each.")
    says = Text("The mass with the hands that it wants, for the customer; no safe limit.")


class WeightSchema(AnswerSchema):
    """What the order weighs."""

    slabs = Many("Each slab, in the order's order.", SlabWeightSchema)
    packed_kg = Number("The whole order as it leaves, packing and all, in kg, to 0.1 kg.", 1)


class FinishedSchema(AnswerSchema):
    """The slab's box, as it is made, to 0.1 mm."""

    length_mm = Number("From its left end to its right, in mm.", 1)
    width_mm = Number("From its front to its back, in mm.", 1)
    thickness_mm = Number("Its thickness, in mm.", 1)


class GoverningSchema(AnswerSchema):
    """The governing case in numbers, for the maker."""

    load_n = Number("A person's load, in N.", 0, absent="Absent where nobody is on it.")
    load_n_per_m2 = Number(
        "What is spread over it, in N/m².", 0, absent="Absent where nothing is spread."
    )
    stress_mpa = Number("The stress, in MPa.", 2)
    limit_mpa = Number("What is trusted at that age, in MPa.", 2)
    age_days = Number("The concrete's age, adjusted to 20 °C, in days.", 2)
    cracks_at_n = Number(
        "A person's load at which it cracks in the mean, in N.", 0, absent="Absent likewise."
    )
    cracks_at_n_per_m2 = Number(
        "What is spread at which it cracks in the mean, in N/m².", 0, absent="Absent likewise."
    )
    cracks_at_own_weights = Number(
        "How many times its own weight cracks it in the mean.",
        1,
        absent="Absent where there is a load beside it.",
    )


class StrengthSchema(AnswerSchema):
    """The case that comes nearest to what the slab is trusted with."""

    worst_case = Text("What is done to the slab then.", absent="Absent where no case has stress.")
    utilisation = Number(
        "Stress over what is allowed: over 1 stops the order.", absent="Absent likewise."
    )
    where_mm = Part("Where the stress is highest.", PlaceSchema, absent="Absent likewise.")
    says = Text("How far that uses it, for the customer.", absent="Absent likewise.")
    governing = Part(
        "The same case in numbers.", GoverningSchema, absent="Absent without the maker's key."
    )


class ShadeAnswerSchema(AnswerSchema):
    """How a slab's shade looks, and how sure that is; empty where the workshop cannot tell."""

    name = Text("The shade's name.", absent="Absent where a colour is to be matched.")
    match = Text("The colour to match.", absent="Absent where the shade has a name.")
    hex = Text(
        "The colour dry and unsealed, sRGB.",
        absent="Absent with all that follows where it is not known.",
        keywords={"pattern": COLOUR_PATTERN},
    )
    hex_wet = Text(
        "The colour wet.", absent="Absent as `hex` is.", keywords={"pattern": COLOUR_PATTERN}
    )
    hex_sealed = Text(
        "The colour under the sealer asked for.",
        absent="Absent as `hex` is.",
        keywords={"pattern": COLOUR_PATTERN},
    )
    lab = Many(
        "CIELAB (D65) of `hex`: L*, a*, b*, to 0.01.",
        fields.Float(),
        absent="Absent as `hex` is.",
    )
    by_eye = YesNo(
        "Whether the colour is judged by eye, and not from readings of tiles.",
        absent="Absent as `hex` is.",
    )
    dose_percent = Number(
        "All pigments together, in percent of the cement's mass.",
        3,
        absent="Absent as `hex` is.",
    )
    uncertainty_delta_e = Number(
        "How far a piece may lie from `lab`, CIEDE2000.",
        1,
        absent="Absent where it is judged by eye.",
    )
    away_delta_e = Number(
        "How far `lab` stays from the colour to match, CIEDE2000.",
        1,
        absent="Absent where the shade has a name.",
    )
    says = Text("How sure the colour is, for the customer.", absent="Absent as `hex` is.")


class SlabAnswerSchema(AnswerSchema):
    """What is made of one slab of the order."""

    says = Text("What it is, whole: size, look, openings, edges, place and rests, in a line.")
    finished_mm = Part("The slab's box.", FinishedSchema)
    area_m2 = Number("Its area net of cut-outs, in m², to 1 cm².", 4)
    volume_l = Number("Its volume net of cut-outs and bevels, in litres, to 10 ml.", 2)
    strength = Part("How near it comes to what it is trusted with.", StrengthSchema)
    shade = Part("How its shade looks.", ShadeAnswerSchema)


class SinceSchema(AnswerSchema):
    """The offer that this one changes."""

    reference = Text("Its reference with its revision's letter.", attribute="name")
    issued = Day("The day it was made.")
    total = Amount("What it came to, tax and all, in the same currency.")
    ready_on = Day("The day on which it was to be ready.")


class ChangesSchema(AnswerSchema):
    """Against the quote that the order names as its `since`."""

    since = Part("The earlier offer.", SinceSchema)
    revision = Text("A, B, … under the same reference; empty where nothing has changed.")
    says = Many("What has changed in the order, one thing a sentence.", fields.String())
    price_change = Part("How much more it costs now; below zero, less.", MoneySchema)
    ready_later_days = Whole("How many days later it is ready; below zero, sooner.")


class NoLinkSchema(AnswerSchema):
    """Why there is no link."""

    reason = OneOf("What is in the way of it.", ("too-long",))
    says = Text("What to do in its place: the order itself can be kept as a file.")


class QuoteSchema(AnswerSchema):
    """The answer when nothing stops the order."""

    reference = Text("A short name of the offer, to say on the telephone.")
    token = Text(
        "The offer, signed: all that opens it again.",
        absent="Absent where it is longer than any address can be.",
    )
    link = Text("The page that opens the offer.", absent="Absent where it is too long for a link.")
    no_link = Part("Why there is no link.", NoLinkSchema, absent="Absent where there is one.")
    order = Described("The order as it was understood, what was left out filled in.", OrderSchema)
    issued = Day("The day of the offer.")
    valid_until = Day("The last day on which the offer stands.")
    standing = OneOf(
        "`quotation`: the price is promised; `estimate`: a best guess, looked over first.",
        STANDINGS,
    )
    note = Text("A few sentences of the workshop's.", absent="Absent where there are none.")
    depends_on = Many("What the price and the day rest on, each a sentence.", fields.String())
    changes = Part(
        "What differs from an earlier offer.",
        ChangesSchema,
        absent="Absent where the order names none.",
    )
    price = Part("What it costs.", PriceSchema)
    costs = Part(
        "What it costs the workshop.", CostsSchema, absent="Absent without the maker's key."
    )
    lead_time = Part("When it is ready, and when it arrives.", LeadTimeSchema)
    weight = Part("What it weighs.", WeightSchema)
    findings = Many("Cautions and notes, the gravest first.", FindingSchema)
    more_findings = Whole(MORE_FINDINGS, absent=ALL_LISTED, keywords={"minimum": 1})
    drawings = Part("Links to its drawings.", DrawingsSchema)
    slabs = Many("What is made of each slab, in the order's order.", SlabAnswerSchema)
    ways_to_save = Many(
        "Changes that make it cheaper, lighter or sooner.",
        RemedySchema,
        absent="Absent where they were not looked for.",
    )


QUOTE: Final = QuoteSchema()
