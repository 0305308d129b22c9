"""Random work and time: operations, bookings, working hours."""

from dataclasses import replace
from datetime import date, time, timedelta
from typing import Final

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn

from ledgerstone.message import Message
from ledgerstone.schedule import Booking
from ledgerstone.schedule.booking import BookedResource
from ledgerstone.work import Machine, Operation, Phase
from ledgerstone.workshop import Workshop

WORK_PHASES: Final[tuple[Phase, ...]] = ("mould", "cast", "finish", "seal", "pack")
HOURS: Final = st.sampled_from((0.0, 0.2, 0.75, 3.4, 7.0, 14.0)) | st.floats(0, 40)
MACHINES: Final[dict[Phase, Machine]] = {"cast": "mixer", "finish": "polisher"}


@st.composite
def operation_lists(draw: DrawFn) -> tuple[Operation, ...]:
    """The steps of an order of up to three slabs: equal pieces, moulds, machines, sizes, waits."""
    steps = [Operation(Message("set-up"), "mould", None, draw(HOURS))]
    for slab in range(draw(st.integers(1, 3))):
        pieces = draw(st.sampled_from((1, 1, 2, 5)))
        steps += draw(slab_steps(slab, pieces, draw(st.integers(1, pieces))))
    return tuple(sorted(steps, key=lambda step: WORK_PHASES.index(step.phase)))


@st.composite
def slab_steps(draw: DrawFn, slab: int, pieces: int, moulds: int) -> list[Operation]:
    """The steps of one slab: turned out of its mould first, then finished, coated and packed."""
    waits = {"cast": draw(st.integers(0, 14)), "seal": draw(st.integers(0, 4))}
    age, days = 24.0 * draw(st.sampled_from((0, 7, 14, 28))), draw(st.integers(0, 3))
    size = (draw(st.floats(300, 3500)), draw(st.floats(60, 300)))
    # A tent is warmer than the shed ever is: a profile whose tent is not is refused.
    warm_c, warm_hours = draw(st.none() | st.floats(31, 50)), draw(st.floats(0, 96))
    steps = [Operation(Message("turn"), "finish", slab, draw(HOURS), pieces=pieces, frees=True)]
    if draw(st.booleans()):
        steps.append(
            Operation(Message("batch"), "cast", slab, draw(HOURS), pieces=pieces, table_mm=size)
        )
    shares = draw(st.none() | st.lists(st.integers(0, 300), min_size=pieces, max_size=pieces))
    if shares:
        hours, each = sum(shares) / 60, tuple(shares)
        steps.append(
            Operation(
                Message("mix"), "cast", slab, hours, pieces=pieces, table_mm=size, minutes_each=each
            )
        )
    steps += [
        Operation(
            Message(phase),
            phase,
            slab,
            draw(HOURS),
            wait_hours=24.0 * waits.get(phase, 0),
            age_hours=age if phase == "seal" else 0.0,
            least_days=days if phase == "finish" else 1,
            pieces=moulds if phase == "mould" else pieces,
            people=draw(st.sampled_from((None, 1, 2))),
            machine=MACHINES.get(phase),
            min_age_days=draw(st.none() | st.floats(0, 7)) if phase == "cast" else None,
            warm_c=warm_c if phase == "cast" else None,
            warm_hours=warm_hours if phase == "cast" and warm_c is not None else 0.0,
            table_mm=size if phase == "cast" else (0.0, 0.0),
            unbroken=phase == "cast" and draw(st.booleans()),
        )
        for phase in WORK_PHASES
    ]
    return steps


days_of_two_years: Final = st.dates(date(2026, 6, 1), date(2028, 6, 1))


times: Final = st.integers(0, 24 * 60 - 1).map(lambda m: time(*divmod(m, 60)))


@st.composite
def bookings(draw: DrawFn) -> Booking:
    """Time that is taken already: of people or of a table, whole days or hours of them."""
    first = draw(days_of_two_years)
    last = first + timedelta(days=draw(st.integers(0, 40)))
    holds: BookedResource = draw(st.sampled_from(("people", "table", "both")))
    starts, ends = draw(times), draw(st.none() | times)
    return Booking(first, last, "taken", holds, starts, ends)


@st.composite
def calendars_of(draw: DrawFn, workshop: Workshop) -> Workshop:
    """The workshop with other working hours, weekdays, hands, machines, tables and warmth."""
    week = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
    bench = replace(
        workshop.bench,
        day_starts_at=draw(st.sampled_from((0.0, 7.5, 8.0, 20.0))),
        mixers=draw(st.integers(1, 2)),
        polishers=draw(st.integers(1, 2)),
        damp_days=draw(st.none() | st.floats(0, 9)),
    )
    return replace(
        workshop,
        bench=bench,
        table=replace(workshop.table, count=draw(st.integers(1, 3))),
        handling=replace(workshop.handling, workshop_c=draw(warmths)),
        calendar=replace(
            workshop.calendar,
            hours_per_day=draw(st.sampled_from((1.0, 4.5, 7.0, 7.6, 16.0))),
            hands=draw(st.integers(1, 4)),
            weekdays=tuple(draw(st.lists(st.sampled_from(week), unique=True, min_size=1))),
            orders_ahead_days=draw(st.integers(0, 12)),
        ),
        days=replace(workshop.days, buffer=draw(st.integers(0, 5))),
    )


warmths: Final = st.lists(st.integers(5, 30).map(float), min_size=12, max_size=12).map(tuple)
