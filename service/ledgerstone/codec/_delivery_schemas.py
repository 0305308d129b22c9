"""The delivery and the way in, as JSON."""

from __future__ import annotations

from ledgerstone import order as records
from ledgerstone.codec._record_schema import Record
from ledgerstone.codec.fields import ChoiceField, LengthField, NumberField, ObjectField, TextField


class TurnSchema(Record):
    """A right-angled corner on the way in."""

    about, record = "a-turn", records.Turn
    before = LengthField(
        "width-before-the-turn",
        required=True,
        data_key="from",
        about="The clear width of the way before the turn.",
    )
    after = LengthField(
        "width-after-the-turn",
        required=True,
        data_key="into",
        about="The clear width of the way after it.",
    )


class LiftSchema(Record):
    """A passenger lift."""

    about, record = "a-lift", records.Lift
    width = LengthField("lift-width", required=True, about="The car's clear width inside.")
    depth = LengthField(
        "lift-depth", required=True, about="The car's clear depth inside, from its door."
    )
    height = LengthField("lift-height", required=True, about="The car's clear height inside.")
    door = LengthField("lift-door", required=True, about="The clear width of the lift's door.")
    rated_kg = NumberField(
        "lift-rated-load-in-kg",
        at_least=1,
        at_most=20_000,
        required=True,
        about="The lift's rated load, in kg, with people.",
    )


class DeliverySchema(Record):
    """How the order is delivered, and the known dimensions of the way in."""

    about, record = "a-delivery", records.Delivery
    kind = ChoiceField(
        "kind-of-delivery",
        ("collect", "pallet", "own-van", "fitted"),
        required=True,
        about=(
            "`collect`: from the workshop; `pallet`: to the kerb; `own-van`: to the door;"
            " `fitted`: carried in and fitted."
        ),
    )
    postcode = TextField(
        "postcode",
        longest=12,
        about="The destination's postcode. Left out, collected, or to the area of `since`.",
    )
    doorway = LengthField(
        "doorway-clear-width",
        about="The narrowest clear width of the doors. Left out, the customer is asked.",
    )
    turn = ObjectField(
        TurnSchema,
        "turn-on-the-way-in",
        about="The tightest right-angled turn on the way in. Left out, there is none.",
    )
    ceiling = LengthField(
        "ceiling-height",
        about=(
            "The lowest ceiling on the way in, under which a slab may be tilted. Left out, no"
            " slab is tilted."
        ),
    )
    lift = ObjectField(
        LiftSchema,
        "lift",
        about="The passenger lift that it goes up in. Left out, there is none.",
    )
    steps = NumberField(
        "number-of-steps",
        at_least=0,
        at_most=500,
        whole=True,
        about="How many steps it is carried up. Left out, the customer is asked.",
    )
    floor = NumberField(
        "floor",
        at_least=-5,
        at_most=100,
        whole=True,
        about="Which floor it goes to; 0 is the ground floor. Left out, unknown.",
    )
    people = NumberField(
        "how-many-people-will-carry",
        at_least=0,
        at_most=50,
        whole=True,
        about="How many people will be there to carry. Left out, unknown.",
    )
