"""Schema of the quote: the answer when nothing stops the order."""

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
    NestedPart,
    Number,
    OneOf,
    Text,
    Whole,
    YesNo,
)
from ledgerstone.codec.drawing_schemas import DrawingsSchema
from ledgerstone.codec.finding_schemas import FindingSchema, PlaceSchema, RemedySchema
from ledgerstone.codec.order_schemas import OrderSchema
from ledgerstone.codec.price_schemas import CostsSchema, MoneySchema, PriceSchema

STANDINGS: Final = ("estimate", "quotation")
MORE_FINDINGS: Final = "How many more findings there are; the most serious are listed."
ALL_LISTED: Final = "Absent if all are listed."


class StageSchema(AnswerSchema):
    """One stage of the lead time."""

    name = Text("The work or the wait.")
    starts = Day("Its first day.")
    ends = Day("Its last day.")
    why = Text("Why it takes so long; empty if that is obvious.")


class ArrivalSchema(AnswerSchema):
    """The first and last day on which the order can arrive; the ready day if it is collected."""

    earliest = Day("The first possible day.", attribute="arrives_earliest")
    latest = Day("The last possible day.", attribute="arrives_latest")


class LeadTimeSchema(AnswerSchema):
    """Days in the workshop's time zone. The day is held once the workshop books it."""

    ready_on = Day("The day on which it is ready to leave the workshop.")
    if_ordered_by = Day("The last day to order for `ready_on`.")
    arrives = Facet("When it arrives.", ArrivalSchema)
    stages = Many("The stages until it is ready, in order.", StageSchema)


class SlabWeightSchema(AnswerSchema):
    """The weight of one slab."""

    label = Text("The slab's label; empty if it has none.")
    slab_kg = Number("The mass of one piece with its steel, in kg, to 0.1 kg.", 1)
    people_to_lift = Whole("How many people lift it, by the workshop's own mass for each.")
    says = Text("Its mass and the people to lift it, for the customer; no safe limit.")


class WeightSchema(AnswerSchema):
    """The weight of the order."""

    slabs = Many("Each slab, in the order of the order.", SlabWeightSchema)
    packed_kg = Number("The mass of the whole order with its packing, in kg, to 0.1 kg.", 1)


class FinishedSchema(AnswerSchema):
    """The finished size of the slab's bounding box, to 0.1 mm."""

    length_mm = Number("From its left end to its right, in mm.", 1)
    width_mm = Number("From its front to its back, in mm.", 1)
    thickness_mm = Number("Its thickness, in mm.", 1)


class GoverningSchema(AnswerSchema):
    """The governing case in numbers, for the maker."""

    load_n = Number(
        "The concentrated load of a person, in N.", 0, absent="Absent if there is none."
    )
    load_n_per_m2 = Number("The distributed load, in N/m².", 0, absent="Absent if there is none.")
    stress_mpa = Number("The stress, in MPa.", 2)
    limit_mpa = Number("The allowed stress at that age, in MPa.", 2)
    stress_says = Text("The stress, in the workshop's unit.")
    limit_says = Text("The allowed stress at that age, in the workshop's unit.")
    age_days = Number("The concrete's age, adjusted to 20 °C, in days.", 2)
    cracks_at_n = Number(
        "The concentrated load that cracks it at mean strength, in N.",
        0,
        absent="Absent under the same condition.",
    )
    cracks_at_says = Text(
        "The load that cracks it at mean strength, in the workshop's unit.",
        absent="Absent if its own weight is the load, or if none cracks it.",
    )
    cracks_at_n_per_m2 = Number(
        "The distributed load that cracks it at mean strength, in N/m².",
        0,
        absent="Absent under the same condition.",
    )
    cracks_at_own_weights = Number(
        "The multiple of its own weight that cracks it at mean strength.",
        1,
        absent="Absent if there is another load.",
    )


class StrengthSchema(AnswerSchema):
    """The load case with the highest utilisation."""

    worst_case = Text("The load case.", absent="Absent if no case has a stress.")
    utilisation = Number(
        "Stress over the allowed stress; above 1 the order stops.",
        absent="Absent under the same condition.",
    )
    where_mm = NestedPart(
        "The place of the highest stress.", PlaceSchema, absent="Absent under the same condition."
    )
    says = Text(
        "The utilisation as a sentence for the customer.", absent="Absent under the same condition."
    )
    governing = NestedPart(
        "The load case in numbers.", GoverningSchema, absent="Absent without the maker's key."
    )


