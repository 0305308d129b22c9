"""Prices: one worked by hand to the penny, and how lines, tax, steps and delivery settle."""

from dataclasses import replace
from decimal import ROUND_HALF_UP, Decimal
from typing import Any

import pytest

from ledgerstone.price import Line, Price, costs, pennies, stepped, tax_in, tax_on
from ledgerstone.workshop import Workshop
from unit.slabs import Json, box, order_of, price_of, shapes_of, slab_json, steps_of

NEAR = {"kind": "pallet", "postcode": "HR9 7XX"}
GRAPHITE = {
    "shade": {"name": "graphite"},
    "finish": {"surface": "as-cast", "sealer": "matt"},
}


def plain(**more: object) -> Json:
    """Write a slab of 1000 by 500 by 40 in graphite, as cast, matt."""
    return slab_json(box(1000, 500), **(GRAPHITE | more))


def priced(workshop: Workshop, *slabs: Json, **more: object) -> Price:
    """Price slabs together."""
    return price_of(order_of(workshop, *slabs, **more), workshop)


def costed(workshop: Workshop, *slabs: Json, **more: object) -> dict[str, Decimal]:
    """Add the costs of slabs up by their labels."""
    order = order_of(workshop, *slabs, **more)
    added: dict[str, Decimal] = {}
    for cost in costs(order, shapes_of(order, workshop), steps_of(order, workshop), workshop):
        added[cost.label] = added.get(cost.label, Decimal(0)) + cost.amount
    return added


def with_offer(workshop: Workshop, **more: Any) -> Workshop:  # noqa: ANN401  an offer's members
    """Change how a workshop offers its prices."""
    return replace(workshop, offer=replace(workshop.offer, **more))


def amounts(price: Price) -> dict[str, str]:
    """Write a price's lines."""
    return {line.label: str(line.amount) for line in price.lines}


def test_a_plain_slabs_costs_are_those_of_the_profile(workshop: Workshop) -> None:
    """Each cost of the plain slab, worked by hand from the demonstration profile's rates."""
    placed, recipe = Decimal("0.022"), workshop.recipe  # 20 litres and 10 % in the mixer
    cement = Decimal(str(round(recipe.cement_kg_per_m3, 9)))
    mould, set_up, pour, pack = 104, 120, 87, 45  # minutes: 1.74, 2, 1.45 and 0.75 hours
    demould, polish, seal = 45, 24, 9
    by_hand = {
        "Concrete": recipe.price_per_m3 * placed,
        "Pigment": cement * placed * Decimal("0.04") * Decimal("7.80"),
        "Steel": Decimal("9.50") / 2,
        "Mould board": Decimal("21.00") / 2,
        "Consumables": Decimal("9.00") / 2,
        "Packing": Decimal("42.00"),
        "Pads and slurry": Decimal("4.00") / 2,
        "Sealer": Decimal("34.00") * Decimal("0.5") * 3 / 9,
        "Hours: making and casting": Decimal(mould + set_up + pour + pack) / 60 * 38,
        "Hours: finishing and sealing": Decimal(demould + polish + seal) / 60 * 38
        + Decimal(polish) / 60 * Decimal("4.50"),
        "Hire: making and casting": Decimal(0),
        "Hire: finishing and sealing": Decimal(0),
    }
    found = costed(workshop, plain())
    assert found.keys() == by_hand.keys()
    for label, amount in by_hand.items():
        assert abs(found[label] - amount) < Decimal("1e-9"), label


def test_a_plain_slabs_price_is_worked_by_hand(workshop: Workshop) -> None:
    """Making 315.65 and finishing 82.41 with 40 % on each; the lines settle with the total.

    The total is the sum with 20 % of tax, to the nearest pound; the tax a sixth of it; the net the
    rest; and what the pound moved goes on the largest line.
    """
    materials = pennies(
        sum(
            amount
            for label, amount in costed(workshop, plain()).items()
            if label in {"Concrete", "Pigment", "Steel", "Mould board", "Consumables", "Packing"}
        )
        * Decimal("1.4")
    )
    asked = materials + Decimal("315.65") + Decimal("82.41")
    total = (asked * Decimal("1.2")).quantize(Decimal(1), ROUND_HALF_UP)
    net = total - pennies(total / 6)
    price = priced(workshop, plain())
    assert (price.total, price.net, price.tax) == (total, net, pennies(total / 6))
    assert {line.label: line.amount for line in price.lines} == {
        "Materials": materials,
        "Making and casting": Decimal("315.65") + net - asked,
        "Finishing and sealing": Decimal("82.41"),
    }
    assert price.deposit == total * Decimal("0.4")
    assert price.currency == "GBP"
    assert price.tax_percent == 20


