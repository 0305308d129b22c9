"""Laws of reading for several slabs: each outline is a slab, each opening in the one it names."""

import pytest
from hypothesis import HealthCheck, given, settings

from ledgerstone.enquiry import read_enquiry
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.strategies.enquiry_families import dimensions
from support.strategies.enquiry_several import (
    Slabs,
    in_a_list,
    in_a_row,
    in_one_breath,
    on_units,
    with_upstand,
)
from support.strategies.orders import cases

WORKSHOP = load_profile(DEMONSTRATION)
MANY = settings(max_examples=cases(10), suppress_health_check=[HealthCheck.too_slow])


def _is_read(told: Slabs) -> None:
    found = dimensions(read_enquiry(told.text, WORKSHOP))
    assert found == pytest.approx(told.lengths, abs=0.5), told.text


@MANY
@given(in_one_breath())
def test_two_slabs_of_one_sentence_are_two(told: Slabs) -> None:
    """Each pair of sizes is a slab; "the second" and "the smaller one" say which has the hob."""
    _is_read(told)


@MANY
@given(in_a_list())
def test_a_heading_begins_a_slab(told: Slabs) -> None:
    """Headings, items and fields that restart are slabs of their own."""
    _is_read(told)


@MANY
@given(in_a_row())
def test_distances_in_a_row_are_one_each(told: Slabs) -> None:
    """Of two openings the first is at the first distance listed, the second at the second."""
    _is_read(told)


@MANY
@given(on_units())
def test_what_a_slab_stands_on_is_none_of_it(told: Slabs) -> None:
    """Units, their sizes and their codes change nothing of the slab, however long that is."""
    _is_read(told)


@MANY
@given(with_upstand())
def test_a_size_told_to_be_the_same_is_the_others(told: Slabs) -> None:
    """An upstand the full length of the worktop is as long as the worktop."""
    _is_read(told)


NO_ENQUIRY = (
    "How much would you charge to lay a concrete drive, about {} and 100mm deep?",
    "Could you price a concrete floor for the shed, {}, 150 mm thick?",
    "Re: your quote for the {} worktop. It's a bit beyond what we can spend, so we'll leave it.",
    "Your order has shipped: 2 trays {}. Track it online.",
    "I'd like to apply for the job you advertised. I've cast worktops up to {} for ten years.",
    "Please find below our quotation for servicing your mixer, drum {}. Valid 30 days.",
    "Are we still on for Thursday to template the worktop? It's {} if you remember.",
    "Would you be interested in displaying a sample worktop with us, {}?",
    "Wir haben die Arbeitsplatte ({}) letztes Jahr bei Ihnen gekauft. Womit reinigen wir sie?",
)


@pytest.mark.parametrize("text", NO_ENQUIRY)
@pytest.mark.parametrize("size", ["1800 x 600", "2400 x 620 mm", "1,8 m x 60 cm"])
def test_other_mail_asks_for_no_slab(text: str, size: str) -> None:
    """Other trades, refusals, shipments, job seekers and suppliers are told apart with any size."""
    read = read_enquiry(text.format(size), WORKSHOP)
    assert not read["is_enquiry"], text
    assert read["order"]["slabs"] == []
