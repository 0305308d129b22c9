"""What is asked: lines, delivery, the smallest order, tax, and how a total is rounded."""

import importlib
from dataclasses import replace
from decimal import Decimal
from typing import Literal

import pytest

from ledgerstone.price import (
    ROUNDING,
    PriceLine,
    rounded_total,
    shown_amount,
    tax_in,
    tax_on,
    to_penny,
)
from ledgerstone.price.costing import GROUPS, MATERIALS, Cost
from ledgerstone.price.customer_price import making_lines
from ledgerstone.wording import Message, english
from ledgerstone.workshop import Workshop
from support.slabs import (
    line_name,
    order_of,
    shapes_of,
)
from unit.priced_slabs import NEAR, amounts, costed, plain, priced, with_offer

WHITE_CEMENT = english(Message("cost-material", thing="white-cement"))

materials_module = importlib.import_module("ledgerstone.price.materials")


def test_every_amount_is_a_decimal_to_the_penny(workshop: Workshop) -> None:
    """No float stands anywhere in a price or in its costs."""
    price = priced(workshop, plain(quantity=3), delivery=NEAR)
    money = [price.net, price.tax, price.total, price.deposit]
    money += [line.amount for line in price.lines]
    assert all(type(amount) is Decimal and amount == to_penny(amount) for amount in money)
    assert {type(amount) for amount in costed(workshop, plain()).values()} == {Decimal}


@pytest.mark.parametrize(
    ("kind", "before_tax"),
    [("pallet", "68.00"), ("own-van", "55.00"), ("fitted", str(160 + 2 * 95) + ".00")],
)
def test_delivery_is_a_line_of_its_own(workshop: Workshop, kind: str, before_tax: str) -> None:
    """Delivery carries no margin; fitting is added for each piece."""
    order = {"delivery": NEAR | {"kind": kind}}
    price = priced(workshop, plain(quantity=2), **order)
    assert amounts(price)["price-delivery"] == before_tax
    [told] = [line.label for line in price.lines if line_name(line) == "price-delivery"]
    assert told == Message("price-delivery", way=kind, area="Around Wethermoor")


def test_collecting_has_no_delivery_line(workshop: Workshop) -> None:
    """What is collected pays nothing for the way."""
    lines = priced(workshop, plain()).lines
    assert [line_name(line) for line in lines if line.label != ROUNDING] == list(GROUPS)


def test_a_small_order_pays_the_smallest_order(workshop: Workshop) -> None:
    """What is short of the smallest order is a line; cover and delivery come on top of it."""
    choosy = with_offer(workshop, smallest_order=Decimal(2000), round_to=Decimal("0.01"))
    price = priced(choosy, plain(), delivery=NEAR)
    assert [line_name(line) for line in price.lines[3:]] == [
        "price-smallest-order",
        "price-cover",
        "price-delivery",
    ]
    assert sum(line.amount for line in price.lines[:4]) == 2000
    assert price.net == 2000 + 30 + 68


def test_white_cement_and_pigments_cost_what_they_cost(workshop: Workshop) -> None:
    """Chalk has white cement and no pigment: 22.55 litres at 290 more in the cubic metre."""
    chalk = costed(workshop, plain(shade={"name": "chalk"}))
    assert chalk[WHITE_CEMENT] == Decimal("0.02255") * 290
    assert WHITE_CEMENT not in costed(workshop, plain())
    assert not any("oxide" in label for label in chalk)


def test_two_slabs_pay_for_one_set_up(workshop: Workshop) -> None:
    """The second of two like slabs costs less than the first: the order is set up once."""
    free = with_offer(workshop, round_to=Decimal("0.01"))
    one, two = (priced(free, *[plain()] * n).net for n in (1, 2))
    assert two < 2 * one


def test_one_mould_cast_again_takes_less_board_than_three(workshop: Workshop) -> None:
    """Three of one slab may share a mould; beads and release are new at every casting."""
    order = order_of(workshop, plain(quantity=3))
    shapes = shapes_of(order, workshop)

    def taken(moulds: int) -> dict[str, Decimal]:
        every = materials_module.materials(order, shapes, workshop, None, (moulds,))
        return {english(one.name): one.amount for one in every}

    one, three = taken(1), taken(3)
    assert three["Mould board"] == pytest.approx(3 * one["Mould board"], abs=Decimal("1e-6"))
    assert three["Screws"] == 3 * one["Screws"]
    assert three["Sealant bead"] == one["Sealant bead"]


