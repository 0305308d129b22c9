"""Postcodes, delivery areas, masses and hands."""

from dataclasses import replace
from decimal import Decimal

import pytest

from ledgerstone.order import Delivery
from ledgerstone.shape import shape_of
from ledgerstone.transport import (
    area_for,
    area_of,
    crated_kg,
    delivery_price,
    lift_message,
    packed_kg,
    pallet_for,
    people_to_lift,
    slab_kg,
    tidy_postcode,
)
from ledgerstone.wording import Message, People, Weight
from ledgerstone.workshop import DeliveryArea, Workshop
from ledgerstone.workshop.countries import usual_in
from ledgerstone.workshop.records import Conventions
from support.documents import Json
from support.slabs import box, cut, order_of, shapes_of, slab_json, slab_of


def served_by(workshop: Workshop, *patterns: str) -> Workshop:
    """Make a workshop with one delivery area."""
    area = DeliveryArea(name="here", postcodes=patterns, pallet=Decimal(50))
    return replace(workshop, areas=(area,))


@pytest.mark.parametrize(
    ("typed", "tidy"),
    [
        ("HR9 7XX", "HR9 7XX"),
        ("hr97xx", "HR9 7XX"),
        (" h r 9 7 x x ", "HR9 7XX"),
        ("EC1A.1BB", "EC1A 1BB"),
        ("M1\N{NO-BREAK SPACE}1AA", "M1 1AA"),
    ],
)
def test_a_postcode_is_tidied(typed: str, tidy: str) -> None:
    """Case, spaces, dots and hyphens are how people type, not what they mean."""
    assert tidy_postcode(typed) == tidy


@pytest.mark.parametrize("typed", ["", " ", "HR9", "HR9 7X", "HR9 7XXX", "١R9 7XX", "Wethermoor"])
def test_half_a_postcode_is_none(typed: str) -> None:
    """Only a whole postcode is one."""
    assert tidy_postcode(typed) is None


def test_other_countries_write_postcodes_their_own_way() -> None:
    """A country's letters are passed over; of one that is not known here any short text stands."""
    assert tidy_postcode("d-83646", usual_in("DE")) == "83646"
    assert tidy_postcode("974012345", usual_in("US")) == "97401-2345"
    assert [tidy_postcode(text, usual_in("JP")) for text in ("100-0001", " ")] == ["1000001", None]


@pytest.mark.parametrize(
    ("pattern", "postcode", "served"),
    [
        ("HR", "HR9 7XX", True),
        ("H", "HR9 7XX", False),
        ("E", "EC1A 1BB", False),
        ("EC", "EC1A 1BB", True),
        ("EC1A", "EC1A 1BB", True),
        ("EC1A", "EC1B 1BB", False),
        ("LD1", "LD1 5AA", True),
        ("LD1", "LD10 5AA", False),
        ("PO1-22", "PO1 1AA", True),
        ("PO1-22", "PO22 1AA", True),
        ("PO1-22", "PO30 1AA", False),
        ("N1-3", "N1P 1AA", True),
        ("KA29-30", "KA28 0AA", False),
    ],
)
def test_an_area_is_served_by_letters_districts_and_ranges(
    workshop: Workshop, pattern: str, postcode: str, *, served: bool
) -> None:
    """``HR`` is a whole area, ``LD1`` one district, ``PO1-22`` a range of them."""
    assert (area_for(postcode, served_by(workshop, pattern)) is not None) is served


def test_figures_alone_are_a_postcodes_beginning_elsewhere(workshop: Workshop) -> None:
    """A workshop abroad serves areas by the first figures of their codes, or by a range of them."""
    german = replace(workshop, workshop=replace(workshop.workshop, country="DE"))
    abroad = served_by(german, "101", "83600-83739")
    served = {"10115": True, "10211": False, "D-83646": True, "83739": True, "83740": False}
    assert {code: area_for(code, abroad) is not None for code in served} == served


def test_a_profile_may_have_a_pattern_of_its_own(workshop: Workshop) -> None:
    """What stands in its first brackets is what areas begin with."""
    own = Conventions(postcodes="([0-9]{3})([0-9]{4})")
    abroad = replace(workshop, workshop=replace(workshop.workshop, country="JP"), conventions=own)
    served = served_by(abroad, "100")
    assert [area_for(code, served) is not None for code in ("100-0001", "1010001", "10")] == [
        *(True, False, False)
    ]


