"""What is waited for before and between an order's own work: other work, hands, the table."""

from dataclasses import replace

import pytest

from ledgerstone.schedule import Booking, lead_time
from ledgerstone.wording import Message, Weekday, english
from ledgerstone.workshop import Workshop
from support.laid_days import MONDAY, day, days_of, laid, on_an_empty_bench, step


@pytest.fixture
def shop(workshop: Workshop) -> Workshop:
    """A bench with nothing on it."""
    return on_an_empty_bench(workshop)


def test_work_taken_on_comes_first(shop: Workshop) -> None:
    """Five working days ahead pass before a new order's mould."""
    busy = replace(shop, calendar=replace(shop.calendar, orders_ahead_days=5))
    lead = laid(busy, step("mould", 1))
    assert days_of(lead) == [("Waiting its turn", 0, 7), ("Making the mould", 8, 8)]
    assert lead.phases[0].why == (Message("stage-queue", days=5),)


def test_a_booking_is_passed_over_and_not_named(shop: Workshop) -> None:
    """Days taken by other work are waited for; whose work it is stays in the workshop."""
    taken = (Booking(day(1), day(2), "Mrs Ashby's stairs"),)
    lead = lead_time([step("mould", 1)], shop, taken, MONDAY, 0)
    assert days_of(lead) == [("Waiting its turn", 1, 2), ("Making the mould", 3, 3)]
    (taken_until,) = lead.phases[0].why
    assert taken_until == Message("stage-hands-taken", until=Weekday(day(2), with_year=False))
    assert "Ashby" not in repr(lead.phases)


def test_a_calendar_that_is_read_replaces_days_ahead(shop: Workshop) -> None:
    """What was taken on is in it: with nothing booked, five days ahead are not waited for twice."""
    queued = replace(shop, calendar=replace(shop.calendar, orders_ahead_days=5))
    steps = [step("mould", 1)]
    assert days_of(lead_time(steps, queued, None, MONDAY, 0))[0] == ("Waiting its turn", 0, 7)
    assert days_of(lead_time(steps, queued, (), MONDAY, 0)) == [("Making the mould", 1, 1)]


def test_a_wait_for_the_table_is_reported(shop: Workshop) -> None:
    """With the mould made, the table taken until Friday is a stage of its own."""
    taken = (Booking(day(0), day(4), "other", "table"),)
    lead = lead_time([step("mould", 1), step("cast", 1, wait_hours=24)], shop, taken, MONDAY, 0)
    assert days_of(lead)[:3] == [
        ("Making the mould", 1, 1),
        (english(Message("stage", stage="table")), 1, 4),
        ("Casting", 7, 7),
    ]
    (taken_until,) = lead.phases[1].why
    assert taken_until == Message("stage-table-taken", until=Weekday(day(4), with_year=False))


def test_a_table_that_is_booked_puts_the_cast_off(shop: Workshop) -> None:
    """With four days of cover, a table free for two days does not do."""
    taken = (Booking(day(4), day(11), "other", "table"),)
    steps = [step("cast", 1, wait_hours=96), step("finish", 1)]
    assert lead_time(steps, shop, taken, MONDAY, 0).phases[0].starts == day(14)
