"""Prices: one worked by hand to the penny, and how lines, tax, steps and delivery settle."""

import importlib
from dataclasses import replace
from datetime import date
from decimal import ROUND_HALF_UP, Decimal
from typing import Any

import pytest

from ledgerstone.mix import batch_plan
from ledgerstone.price import Line, Price, costs, pennies, stepped, tax_in, tax_on
from ledgerstone.price import price as price_from
from ledgerstone.price.costing import recast_percent
from ledgerstone.work import Operation
from ledgerstone.workshop import Workshop
from unit.slabs import (
    Json,
    box,
    facts_of,
    hole,
    order_of,
    price_of,
    shapes_of,
    slab_json,
    steps_of,
)

materials_module = importlib.import_module("ledgerstone.price.materials")
NEAR = {"kind": "pallet", "postcode": "HR9 7XX"}
GRAPHITE = {
    "shade": {"name": "graphite"},
    "finish": {"surface": "as-cast", "sealer": "matt"},
}


def plain(**more: object) -> Json:
    """Write a slab of 1000 by 500 by 40 in graphite, as cast, matt."""
    return slab_json(box(1000, 500)) | GRAPHITE | more


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


STEPS = (
    Operation("Make the mould", "mould", 0, 1.74),
    Operation("Pour", "cast", 0, 1.45),
    Operation("Hone", "finish", 0, 0.40, machine_hours=0.40),
    Operation("Seal", "seal", 0, 0.15, hire=Decimal(6)),
    Operation("Pack", "pack", None, 0.75),
)  # minutes of hands: 104, 87, 24, 9, 45


def by_hand(workshop: Workshop) -> dict[str, Decimal]:
    """Cost the plain slab's mould, steel and finish by hand from the demonstration profile."""
    board_mm2 = 1120 * 620 + 2 * 41 * (1018 + 518)  # base, and sides that run past two corners
    beds = Decimal(workshop.rates.offcuts_percent) / 100 + 1
    return {
        "Mould board": Decimal(62) * board_mm2 / (3050 * 1525) * beds,
        "Screws": Decimal("0.04") * 2 * (8 + 5),  # 1018 and 518 mm at every 150, and both ends
        "Sealant bead": Decimal("5.20") * 3 / 14,
        "Release agent": Decimal(9) * (Decimal("0.5") + 3 * Decimal("0.041")) / 25,
        "Mesh": Decimal(23) * Decimal("0.5") / Decimal("2.88") * beds,
        "Consumables": Decimal("9.00") / 2,
        "Packing": Decimal("42.00"),
        "Pads": Decimal("4.00") / 2,
        "Sealer: matt": Decimal("34.00") * Decimal("0.5") * 3 / 9,
        "Hours: make the mould": Decimal(104) / 60 * 38,
        "Hours: pour": Decimal(87) / 60 * 38,
        "Hours: hone": Decimal(24) / 60 * (38 + Decimal("4.50")),
        "Hours: seal": Decimal(9) / 60 * 38 + 6,
        "Hours: pack": Decimal(45) / 60 * 38,
    }


def test_a_plain_slabs_costs_are_worked_by_hand(workshop: Workshop) -> None:
    """Mould, steel, finish and hours of the plain slab, from the demonstration profile's rates."""
    order = order_of(workshop, plain())
    found = {c.label: c.amount for c in costs(order, shapes_of(order, workshop), STEPS, workshop)}
    for label, amount in by_hand(workshop).items():
        assert found[label] == pytest.approx(amount, abs=Decimal("1e-6")), label


def test_concrete_costs_what_the_batch_cards_weigh(workshop: Workshop) -> None:
    """Each thing's kilograms, off the batch plan, at the profile's price; nothing is left out."""
    order = order_of(workshop, plain())
    plan = batch_plan(order, shapes_of(order, workshop), workshop)
    prices = {c.name: c.price_per_kg for c in workshop.recipe.constituents}
    prices |= {p.name: p.price_per_kg for p in workshop.pigments}
    found = costed(workshop, plain())
    for bought in plan.purchases:
        label = f"{bought.name[:1].upper()}{bought.name[1:]}"
        assert found[label] == pytest.approx(
            prices[bought.name] * Decimal(bought.kg), abs=Decimal("1e-6")
        )
    litres = Decimal("20.5") * (1 + Decimal(workshop.recipe.waste_percent) / 100)
    cement = next(p.kg for p in plan.purchases if p.role == "cement")
    assert cement == pytest.approx(480 * float(litres) / 1000, rel=0.03)  # the face coat is wetter


