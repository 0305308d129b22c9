"""A quote opened from its link: as offered, whether it stands, and what it is today."""

from __future__ import annotations

from typing import Final

from ledgerstone.codec.answer_fields import (
    AnswerSchema,
    ByKind,
    Day,
    Free,
    Many,
    OneOf,
    Part,
    Text,
    YesNo,
)
from ledgerstone.codec.drawing_schemas import DrawingsSchema
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
    """The day that was offered."""

    ready_on = Day("The day on which it was to be ready.")
    if_ordered_by = Day("The last day to order for that.")


class ReasonSchema(AnswerSchema):
    """One thing that has happened to an offer since it was made."""

    reason = OneOf(
        "Which it is; `rates-changed` and `calendar-changed` take no offer back.", REASONS
    )
    says = Text("The same for the customer.")


class QuoteTodaySchema(AnswerSchema):
    """Today it quotes."""

    kind = OneOf("That it quotes.", ("quote",))
    body = Part("The quote of today, as a change to the offer.", QuoteSchema)


class SentBackTodaySchema(AnswerSchema):
    """Today something stops it."""

    kind = OneOf("That it is sent back.", ("sent-back",))
    body = Part("What stops it today.", SentBackSchema)


class NotUnderstoodTodaySchema(AnswerSchema):
    """Today the workshop no longer offers what it is made of."""

    kind = OneOf("That it is not understood any more.", ("not-understood",))
    body = Part("What is no longer understood.", FaultsSchema)


class DetailSchema(AnswerSchema):
    """What happened, in words."""

    detail = Text("What happened, and what would put it right.")


class TooIntricateTodaySchema(AnswerSchema):
    """Today it is more than one request may have worked out."""

    kind = OneOf("That it is too intricate today.", ("too-intricate",))
    body = Part("What would put it right.", DetailSchema)


class OpenedQuoteSchema(AnswerSchema):
    """A quote as it was offered, whether it stands, and what it would be today."""

    reference = Text("The offer's short name.")
    revision = Text("The letter of a changed order.", absent="Absent before the first change.")
    token = Text("The offer, signed, as it was sent here.")
    link = Text("The page that opens it.", absent="Absent where it is too long for a link.")
    note = Text("A few sentences of the workshop's.", absent="Absent where there are none.")
    order = Free(
        "The order as it was offered; the postcode is not kept.", keywords={"type": "object"}
    )
    delivery_area = Text(
        "The delivery's area, in the postcode's place.", absent="Absent where it is collected."
    )
    issued = Day("The day of the offer.")
    valid_until = Day("The last day on which the offer stands.")
    standing = OneOf("What was offered.", STANDINGS)
    price = Part("What was offered.", OfferPriceSchema)
    lead_time = Part("The day that was offered.", OfferLeadTimeSchema)
    stands = YesNo(
        "Whether it is still to be had at its price: until `valid_until`, even where rates have"
        " changed since."
    )
    says = Text("Whether it stands, for the customer.")
    because = Many("All that has happened to it since; empty where nothing has.", ReasonSchema)
    today = ByKind(
        "What the same order is answered today, as a change to the offer.",
        {
            "quote": QuoteTodaySchema,
            "sent-back": SentBackTodaySchema,
            "not-understood": NotUnderstoodTodaySchema,
            "too-intricate": TooIntricateTodaySchema,
        },
    )
    drawings = Part("Links to its drawings.", DrawingsSchema)


OPENED_QUOTE: Final = OpenedQuoteSchema()
