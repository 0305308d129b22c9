"""Laws of reading, of faults that strangers' enquiries showed: delivery, rows of units, holes."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.enquiry import read_enquiry
from ledgerstone.workshop import load_profile
from ledgerstone.workshop.reading.loader import EXAMPLES
from support.strategies import enquiry_outsiders as outsiders
from support.strategies.enquiry_changes import Several
from support.strategies.orders import cases

MANY = settings(max_examples=cases(8), suppress_health_check=[HealthCheck.too_slow])
AMERICAN = load_profile(EXAMPLES["US"])
POSTCODE = "/delivery/postcode"


@MANY
@given(outsiders.places())
def test_figures_after_a_place_are_its_postcode(told: outsiders.Delivered) -> None:
    """A ZIP code after a town's name is the delivery's, and no size that was left unread."""
    read = read_enquiry(told.text, AMERICAN)
    assert read["order"]["delivery"]["postcode"] == told.postcode, told.text
    assert told.postcode not in {one["text"] for one in read["unread"]}


@MANY
@given(outsiders.slabs_and("asked_delivery"))
def test_delivery_asked_for_is_not_turned_into_collecting(told: Several) -> None:
    """Its postcode is asked, and what is told of the proposal does not say "you collect it"."""
    read = read_as_told(told)
    assert POSTCODE in {one["at"] for one in read["missing"]}, told.text
    (says,) = (one["says"] for one in read["assumed"] if one["at"] == "/delivery/kind")
    assert "collect" not in says
    assert "abhol" not in says.lower()


@MANY
@given(outsiders.slabs_and("not_asked_delivery"))
def test_no_postcode_is_asked_where_no_delivery_is(told: Several) -> None:
    """Delivery that is refused, another thing's, or only spoken of, asks for no postcode."""
    assert POSTCODE not in {one["at"] for one in read_as_told(told)["missing"]}, told.text


@MANY
@given(outsiders.slabs_and("left_open"))
def test_one_way_or_else_the_other_is_doubtful(told: Several) -> None:
    """Both ways are readings, and neither is in the order."""
    read = read_as_told(told)
    (doubt,) = (one for one in read["doubtful"] if one["at"] == "/delivery/kind")
    assert {one["value"] for one in doubt["readings"]} == {"collect", "pallet"}
    assert "kind" not in read["order"]["delivery"]


@MANY
@given(outsiders.slabs_and("sticks_out"))
def test_what_sticks_out_is_no_size(told: Several) -> None:
    """How far something sticks out is set aside, and makes no size doubtful."""
    assert not read_as_told(told)["doubtful"]


@MANY
@given(st.one_of(outsiders.rows_of_units(), outsiders.units_in_inches()))
def test_units_each_as_wide_are_rests(told: Several) -> None:
    """Units whose widths are told are what the slab lies on, in the order that they are told in."""
    units = read_as_told(told)["order"]["slabs"][0]["rests"]["units"]
    assert " ".join(one["width"] for one in units) == told.words["widths"]


@MANY
@given(outsiders.run_on())
def test_a_hole_with_its_own_size_takes_no_other(told: Several) -> None:
    """The sizes before "one tap hole 35 mm" are the slab's."""
    read_as_told(told)


@MANY
@given(outsiders.counted())
def test_a_number_off_is_how_many(told: Several) -> None:
    """The number in "(3 off)" after the sizes counts the slab."""
    assert read_as_told(told)["order"]["slabs"][0]["quantity"] == int(told.words["n"])


@MANY
@given(outsiders.scrapped())
def test_a_length_taken_back_is_not_left_unread(told: Several) -> None:
    """Where it is taken back it is superseded, as where it was told."""
    assert not read_as_told(told)["unread"]


@given(st.sampled_from(outsiders.SAID["rooms"]))
def test_a_bathroom_is_no_hall(room: str) -> None:
    """A room is read by its whole name."""
    read = read_enquiry(f"Price for a {room} vanity top 1200 x 550 x 40 mm.", WORKSHOP)
    (place,) = (one for one in read["read"] if one["at"] == "/slabs/0/place")
    assert [one["text"] for one in place["from"]] == [room]


@pytest.mark.parametrize("named", ["a tap hole 35 mm", "a faucet hole 35 mm", "ein Hahnloch 35 mm"])
def test_a_tap_covers_its_hole(named: str) -> None:
    """The proposal covers the rim of a tap's hole, and says so; a rim that is told stands."""
    read = read_enquiry(f"Price for a worktop 2100 x 600 x 40 mm with {named}.", WORKSHOP)
    (cutout,) = read["proposal"]["slabs"][0]["cutouts"]
    assert cutout["rim"] == "covered"
    assert "rim" not in read["order"]["slabs"][0]["cutouts"][0]
    assert "/slabs/0/cutouts/0/rim" in {one["at"] for one in read["assumed"]}
