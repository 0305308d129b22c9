"""What the maker alone may set for one offer: lines, margin, note, standing and last day."""

from __future__ import annotations

import re
from collections.abc import Mapping
from decimal import Decimal
from typing import Any, Final

from ledgerstone.codec.fields import (
    ChoiceField,
    ListField,
    ObjectField,
    Strict,
    TextField,
    refused,
)
from ledgerstone.codec.note_field import NoteField
from ledgerstone.codec.order_schemas import DayField, OrderSchema
from ledgerstone.json_types import JSON
from ledgerstone.message import Message
from ledgerstone.price import MakerTerms, PriceLine

MAX_ADJUSTMENTS: Final = 20
_ALONE: Final = "Refused without the maker's key."


class MoneyField(TextField):
    """An amount as text, to the penny; negative for a deduction."""

    def _deserialize(self, value: JSON, *args: Any, **more: Any) -> Any:  # noqa: ANN401  marshmallow
        text = super()._deserialize(value, *args, **more)
        if re.fullmatch(r"-?[0-9]{1,7}(\.[0-9]{1,2})?", text, re.ASCII):
            return Decimal(text)
        raise refused(Message("amount-not-written-so", field=self.called))


class MarginField(TextField):
    """A markup in percent as text, zero to 500."""

    def _deserialize(self, value: JSON, *args: Any, **more: Any) -> Any:  # noqa: ANN401  marshmallow
        text = super()._deserialize(value, *args, **more)
        written = re.fullmatch(r"[0-9]{1,3}(\.[0-9]{1,2})?", text, re.ASCII)
        if written and Decimal(text) <= 500:
            return Decimal(text)
        raise refused(Message("margin-not-written-so", field=self.called))


class StepField(MoneyField):
    """An amount above zero, to whose multiples another is rounded."""

    def _deserialize(self, value: JSON, *args: Any, **more: Any) -> Any:  # noqa: ANN401  marshmallow
        step = super()._deserialize(value, *args, **more)
        if step > 0:
            return step
        raise refused(Message("amount-not-written-so", field=self.called))


class AdjustmentSchema(Strict):
    """One line that the maker adds to a price."""

    about = "an-adjustment"
    text = TextField(
        "adjustment-text", required=True, about="The reason for it, as the customer reads it."
    )
    amount = MoneyField(
        "adjustment-amount",
        longest=12,
        required=True,
        about='The amount before tax, like `"40.00"`; negative, like `"-25.00"`, for a deduction.',
    )


class MakerTermsSchema(Strict):
    """What the maker sets for one offer."""

    about = "the-makers-terms"
    adjustments = ListField(
        ObjectField(AdjustmentSchema, "adjustment", about="One line: its text and its amount."),
        "adjustments",
        at_most=MAX_ADJUSTMENTS,
        about=f"Lines added to the price, after all others. Left out, none is. {_ALONE}",
    )
    margin_percent = MarginField(
        "margin",
        longest=8,
        about=f"The offer's markup on cost in percent: `\"35\"`. Left out, the profile's. {_ALONE}",
    )
    deposit_round_to = StepField(
        "deposit-step",
        longest=12,
        about=f'What the deposit is rounded to, like `"10"`. Left out, the profile\'s. {_ALONE}',
    )
    note = NoteField(about=f"A few sentences to the customer. Left out, there are none. {_ALONE}")
    standing = ChoiceField(
        "standing",
        ("estimate", "quotation"),
        about=(
            "The offer's standing. Left out, an estimate while anything is assumed, else as the"
            f" profile says; an estimate while anything is missing. {_ALONE}"
        ),
    )
    valid_until = DayField(
        "valid-until",
        longest=20,
        about=f"The last day on which the offer is valid. Left out, as the profile says. {_ALONE}",
    )


class QuoteAskSchema(MakerTermsSchema, OrderSchema):
    """A whole order, and with the maker's key the terms of this offer."""

    about = "an-order"


TERMS: Final = frozenset(MakerTermsSchema().fields)


def maker_terms(read: Mapping[str, Any]) -> MakerTerms:
    """Return the terms among the members that a schema has read."""
    return MakerTerms(
        adjustments=tuple(
            PriceLine(adjustment["text"], adjustment["amount"])
            for adjustment in read.get("adjustments", ())
        ),
        margin_percent=read.get("margin_percent"),
        deposit_round_to=read.get("deposit_round_to"),
        note=read.get("note", ""),
        standing=read.get("standing"),
        valid_until=read.get("valid_until"),
    )
