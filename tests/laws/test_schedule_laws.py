"""Laws of days: what never makes an order ready sooner, and what a stage may count on.

Proved on paper first: every step of the laying maps a moment (a day, and the minutes spent of it)
to one that is not earlier, and keeps moments in order; leaving days out of the calendar never
brings a step's end forward. Chains of such maps keep order.

Dropped: *one more pair of hands is never later* is true of stages laid one after another, as here,
but not of work shared out greedily, and so is no promise. *A shorter wait is ready sooner* is not
true: it may end on a Saturday.
"""

from dataclasses import replace
from datetime import date, timedelta

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from laws.strategies import thorough, usual
from laws.time_strategies import (
    WORK_STAGES,
    bookings,
    calendars_of,
    days_of_two_years,
    operation_lists,
)
from ledgerstone.schedule import Booking, LeadTime, calendar_of, lead_time
from ledgerstone.work import Operation
from ledgerstone.workshop import Workshop

Steps = tuple[Operation, ...]
taken = st.lists(bookings(), max_size=4).map(tuple)


def days_of(lead: LeadTime) -> tuple[date, date, date]:
    """The days that a lead time promises."""
    return lead.ready_on, lead.arrives_earliest, lead.arrives_latest


def not_earlier(later: LeadTime, sooner: LeadTime) -> bool:
    """Whether each of a lead time's days is no earlier than another's."""
    return all(a >= b for a, b in zip(days_of(later), days_of(sooner), strict=True))


@thorough
@given(operation_lists(), days_of_two_years, st.integers(0, 60), taken, st.data())
def test_a_later_start_is_never_ready_earlier(  # noqa: PLR0917  hypothesis passes by position
    workshop: Workshop, steps: Steps, today: date, wait: int, busy: tuple[Booking, ...],
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
    workshop: Workshop, steps: Steps, today: date, busy: tuple[Booking, ...], more: Booking,
    data: st.DataObject,
) -> None:  # fmt: skip
    """Taking days away makes nothing ready sooner."""
    shop = data.draw(calendars_of(workshop))
    without = lead_time(steps, shop, busy, today, 3)
    assert not_earlier(lead_time(steps, shop, (*busy, more), today, 3), without)


