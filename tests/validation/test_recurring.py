"""Entries that recur, against RFC 5545 3.8.5.3's own examples and their printed expansions.

The rules and the days are the RFC's, written from memory of it; its times are New York's, where
the workshop is said to stand here. Days have no tolerance.
"""

from datetime import date

import pytest

from ledgerstone.schedule.ical import read_bookings
from ledgerstone.workshop.records import BookingRules
from unit.test_schedule_ical import calendar

EXAMPLES = {
    "daily, ten times": ("0902", "FREQ=DAILY;COUNT=10", [
        f"1997-09-{day:02}" for day in range(2, 12)]),
    "Tuesdays and Thursdays, five weeks": ("0902", "FREQ=WEEKLY;COUNT=10;WKST=SU;BYDAY=TU,TH", [
        "1997-09-02", "1997-09-04", "1997-09-09", "1997-09-11", "1997-09-16", "1997-09-18",
        "1997-09-23", "1997-09-25", "1997-09-30", "1997-10-02"]),
    "first Fridays": ("0905", "FREQ=MONTHLY;COUNT=10;BYDAY=1FR", [
        "1997-09-05", "1997-10-03", "1997-11-07", "1997-12-05", "1998-01-02", "1998-02-06",
        "1998-03-06", "1998-04-03", "1998-05-01", "1998-06-05"]),
    "the third day before a month's end": ("0928", "FREQ=MONTHLY;BYMONTHDAY=-3", [
        "1997-09-28", "1997-10-29", "1997-11-28", "1997-12-29", "1998-01-29", "1998-02-26"]),
    "every Friday the 13th": ("0902", "FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13", [
        "1998-02-13", "1998-03-13", "1998-11-13", "1999-08-13"]),
}  # fmt: skip


@pytest.mark.parametrize("name", EXAMPLES)
def test_recurring_entries_fall_on_the_days_that_the_rfc_prints(name: str) -> None:
    """Each at nine o'clock, as many as the RFC prints."""
    start, rule, days = EXAMPLES[name]
    event = (
        f"DTSTART;TZID=America/New_York:1997{start}T090000\r\nDURATION:PT1H\r\nSUMMARY:table"
        f"\r\nRRULE:{rule}"
    )
    if "13" in rule:  # the RFC leaves the first day out, which is no Friday
        event += "\r\nEXDATE;TZID=America/New_York:19970902T090000"
    rules = BookingRules(file="")
    read = read_bookings(calendar(event), rules, "America/New_York", date(1997, 9, 1))
    found = [one.first.isoformat() for one in read.bookings if one.last.year < 3000]
    assert found[: len(days)] == days
    assert {one.starts.hour for one in read.bookings if one.last.year < 3000} == {9}
