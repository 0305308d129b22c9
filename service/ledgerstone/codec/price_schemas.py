"""Money in answers: prices, their lines, and what an order costs the workshop."""

from __future__ import annotations

from typing import Final

from ledgerstone.codec.answer_fields import Amount, AnswerSchema, Many, Number, Text

_CURRENCY = "The currency of every amount here, as its ISO 4217 code."


class MoneySchema(AnswerSchema):
    """An amount of money."""

    currency = Text("The amount's currency, as its ISO 4217 code.")
    amount = Amount("The amount; below zero it is that much less.")


class PriceLineSchema(AnswerSchema):
    """One line of a price."""

    label = Text("What is charged for, in the customer's words.")
    amount = Amount("What is charged, before tax; below zero it is taken off.")


class PriceSchema(AnswerSchema):
    """The lines add up to the net; net and tax to the total."""

    currency = Text(_CURRENCY)
    lines = Many(
        "What the net is made of. Empty where an old offer's rates are no longer known.",
        PriceLineSchema,
    )
    net = Amount("The sum of the lines, before tax.")
    tax = Amount("The tax on the net; 0.00 where the workshop charges none.")
    tax_percent = Number("The rate of the tax, in percent of the net.")
    total = Amount("What the customer pays in all, tax and all.")
    deposit = Amount("What is paid of the total when the order is placed.")


class OfferPriceSchema(AnswerSchema):
    """The price of an offer as its link keeps it: net and tax add up to the total."""

    currency = Text(_CURRENCY)
    lines = Many(
        "What the net is made of.",
        PriceLineSchema,
        attribute="own_lines",
        absent="Absent where the workshop did not set the price itself.",
    )
    net = Amount("The price before tax.")
    tax = Amount("The tax on the net.")
    total = Amount("What the customer was to pay in all.")
    deposit = Amount("What was to be paid of the total with the order.")


class CostLineSchema(AnswerSchema):
    """One line of what an order costs the workshop."""

    label = Text("What it is spent on.")
    group = Text("The line of the price that it is charged under.")
    amount = Amount("What it costs the workshop, to the penny, before its margin and tax.")


class CostsSchema(AnswerSchema):
    """What an order costs the workshop, each line to the penny."""

    currency = Text(_CURRENCY)
    margin_percent = Text("The margin added to every group but sample tiles, in percent.")
    lines = Many("Every cost, in the order in which the work is done.", CostLineSchema)
    total = Amount("The sum of the lines.")


PRICE: Final = PriceSchema()