def test_the_first_area_that_fits_is_used(workshop: Workshop) -> None:
    """Areas stand in the order in which the maker wrote them."""
    near = DeliveryArea(name="near", postcodes=("HR9",), pallet=Decimal(10))
    far = DeliveryArea(name="far", postcodes=("HR",), pallet=Decimal(20))
    shop = replace(workshop, areas=(near, far))
    found = [area_for(code, shop) for code in ("HR9 7XX", "HR1 1AA")]
    assert [area.name if area else None for area in found] == ["near", "far"]


@pytest.mark.parametrize(
    ("postcode", "area"),
    [
        ("HR9 7XX", "Around Wethermoor"),
        ("EC1A 1BB", "The rest of England and Wales"),
        ("TR19 7AA", "The rest of England and Wales"),
        ("TR21 0AA", None),
        ("EH1 1YZ", "Scotland, mainland south"),
        ("KA27 8AJ", None),
        ("BT1 5GS", None),
    ],
)
def test_the_demonstration_delivers_where_it_says(
    workshop: Workshop, postcode: str, area: str | None
) -> None:
    """Islands without a bridge and Northern Ireland are left to be asked for."""
    found = area_of(Delivery(kind="pallet", postcode=postcode), workshop)
    assert (found.name if found else None) == area


def test_no_area_where_nothing_is_delivered(workshop: Workshop) -> None:
    """Collected, without a postcode or with half of one, there is no area."""
    for delivery in (
        Delivery(kind="collect", postcode="HR9 7XX"),
        Delivery(kind="pallet"),
        Delivery(kind="pallet", postcode="HR9"),
    ):
        assert area_of(delivery, workshop) is None


def priced(workshop: Workshop, delivery: Json, **area: Decimal | None) -> Decimal | None:
    """Price a delivery of two pieces to an area."""
    slab = slab_json(box(900, 500), quantity=2)
    order = order_of(workshop, slab, delivery=delivery)
    return delivery_price(order, DeliveryArea(name="here", postcodes=("HR",), **area))  # type: ignore[arg-type]  # only its prices are named


def test_a_way_that_an_area_does_not_price_is_not_offered(workshop: Workshop) -> None:
    """A way without a price is None, a way that costs nothing is zero."""
    assert priced(workshop, {"kind": "fitted"}, pallet=Decimal(50)) is None
    assert priced(workshop, {"kind": "pallet"}, pallet=Decimal(0)) == 0
    assert priced(workshop, {"kind": "collect"}) == 0


def test_fitting_is_added_for_each_piece(workshop: Workshop) -> None:
    """Two pieces are fitted twice and driven once."""
    fees = {"fitted": Decimal(160), "fitting_per_slab": Decimal(95)}
    assert priced(workshop, {"kind": "fitted"}, **fees) == 350


def kg_of(workshop: Workshop, *cutouts: Json, **more: object) -> float:
    """Weigh a slab of 1000 by 500 by 40."""
    slab = slab_of(workshop, box(1000, 500), *cutouts, **more)
    return slab_kg(slab, shape_of(slab, workshop), workshop)


def test_a_slab_weighs_its_concrete_and_its_steel(workshop: Workshop) -> None:
    """One by half a metre, 40 mm, without pigment: 20 litres at 2.35 and half of 2.2 kg."""
    assert kg_of(workshop, shade={"name": "chalk"}) == pytest.approx(47 + 1.1)


def test_pigment_weighs_more_than_the_sand_whose_place_it_takes(workshop: Workshop) -> None:
    """4 % of black oxide on 480 kg is 19.2 kg: 4.17 litres of sand at 2.65 make room for it.

    That is 8.1 kg in a cubic metre; the slab of 20 litres is 0.16 kg heavier.
    """
    more = kg_of(workshop, shade={"name": "graphite"}) - kg_of(workshop, shade={"name": "chalk"})
    assert more == pytest.approx(0.02 * 480 * 0.04 * (1 - 2650 / 4600), rel=0.05)


