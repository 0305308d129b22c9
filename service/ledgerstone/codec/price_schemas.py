"""Schemas of money in answers: prices, their lines, and the workshop's costs."""

from __future__ import annotations

from ledgerstone.codec.answer_fields import Amount, AnswerSchema, Many, Number, Text

_CURRENCY = "The currency of every amount here, as its ISO 4217 code."


class MoneySchema(AnswerSchema):
    """An amount of money."""

    currency = Text("The amount's currency, as its ISO 4217 code.")
    amount = Amount("The amount; negative for a decrease.")


class PriceLineSchema(AnswerSchema):
    """One line of a price."""

    label = Text("What is charged for, as the customer reads it.")
    amount = Amount("The amount before tax; negative for a deduction.")


class PriceSchema(AnswerSchema):
    """The lines add up to the net; net and tax to the total."""

    currency = Text(_CURRENCY)
    lines = Many(
        "What the net is made of. Empty where an old offer's rates are no longer known.",
        PriceLineSchema,
    )
    net = Amount("The sum of the lines, before tax.")
    tax = Amount("The tax on the net; 0.00 if the workshop charges none.")
    tax_percent = Number("The rate of the tax, in percent of the net.")
    total = Amount("What the customer pays in all, with tax.")
    deposit = Amount("The part of the total that is due with the order.")


class OfferPriceSchema(AnswerSchema):
    """The price of an offer as its link keeps it: net and tax add up to the total."""

    currency = Text(_CURRENCY)
    lines = Many(
        "The lines that add up to the net.",
        PriceLineSchema,
        attribute="own_lines",
        absent="Absent if the workshop did not set the price itself.",
    )
    net = Amount("The price before tax.")
    tax = Amount("The tax on the net.")
    total = Amount("What the customer pays in all, with tax.")
    deposit = Amount("The part of the total that is due with the order.")


class CostLineSchema(AnswerSchema):
    """One line of what an order costs the workshop."""

    label = Text("What the cost is for.")
    group = Text("The line of the price that includes it.")
    amount = Amount("The cost to the workshop, to the penny, before markup and tax.")


class CostsSchema(AnswerSchema):
    """The costs of an order to the workshop, each line to the penny."""

    currency = Text(_CURRENCY)
    margin_percent = Text(
        "The markup on the cost of every group but sample tiles, in percent: at 40, 100 asks 140."
    )
    lines = Many("Every cost, in the order in which the work is done.", CostLineSchema)
    total = Amount("The sum of the lines.")
