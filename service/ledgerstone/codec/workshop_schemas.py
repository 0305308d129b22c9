"""Schemas of the profile's form: its tables and values, and changes to them."""

from __future__ import annotations

from typing import Final

from marshmallow import fields

from ledgerstone.codec.answer_fields import (
    Amount,
    AnswerSchema,
    AnyJson,
    Day,
    Many,
    NestedPart,
    Number,
    OneOf,
    Text,
    Whole,
    YesNo,
)
from ledgerstone.codec.choice_schemas import PAGE_TEXTS
from ledgerstone.codec.fields import (
    ChoiceField,
    ListField,
    ObjectField,
    Strict,
    TextField,
    YesNoField,
)
from ledgerstone.codec.service_schemas import ProfileValuesSchema
from ledgerstone.workshop.form.describing import SUBJECTS
from ledgerstone.workshop.form.first_quote import STEPS
from ledgerstone.workshop.records.members import MEMBER_KINDS
from ledgerstone.workshop.standing import VALUE_STANDINGS

OPERATIONS: Final = (
    "set",
    "leave-out",
    "add",
    "confirm",
    "unconfirm",
    "fit-hours",
    "fit-money",
    "mix-from-bags",
)
MAX_CHANGES: Final = 1000
_LONGEST_VALUE: Final = 2000
_LONGEST_POINTER: Final = 200
_MAX_VALUES: Final = 400


class ChangeSchema(Strict):
    """One change of the profile; changes are applied in order."""

    about = "a-profile-change"
    op = ChoiceField(
        "profile-operation",
        OPERATIONS,
        required=True,
        about=(
            "`set` a value; `leave-out` a value, a table or an item; `add` a table or one more item"
            " of a list; `confirm` a value or a table as the maker's own, or `unconfirm`;"
            " `fit-hours` to scale every rate of hours so that typical jobs take the given hours;"
            " `fit-money` to scale every buying price, and to set the markup, so that the job with"
            " `parts` takes the given materials and is asked the given price, where a price stays"
            " that is `set` before it in the same call, and one of an earlier call is scaled too;"
            " `mix-from-bags` to put a bag, with nothing filled in, in the place of a recipe by"
            " volume."
        ),
    )
    pointer = TextField(
        "profile-pointer",
        longest=_LONGEST_POINTER,
        required=True,
        about="JSON Pointer into the profile (RFC 6901), such as `/rates/hour`.",
    )
    value = TextField(
        "profile-value",
        longest=_LONGEST_VALUE,
        about="For `set`: the value as typed. Left out if the value is a list.",
    )
    values = ListField(
        TextField("profile-value", longest=_LONGEST_VALUE),
        "profile-values",
        at_most=_MAX_VALUES,
        about=(
            "For `set`: the values of a list, left out if it is a single value. For `confirm`:"
            " JSON Pointers to several values that are confirmed at once. For `fit-hours`: the"
            " labour that each typical job takes, in hours, empty where unknown. For `fit-money`:"
            " what is bought for the job, and what is asked for making it, before tax and delivery."
        ),
    )


class WorkshopTrialSchema(Strict):
    """Changes to try on the profile."""

    about = "what-is-asked"
    version = TextField(
        "profile-version", required=True, about="The version of the file that is changed."
    )
    changes = ListField(
        ObjectField(ChangeSchema, "a-profile-change", about="One change."),
        "profile-changes",
        at_most=MAX_CHANGES,
        required=True,
        about="The changes, in the order to apply them.",
    )
    save = YesNoField(
        "profile-save", about="Whether to write the file. Left out, the changes are only tried."
    )
    described = YesNoField(
        "profile-described",
        about="Whether to return `tables` and `values`. Left out, they are absent.",
    )


class ProfileFaultSchema(AnswerSchema):
    """A fault at one place of the profile."""

    pointer = Text("JSON Pointer to its place in the profile.")
    says = Text("The fault, and how to correct it.")


class InventedSchema(AnswerSchema):
    """A table that holds invented values."""

    pointer = Text("JSON Pointer to the table.")
    values = Whole("How many values are invented.")
    holds = YesNo(
        "Whether they include prices, hours or areas, so that every answer is marked as a trial."
    )
    says = Text("The parts of a customer's answer that depend on the table.")


class FirstStepSchema(AnswerSchema):
    """A step on the shortest way to a first quote that is not marked as a trial."""

    name = OneOf("What the step is about.", STEPS)
    title = Text("Its title on the form.")
    asks = Many("JSON Pointers to the values it asks for.", fields.String())
    labels = Many("What each of `asks` is called there, in a few words.", fields.String())
    stands = Many("JSON Pointers to its values that may stand as is usual.", fields.String())
    stands_say = Many("What each of `stands` is called there.", fields.String())
    shown = Many(
        "JSON Pointers to its other values that a price, a day, an area, a shade or a lift rests"
        " on, invented or the maker's own.",
        fields.String(),
    )
    open = Many(
        "Of `shown`, those that stand open as fields: amounts of money, and what is lifted.",
        fields.String(),
    )
    rest = Many("Of `shown`, those that are invented.", fields.String())
    done = YesNo("Whether none of its values is invented or has a fault.")


