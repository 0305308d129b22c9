"""Schemas of problem documents (RFC 9457): plain, not understood, and the send-back."""

from __future__ import annotations

from typing import Final

from marshmallow import fields, validate

from ledgerstone.checks import CHECK_GROUPS
from ledgerstone.codec.answer_fields import AnswerSchema, Described, Many, NestedPart, Text, Whole
from ledgerstone.codec.drawing_schemas import DrawingsSchema
from ledgerstone.codec.faults_out import MAX_FAULTS
from ledgerstone.codec.finding_schemas import FindingSchema, FixSchema
from ledgerstone.codec.order_schemas import OrderSchema
from ledgerstone.codec.quote_schemas import ALL_LISTED, MORE_FINDINGS

_MORE_FAULTS: Final = "How many more faults there are."


class ProblemSchema(AnswerSchema):
    """A problem (RFC 9457)."""

    type = Text(
        "The address of a page about this kind of problem.", keywords={"format": "uri-reference"}
    )
    title = Text("The title, the same for every problem of this type.")
    status = Whole("The HTTP status.")
    detail = Text("The details of this occurrence.")
    instance = Text("This request, as `X-Request-Id` names it.", keywords={"format": "uri"})


class FaultSchema(AnswerSchema):
    """One thing that was not understood."""

    pointer = Text(
        "JSON Pointer to it in the request (RFC 6901).",
        keywords={"format": "json-pointer"},
    )
    says = Text("What was not understood, and what would be valid.")


class FaultsSchema(AnswerSchema):
    """The first 50 faults at once, and how many more there are."""

    faults = Many(
        "The faults, each at its JSON Pointer.", FaultSchema, keywords={"maxItems": MAX_FAULTS}
    )
    more_faults = Whole(_MORE_FAULTS, absent=ALL_LISTED, keywords={"minimum": 1})


class NotUnderstoodSchema(ProblemSchema):
    """The first 50 faults at once, each at its JSON Pointer, and how many more there are."""

    faults = Many(
        "The faults, each at its JSON Pointer.", FaultSchema, keywords={"maxItems": MAX_FAULTS}
    )
    more_faults = Whole(_MORE_FAULTS, absent=ALL_LISTED, keywords={"minimum": 1})


class SentBackSchema(ProblemSchema):
    """The answer when something stops the order: every finding and its remedies."""

    instance = Text(
        "This request, as `X-Request-Id` names it.",
        absent="Absent within an opened quote.",
        keywords={"format": "uri"},
    )
    order = Described("The order as understood, with defaults filled in.", OrderSchema)
    findings = Many(
        "All findings: stops, the first two cautions, then by `when` each is acted on.",
        FindingSchema,
    )
    more_findings = Whole(MORE_FINDINGS, absent=ALL_LISTED, keywords={"minimum": 1})
    not_checked = Many(
        "Stages that were not run because an earlier one stopped the order.",
        fields.String(validate=validate.OneOf(CHECK_GROUPS)),
    )
    drawings = NestedPart("Links to its drawings.", DrawingsSchema)
    fix_all = NestedPart(
        "The smallest change after which the order quotes.",
        FixSchema,
        absent="Absent if none was found or searched for.",
    )
    nearest_makeable = NestedPart(
        "A larger change after which the order quotes.",
        FixSchema,
        absent="Absent if `fix_all` is present or none was found.",
    )
    why_no_fix = Text(
        "Why nothing keeps all that was asked for: what has no room; or that nothing was found.",
        absent="Absent if a fix was found, where the nearest says enough, or none looked for.",
    )


PROBLEM: Final = ProblemSchema()
NOT_UNDERSTOOD: Final = NotUnderstoodSchema()
SENT_BACK_ANSWER: Final = SentBackSchema()
