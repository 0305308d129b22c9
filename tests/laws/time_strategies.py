"""Random work and time: operations, bookings, working hours."""

from dataclasses import replace
from datetime import date, timedelta
from typing import Final

from hypothesis import strategies as st

from ledgerstone.schedule import Booking
from ledgerstone.work import Operation, Stage
from ledgerstone.workshop import Workshop

Draw = st.DrawFn
WORK_STAGES: Final[tuple[Stage, ...]] = ("mould", "cast", "finish", "seal", "pack")


@st.composite
def operation_lists(draw: Draw) -> tuple[Operation, ...]:
    """The steps of one order: each stage's hours from none to weeks, waits from none to a month."""
    hours = st.sampled_from((0.0, 0.2, 0.75, 3.4, 7.0, 14.0)) | st.floats(0, 90)
    waits = {"cast": 24 * draw(st.integers(0, 14)), "finish": 24 * draw(st.integers(0, 6)),
             "seal": 24 * draw(st.integers(0, 4))}  # fmt: skip
    age = 24 * draw(st.sampled_from((0, 7, 14, 21, 28)))
    days = draw(st.integers(0, 3))
    return tuple(
        Operation(
            stage,
            stage,
            slab,
            draw(hours),
            wait_hours=waits.get(stage, 0.0),
            age_hours=age if stage == "seal" else 0.0,
            least_days=days if stage == "finish" else 1,
        )
        for stage in WORK_STAGES
        for slab in range(draw(st.integers(1, 2)))
    )


days_of_two_years: Final = st.dates(date(2026, 6, 1), date(2028, 6, 1))


@st.composite
def bookings(draw: Draw) -> Booking:
    """Some days that are taken already."""
    first = draw(days_of_two_years)
    return Booking(first, first + timedelta(days=draw(st.integers(0, 40))), "taken")


@st.composite
def calendars_of(draw: Draw, workshop: Workshop) -> Workshop:
    """The workshop with other working hours, weekdays, hands and work taken on."""
    week = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
    return replace(
        workshop,
        calendar=replace(
            workshop.calendar,
            hours_per_day=draw(st.sampled_from((1.0, 4.5, 7.0, 7.6, 16.0))),
            hands=draw(st.integers(1, 4)),
            weekdays=tuple(draw(st.lists(st.sampled_from(week), unique=True, min_size=1))),
            orders_ahead_days=draw(st.integers(0, 12)),
        ),
        days=replace(workshop.days, buffer=draw(st.integers(0, 5))),
    )
