"""How the service is, and that a request was sent."""

from __future__ import annotations

from typing import Final

from ledgerstone.codec.answer_fields import AnswerSchema, Number, OneOf, Part, Text, Whole, YesNo


class ProfileValuesSchema(AnswerSchema):
    """Whose the values of the profile are."""

    yours = Whole("How many are the maker's own, changed or confirmed.")
    usual = Whole("How many are usual ones that may stand.")
    invented = Whole("How many are still the demonstration's.")
    trial = YesNo("Whether prices, hours or areas are among those: nothing is then an offer.")


class RefusedProfileSchema(AnswerSchema):
    """A changed profile with faults, which was not taken up."""

    at = Text("When it was refused.", keywords={"format": "date-time"})
    says = Text("How many faults it has.")


class CalendarStateSchema(AnswerSchema):
    """The file of what is booked."""

    status = OneOf("Whether it was read.", ("read", "not-read"))
    says = Text("Calendar not read: and why.", absent="Absent where it was.")
    bookings = Text(
        "The fingerprint of what is booked: of what was read last, for a day.",
        absent="Absent where nothing was read since.",
    )
    age_hours = Number(
        "How long ago the file was last written, in hours.", 1, absent="Absent where it is gone."
    )


class HealthSchema(AnswerSchema):
    """How the service is."""

    status = OneOf("That it runs, or that it can answer.", ("live", "ready"))
    version = Text("The service's version.", absent="Only of `/v1/health/ready`.")
    profile = Text(
        "The fingerprint of the profile that is in use.", absent="Only of `/v1/health/ready`."
    )
    calendar = Part(
        "The file of what is booked.", CalendarStateSchema, absent="Absent where there is none."
    )
    profile_values = Part(
        "Whose the values of the profile are.",
        ProfileValuesSchema,
        absent="Only of `/v1/health/ready`.",
    )
    profile_refused = Part(
        "A changed profile that was not taken up.",
        RefusedProfileSchema,
        absent="Absent where none was refused.",
    )


class RequestedSchema(AnswerSchema):
    """That a request was sent."""

    reference = Text("The offer's reference, with its revision's letter.")
    says = Text("That the workshop has it, for the customer.")


HEALTH: Final = HealthSchema()
REQUESTED: Final = RequestedSchema()
