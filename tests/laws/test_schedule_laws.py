"""Laws of days: what never makes an order ready sooner, and what work may count on.

Proved on paper first. Jobs are begun in one fixed order and no start overtakes the one before it. A
job's start is then the greatest of: its own piece's readiness; the start before it; the first
moment from which few enough of the jobs *before it* still hold hands and machines (after the start
before it nothing else begins, so that count only falls); and, for a load, the first moment from
which no booking of a table meets its time on the table, which ends no earlier when anything in it
ends later; and, for steps that go on unbroken, the first moment from which as many minutes (or a
whole day's, if they are more) are worked on end: moments that only grow fewer as the run is longer
or more is booked. Working time maps later moments to later ones, and so does working time with
minutes left out. A step takes the lesser of the hands it can share and the hands there are: what
fitted fits with one pair more. So starts and ends only move later when hours, waits, bookings or
the day of the order do, or the workshop is colder; and only earlier with another pair of hands. The
sooner of several such plans keeps order too.

Under a heated tent that is warmer than the workshop in every month a cover lasts as long whenever
it begins, and a fixed part of it counts as damp cover at the tent's warmth; the rest is gained at
the workshop's, so what is damp still ends later when it is poured later or the workshop is colder.

Under greedy dispatch these would not hold; nor is *a shorter wait is ready sooner* true of the
phases between, since it may end on a Saturday.
"""

from dataclasses import replace
from datetime import date, time, timedelta

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from laws.schedule_verifier import faults
from ledgerstone.schedule import Booking, LeadTime, calendar_of, lead_time
from ledgerstone.wording import english
from ledgerstone.work import Operation
from ledgerstone.workshop import Workshop
from support.laid_days import why
from support.strategies.orders import thorough, usual
from support.strategies.times import (
    WORK_PHASES,
    bookings,
    calendars_of,
    days_of_two_years,
    operation_lists,
)

NAMES = dict(zip(WORK_PHASES, ("Making the mould", "Casting", "Turning and finishing", "Sealing",
                               "Packing"), strict=True))  # fmt: skip
OperationSteps = tuple[Operation, ...]
taken = st.lists(bookings(), max_size=4).map(tuple)


def days_of(lead: LeadTime) -> tuple[date, date, date]:
    """The days that a lead time promises."""
    return lead.ready_on, lead.arrives_earliest, lead.arrives_latest


def whole(booking: Booking) -> bool:
    """Return whether a booking holds whole days."""
    return booking.starts == time.min and booking.ends is None


def not_earlier(later: LeadTime, sooner: LeadTime) -> bool:
    """Return whether each of a lead time's days is no earlier than another's."""
    return all(a >= b for a, b in zip(days_of(later), days_of(sooner), strict=True))


@thorough
@given(operation_lists(), days_of_two_years, st.integers(0, 60), taken, st.data())
def test_a_later_start_is_never_ready_earlier(  # noqa: PLR0917  hypothesis passes by position
    workshop: Workshop, steps: OperationSteps, today: date, wait: int, busy: tuple[Booking, ...],
    data: st.DataObject,
) -> None:  # fmt: skip
    """Ordering later, by any number of days, makes nothing ready sooner."""
    shop = data.draw(calendars_of(workshop))
    sooner = lead_time(steps, shop, busy, today, 2)
    later = lead_time(steps, shop, busy, today + timedelta(days=wait), 2)
    assert not_earlier(later, sooner)


@thorough
@given(operation_lists(), days_of_two_years, taken, bookings(), st.data())
def test_a_booking_more_is_never_ready_earlier(  # noqa: PLR0917  hypothesis passes by position
    workshop: Workshop, steps: OperationSteps, today: date, busy: tuple[Booking, ...],
    more: Booking, data: st.DataObject,
) -> None:  # fmt: skip
    """Taking days away makes nothing ready sooner."""
    shop = data.draw(calendars_of(workshop))
    without = lead_time(steps, shop, busy, today, 3)
    assert not_earlier(lead_time(steps, shop, (*busy, more), today, 3), without)


@usual
@given(operation_lists(), days_of_two_years, st.data())
def test_more_work_is_never_ready_earlier(
    workshop: Workshop, steps: OperationSteps, today: date, data: st.DataObject
) -> None:
    """Longer hands, a longer wait, an older concrete or one more operation: none brings it on."""
    shop = data.draw(calendars_of(workshop))
    at = data.draw(st.integers(0, len(steps) - 1))
    member = data.draw(st.sampled_from(("hands_hours", "wait_hours", "age_hours")))
    more = getattr(steps[at], member) + data.draw(st.floats(0, 200))
    longer = (*steps[:at], replace(steps[at], **{member: more}), *steps[at + 1 :])
    before = lead_time(steps, shop, (), today, 0)
    assert not_earlier(lead_time(longer, shop, (), today, 0), before)
    assert not_earlier(lead_time((*steps, steps[at]), shop, (), today, 0), before)


@thorough
@given(operation_lists(), days_of_two_years, taken, st.data())
def test_another_pair_of_hands_is_never_ready_later(
    workshop: Workshop,
    steps: OperationSteps,
    today: date,
    busy: tuple[Booking, ...],
    data: st.DataObject,
) -> None:
    """With one more to help nothing is ready later."""
    shop = data.draw(calendars_of(workshop))
    hands = shop.calendar.hands + data.draw(st.integers(1, 3))
    with_more_hands = replace(shop, calendar=replace(shop.calendar, hands=hands))
    alone = lead_time(steps, shop, busy, today, 2)
    assert not_earlier(alone, lead_time(steps, with_more_hands, busy, today, 2))


