"""What holds of the orders that are got wrong, and of the search for room, before they are used."""

from collections import Counter
from typing import Any

import pytest
from hypothesis import given

from ledgerstone.application.answering import answer_order
from ledgerstone.codec.order_in import read_order
from ledgerstone.quote import Quote
from ledgerstone.workshop import Workshop
from support.contexts import context_of
from support.documents import Json
from support.oracles.placement import no_room, room
from support.strategies.orders import TODAY, brief, cases
from support.strategies.wrong_measures import WAYS
from support.strategies.wrong_orders import wrong_order, wrong_orders


def slab(length: object, width: object, *cutouts: Json, **more: Any) -> Json:
    """A rectangular slab with openings."""
    outline = {"kind": "rectangle", "length": length, "width": width}
    return {"outline": outline, "thickness": 40, "cutouts": list(cutouts), **more}


def box(length: float, width: float, x: float = 0.0, y: float = 0.0, **more: object) -> Json:
    """A rectangular opening."""
    centre = {"x": x, "y": y}
    return {"kind": "rectangle", "length": length, "width": width, "centre": centre, **more}


# --- the generator --------------------------------------------------------------------------


def test_an_order_got_wrong_is_understood(workshop: Workshop) -> None:
    """Each of a thousand means a piece of concrete."""
    for number in range(1000):
        assert read_order(wrong_order(7, number), workshop).slabs


@brief
@given(wrong_orders())
def test_one_drawn_by_hypothesis_is_understood(workshop: Workshop, order: Json) -> None:
    """So does each that the strategy draws."""
    assert read_order(order, workshop).slabs


def test_the_same_numbers_make_the_same_order() -> None:
    """A seed and a number name one order; another number names another."""
    made = [wrong_order(3, n) for n in range(50)]
    assert made == [wrong_order(3, n) for n in range(50)]
    assert len({repr(order) for order in made}) == 50


def test_kitchens_are_a_main_part(workshop: Workshop) -> None:
    """Two fifths or more are runs of 2.75 to 4.35 m; slabs go from 300 mm up, in every outline."""
    slabs = [read_order(wrong_order(3, n), workshop).slabs[0] for n in range(600)]
    kinds = Counter(one.outline.kind for one in slabs)
    lengths = [one.outline.length.mm for one in slabs if one.outline.kind == "rectangle"]
    runs = [mm for mm in lengths if 2700 <= mm <= 4400]
    assert len(runs) >= 0.4 * len(slabs)
    assert min(lengths) <= 400
    assert set(kinds) == {"rectangle", "l-shape", "round"}


@pytest.mark.parametrize("way", WAYS)
def test_every_way_of_getting_it_wrong_is_taken(way: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """In two hundred orders each mistake is made."""
    made: list[str] = []
    right = WAYS[way][0]

    def seen(*told: Any) -> None:
        made.append(way)
        right(*told)

    monkeypatch.setitem(WAYS, way, (seen, WAYS[way][1]))
    for number in range(200):
        wrong_order(3, number)
    assert made


# --- the search for room --------------------------------------------------------------------


def test_a_basin_that_just_fits_has_room(workshop: Workshop) -> None:
    """An open rim asks 60 mm all round: 480 deep fits a slab of 600, and 482 does not."""
    assert no_room(slab(1400, 600, box(700, 480)), workshop) == ""
    assert no_room(slab(1400, 600, box(700, 482)), workshop) == "an opening that fits nowhere"


def test_a_tap_needs_room_behind_or_beside_its_basin(workshop: Workshop) -> None:
    """Where a tap of 35 has 25 mm neither behind nor beside its basin, there is no room."""
    tap = {"kind": "circle", "diameter": 35, "centre": {"x": 0, "y": 250}}
    assert no_room(slab(900, 600, box(700, 480), tap), workshop) == ""
    assert no_room(slab(830, 565, box(700, 440), tap), workshop) == "an opening that fits nowhere"
    assert no_room(slab(830, 585, box(700, 440), tap), workshop) == ""


def test_two_that_fit_alone_can_be_too_crowded(workshop: Workshop) -> None:
    """Two bowls of 500 need 60 + 500 + 60 + 500 + 60 mm."""
    assert no_room(slab(1180, 600, box(500, 400), box(500, 400)), workshop) == ""
    assert no_room(slab(1178, 600, box(500, 400), box(500, 400)), workshop) == "too crowded"


def test_a_run_is_cut_clear_of_what_it_holds(workshop: Workshop) -> None:
    """5.4 m is two tables long: of two openings of 2.4 m each has a piece; 2.6 m leave no joint."""
    assert no_room(slab(5400, 600, box(2540, 400), box(2540, 400)), workshop) == ""
    assert no_room(slab(5400, 600, box(2545, 400), box(100, 100)), workshop) != ""
    round_one = {"outline": {"kind": "round", "diameter": 1300}, "thickness": 40}
    assert no_room(round_one, workshop) == "no way to cut it for the table"


def test_a_large_l_is_cut_from_its_inside_corner(workshop: Workshop) -> None:
    """An L of 2700 by 1900 with arms 600 deep has room for a hob on its longer arm, turned not."""
    notch = {"corner": "back-right", "length": 2100, "width": 1300}
    outline = {"kind": "l-shape", "length": 2700, "width": 1900, "notch": notch}
    hob = box(560, 490, rim="covered")
    assert no_room({"outline": outline, "cutouts": [hob]}, workshop) == ""
    assert no_room({"outline": outline, "cutouts": [box(490, 560, rim="covered")]}, workshop) == ""
    wide = box(560, 560, rim="covered")
    assert no_room({"outline": outline, "cutouts": [wide]}, workshop) != ""


def test_a_side_panel_is_in_the_way_where_units_are_given(workshop: Workshop) -> None:
    """A hob of 560 goes into its unit of 600, clear of panels of 18 mm; one of 570 does not."""
    units = [{"width": 600, "for": "hob"}, {"width": 600}, {"width": 600}]
    rests = {"kind": "units", "units": units}
    assert no_room(slab(1800, 600, box(560, 400), rests=rests), workshop) == ""
    assert no_room(slab(1800, 600, box(570, 400), rests=rests), workshop) != ""


def test_a_quoted_order_has_room(workshop: Workshop) -> None:
    """What the service finds to be in order, the search for room does not call full."""
    context, quoted = context_of(workshop, TODAY), 0
    for number in range(cases(60)):
        order = wrong_order(3, number)
        if isinstance(answer_order(order, context, search=False), Quote):
            quoted += 1
            assert room(order, workshop) == ""
    assert quoted >= 3
