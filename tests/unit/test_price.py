"""Prices: one worked by hand to the penny, and how lines, tax, steps and delivery settle."""

import importlib
from dataclasses import replace
from datetime import date
from decimal import ROUND_HALF_UP, Decimal

import pytest

from ledgerstone.message import Message
from ledgerstone.mix import batch_plan
from ledgerstone.price import costs, to_penny
from ledgerstone.price import price as price_from
from ledgerstone.price.costing import GROUPS, recast_percent
from ledgerstone.wording import english
from ledgerstone.work import Operation
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, hole, line_name, order_of, shapes_of, slab_json, stages_of
from unit.priced_slabs import (
    GRAPHITE,
    NEAR,
    amounts,
    costed,
    plain,
    priced,
    with_offer,
)

materials_module = importlib.import_module("ledgerstone.price.materials")

STEPS = (
    Operation(Message("step-mould"), "mould", 0, 1.74),
    Operation(Message("step-place"), "cast", 0, 1.45),
    Operation(Message("step-wash"), "finish", 0, 0.40, machine_hours=0.40),
    Operation(Message("step-sand"), "seal", 0, 0.15, hire=Decimal(6)),
    Operation(Message("step-pack"), "pack", None, 0.75),
)  # minutes of hands: 104, 87, 24, 9, 45


def hours_of(step: str) -> str:
    """What the hours of a step of the work are called among an order's costs."""
    return english(Message("cost-hours", step=Message(f"step-{step}")))


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
        "Packing": Decimal("3.00"),  # collected: no crate
        "Pads": Decimal("4.00") / 2,
        "Sealer: matt": Decimal("34.00") * Decimal("0.5") * 3 / 9,
        hours_of("mould"): Decimal(104) / 60 * 38,
        hours_of("place"): Decimal(87) / 60 * 38,
        hours_of("wash"): Decimal(24) / 60 * (38 + Decimal("4.50")),
        hours_of("sand"): Decimal(9) / 60 * 38 + 6,
        "Hours: Pack": Decimal(45) / 60 * 38,
    }


def test_a_plain_slabs_costs_are_worked_by_hand(workshop: Workshop) -> None:
    """Mould, steel, finish and hours of the plain slab, from the demonstration profile's rates."""
    order = order_of(workshop, plain())
    found = {
        english(c.label): c.amount
        for c in costs(order, shapes_of(order, workshop), STEPS, workshop)
    }
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
    # Face coat: without 684 kg of grit, 253 litres of a cubic metre, and with 10 litres of water
    # more (0.42 × 480 less the 3.1 kg of the plasticiser's), the same 480 kg fill 0.753 of it.
    # Beside both there is the repair pot: 0.25 kg of cement with 4 % of pigment.
    face_l, backing_l, pot_kg = 0.5 * 8 * 1.1, 0.5 * 33 * 1.1, 0.25 / 1.04
    cement = next(p.kg for p in plan.purchases if p.role == "cement")
    mixed_kg = (face_l * 480 / 0.753 + backing_l * 480) / 1000
    assert cement == pytest.approx(mixed_kg + pot_kg, rel=0.002)


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
    stages = stages_of(order, workshop, today)
    bars = sum(bar.count * bar.length_mm for plan in stages.known.steel for bar in plan.cut())
    every = costs(order, stages.shapes, stages.scheduled.operations, workshop, stages.known.steel)
    paid = next(cost.amount for cost in every if english(cost.label) == "Bars")
    assert bars > 0
    assert float(paid) == pytest.approx(bars / 3000 * 5.40 * 1.15, rel=1e-6)


@pytest.mark.parametrize(
    ("more", "percent", "batches"),
    [
        ({}, 2 + 3 + 1, 2),  # any piece 2, as cast 3, graphite 1
        ({"shade": {"name": "tarn slate"}}, 2 + 3, 2),
        ({"finish": {"surface": "honed", "sealer": "matt"}}, 2 + 1, 2),
        # 2 m²: one beyond the first; 17.6 litres of face coat, and 72.6 in two batches
        ({"outline": box(2500, 800)}, 2 + 2 * 1.0 + 3 + 1, 3),
    ],
    ids=("plain", "shade", "finish", "size"),
)
def test_pieces_that_go_wrong_oftener_keep_more_for_casting_again(
    workshop: Workshop, more: Json, percent: float, batches: int
) -> None:
    """By finish, shade and size: a share of the piece's own hours, a pour alone and concrete."""
    order = order_of(workshop, plain(**more))
    (shape,) = shapes_of(order, workshop)
    assert recast_percent(order.slabs[0], shape, workshop) == pytest.approx(percent)
    found = {english(c.label): c.amount for c in costs(order, (shape,), STEPS, workshop)}
    hours = sum(found[hours_of(step)] for step in ("mould", "place", "wash", "sand"))
    hours += Decimal(6 + 9 * batches) / 60 * 38
    litres = Decimal(repr(round((shape.volume_mm3 + shape.net_area_mm2) / 1e6, 9)))
    concrete = workshop.recipe.price_per_m3 * litres / 1000
    kept = Decimal(repr(percent)) / 100 * (hours + concrete)
    assert found[english(Message("cost-recasts"))] == pytest.approx(kept, abs=Decimal("1e-6"))


def test_a_price_is_its_costs_and_the_margin(workshop: Workshop) -> None:
    """Each line is the costs of its group with 40 %; what the pound moved is a line of its own.

    The total is the sum with 20 % of tax, to the nearest pound; the tax a sixth of it.
    """
    order = order_of(workshop, plain())
    shapes = shapes_of(order, workshop)
    every = costs(order, shapes, STEPS, workshop)
    asked = {
        group: to_penny(sum(c.amount for c in every if c.group == group) * Decimal("1.4"))
        for group in GROUPS
    }
    total = (sum(asked.values()) * Decimal("1.2")).quantize(Decimal(1), ROUND_HALF_UP)
    net = total - to_penny(total / 6)
    price = price_from(order, shapes, STEPS, workshop)
    assert (price.total, price.net, price.tax) == (total, net, to_penny(total / 6))
    lines = {line_name(line): line.amount for line in price.lines}
    assert lines == asked | {"price-rounding": net - sum(asked.values())}
    assert price.deposit == to_penny(total * Decimal("0.4"))
    assert (price.currency, price.tax_percent) == ("GBP", Decimal(20))


def test_cover_is_paid_while_a_carrier_has_it(workshop: Workshop) -> None:
    """1.5 % of what it is worth and 6.00 at least, on a pallet alone; it bears no margin."""
    free = with_offer(workshop, round_to=Decimal("0.01"))
    near, own = priced(free, plain(), delivery=NEAR), priced(free, plain())
    assert "price-cover" not in amounts(own)
    before_tax = sum(line.amount for line in near.lines[:3])
    assert Decimal(amounts(near)["price-cover"]) == max(
        Decimal(6), to_penny(before_tax * Decimal("0.015"))
    )


def test_measuring_is_paid_where_we_fit_it(workshop: Workshop) -> None:
    """Two pieces still to be measured: a visit and twice the fee; a template sent is free."""
    slab = plain(quantity=2, size_from="template-to-follow")
    fitted = amounts(priced(workshop, slab, delivery=NEAR | {"kind": "fitted"}))
    assert fitted["price-measuring"] == "120.00"
    assert "price-measuring" not in amounts(priced(workshop, slab, delivery=NEAR))
    known = plain(quantity=2)
    assert "price-measuring" not in amounts(
        priced(workshop, known, delivery=NEAR | {"kind": "fitted"})
    )
