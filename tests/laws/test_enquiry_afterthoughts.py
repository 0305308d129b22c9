"""Laws of reading for what is put right after it was said, and for mail that asks for nothing."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.enquiry import read_enquiry
from support.strategies import enquiry_afterthoughts as afterthoughts
from support.strategies.orders import cases

SOME = settings(max_examples=cases(12), suppress_health_check=[HealthCheck.too_slow], deadline=None)


@pytest.mark.parametrize("family", sorted(afterthoughts.TAKEN))
@SOME
@given(data=st.data())
def test_what_is_said_last_is_taken(family: str, data: st.DataObject) -> None:
    """Each size is the one that was put right, and nothing is taken twice."""
    read_as_told(data.draw(afterthoughts.told(family)))


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
