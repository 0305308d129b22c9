"""Laws of reading for what is put right after it was said, and for mail that asks for nothing."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.enquiry import read_enquiry
from support.strategies import enquiry_afterthoughts as afterthoughts
from support.strategies.enquiry_changes import Several
from support.strategies.orders import cases

SOME = settings(max_examples=cases(12), suppress_health_check=[HealthCheck.too_slow], deadline=None)


@pytest.mark.parametrize("family", sorted(afterthoughts.TAKEN))
@SOME
@given(data=st.data())
def test_what_is_said_last_is_taken(family: str, data: st.DataObject) -> None:
    """Each size is the one that was put right, and nothing is taken twice."""
    read_as_told(data.draw(afterthoughts.told(family)))


@SOME
@given(afterthoughts.told("converted_otherwise"))
def test_a_size_in_two_systems_that_differ_is_asked(told: Several) -> None:
    """Where feet and millimetres are not one size, both are shown and neither is taken."""
    read = read_as_told(told)
    (doubt,) = [one for one in read["doubtful"] if one["at"] == "/slabs/0/outline/length"]
    assert len(doubt["readings"]) == 2, told.text


DAYS = (
    ("Until end of april if possible 2027.", "2027-04-30"),
    ("We need it by the end of June, 2027.", "2027-06-30"),
    ("Bitte bis Ende Mai 2027.", "2027-05-31"),
)


@pytest.mark.parametrize(("said", "day"), DAYS)
def test_the_end_of_a_month_may_have_its_year(said: str, day: str) -> None:
    """The year stands behind the month, or behind a wish."""
    read = read_enquiry(f"Price for a worktop 1800 x 600 x 40 mm? {said}", WORKSHOP)
    assert read["order"]["needed_by"] == day


@pytest.mark.parametrize("said", ["in den Sommerferien", "during the school holidays"])
def test_holidays_are_no_day(said: str) -> None:
    """When it is needed is asked."""
    read = read_enquiry(
        f"Price for a worktop 1800 x 600 x 40 mm? We'd collect it {said}.", WORKSHOP
    )
    assert "needed_by" not in read["order"]
    assert "/needed_by" in {one["at"] for one in read["doubtful"]}


WAYS = (
    ("We pass to take it with our car.", "collect"),
    ("We come to search it ourselves.", "collect"),
    ("We'll fetch.", "collect"),
    ("You can come to mount it? We are in HR0 4LE.", "fitted"),
    ("With mounting please, HR0 4LE.", "fitted"),
    ("\nOur van, HR0 6TD.", "own-van"),
)


@pytest.mark.parametrize(("said", "kind"), WAYS)
def test_how_it_comes_is_told_in_other_words(said: str, kind: str) -> None:
    """Fetching, fitting and the workshop's van are told in the words of other languages too."""
    read = read_enquiry(f"Price for a worktop 1800 x 600 x 40 mm? {said}", WORKSHOP)
    assert read["order"]["delivery"]["kind"] == kind


NO_ENQUIRY = (
    "Your collection is booked.\n\nGoods   concrete worktop {}, 1 pc\nPlease have it on a pallet.",
    "Delivery confirmed for Friday. Goods: 1 concrete hearth {}. Please do not reply to this mail.",
    "I'm looking for a workshop that would take me on for a month. I have cast a desk top, {}.",
    "Ihre Abholung ist gebucht: 1 Arbeitsplatte {}. Bitte verpacken Sie die Ware.",
)


@pytest.mark.parametrize("text", NO_ENQUIRY)
@pytest.mark.parametrize("size", ["2800 x 620 x 40", "1500 x 650 x 35 mm"])
def test_a_carrier_and_an_applicant_ask_for_no_slab(text: str, size: str) -> None:
    """The sizes of goods that are carried, and of what an applicant has made, are no order."""
    read = read_enquiry(text.format(size), WORKSHOP)
    assert not read["is_enquiry"]
    assert read["order"]["slabs"] == []


OUT_OF_ORDER = (
    "the lift is broken",
    "our van is damaged",
    "the bell's broken",
    "der Aufzug ist kaputt",
)


@pytest.mark.parametrize("said", OUT_OF_ORDER)
@pytest.mark.parametrize(
    "asked", ["Three shelves, {}, 30 thick", "Could you price a hearth {} x 40"]
)
def test_what_is_out_of_order_at_the_customers_is_no_complaint(said: str, asked: str) -> None:
    """A lift that is broken is told with an order; a slab that is broken is a complaint."""
    text = f"{asked.format('1120 x 260')}. Second floor, 41 steps and {said}."
    assert read_enquiry(text, WORKSHOP)["is_enquiry"]
    assert not read_enquiry("The shelf you made for us is broken, 1120 x 260.", WORKSHOP)[
        "is_enquiry"
    ]
