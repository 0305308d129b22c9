"""What a promised day rests on: bookings and public holidays from the order to the day itself."""

from dataclasses import replace
from datetime import date, time

from ledgerstone.schedule import Booking, calendar_fingerprint
from ledgerstone.workshop import Workshop

FIRST, LAST = date(2026, 11, 25), date(2026, 12, 21)
TABLE = Booking(date(2026, 12, 1), date(2026, 12, 4), "Ashby", "table")


def test_another_name_in_the_same_time_is_the_same_calendar(workshop: Workshop) -> None:
    """Whose work it is does not bear on the day, nor does the order of the file."""
    other = replace(TABLE, why="Bell")
    hands = Booking(date(2026, 12, 9), date(2026, 12, 9), "Fitting")
    one = calendar_fingerprint(workshop, (TABLE, hands), FIRST, LAST)
    assert one == calendar_fingerprint(workshop, (hands, other, TABLE), FIRST, LAST)


def test_every_change_within_the_days_is_seen(workshop: Workshop) -> None:
    """A booking more, another day, another hour, another thing held: each is another calendar."""
    others = (
        (),
        (replace(TABLE, last=date(2026, 12, 5)),),
        (replace(TABLE, ends=time(12)),),
        (replace(TABLE, holds="people"),),
        (TABLE, replace(TABLE, first=date(2026, 12, 2))),
    )
    prints = [calendar_fingerprint(workshop, taken, FIRST, LAST) for taken in ((TABLE,), *others)]
    assert len(set(prints)) == len(prints)


def test_what_lies_outside_the_days_is_no_change(workshop: Workshop) -> None:
    """Work before the order and after the day is nothing that the day rests on."""
    before = Booking(date(2026, 11, 2), date(2026, 11, 24), "past")
    after = Booking(date(2026, 12, 22), date(9000, 1, 1), "later", "both")
    assert calendar_fingerprint(
        workshop, (before, TABLE, after), FIRST, LAST
    ) == calendar_fingerprint(workshop, (TABLE,), FIRST, LAST)
    running = replace(TABLE, first=date(2026, 11, 1))
    begun = replace(TABLE, first=FIRST)
    assert calendar_fingerprint(workshop, (running,), FIRST, LAST) == calendar_fingerprint(
        workshop, (begun,), FIRST, LAST
    )


def test_public_holidays_are_part_of_it(workshop: Workshop) -> None:
    """Over St Andrew's day Scotland's calendar is another one than England's."""
    scottish = replace(workshop, workshop=replace(workshop.workshop, region="SCT"))
    assert calendar_fingerprint(workshop, (), FIRST, LAST) != calendar_fingerprint(
        scottish, (), FIRST, LAST
    )
    end = date(2026, 11, 29)
    assert calendar_fingerprint(workshop, (), FIRST, end) == calendar_fingerprint(
        scottish, (), FIRST, end
    )
