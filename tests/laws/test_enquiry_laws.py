"""Laws of reading: however a slab is said it is the same slab, and nothing else is taken."""

from fractions import Fraction

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from ledgerstone.enquiry import read_enquiry
from ledgerstone.enquiry.text.sizes import SizeReader
from ledgerstone.enquiry.text.tokens import not_sizes, tokens_of
from ledgerstone.enquiry.wishes.dates import easter
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.strategies.enquiry_families import (
    SlabMessage,
    corrected,
    dimensions,
    forms,
    slabs,
    with_openings,
)
from support.strategies.enquiry_jumbled import jumbled_messages
from support.strategies.orders import cases

WORKSHOP = load_profile(DEMONSTRATION)
MANY = settings(max_examples=cases(20), suppress_health_check=[HealthCheck.too_slow])


def _wanted(told: SlabMessage) -> dict[str, float]:
    wanted = {
        "/slabs/0/outline/length": told.length,
        "/slabs/0/outline/width": told.width,
        "/slabs/0/thickness": told.thickness,
    }
    for key, mm in (told.opening or {}).items():
        place = f"centre/{key}" if key in "xy" else key
        wanted[f"/slabs/0/cutouts/0/{place}"] = mm
    return wanted


def _is_read(told: SlabMessage) -> None:
    found = dimensions(read_enquiry(told.text, WORKSHOP))
    assert found == pytest.approx(_wanted(told), abs=0.5), told.text


@MANY
@given(slabs())
def test_a_slab_is_the_same_in_any_words(told: SlabMessage) -> None:
    """Units, orders, separators and asides change nothing of what is taken, in two languages."""
    _is_read(told)


@MANY
@given(forms())
def test_a_form_is_read_in_any_order(told: SlabMessage) -> None:
    """Fields give their values whatever stands between them and their labels."""
    _is_read(told)


@MANY
@given(corrected())
def test_a_correction_replaces_what_it_names(told: SlabMessage) -> None:
    """A size that is said not to be so takes the place of the one it names, and no other."""
    _is_read(told)


@MANY
@given(with_openings())
def test_a_place_is_the_same_from_any_side(told: SlabMessage) -> None:
    """An opening's middle is one place, from left or right and from front or back."""
    _is_read(told)


@MANY
@given(st.one_of(st.text(max_size=400), jumbled_messages()))
def test_any_text_is_answered(text: str) -> None:
    """Whatever is sent is read to an answer whose spans hold their words."""
    answer = read_enquiry(text, WORKSHOP)
    for entry in answer["read"]:
        for span in entry["from"]:
            assert answer["text"][span["start"] : span["end"]] == span["text"]


SPOKEN = {
    "a metre eighty": ("m", Fraction(18, 10)),
    "six foot two": ("ft", 6 + Fraction(2, 12)),
    "two foot": ("ft", Fraction(2)),
    "30mil": ("mm", Fraction(30)),
    "1,830 m": ("m", Fraction(183, 100)),
    '60½"': ("in", Fraction(121, 2)),
    "1 1/2 in": ("in", Fraction(3, 2)),
    "2m40": ("m", Fraction(24, 10)),
    "6' 2\"": ("ft", 6 + Fraction(2, 12)),
    "forty millimetres": ("mm", Fraction(40)),
    "half a metre": ("m", Fraction(1, 2)),
    "two and a half inches": ("in", Fraction(5, 2)),
    "ein Meter achtzig": ("m", Fraction(18, 10)),
    "245,5 cm": ("cm", Fraction(491, 2)),
    "6ft 2in": ("ft", 6 + Fraction(2, 12)),
    "1m 20cm": ("m", Fraction(12, 10)),
}


@pytest.mark.parametrize("text", SPOKEN)
def test_sizes_are_read_as_people_say_them(text: str) -> None:
    """Spoken metres, feet and inches, fractions and a decimal comma have one meaning each."""
    tokens = list(tokens_of(text, 0, len(text), not_sizes(text)))
    found = SizeReader(tokens, has_inches=True).at(0)
    assert found is not None
    size, after = found
    assert (size.unit, size.amount, after) == (*SPOKEN[text], len(tokens))


NO_SIZES = (
    "£186,000",
    "01632 960114",
    "12 March 2027",
    "HR0 7XX",
    "14 stairs",
    "38 kg",
    "20%",
    "invoice 20417",
    "RAL 7016",
    "10:26",
    "a@b.example",
    "3 weeks",
    "2027-03-12",
)


@pytest.mark.parametrize("text", NO_SIZES)
def test_other_numbers_are_no_sizes(text: str) -> None:
    """Money, telephones, days, postcodes, weights and references are never lengths."""
    tokens = list(tokens_of(text, 0, len(text), not_sizes(text)))
    reader = SizeReader(tokens, has_inches=True)
    assert [reader.at(i) for i in range(len(tokens)) if reader.at(i)] == []


def test_easter_is_where_the_tables_have_it() -> None:
    """Easter Sundays of twelve years agree with published tables.

    Source: US Naval Observatory, Dates of Easter, 2016 to 2027.
    """
    tabled = ("03-27", "04-16", "04-01", "04-21", "04-12", "04-04", "04-17", "04-09", "03-31",
              "04-20", "04-05", "03-28")  # fmt: skip
    found = [f"{easter(year):%m-%d}" for year in range(2016, 2028)]
    assert found == list(tabled)