class ShadeAnswerSchema(AnswerSchema):
    """The appearance of a slab's shade, and its uncertainty; empty if it is not known."""

    name = Text("The shade's name.", absent="Absent if a colour is to be matched.")
    match = Text("The colour to match.", absent="Absent if the shade has a name.")
    hex = Text(
        "The colour dry and unsealed, sRGB as `#rrggbb`.",
        absent="Absent with all that follows where it is not known.",
        keywords={"pattern": COLOUR_PATTERN},
    )
    hex_wet = Text(
        "The colour when wet, sRGB as `#rrggbb`.",
        absent="Absent as `hex` is.",
        keywords={"pattern": COLOUR_PATTERN},
    )
    hex_sealed = Text(
        "The colour under the chosen sealer, sRGB as `#rrggbb`.",
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
        "The uncertainty of `lab`, CIEDE2000.",
        1,
        absent="Absent if it is judged by eye.",
    )
    away_delta_e = Number(
        "The distance of `lab` from the colour to match, CIEDE2000.",
        1,
        absent="Absent if the shade has a name.",
    )
    says = Text("How sure the colour is, for the customer.", absent="Absent as `hex` is.")


class SlabAnswerSchema(AnswerSchema):
    """The result for one slab of the order."""

    says = Text("A description: size, look, openings, edges, place and rests, in one line.")
    finished_mm = NestedPart("The finished size of the slab's bounding box.", FinishedSchema)
    area_m2 = Number("Its area net of cut-outs, in m², to 1 cm².", 4)
    volume_l = Number("Its volume net of cut-outs and bevels, in litres, to 10 ml.", 2)
    strength = NestedPart("Its utilisation in the governing load case.", StrengthSchema)
    shade = NestedPart("The appearance of its shade.", ShadeAnswerSchema)


class SinceSchema(AnswerSchema):
    """The offer that this one changes."""

    reference = Text("Its reference with its revision's letter.", attribute="name")
    issued = Day("The day it was made.")
    total = Amount("Its total with tax, in the same currency.")
    ready_on = Day("The day on which it would be ready.")


class ChangesSchema(AnswerSchema):
    """The differences from the quote in the order's `since`."""

    since = NestedPart("The earlier offer.", SinceSchema)
    revision = Text("A, B, … under the same reference; empty if nothing has changed.")
    says = Many("The changes of the order, one sentence each.", fields.String())
    price_change = NestedPart("The change of the total; negative for a lower price.", MoneySchema)
    ready_later_days = Whole("How many days later it is ready; negative for earlier.")


class NoLinkSchema(AnswerSchema):
    """Why there is no link."""

    reason = OneOf("The reason that there is no link.", ("too-long",))
    says = Text("What to do instead: the order can be saved as a file.")


class QuoteSchema(AnswerSchema):
    """The answer when nothing stops the order."""

    reference = Text("A short name of the offer, easy to say on the telephone.")
    token = Text(
        "The signed offer, which opens it again.",
        absent="Absent if it is too long for an address.",
    )
    link = Text("The page that opens the offer.", absent="Absent if it is too long for a link.")
    no_link = NestedPart("Why there is no link.", NoLinkSchema, absent="Absent if there is one.")
    order = Described("The order as understood, with defaults filled in.", OrderSchema)
    issued = Day("The day of the offer.")
    valid_until = Day("The last day on which the offer is valid.")
    standing = OneOf(
        "`quotation`: the price is binding; `estimate`: the workshop checks it first.",
        STANDINGS,
    )
    note = Text("A note from the workshop to the customer.", absent="Absent if there are none.")
    trial = Text(
        "A sentence that it is a trial: prices, hours or areas are still invented.",
        absent="Absent if they are not.",
    )
    depends_on = Many(
        "The conditions of the price and the day, one sentence each.", fields.String()
    )
    changes = NestedPart(
        "The differences from an earlier offer.",
        ChangesSchema,
        absent="Absent if the order names none.",
    )
    price = NestedPart("The price and its lines.", PriceSchema)
    costs = NestedPart(
        "The workshop's costs.", CostsSchema, absent="Absent without the maker's key."
    )
    lead_time = NestedPart("The days on which it is ready and arrives.", LeadTimeSchema)
    weight = NestedPart("The mass of each slab and of the whole.", WeightSchema)
    findings = Many(
        "Cautions and notes: the first two cautions, then by `when` each is acted on.",
        FindingSchema,
    )
    more_findings = Whole(MORE_FINDINGS, absent=ALL_LISTED, keywords={"minimum": 1})
    drawings = NestedPart("Links to its drawings.", DrawingsSchema)
    slabs = Many("The result for each slab, in the order of the order.", SlabAnswerSchema)
    ways_to_save = Many(
        "Changes that make it cheaper, lighter or sooner.",
        RemedySchema,
        absent="Absent if they were not searched for.",
    )


QUOTE: Final = QuoteSchema()