@thorough
@given(operation_lists(), days_of_two_years, taken, st.data())
def test_a_colder_workshop_is_never_ready_earlier(
    workshop: Workshop,
    steps: OperationSteps,
    today: date,
    busy: tuple[Booking, ...],
    data: st.DataObject,
) -> None:
    """Degrees less, in some months or all, hold up the cover and the strength or change nothing."""
    shop = data.draw(calendars_of(workshop))
    less = data.draw(st.lists(st.integers(0, 20), min_size=12, max_size=12))
    warm = shop.handling.workshop_c
    cold = tuple(max(5.0, was - by) for was, by in zip(warm, less, strict=True))
    colder = replace(shop, handling=replace(shop.handling, workshop_c=cold))
    usually = lead_time(steps, shop, busy, today, 2)
    assert not_earlier(lead_time(steps, colder, busy, today, 2), usually)


@thorough
@given(operation_lists(), days_of_two_years, taken, st.data())
def test_a_heated_tent_is_never_ready_later(
    workshop: Workshop,
    steps: OperationSteps,
    today: date,
    busy: tuple[Booking, ...],
    data: st.DataObject,
) -> None:
    """With every cover in a tent warmer than the workshop ever is, nothing is ready later."""
    shop = data.draw(calendars_of(workshop))
    warm_c, hours = data.draw(st.floats(31, 50)), data.draw(st.floats(0, 96))
    bare = [replace(step, warm_c=None, warm_hours=0.0) for step in steps]
    tent = [
        replace(step, warm_c=warm_c, warm_hours=hours) if step.phase == "cast" else step
        for step in bare
    ]
    without = lead_time(bare, shop, busy, today, 2)
    assert not_earlier(without, lead_time(tent, shop, busy, today, 2))


@thorough
@given(operation_lists(), days_of_two_years, taken, st.data())
def test_laid_work_is_work_that_can_be_done(
    workshop: Workshop,
    steps: OperationSteps,
    today: date,
    busy: tuple[Booking, ...],
    data: st.DataObject,
) -> None:
    """An independent verifier finds nothing: hours, counts, waits, tables, each step done once."""
    shop = data.draw(calendars_of(workshop))
    lead = lead_time(steps, shop, busy, today, 2)
    assert faults(lead, steps, shop, busy) == []


@thorough
@given(operation_lists(), days_of_two_years, taken, st.data())
def test_stages_hold_the_work_they_tell(
    workshop: Workshop,
    steps: OperationSteps,
    today: date,
    busy: tuple[Booking, ...],
    data: st.DataObject,
) -> None:
    """A phase of work is from its first job's day to its last one's; the last ends as promised."""
    shop = data.draw(calendars_of(workshop))
    lead = lead_time(steps, shop, busy, today, 0)
    by_name = {english(phase.name): phase for phase in lead.phases}
    for phase, name in NAMES.items():
        jobs = [one for one in lead.work if one.job.step.phase == phase and one.people]
        assert bool(jobs) is (name in by_name)
        if jobs:
            assert by_name[name].starts == min(one.begins_at.date() for one in jobs)
            assert by_name[name].ends >= max(
                (one.ends_at - timedelta(minutes=1)).date() for one in jobs
            )
    assert all(phase.starts <= phase.ends <= lead.ready_on for phase in lead.phases)
    assert all(phase.starts >= today for phase in lead.phases)
    assert calendar_of(shop, busy).is_worked(lead.ready_on)


@usual
@given(operation_lists(), days_of_two_years, st.data())
def test_no_reason_gives_hours_away(
    workshop: Workshop, steps: OperationSteps, today: date, data: st.DataObject
) -> None:
    """Reasons are whole sentences, and none tells how long hands work."""
    shop = data.draw(calendars_of(workshop))
    lead = lead_time(steps, shop, (), today, 0)
    assert all(why(phase).endswith(".") and "hour" not in why(phase) for phase in lead.phases)
    assert len({english(phase.name) for phase in lead.phases}) == len(lead.phases)


@usual
@given(days_of_two_years, st.integers(0, 90), taken, st.data())
def test_working_days_are_those_that_numpy_counts(
    workshop: Workshop, day: date, n: int, busy: tuple[Booking, ...], data: st.DataObject
) -> None:
    """Reference: numpy.busday_offset, with the same days left out; no tolerance.

    ``roll="backward"`` then ``n`` forward is the n-th worked day after; with none, forward.
    """
    shop, busy = data.draw(calendars_of(workshop)), tuple(filter(whole, busy))
    calendar = calendar_of(shop, busy)
    week = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
    mask = [name in shop.calendar.weekdays for name in week]
    near = [day + timedelta(days=k) for k in range(-400, 1200)]
    closed = [(c.first, c.last) for c in shop.calendar.closures]
    closed += [(b.first, b.last) for b in busy if b.holds != "table" and whole(b)]
    out = [d for d in near if calendar.holiday(d) or any(a <= d <= b for a, b in closed)]
    week_and_days_out = np.busdaycalendar(weekmask=mask, holidays=out)
    start, roll = np.datetime64(day, "D"), "backward" if n else "forward"
    expected = np.busday_offset(start, n, roll=roll, busdaycal=week_and_days_out)  # type: ignore[call-overload]  # NumPy's stubs want roll as a literal
    assert calendar.add_working_days(day, n) == expected.item()