class JobPartSchema(AnswerSchema):
    """The share of one rate of the profile in a job."""

    pointer = Text("JSON Pointer to the rate.")
    hands_hours = Number("Labour by this rate, in hours.", places=3)
    amount = Amount("Their share of the price, with markup, before tax.")


class TypicalJobSchema(AnswerSchema):
    """The result of a typical job by the changed profile."""

    name = Text("The job's name.")
    total = Amount(
        "The total that the customer would pay, with tax.", absent="Absent if it is sent back."
    )
    hands_hours = Number("Labour, in hours.", places=2, absent="Absent if it is sent back.")
    told_hours = Number(
        "The labour that `fit-hours` gave for it, in hours.",
        places=2,
        absent="Absent if none was given, or it does not read.",
    )
    fitted_hours = Number(
        "Labour right after `fit-hours`, in hours: another one than `hands_hours` where something"
        " that it rests on was changed since.",
        places=2,
        absent="Absent if nothing was fitted.",
    )
    ready_on = Day(
        "The day it would be ready, if ordered today.", absent="Absent if it is sent back."
    )
    parts = Many(
        "Labour by rate of the profile.",
        JobPartSchema,
        absent="Only for the job with the most steps.",
    )
    materials = Amount(
        "What is bought for it.", absent="Only for the job with `parts`, if it quotes."
    )
    asked = Amount(
        "What is asked for making it, before tax, services, the carrier and what is short of the"
        " smallest order.",
        absent="Only for the job with `parts`, if it quotes.",
    )
    told_materials = Amount(
        "What `fit-money` gave as bought for it.",
        absent="Absent if none was given, or it does not read.",
    )
    told_asked = Amount(
        "What `fit-money` gave as asked for it.",
        absent="Absent if none was given, or it does not read.",
    )
    below_cost = Text(
        "Why no markup was set: what it costs to make is more than what is asked.",
        absent="Absent if it is not.",
    )
    not_met = Text(
        "Why no buying price was changed: those that were typed keep it from being as given.",
        absent="Absent if materials are as given.",
    )
    says = Text("Why it is sent back, or of an unusual thickness.", absent="Absent if neither.")


class ProfileTableSchema(AnswerSchema):
    """A table of the profile, a list of tables, or one item of it."""

    pointer = Text("JSON Pointer to it in the profile.")
    subject = OneOf("The section of the form that it belongs to.", list(SUBJECTS))
    kind = OneOf("A table, a list of tables, or an item of a list.", ("table", "items", "item"))
    label = Text("Its label on the form.")
    help = Text("The file's comment above it.")
    there = YesNo("Whether the profile contains it.")
    needed = YesNo("Whether a profile must have it.")


class ProfileValueSchema(AnswerSchema):
    """A value of the profile."""

    pointer = Text("JSON Pointer to it in the profile.")
    kind = OneOf(
        "The kind of value that is valid there.",
        [kind for kind in MEMBER_KINDS if kind not in ("table", "items")],
    )
    label = Text("Its label on the form.")
    help = Text("The file's comments beside and above it.")
    unit = Text("The unit of its number; for an amount of money, what the amount is per.")
    needed = YesNo("Whether a profile must have it.")
    value = Text("The value as written.", absent="Absent if it is left out or a list.")
    values = Many(
        "The values of a list, as written.",
        fields.String(),
        absent="Absent if it is left out or not a list.",
    )
    choices = Many(
        "The valid values of a choice.",
        fields.String(),
        absent="Absent if any value of its kind is valid.",
    )
    choices_say = Many(
        "The name of each of them, in their order.",
        fields.String(),
        absent="Absent if any value of its kind is valid.",
    )
    standing = OneOf("The value's origin.", VALUE_STANDINGS, absent="Absent if it is left out.")


class WorkshopFormSchema(AnswerSchema):
    """The profile with the changes applied, and its effects."""

    version = Text("The version of the file now; changes refer to it.")
    file = Text("The file's name.")
    writable = YesNo("Whether the service may write the file.")
    demonstration = YesNo("Whether it is the demonstration workshop's profile.")
    currency = Text(
        "The currency of its amounts, an ISO 4217 code.", absent="Absent if the profile has faults."
    )
    words = AnyJson(
        "Texts that replace the form's own, in the requested language, by message name: the"
        " country's words.",
        keywords=PAGE_TEXTS,
    )
    saved = YesNo("Whether the file was written.")
    share = NestedPart("The number of values by origin.", ProfileValuesSchema)
    invented = Many("The tables that hold invented values.", InventedSchema)
    steps = Many("The shortest way to a first quote, in its order.", FirstStepSchema)
    faults = Many("All its faults.", ProfileFaultSchema)
    jobs = Many("Three typical jobs without what is at fault; empty at first.", TypicalJobSchema)
    also = Text(
        "What was taken out with something else, because it referred to it.",
        absent="Absent if nothing was.",
    )
    taken = Many(
        "What is taken of each span that was typed, what follows from a value, and the value by"
        " which a typical job can't be made.",
        ProfileFaultSchema,
    )
    text = Text("The whole text of the file with the changes.")
    tables = Many("Every table.", ProfileTableSchema, absent="Absent unless `described` is set.")
    values = Many("Every value.", ProfileValueSchema, absent="Absent unless `described` is set.")


WORKSHOP_FORM: Final = WorkshopFormSchema()
