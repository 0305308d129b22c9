"""Laws of reading vanity tops: the one cabinet below, what is over its middle, and how thick."""

import pytest
from hypothesis import HealthCheck, given, settings

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.enquiry import read_enquiry
from ledgerstone.quantities import Length
from support.strategies import enquiry_vanities as vanities
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_vanities import Vanity
from support.strategies.orders import cases

MANY = settings(max_examples=cases(20), suppress_health_check=[HealthCheck.too_slow])


@MANY
@given(vanities.on_one_unit())
def test_one_cabinet_stands_under_the_middle(told: Vanity) -> None:
    """It is the one unit below, and the slab hangs over it as far on the left as on the right."""
    rests = read_enquiry(told.text, WORKSHOP)["order"]["slabs"][0].get("rests", {})
    assert [Length.parse(one["width"]).mm for one in rests.get("units", [])] == pytest.approx(
        [told.unit_mm]
    ), told.text
    over = {side: Length.parse(one).mm for side, one in rests.get("overhang", {}).items()}
    each = (told.length_mm - told.unit_mm) / 2
    assert over == pytest.approx({"left": each, "right": each} if each else {}), told.text


@MANY
@given(vanities.on_one_unit())
def test_what_is_over_the_cabinet_is_in_the_middle(told: Vanity) -> None:
    """Basin and tap are on the middle line, which is worked out; no place along it is asked."""
    read = read_enquiry(told.text, WORKSHOP)
    for i in (0, 1):
        at = f"/slabs/0/cutouts/{i}/centre/x"
        (x,) = (one for one in read["read"] if one["at"] == at)
        assert x["how"] == "worked-out"
        (place,) = (slab["cutouts"][i]["centre"]["x"] for slab in read["proposal"]["slabs"])
        assert Length.parse(place).mm == pytest.approx(told.length_mm / 2, abs=0.1), told.text


@MANY
@given(vanities.on_no_unit())
def test_other_cabinets_are_no_unit_below(told: Several) -> None:
    """One on a wall, in another room, shorter than the slab, or two, is not taken for it."""
    assert "rests" not in read_as_told(told)["order"]["slabs"][0], told.text


@MANY
@given(vanities.thick_first())
def test_a_thickness_before_other_words_is_the_slab_s(told: Several) -> None:
    """In "a 2 in thick polished top, 37 x 22" the top is two inches thick."""
    read_as_told(told)