@usual
@given(operation_lists(), days_of_two_years, st.data())
def test_more_work_is_never_ready_earlier(
    workshop: Workshop, steps: Steps, today: date, data: st.DataObject
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


@usual
@given(operation_lists(), days_of_two_years, taken, st.data())
def test_stages_follow_one_another(
    workshop: Workshop, steps: Steps, today: date, busy: tuple[Booking, ...], data: st.DataObject
) -> None:
    """Each stage begins no earlier than the one before ends; the last ends on the day promised."""
    shop = data.draw(calendars_of(workshop))
    lead = lead_time(steps, shop, busy, today, 0)
    for before, after in zip(lead.stages, lead.stages[1:], strict=False):
        assert before.starts <= before.ends <= after.starts <= after.ends
    assert lead.ready_on >= today
    assert all(stage.ends <= lead.ready_on for stage in lead.stages)


WORKED = {"Making the mould", "Casting", "Turning and finishing", "Sealing", "Packing"}


@usual
@given(operation_lists(), days_of_two_years, taken, st.data())
def test_hands_begin_and_end_on_worked_days(
    workshop: Workshop, steps: Steps, today: date, busy: tuple[Booking, ...], data: st.DataObject
) -> None:
    """No work begins or ends on a day that nobody works, and nothing is promised for one."""
    shop = data.draw(calendars_of(workshop))
    calendar = calendar_of(shop, busy)
    lead = lead_time(steps, shop, busy, today, 2)
    for stage in lead.stages:
        if stage.name in WORKED:
            assert calendar.is_worked(stage.starts)
            assert calendar.is_worked(stage.ends)
    assert calendar.is_worked(lead.arrives_latest)


@usual
@given(operation_lists(), days_of_two_years, st.data())
def test_a_stage_has_days_enough_for_its_hours(
    workshop: Workshop, steps: Steps, today: date, data: st.DataObject
) -> None:
    """The worked days of a stage hold its hours, and but for the first and last they are needed."""
    shop = data.draw(calendars_of(workshop))
    calendar = calendar_of(shop, ())
    per_day = shop.calendar.hours_per_day * shop.calendar.hands
    lead = lead_time(steps, shop, (), today, 0)
    names = dict(zip(WORK_STAGES, ("Making the mould", "Casting", "Turning and finishing",
                                   "Sealing", "Packing"), strict=True))  # fmt: skip
    for stage, name in names.items():
        hours = sum(round(s.hands_hours * 60) for s in steps if s.stage == stage) / 60
        spans = [s for s in lead.stages if s.name == name]
        assert bool(spans) is (hours > 0)
        for span in spans:
            days = (span.ends - span.starts).days + 1
            worked = sum(calendar.is_worked(span.starts + timedelta(n)) for n in range(days))
            assert hours <= worked * per_day + 1e-6
            if stage != "finish":
                assert (worked - 2) * per_day < hours


@usual
@given(operation_lists(), days_of_two_years, st.data())
def test_waits_are_waited_out(
    workshop: Workshop, steps: Steps, today: date, data: st.DataObject
) -> None:
    """Whole days pass between the pour and demoulding, and before the first coat of sealer."""
    shop = data.draw(calendars_of(workshop))
    lead = lead_time(steps, shop, (), today, 0)
    by_name = {stage.name: stage for stage in lead.stages}
    if "Casting" not in by_name:
        return
    poured = by_name["Casting"].ends
    cover = max(s.wait_hours for s in steps if s.stage == "cast") / 24
    age = max(s.age_hours for s in steps if s.stage == "seal") / 24
    if "Turning and finishing" in by_name:
        assert (by_name["Turning and finishing"].starts - poured).days >= cover
    if "Sealing" in by_name:
        assert (by_name["Sealing"].starts - poured).days >= max(cover, age)


@usual
@given(operation_lists(), days_of_two_years, st.data())
def test_no_reason_gives_hours_away(
    workshop: Workshop, steps: Steps, today: date, data: st.DataObject
) -> None:
    """Reasons are whole sentences, and none tells how long hands work."""
    shop = data.draw(calendars_of(workshop))
    lead = lead_time(steps, shop, (), today, 0)
    assert all(stage.why.endswith(".") and "hour" not in stage.why for stage in lead.stages)
    assert len({stage.name for stage in lead.stages}) == len(lead.stages)


@usual
@given(days_of_two_years, st.integers(0, 90), taken, st.data())
def test_working_days_are_those_that_numpy_counts(
    workshop: Workshop, day: date, n: int, busy: tuple[Booking, ...], data: st.DataObject
) -> None:
    """Reference: numpy.busday_offset, with the same days left out; no tolerance.

    ``roll="backward"`` then ``n`` forward is the n-th worked day after; with none, forward.
    """
    shop = data.draw(calendars_of(workshop))
    calendar = calendar_of(shop, busy)
    week = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
    mask = [name in shop.calendar.weekdays for name in week]
    near = [day + timedelta(days=k) for k in range(-400, 1200)]
    closed = [(c.first, c.last) for c in shop.calendar.closures]
    closed += [(booking.first, booking.last) for booking in busy]
    out = [d for d in near if calendar.holiday(d) or any(a <= d <= b for a, b in closed)]
    week_and_days_out = np.busdaycalendar(weekmask=mask, holidays=out)
    start, roll = np.datetime64(day, "D"), "backward" if n else "forward"
    expected = np.busday_offset(start, n, roll=roll, busdaycal=week_and_days_out)  # type: ignore[call-overload]  # NumPy's stubs want roll as a literal
    assert calendar.add_working_days(day, n) == expected.item()