def test_a_workshop_without_tax_shows_none(workshop: Workshop) -> None:
    """A workshop that is not registered charges its net and no tax, whatever rate is written."""
    untaxed = replace(workshop, tax=replace(workshop.tax, registered=False))
    price = priced(untaxed, plain())
    assert price.tax == 0
    assert price.tax_percent == 0
    assert price.net == price.total
    before_rounding = (line for line in price.lines if line.label != ROUNDING)
    assert price.total == round(sum(line.amount for line in before_rounding))


@pytest.mark.parametrize(
    ("net", "step", "after"),
    [
        ("100.00", "1.00", ("120.00", "100.00", "20.00")),
        ("100.41", "1.00", ("120.00", "100.00", "20.00")),
        ("100.42", "1.00", ("121.00", "100.83", "20.17")),
        ("100.00", "50.00", ("100.00", "83.33", "16.67")),
        ("104.17", "50.00", ("150.00", "125.00", "25.00")),
        ("1234.56", "0.01", ("1481.47", "1234.56", "246.91")),
        ("10.04", "0.05", ("12.05", "10.04", "2.01")),
    ],
)
def test_a_total_steps_as_the_profile_rounds(
    workshop: Workshop, net: str, step: str, after: tuple[str, str, str]
) -> None:
    """Half a step goes up; net and tax follow from the total, and the lines from the net."""
    lines = [PriceLine("a", Decimal("10.00")), PriceLine("b", Decimal(net) - 10)]
    price = rounded_total(lines, with_offer(workshop, round_to=Decimal(step)))
    assert (price.total, price.net, price.tax) == tuple(map(Decimal, after))
    assert sum(line.amount for line in price.lines) == price.net


@pytest.mark.parametrize(
    ("step", "percent", "deposit"),
    [("0.01", "40", "434.40"), ("1.00", "40", "434.00"), ("10.00", "40", "430.00"),
     ("50.00", "40", "450.00"), ("1000.00", "60", "1000.00"), ("2000.00", "100", "1086.00")],
)  # fmt: skip
def test_a_deposit_steps_as_the_profile_rounds(
    workshop: Workshop, step: str, percent: str, deposit: str
) -> None:
    """40 % of 1086, to the nearest step and never more than the total."""
    offer = {"deposit_round_to": Decimal(step), "deposit_percent": Decimal(percent)}
    price = rounded_total([PriceLine("a", Decimal("905.00"))], with_offer(workshop, **offer))
    assert (price.total, price.deposit) == (Decimal("1086.00"), Decimal(deposit))


@pytest.mark.parametrize(
    ("registered", "shown", "told"),
    [(True, "included", "54.00"), (True, "before-tax", "45.00"), (False, "included", "45.00")],
)
def test_an_amount_is_reported_as_the_profile_shows_tax(
    workshop: Workshop, told: str, shown: Literal["included", "before-tax"], *, registered: bool
) -> None:
    """A tile of 45.00 costs a customer 54.00 with 20 % of tax, unless it is shown before it."""
    shop = replace(workshop, tax=replace(workshop.tax, registered=registered, shown=shown))
    assert shown_amount(Decimal(45), shop) == Decimal(told)


def test_half_a_penny_goes_up() -> None:
    """Money is rounded half up, as an invoice is, not to even."""
    assert [to_penny(Decimal(a)) for a in ("0.005", "0.015", "2.345")] == [
        Decimal("0.01"),
        Decimal("0.02"),
        Decimal("2.35"),
    ]


def test_tax_on_and_in_an_amount_agree() -> None:
    """The tax in what a whole-penny net and its tax come to is that tax again."""
    for pence in range(1, 2000):
        net = Decimal(pence) / 100
        tax = tax_on(net, Decimal(20))
        assert tax_in(net + tax, Decimal(20)) == tax


@pytest.mark.parametrize(
    ("percent", "asked"), [("35", "135.00"), ("100", "200.00"), ("0", "100.00")]
)
def test_the_margin_is_a_markup_on_cost(workshop: Workshop, percent: str, asked: str) -> None:
    """35 asks 135 for a cost of 100; 35 % of the price would have asked 153.85."""
    cost = (Cost("concrete", MATERIALS, Decimal(100)),)
    lines = making_lines(cost, workshop, Decimal(percent))
    assert lines[0].amount == Decimal(asked)
