"""Laws of reading for what no table knows: things beside a slab, slabs by any name, ovals."""

from hypothesis import HealthCheck, given, settings

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.codec.order_in import read_order
from ledgerstone.enquiry import read_enquiry
from support.strategies import enquiry_things as things
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_families import dimensions
from support.strategies.orders import cases

MANY = settings(max_examples=cases(20), suppress_health_check=[HealthCheck.too_slow])


@MANY
@given(things.slabs_beside())
def test_a_thing_beside_a_slab_gives_it_no_size(told: Several) -> None:
    """No size of a thing is taken for the slab's, whatever the thing is called.

    A sentence that is not understood may leave a size to be asked, but invents none.
    """
    found = dimensions(read_enquiry(told.text, WORKSHOP))
    assert found.items() <= told.lengths.items(), told.text


@MANY
@given(things.slabs_by_name())
def test_what_is_asked_for_is_a_slab_by_any_name(told: Several) -> None:
    """A lectern's or an altar's sizes are read where one is asked for."""
    read_as_told(told)


@MANY
@given(things.ovals())
def test_an_oval_is_proposed_as_an_oval(told: Several) -> None:
    """Its sizes are read as said, and the proposal has the oval's corners within its box."""
    read = read_as_told(told)
    said = {one["value"] for one in read["read"] if one["at"] == "/slabs/0/cutouts/0/kind"}
    assert said == {"oval"}
    assert "kind" not in read["order"]["slabs"][0]["cutouts"][0]
    (cutout,) = read_order(read["proposal"], WORKSHOP).slabs[0].cutouts
    xs = [point.x.mm for point in cutout.points]
    ys = [point.y.mm for point in cutout.points]
    at = "/slabs/0/cutouts/0/"
    assert abs(max(xs) - min(xs) - told.lengths[f"{at}length"]) < 0.5
    assert abs(max(ys) - min(ys) - told.lengths[f"{at}width"]) < 0.5
    assert abs((max(xs) + min(xs)) / 2 - told.lengths[f"{at}centre/x"]) < 0.5


@MANY
@given(things.counts())
def test_a_number_after_x_counts(told: Several) -> None:
    """The 3 of "40 mm x 3" is how many, and no 3 m."""
    read_as_told(told)


@MANY
@given(things.houses())
def test_a_house_number_is_no_size(told: Several) -> None:
    """It is neither read nor left among the sizes that were not read."""
    assert not read_as_told(told)["unread"], told.text


@MANY
@given(things.middles())
def test_the_middle_is_of_the_way_that_is_left(told: Several) -> None:
    """Where how far from the back is said, "in the middle" is of the length and no doubt."""
    assert not read_as_told(told)["doubtful"], told.text


@MANY
@given(things.uncut())
def test_what_needs_no_cutting_is_no_opening(told: Several) -> None:
    """Nothing is asked of a sink that hangs beside the slab."""
    read = read_as_told(told)
    assert not any("cutouts" in one["at"] for one in read["missing"]), told.text


@MANY
@given(things.in_inches())
def test_inches_before_a_name_are_the_unit(told: Several) -> None:
    """In "30 x 16 in sink cut-out" the sink is no place that something lies in."""
    read_as_told(told)
