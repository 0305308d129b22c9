"""A quote opened from its link: as offered, whether it stands, and what it is today."""

from __future__ import annotations

from typing import Final

from ledgerstone.codec.answer_fields import (
    AnswerSchema,
    ByKind,
    Day,
    Described,
    Many,
    NestedPart,
    OneOf,
    Text,
    YesNo,
)
from ledgerstone.codec.drawing_schemas import DrawingsSchema
from ledgerstone.codec.order_schemas import OrderSchema
from ledgerstone.codec.price_schemas import OfferPriceSchema
from ledgerstone.codec.problem_schemas import FaultsSchema, SentBackSchema
from ledgerstone.codec.quote_schemas import STANDINGS, QuoteSchema

REASONS: Final = (
    "expired",
    "revoked",
    "no-longer-offered",
    "rates-changed",
    "calendar-changed",
)


class OfferLeadTimeSchema(AnswerSchema):
    """The offered day."""

    ready_on = Day("The day on which it would be ready.")
    if_ordered_by = Day("The last day to order for `ready_on`.")


class ReasonSchema(AnswerSchema):
    """One change since an offer was made."""

    reason = OneOf(
        "The kind of change; `rates-changed` and `calendar-changed` do not withdraw an offer.",
        REASONS,
    )
    says = Text("The same as a sentence for the customer.")


class QuoteTodaySchema(AnswerSchema):
    """Today's answer is a quote."""

    kind = OneOf("The kind of answer.", ("quote",))
    body = NestedPart("Today's quote, as a change to the offer.", QuoteSchema)


class SentBackTodaySchema(AnswerSchema):
    """Today's answer is a send-back."""

    kind = OneOf("The kind of answer.", ("sent-back",))
    body = NestedPart("The send-back of today.", SentBackSchema)


class NotUnderstoodTodaySchema(AnswerSchema):
    """Today the order is not understood: the workshop no longer offers something in it."""

    kind = OneOf("The kind of answer.", ("not-understood",))
    body = NestedPart("The faults found today.", FaultsSchema)


class DetailSchema(AnswerSchema):
    """The problem in words."""

    detail = Text("The problem, and how to correct it.")


class TooIntricateTodaySchema(AnswerSchema):
    """Today the order is more work than one request may take."""

    kind = OneOf("The kind of answer.", ("too-intricate",))
    body = NestedPart("The problem found today.", DetailSchema)


class OpenedQuoteSchema(AnswerSchema):
    """A quote as it was offered, whether it is still valid, and today's answer."""

    reference = Text("The offer's short name.")
    revision = Text("The letter of a changed order.", absent="Absent before the first change.")
    token = Text("The offer's token, as it was sent.")
    link = Text(
        "The address that opens it on the page.", absent="Absent if it is too long for a link."
    )
    note = Text("A note from the workshop to the customer.", absent="Absent if there are none.")
    order = Described("The order as it was offered, without its postcode.", OrderSchema)
    delivery_area = Text(
        "The delivery area, in place of the postcode.", absent="Absent if it is collected."
    )
    issued = Day("The day of the offer.")
    valid_until = Day("The last day on which the offer is valid.")
    standing = OneOf("What was offered.", STANDINGS)
    price = NestedPart("What was offered.", OfferPriceSchema)
    lead_time = NestedPart("The day that was offered.", OfferLeadTimeSchema)
    stands = YesNo(
        "Whether it is still valid at its price: until `valid_until`, even if rates have changed."
    )
    says = Text("Whether it is valid, as a sentence for the customer.")
    because = Many("What has changed since; empty if nothing has.", ReasonSchema)
    today = ByKind(
        "Today's answer to the same order, as a change to the offer.",
        {
            "quote": QuoteTodaySchema,
            "sent-back": SentBackTodaySchema,
            "not-understood": NotUnderstoodTodaySchema,
            "too-intricate": TooIntricateTodaySchema,
        },
    )
    drawings = NestedPart("Links to its drawings.", DrawingsSchema)


OPENED_QUOTE: Final = OpenedQuoteSchema()
