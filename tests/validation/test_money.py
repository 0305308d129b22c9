"""Tax and rounding against worked figures: rows 28 to 32 of sources §7.

Sources: VAT at 20 % is a sixth of an inclusive price (arithmetic); HMRC VATREC12010 and 12020: an
invoice's tax may be rounded to the nearest penny, once for the whole invoice, which is what we do;
a trader who is not registered shows none (common practice, from memory of VATA 1994 Sch 11).
Figures recomputed by hand; money has no tolerance.
"""

from dataclasses import replace
from decimal import Decimal

import pytest

from ledgerstone.order import Delivery
from ledgerstone.price import Price, PriceLine, rounded_total, tax_in, tax_on, tax_percent_of
from ledgerstone.workshop import DeliveryArea, Workshop

VAT = Decimal(20)


def invoice(workshop: Workshop, *lines: str, registered: bool = True) -> Price:
    """Add lines up in a workshop that rounds to the penny."""
    offer = replace(workshop.offer, round_to=Decimal("0.01"))
    tax = replace(workshop.tax, registered=registered, percent=VAT)
    shop = replace(workshop, offer=offer, tax=tax)
    return rounded_total([PriceLine(str(i), Decimal(line)) for i, line in enumerate(lines)], shop)


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
    price = rounded_total([PriceLine("a", Decimal("1240.00"))], replace(workshop, offer=offer))
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


# Washington State: sales tax by destination, delivery included; Seattle 10.35 % and Spokane 9.0 %
# (Department of Revenue, local sales and use tax, from memory). New York: installing what becomes
# part of a house is a capital improvement, and no sales tax is collected (Publication 862).
DELIVERIES: dict[tuple[str, str], str] = {
    ("collect", "8.9"): "88.91",
    ("pallet Seattle", "10.35"): "103.40",
    ("pallet elsewhere", "8.9"): "88.91",
    ("fitted Seattle", "0"): "0.00",
    ("fitted Spokane", "9.0"): "89.91",
}


@pytest.mark.parametrize("delivered", DELIVERIES)
def test_tax_goes_by_where_it_goes_and_whether_we_fit_it(
    workshop: Workshop, delivered: tuple[str, str]
) -> None:
    """The sum before tax is rounded, and the place's tax is added at the end, to the cent."""
    there = {
        "Seattle": DeliveryArea(name="Seattle", postcodes=("981",), tax_percent=Decimal("10.35")),
        "elsewhere": DeliveryArea(name="elsewhere", postcodes=("98",)),
        "Spokane": DeliveryArea(
            name="Spokane", postcodes=("99",), fitted_tax_percent=Decimal("9.0")
        ),
    }
    tax = replace(
        workshop.tax, percent=Decimal("8.9"), shown="before-tax", fitted_percent=Decimal(0)
    )
    shop = replace(workshop, tax=tax)
    (kind, _, area), percent = delivered[0].partition(" "), delivered[1]
    delivery = Delivery(kind=kind)  # type: ignore[arg-type]
    rate = tax_percent_of(delivery, there.get(area), shop)
    price = rounded_total([PriceLine("a", Decimal("999.40"))], shop, rate)
    charged = Decimal(DELIVERIES[delivered])
    assert rate == Decimal(percent)
    assert (price.net, price.tax, price.total) == (Decimal(999), charged, 999 + charged)
    assert sum(line.amount for line in price.lines) == price.net


def test_who_is_not_registered_charges_no_tax_anywhere(workshop: Workshop) -> None:
    """No rate of a place or of fitting stands where no tax is charged."""
    area = DeliveryArea(name="Seattle", postcodes=("981",), tax_percent=Decimal("10.35"))
    shop = replace(workshop, tax=replace(workshop.tax, registered=False))
    assert tax_percent_of(Delivery(kind="fitted"), area, shop) == 0
