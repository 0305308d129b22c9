"""A calendar file as bookings: what its entries hold, when, and what is not to be trusted."""

from datetime import date, time

import pytest

from ledgerstone.schedule import Booking
from ledgerstone.schedule.ical import read_bookings
from support.calendars import RULES, TODAY, calendar, read


def test_an_all_day_entrys_last_day_is_the_one_before_its_end() -> None:
    """RFC 5545 3.6.1: DTEND is not included; 21 December to 4 January is to the 3rd (page 2.3)."""
    event = "DTSTART;VALUE=DATE:20261221\r\nDTEND;VALUE=DATE:20270104\r\nSUMMARY:Away"
    assert read(event).bookings == (Booking(date(2026, 12, 21), date(2027, 1, 3), "Away"),)


def test_times_are_the_workshops_own() -> None:
    """Ten o'clock in New York is three in the afternoon in London; a floating time is its own."""
    far = "DTSTART;TZID=America/New_York:20261201T100000\r\nDURATION:PT1H\r\nSUMMARY:Table"
    floating = "DTSTART:20261202T090000\r\nDTEND:20261202T113000\r\nSUMMARY:hands"
    assert read(far, floating).bookings == (
        Booking(date(2026, 12, 1), date(2026, 12, 1), "Table", "table", time(15), time(16)),
        Booking(date(2026, 12, 2), date(2026, 12, 2), "hands", "people", time(9), time(11, 30)),
    )


def test_a_weekly_entry_keeps_its_hour_over_the_clocks_change() -> None:
    """Nine o'clock in London stays nine across 28 March 2027; an excluded week is free."""
    event = (
        "DTSTART;TZID=Europe/London:20270312T090000\r\nDURATION:PT1H\r\nSUMMARY:table"
        "\r\nRRULE:FREQ=WEEKLY;COUNT=4\r\nEXDATE;TZID=Europe/London:20270319T090000"
    )
    found = read(event).bookings
    assert [one.first for one in found] == [date(2027, 3, 12), date(2027, 3, 26), date(2027, 4, 2)]
    assert {one.starts for one in found} == {time(9)}


@pytest.mark.parametrize(
    ("more", "holds"),
    [
        ("SUMMARY:Casting table for Ashby", "table"),
        ("SUMMARY:Ashby\r\nCATEGORIES:Table,Hands", "both"),
        ("SUMMARY:Fitting at Ashby's", "people"),
        ("SUMMARY:tables all day", "table"),
        ("SUMMARY:Dentist", None),
        ("SUMMARY:Vegetables\\, timetable\\, takeaway", None),
        ("SUMMARY:Table\r\nSTATUS:CANCELLED", None),
        ("SUMMARY:Table\r\nTRANSP:TRANSPARENT", None),
    ],
)
def test_words_and_categories_say_what_is_held(more: str, holds: str | None) -> None:
    """By the profile's words; a cancelled entry, and one that takes no time, hold nothing."""
    found = read(f"DTSTART;VALUE=DATE:20261201\r\n{more}").bookings
    assert [one.holds for one in found] == ([] if holds is None else [holds])


def test_what_recurs_for_ever_leaves_nothing_to_promise_beyond() -> None:
    """A table booked each week without end holds everything after three years."""
    found = read("DTSTART;VALUE=DATE:20261201\r\nSUMMARY:table\r\nRRULE:FREQ=WEEKLY").bookings
    assert (found[-1].holds, found[-1].last.year) == ("both", 9000)
    assert len(found) > 150


@pytest.mark.parametrize(
    "text",
    [
        "",
        "nonsense",
        "BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nDTSTART:20261201",
        calendar("DTSTART:never\r\nSUMMARY:table"),
        calendar("SUMMARY:table\r\nDTSTART:20261201T000000Z\r\nRRULE:FREQ=SECONDLY"),
        "BEGIN:VCALENDAR" + "x" * 5_000_000 + "END:VCALENDAR",
    ],
    ids=("empty", "nonsense", "half-written", "no day", "every second", "huge"),
)
def test_what_is_no_calendar_is_stated_and_not_guessed_at(text: str) -> None:
    """Nothing is booked from it, and a sentence says why."""
    found = read_bookings(text, RULES, "Europe/London", TODAY)
    assert (found.bookings, found.fingerprint) == ((), "")
    assert found.why_not is not None


def test_the_fingerprint_is_of_what_is_booked() -> None:
    """Another name in the same time is the same; another day is not."""
    one, same, other = (
        read(f"DTSTART;VALUE=DATE:{day}\r\nSUMMARY:table {who}").fingerprint
        for day, who in (("20261201", "A"), ("20261201", "B"), ("20261202", "A"))
    )
    assert one == same != other
