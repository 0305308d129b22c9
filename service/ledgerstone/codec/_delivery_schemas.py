"""The delivery and the way in, as JSON."""

from __future__ import annotations

from ledgerstone import order as records
from ledgerstone.codec._record_schema import Record
from ledgerstone.codec.fields import ChoiceField, LengthField, NumberField, ObjectField, TextField


class TurnSchema(Record):
    """A right-angled corner on the way in."""

    about, record = "a turn", records.Turn
    before = LengthField("the width before the turn", required=True, data_key="from")
    after = LengthField("the width after the turn", required=True, data_key="into")


class LiftSchema(Record):
    """A passenger lift."""

    about, record = "a lift", records.Lift
    width = LengthField("the lift's width", required=True)
    depth = LengthField("the lift's depth", required=True)
    height = LengthField("the lift's height", required=True)
    door = LengthField("the lift's door", required=True)
    rated_kg = NumberField("the lift's rated load in kg", at_least=1, at_most=20_000, required=True)


class DeliverySchema(Record):
    """How the order leaves, and what is known of the way in."""

    about, record = "a delivery", records.Delivery
    kind = ChoiceField(
        "the kind of delivery", ("collect", "pallet", "own-van", "fitted"), required=True
    )
    postcode = TextField("the postcode", longest=12)
    doorway = LengthField("the doorway's clear width")
    turn = ObjectField(TurnSchema, "the turn on the way in")
    ceiling = LengthField("the ceiling's height")
    lift = ObjectField(LiftSchema, "the lift")
    steps = NumberField("the number of steps", at_least=0, at_most=500, whole=True)
    floor = NumberField("the floor", at_least=-5, at_most=100, whole=True)
    people = NumberField("how many people will carry", at_least=0, at_most=50, whole=True)
