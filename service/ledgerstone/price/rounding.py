"""Lines, net, tax and total: rounded once, adding up to the penny, the total on its step."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal
from typing import Final

from ledgerstone.message import Message
from ledgerstone.order import Delivery
from ledgerstone.workshop.records import DeliveryArea, Workshop

PENNY = Decimal("0.01")
HUNDRED = Decimal(100)
ROUNDING: Final = Message("price-rounding")


@dataclass(frozen=True, slots=True)
class PriceLine:
    """One line of a price, before tax; its label is a message, or the maker's own words."""

    label: Message | str
    amount: Decimal


@dataclass(frozen=True, slots=True)
class Price:
    """The price: lines add up to ``net``; ``net`` and ``tax`` add up to ``total``."""

    currency: str
    lines: tuple[PriceLine, ...]
    net: Decimal
    tax: Decimal
    tax_percent: Decimal
    total: Decimal
    deposit: Decimal


def decimal(value: float) -> Decimal:
    """Return a measured quantity as Decimal, rounded to nine places so that every machine agrees.

    Source
    ------
    Arithmetic: the last bits of a sum of floats differ between processors.
    """
    return Decimal(repr(round(value, 9)))


def to_penny(amount: Decimal) -> Decimal:
    """Round to the penny, half up.

    Source
    ------
    HMRC VATREC12010; sources §4.
    """
    return amount.quantize(PENNY, ROUND_HALF_UP)


def tax_on(net: Decimal, percent: Decimal) -> Decimal:
    """Tax on a net amount, once for the whole invoice, to the nearest penny.

    Source
    ------
    HMRC VATREC12010 (nearest penny is accepted; once at invoice level).
    """
    return to_penny(net * percent / HUNDRED)


def tax_in(gross: Decimal, percent: Decimal) -> Decimal:
    """Tax contained in a gross amount, to the nearest penny: 1/6 at 20 %.

    Source
    ------
    Arithmetic; sources §4.
    """
    return to_penny(gross * percent / (HUNDRED + percent))


def rounded_to_step(amount: Decimal, step: Decimal) -> Decimal:
    """Round an amount to a step of the same currency, half up.

    Source
    ------
    Common practice, no source.
    """
    return to_penny((amount / step).quantize(Decimal(1), ROUND_HALF_UP) * step)


def shown_amount(net: Decimal, workshop: Workshop) -> Decimal:
    """Return an amount as customers see it: with tax, unless the profile shows prices without.

    Source
    ------
    As ``tax_on``; what is shown is the profile's ``tax.shown``.
    """
    tax = workshop.tax
    if not tax.registered or tax.shown == "before-tax":
        return to_penny(net)
    return to_penny(net) + tax_on(to_penny(net), tax.percent)


def tax_percent_of(delivery: Delivery, area: DeliveryArea | None, workshop: Workshop) -> Decimal:
    """Return the tax rate of an order: by destination and by fitting, if they differ.

    What is collected is taxed as the workshop's own place has it.

    Source
    ------
    The profile's ``tax`` and ``areas``; where the law has the rate go by destination or by fitting
    is the maker's to enter there.
    """
    tax = workshop.tax
    if not tax.registered:
        return Decimal(0)
    of_area = (area.fitted_tax_percent, area.tax_percent) if area is not None else (None, None)
    fitted = (of_area[0], tax.fitted_percent) if delivery.kind == "fitted" else ()
    others = (*fitted, of_area[1])
    return next((rate for rate in others if rate is not None), tax.percent)


def rounded_total(
    lines: Sequence[PriceLine],
    workshop: Workshop,
    percent: Decimal | None = None,
    deposit_step: Decimal | None = None,
) -> Price:
    """Add tax, step the total as the profile rounds, and keep every sum exact to the penny.

    The rounding difference is a line of its own, so that no other line changes. If prices are
    shown before tax, the sum before tax is rounded, and the tax is added to it.

    Parameters
    ----------
    percent
        The tax rate of the order; by default the workshop's usual one.
    deposit_step
        The step that the deposit is rounded to; by default the profile's.
    """
    if percent is None:
        percent = workshop.tax.percent if workshop.tax.registered else Decimal(0)
    net = sum((line.amount for line in lines), Decimal(0))
    if workshop.tax.shown == "before-tax":
        even = rounded_to_step(net, workshop.offer.round_to)
        tax = tax_on(even, percent)
        total = even + tax
    else:
        total = rounded_to_step(net + tax_on(net, percent), workshop.offer.round_to)
        tax = tax_in(total, percent)
    moved = total - tax - net
    settled = (*lines, PriceLine(ROUNDING, moved)) if moved else tuple(lines)
    share = total * workshop.offer.deposit_percent / HUNDRED
    deposit = min(total, rounded_to_step(share, deposit_step or workshop.offer.deposit_round_to))
    return Price(
        currency=workshop.workshop.currency,
        lines=settled,
        net=total - tax,
        tax=tax,
        tax_percent=percent,
        total=total,
        deposit=deposit,
    )