def test_an_opening_weighs_nothing(workshop: Workshop) -> None:
    """A cut-out takes its concrete and its steel away."""
    sink = cut("rectangle", (400, 250), (500, 250), corner_radius=0)
    chalk = {"shade": {"name": "chalk"}}
    left = kg_of(workshop, sink, **chalk)
    assert kg_of(workshop, **chalk) - left == pytest.approx(0.1 * (0.04 * 2350 + 2.2))


@pytest.mark.parametrize(
    ("kind", "packing_kg"),
    [("pallet", 3 * 3 + 12 + 25), ("own-van", 3 * 2), ("fitted", 3 * 2), ("collect", 3 * 1)],
)
def test_an_order_travels_with_its_packing(
    workshop: Workshop, kind: str, packing_kg: float
) -> None:
    """Three pieces wrapped; by pallet they share one crate of 12 kg and a pallet of 25."""
    slab = slab_json(box(1000, 500), quantity=3, shade={"name": "chalk"})
    order = order_of(workshop, slab, delivery={"kind": kind, "postcode": "HR9 7XX"})
    shapes = tuple(shape_of(slab, workshop) for slab in order.slabs)
    assert packed_kg(order, shapes, workshop) == pytest.approx(3 * 48.1 + packing_kg)


@pytest.mark.parametrize(
    ("kg", "people"), [(0.4, 1), (25, 1), (25.01, 2), (50, 2), (120, 5), (230, 10)]
)
def test_hands_are_counted_by_the_workshops_share(
    workshop: Workshop, kg: float, people: int
) -> None:
    """Each person takes up to 25 kg here; one person always stands there."""
    assert people_to_lift(kg, workshop) == people


# --- pallets --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("length", "width", "quantity", "name"),
    [
        (1500, 600, 1, "half pallet"),  # 1200 and 150 beyond it at each end
        (1501, 600, 1, "long pallet"),
        (1400, 951, 1, "full pallet"),  # 1100 less the deck's 150 is 950 deep on edge
        (1400, 900, 5, "full pallet"),  # about 5 × 121 and 2 × 12 kg: more than 500
        (2700, 600, 1, "long pallet"),
        (2701, 600, 1, None),
        (1400, 900, 8, None),  # more than 1000 kg
    ],
)
def test_a_pallet_is_chosen_by_size_then_by_mass(
    workshop: Workshop, length: int, width: int, quantity: int, name: str | None
) -> None:
    """The cheapest that takes the longest and deepest piece, and then the packed mass."""
    slab = slab_json(box(length, width), quantity=quantity)
    order = order_of(workshop, slab, delivery={"kind": "pallet", "postcode": "HR9 7XX"})
    chosen = pallet_for(order, shapes_of(order, workshop), workshop)
    assert (chosen.name if chosen else None) == name


def test_a_longer_pallet_costs_more_and_weighs_more(workshop: Workshop) -> None:
    """160 % of the area's price, and 45 kg in place of 25."""
    delivery = {"kind": "pallet", "postcode": "HR9 7XX"}
    prices, masses = [], []
    for length in (1500, 1501):
        order = order_of(workshop, slab_json(box(length, 600)), delivery=delivery)
        shapes = shapes_of(order, workshop)
        area, pallet = area_of(order.delivery, workshop), pallet_for(order, shapes, workshop)
        prices.append(delivery_price(order, area, pallet))
        masses.append(packed_kg(order, shapes, workshop) - crated_kg(order, shapes, workshop))
    assert prices == [Decimal("68.00"), Decimal("68.00") * 160 / 100]
    assert masses == pytest.approx([25, 45])


@pytest.mark.parametrize(
    ("kg", "message", "people"),
    [
        (9.94, "lift-by-one", None),
        (25.0, "lift-by-one", None),
        (25.1, "lift-by-two", None),
        (71.0, "lift-by-several", 3),
        (99.0, "lift-by-several", 4),
        (150.0, "lift-by-several", 6),
        (151.0, "lift-by-gear", None),
    ],
)
def test_a_weight_is_stated_with_the_hands_it_needs(
    workshop: Workshop, kg: float, message: str, people: int | None
) -> None:
    """By the workshop's 25 kg a person and its six people; beyond them by gear."""
    hands = {} if people is None else {"people": People(people)}
    assert lift_message(kg, workshop) == Message(message, weight=Weight(kg), **hands)