def test_whole_packs_are_paid_whole(workshop: Workshop) -> None:
    """With packs = "whole" the plain slab opens a bag of cement, a sheet, a tube and a tin."""
    whole = replace(workshop, rates=replace(workshop.rates, packs="whole"))
    found = costed(whole, plain())
    opened = {
        "Cement 42.5 N": Decimal("9.50"),
        "Mould board": Decimal(62),
        "Sealant bead": Decimal("5.20"),
        "Release agent": Decimal(9),
        "Mesh": Decimal(23),
        "Sealer: matt": Decimal(34),
    }
    assert {label: found[label] for label in opened} == opened
    used = costed(workshop, plain())
    assert all(found[label] >= amount for label, amount in used.items() if "again" not in label)


def test_slabs_of_one_order_share_sheets_and_bags(workshop: Workshop) -> None:
    """Two pieces together open as many whole packs as one, or fewer than two orders would."""
    whole = replace(workshop, rates=replace(workshop.rates, packs="whole"))
    one, two = costed(whole, plain()), costed(whole, plain(), plain())
    assert two["Mould board"] == one["Mould board"]
    assert two["Cement 42.5 N"] == one["Cement 42.5 N"]


def test_a_quote_of_many_pieces_nests_nothing(
    workshop: Workshop, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Past so many pieces packs are counted by area: the nesting library is never called."""

    def never(*_: object, **__: object) -> None:
        raise AssertionError

    monkeypatch.setattr(materials_module, "mould_plan", never)
    monkeypatch.setattr(materials_module, "mesh_nest", never)
    whole = replace(workshop, rates=replace(workshop.rates, packs="whole"))
    holes = [hole(100, 150 + 200 * i, 250) for i in range(4)]
    slab = slab_json(box(1000, 500), *holes, quantity=24, **GRAPHITE)
    many = costed(whole, *[slab] * 8)
    assert many["Mould board"] % 62 == 0
    assert many["Foam"] % Decimal("8.60") == 0


def test_bars_that_the_plate_asks_for_are_paid(workshop: Workshop, today: date) -> None:
    """The steel advised of a slab is what is priced: 6 mm bars by the length they take."""
    basin = hole(360, 500, 250)
    order = order_of(workshop, slab_json(box(1000, 500), basin, **GRAPHITE))
    facts = facts_of(order, workshop, today)
    bars = sum(bar.length_mm for plan in facts.steel for bar in plan.cut())
    every = costs(order, facts.shapes, facts.operations, workshop, facts.steel)
    paid = next(cost.amount for cost in every if cost.label == "Bars")
    assert bars > 0
    assert float(paid) == pytest.approx(bars / 3000 * 5.40 * 1.15, rel=1e-6)


@pytest.mark.parametrize(
    ("more", "percent"),
    [
        ({}, 2 + 3 + 1),  # any piece 2, as cast 3, graphite 1
        ({"shade": {"name": "tarn slate"}}, 2 + 3),
        ({"finish": {"surface": "honed", "sealer": "matt"}}, 2 + 1),
        ({"outline": box(2500, 800)}, 2 + 2 * 1.0 + 3 + 1),  # 2 m²: one beyond the first
    ],
    ids=("plain", "shade", "finish", "size"),
)
def test_pieces_that_go_wrong_oftener_keep_more_for_casting_again(
    workshop: Workshop, more: Json, percent: float
) -> None:
    """By finish, shade and size: a share of the piece's own hours and concrete."""
    order = order_of(workshop, plain(**more))
    (shape,) = shapes_of(order, workshop)
    assert recast_percent(order.slabs[0], shape, workshop) == pytest.approx(percent)
    found = {c.label: c.amount for c in costs(order, (shape,), STEPS, workshop)}
    hours = sum(found[f"Hours: {name}"] for name in ("make the mould", "pour", "hone", "seal"))
    litres = Decimal(repr(round((shape.volume_mm3 + shape.net_area_mm2) / 1e6, 9)))
    concrete = workshop.recipe.price_per_m3 * litres / 1000
    kept = Decimal(repr(percent)) / 100 * (hours + concrete)
    assert found["Kept for casting again"] == pytest.approx(kept, abs=Decimal("1e-6"))


def test_a_price_is_its_costs_and_the_margin(workshop: Workshop) -> None:
    """Each line is the costs of its group with 40 %; what the pound moved is on the largest.

    The total is the sum with 20 % of tax, to the nearest pound; the tax a sixth of it.
    """
    order = order_of(workshop, plain())
    shapes = shapes_of(order, workshop)
    every = costs(order, shapes, STEPS, workshop)
    asked = {
        group: pennies(sum(c.amount for c in every if c.group == group) * Decimal("1.4"))
        for group in ("Materials", "Making and casting", "Finishing and sealing")
    }
    total = (sum(asked.values()) * Decimal("1.2")).quantize(Decimal(1), ROUND_HALF_UP)
    net = total - pennies(total / 6)
    price = price_from(order, shapes, STEPS, workshop)
    assert (price.total, price.net, price.tax) == (total, net, pennies(total / 6))
    lines = {line.label: line.amount for line in price.lines}
    asked[max(asked, key=lambda g: asked[g])] += net - sum(asked.values())
    assert lines == asked
    assert price.deposit == pennies(total * Decimal("0.4"))
    assert (price.currency, price.tax_percent) == ("GBP", Decimal(20))


def test_cover_is_paid_while_a_carrier_has_it(workshop: Workshop) -> None:
    """1.5 % of what it is worth and 6.00 at least, on a pallet alone; it bears no margin."""
    free = with_offer(workshop, round_to=Decimal("0.01"))
    near, own = priced(free, plain(), delivery=NEAR), priced(free, plain())
    assert "Cover in transit" not in amounts(own)
    assert Decimal(amounts(near)["Cover in transit"]) == max(
        Decimal(6), pennies(own.net * Decimal("0.015"))
    )


def test_measuring_is_paid_where_we_fit_it(workshop: Workshop) -> None:
    """Two pieces still to be measured: a visit and twice the fee; a template sent is free."""
    slab = plain(quantity=2, size_from="template-to-follow")
    fitted = amounts(priced(workshop, slab, delivery=NEAR | {"kind": "fitted"}))
    assert fitted["Coming to measure"] == "120.00"
    assert "Coming to measure" not in amounts(priced(workshop, slab, delivery=NEAR))
    known = plain(quantity=2)
    assert "Coming to measure" not in amounts(
        priced(workshop, known, delivery=NEAR | {"kind": "fitted"})
    )


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
    """What is short of the smallest order is a line; cover and delivery come on top of it."""
    choosy = with_offer(workshop, smallest_order=Decimal(2000), round_to=Decimal("0.01"))
    price = priced(choosy, plain(), delivery=NEAR)
    assert [line.label for line in price.lines[3:]] == [
        "Up to our smallest order",
        "Cover in transit",
        "Pallet delivery: Around Wethermoor",
    ]
    assert sum(line.amount for line in price.lines[:4]) == 2000
    assert price.net == 2000 + 30 + 68


def test_white_cement_and_pigments_cost_what_they_cost(workshop: Workshop) -> None:
    """Chalk has white cement and no pigment: 22.55 litres at 290 more in the cubic metre."""
    chalk = costed(workshop, plain(shade={"name": "chalk"}))
    assert chalk["White cement, what it adds"] == Decimal("0.02255") * 290
    assert "White cement, what it adds" not in costed(workshop, plain())
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
        return {one.name: one.amount for one in every}

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
