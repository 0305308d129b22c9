"""Tax and rounding against worked figures: rows 28 to 32 of sources §7.

Sources: VAT at 20 % is a sixth of an inclusive price (arithmetic); HMRC VATREC12010 and 12020: an
invoice's tax may be rounded to the nearest penny, once for the whole invoice, which is what we do;
a trader who is not registered shows none (common practice, from memory of VATA 1994 Sch 11).
Figures recomputed by hand; money has no tolerance.
"""

from dataclasses import replace
from decimal import Decimal

import pytest

from ledgerstone.price import Line, Price, rounded_total, tax_in, tax_on
from ledgerstone.workshop import Workshop

VAT = Decimal(20)


def invoice(workshop: Workshop, *lines: str, registered: bool = True) -> Price:
    """Add lines up in a workshop that rounds to the penny."""
    offer = replace(workshop.offer, round_to=Decimal("0.01"))
    tax = replace(workshop.tax, registered=registered, percent=VAT)
    shop = replace(workshop, offer=offer, tax=tax)
    return rounded_total([Line(str(i), Decimal(line)) for i, line in enumerate(lines)], shop)


def test_tax_on_a_net_amount(workshop: Workshop) -> None:
    """Row 28: on 1234.56 net the tax is 246.91 and the gross 1481.47."""
    price = invoice(workshop, "1234.56")
    assert price.net == Decimal("1234.56")
    assert price.tax == Decimal("246.91")
    assert price.total == Decimal("1481.47")


def test_tax_in_a_gross_amount(workshop: Workshop) -> None:
    """Row 29: in 1500.00 gross the tax is 250.00 and the net 1250.00."""
    assert tax_in(Decimal("1500.00"), VAT) == Decimal("250.00")
    offer = replace(workshop.offer, round_to=Decimal(1500))
    price = rounded_total([Line("a", Decimal("1240.00"))], replace(workshop, offer=offer))
    assert price.total == 1500
    assert price.tax == 250
    assert price.net == 1250


@pytest.mark.parametrize(
    ("lines", "by_line", "by_invoice"),
    [
        (("33.33", "33.33", "33.34", "12.47"), "22.50", "22.49"),
        (("10.13", "10.13", "10.13"), "6.09", "6.08"),
    ],
)
def test_tax_is_rounded_once_for_the_invoice(
    workshop: Workshop, lines: tuple[str, ...], by_line: str, by_invoice: str
) -> None:
    """Rows 30 and 31: line by line the tax would come to a penny more; ours is the invoice's."""
    assert sum(tax_on(Decimal(line), VAT) for line in lines) == Decimal(by_line)
    price = invoice(workshop, *lines)
    assert price.tax == Decimal(by_invoice)
    assert price.net == sum(map(Decimal, lines))
    assert price.total == price.net + price.tax


def test_the_net_of_row_30(workshop: Workshop) -> None:
    """Row 30's lines come to 112.47."""
    assert invoice(workshop, "33.33", "33.33", "33.34", "12.47").net == Decimal("112.47")


def test_no_tax_where_the_workshop_is_not_registered(workshop: Workshop) -> None:
    """Row 32: 1000 net is 1000.00 to pay, and no tax is shown."""
    price = invoice(workshop, "1000", registered=False)
    assert price.total == 1000
    assert price.tax == 0
    assert price.tax_percent == 0


def test_a_sixth_of_an_inclusive_price_is_tax() -> None:
    """At 20 % the tax in 6.00 to 6000.00 is exactly a sixth."""
    for pounds in range(6, 6001, 6):
        assert tax_in(Decimal(pounds), VAT) == Decimal(pounds) / 6


def test_the_demonstration_charges_the_standard_rate(workshop: Workshop) -> None:
    """The United Kingdom's standard rate is 20 % (gov.uk, VAT rates)."""
    assert workshop.tax.percent == VAT
