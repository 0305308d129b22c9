"""Schemas of the service's state, and of the confirmation of a request."""

from __future__ import annotations

from typing import Final

from ledgerstone.codec.answer_fields import (
    AnswerSchema,
    NestedPart,
    Number,
    OneOf,
    Text,
    Whole,
    YesNo,
)


class ProfileValuesSchema(AnswerSchema):
    """The profile's values by origin."""

    yours = Whole("How many values are the maker's own, changed or confirmed.")
    usual = Whole("How many are defaults that may be kept.")
    invented = Whole("How many are still those of the demonstration workshop.")
    trial = YesNo("Whether those include prices, hours or areas: every answer is then a trial.")


class RefusedProfileSchema(AnswerSchema):
    """A changed profile with faults, which was not loaded."""

    at = Text("When it was rejected, ISO 8601.", keywords={"format": "date-time"})
    says = Text("The number of its faults, as a sentence.")


class CalendarStateSchema(AnswerSchema):
    """The state of the calendar file."""

    status = OneOf("Whether the file was read.", ("read", "not-read"))
    says = Text("Why it was not read.", absent="Absent if it was read.")
    bookings = Text(
        "The fingerprint of the bookings: of the last good reading, kept for a day.",
        absent="Absent if there is no such reading.",
    )
    age_hours = Number(
        "How long ago the file was last written, in hours.",
        1,
        absent="Absent if the file does not exist.",
    )


class HealthSchema(AnswerSchema):
    """The state of the service."""

    status = OneOf("`live`: the process runs; `ready`: it can answer.", ("live", "ready"))
    version = Text("The service's version.", absent="Only of `/v1/health/ready`.")
    profile = Text(
        "The fingerprint of the profile that is in use.", absent="Only of `/v1/health/ready`."
    )
    calendar = NestedPart(
        "The calendar file.", CalendarStateSchema, absent="Absent if the profile names none."
    )
    profile_values = NestedPart(
        "The profile's values by origin.",
        ProfileValuesSchema,
        absent="Only of `/v1/health/ready`.",
    )
    profile_refused = NestedPart(
        "A changed profile that was not loaded.",
        RefusedProfileSchema,
        absent="Absent if there is none.",
    )


class RequestedSchema(AnswerSchema):
    """Confirmation that a request was sent."""

    reference = Text("The offer's reference, with its revision's letter.")
    says = Text("A sentence to the customer that the workshop has it.")


HEALTH: Final = HealthSchema()
REQUESTED: Final = RequestedSchema()
