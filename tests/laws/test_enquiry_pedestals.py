"""Laws of reading pedestals: the plate as told, or asked for."""

from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.enquiry import read_enquiry
from ledgerstone.quantities import Length
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.strategies.orders import cases

WORKSHOP = load_profile(DEMONSTRATION)
ASK = "Price for a round table top 1100 mm across, 40 mm thick{}"
TOLD = (
    ", on a steel pedestal (the plate on top is {cm} cm square).",
    ". It goes on a pedestal with a {mm} mm plate.",
    ". It will stand on a cast iron pedestal base, top plate {mm} x {mm} mm.",
    " on a central column with a {mm} mm square plate.",
    ". It sits on a single leg, plate {cm} cm.",
    ". Er kommt auf eine Mittelsäule mit {cm} cm Platte.",
    ". It goes on a pedestal with a base plate of 640 and a top plate of {mm}.",
    ". It goes on a steel pedestal; 700 mm base plate, {mm} mm top plate.",
)
UNTOLD = (
    " on a steel pedestal.",
    ". It goes on the old pedestal base, 720 high.",
    ". It sits on a central column 80 mm thick.",
    ". It goes on a pedestal, plate bolts 120 apart.",
    ". It goes on a pedestal with a base plate of 600.",
    ". It goes on a pedestal, its plate 300 mm, or a plate of 400 mm.",
)
OTHERS = (
    " At the moment our basin is on a pedestal, which we take out.",
    " It is to replace our basin on a pedestal.",
    " The old table stands on a pedestal.",
)


@settings(max_examples=cases(12))
@given(st.sampled_from(TOLD), st.integers(12, 60))
def test_a_pedestals_plate_is_what_the_slab_rests_on(said: str, cm: int) -> None:
    """It is no size of the slab, and nothing is asked."""
    text = ASK.format(said.format(cm=cm, mm=10 * cm))
    read = read_enquiry(text, WORKSHOP)
    (slab,) = read["order"]["slabs"]
    assert slab["rests"]["kind"] == "pedestal", text
    assert Length.parse(slab["rests"]["plate"]).mm == 10 * cm
    assert slab["outline"] == {"kind": "round", "diameter": "1100 mm"}
    assert not read["missing"]
    assert not read["doubtful"]


@settings(max_examples=cases(8))
@given(st.sampled_from(UNTOLD))
def test_a_plate_that_is_not_told_is_asked(said: str) -> None:
    """A height and a column's thickness are no plate's."""
    read = read_enquiry(ASK.format(said), WORKSHOP)
    assert "rests" not in read["order"]["slabs"][0], said
    assert [one["at"] for one in read["missing"]] == ["/slabs/0/rests"]


@settings(max_examples=cases(3))
@given(st.sampled_from(OTHERS))
def test_the_pedestal_of_another_thing_is_not_asked_about(said: str) -> None:
    """A basin has one of its own, and what stands there now is none of ours."""
    read = read_enquiry(ASK.format("." + said), WORKSHOP)
    assert "rests" not in read["order"]["slabs"][0]
    assert not read["missing"], said
