"""Laws of reading for days that are wished in words: none is taken that is not the one meant."""

from email.utils import parsedate_to_datetime

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.enquiry import read_enquiry
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.strategies import enquiry_days as days
from support.strategies.enquiry_days import Wished
from support.strategies.orders import cases

WORKSHOP = load_profile(DEMONSTRATION)
IN_WORDS = st.one_of(
    days.next_weekdays(),
    days.parts_of_months(),
    days.easters(),
    days.some_days(),
    days.about_easter(),
)


@settings(max_examples=cases(25))
@given(IN_WORDS)
def test_a_day_in_words_is_offered_and_not_taken(told: Wished) -> None:
    """“Next Friday”, “mid February”, “before Easter”: the days that may be meant are told."""
    read = read_enquiry(told.text, WORKSHOP)
    assert read["order"].get("needed_by") == (told.day and told.day.isoformat()), told.text
    doubts = [one for one in read["doubtful"] if one["at"] == "/needed_by"]
    offered = [one["value"] for doubt in doubts for one in doubt["readings"]]
    assert offered == [day.isoformat() for day in told.readings], told.text


@settings(max_examples=cases(10))
@given(IN_WORDS)
def test_of_a_text_without_a_day_they_are_those_of_today(told: Wished) -> None:
    """A pasted text offers the days that it means if it was written today, and takes none."""
    headers, text = told.text.split("\n\n", 1)
    dated = next(line for line in headers.splitlines() if line.startswith("Date: "))
    today = parsedate_to_datetime(dated[len("Date: ") :]).date()
    read = read_enquiry(text, WORKSHOP, today)
    assert "needed_by" not in read["order"], text
    doubts = [one for one in read["doubtful"] if one["at"] == "/needed_by"]
    offered = [one["value"] for doubt in doubts for one in doubt["readings"]]
    assert offered == [day.isoformat() for day in told.readings or (told.day,) if day], text


@pytest.mark.parametrize(
    "aside",
    [
        "My birthday is in May.",
        "My birthday is sometime in May.",
        "We moved in some time in May.",
        "We moved in before Easter.",
        "We are open at Easter, till June.",
    ],
)
def test_a_day_of_something_else_is_none(aside: str) -> None:
    """A day on which it is not needed is no wish."""
    text = "From: Jo <jo@example.com>\nDate: Mon, 11 Jan 2027 09:00:00 +0000\nSubject: shelf\n\n"
    read = read_enquiry(f"{text}Please quote for a shelf 900 x 220 x 40. {aside}", WORKSHOP)
    assert "needed_by" not in read["order"]
    assert read["doubtful"] == []


@settings(max_examples=cases(25))
@given(days.for_things())
def test_what_it_is_for_is_no_day(told: Wished) -> None:
    """“For the baby's room” or “for a harvest table” tells what it is for; nothing is asked."""
    read = read_enquiry(told.text, WORKSHOP)
    assert [one for one in read["doubtful"] if one["at"] == "/needed_by"] == [], told.text


@settings(max_examples=cases(15))
@given(days.for_events())
def test_an_event_without_a_day_is_asked_about(told: Wished) -> None:
    """“For the wedding” or “before the game” is a time of which the day is to be told."""
    read = read_enquiry(told.text, WORKSHOP)
    assert [one["at"] for one in read["doubtful"]] == ["/needed_by"], told.text