def test_every_amount_is_a_decimal_to_the_penny(workshop: Workshop) -> None:
    """No float stands anywhere in a price or in its costs."""
    price = priced(workshop, plain(quantity=3), delivery=NEAR)
    money = [price.net, price.tax, price.total, price.deposit]
    money += [line.amount for line in price.lines]
    assert all(type(amount) is Decimal and amount == pennies(amount) for amount in money)
    assert {type(amount) for amount in costed(workshop, plain()).values()} == {Decimal}


@pytest.mark.parametrize(
    ("kind", "label", "before_tax"),
    [
        ("pallet", "Pallet delivery: Around Wethermoor", "68.00"),
        ("own-van", "Delivery: Around Wethermoor", "55.00"),
        ("fitted", "Delivery and fitting: Around Wethermoor", str(160 + 2 * 95) + ".00"),
    ],
)
def test_delivery_is_a_line_of_its_own(
    workshop: Workshop, kind: str, label: str, before_tax: str
) -> None:
    """Delivery carries no margin; fitting is added for each piece."""
    order = {"delivery": NEAR | {"kind": kind}}
    price = priced(workshop, plain(quantity=2), **order)
    assert amounts(price)[label] == before_tax


def test_collecting_has_no_delivery_line(workshop: Workshop) -> None:
    """What is collected pays nothing for the way."""
    assert len(priced(workshop, plain()).lines) == 3


def test_a_small_order_pays_the_smallest_order(workshop: Workshop) -> None:
    """What is short of the smallest order is a line; delivery comes on top of it."""
    choosy = with_offer(workshop, smallest_order=Decimal(900), round_to=Decimal("0.01"))
    price = priced(choosy, plain(), delivery=NEAR)
    assert [line.label for line in price.lines[3:]] == [
        "Up to our smallest order",
        "Pallet delivery: Around Wethermoor",
    ]
    assert sum(line.amount for line in price.lines[:4]) == 900
    assert price.net == 900 + 68


def test_white_cement_and_pigments_cost_what_they_cost(workshop: Workshop) -> None:
    """Chalk has white cement and no pigment: 22 litres at 290 more, less the black oxide."""
    chalk = costed(workshop, plain(shade={"name": "chalk"}))
    assert chalk["Concrete"] == Decimal("0.022") * (workshop.recipe.price_per_m3 + 290)
    assert chalk["Pigment"] == 0


def test_two_slabs_pay_for_one_set_up(workshop: Workshop) -> None:
    """The second of two like slabs costs less than the first: the order is set up once."""
    free = with_offer(workshop, round_to=Decimal("0.01"))
    one, two = (priced(free, *[plain()] * n).net for n in (1, 2))
    set_up = pennies(Decimal(2 * 38) * Decimal("1.4"))
    assert 2 * one - two == pytest.approx(set_up, abs=Decimal("0.03"))


def test_quantity_and_repeated_slabs_cost_the_same(workshop: Workshop) -> None:
    """Three of one slab cost what three slabs cost, to the rounding of minutes."""
    free = with_offer(workshop, round_to=Decimal("0.01"))
    together = priced(free, plain(quantity=3)).net
    apart = priced(free, *[plain()] * 3).net
    assert together == pytest.approx(apart, abs=Decimal("1.5"))


def test_a_workshop_without_tax_shows_none(workshop: Workshop) -> None:
    """A workshop that is not registered charges its net and no tax, whatever rate is written."""
    untaxed = replace(workshop, tax=replace(workshop.tax, registered=False))
    price = priced(untaxed, plain())
    assert price.tax == 0
    assert price.tax_percent == 0
    assert price.net == price.total
    assert price.total == round(priced(workshop, plain()).net)


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
    lines = [Line("a", Decimal("10.00")), Line("b", Decimal(net) - 10)]
    price = stepped(lines, with_offer(workshop, round_to=Decimal(step)))
    assert (price.total, price.net, price.tax) == tuple(map(Decimal, after))
    assert sum(line.amount for line in price.lines) == price.net


def test_half_a_penny_goes_up() -> None:
    """Money is rounded half up, as an invoice is, not to even."""
    assert [pennies(Decimal(a)) for a in ("0.005", "0.015", "2.345")] == [
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
