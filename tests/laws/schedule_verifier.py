"""An independent look at laid work: brute counts over days and minutes, and nothing of the laying.

``faults`` says in words what a lead time does that work cannot do. It knows working hours from the
profile, holidays from the holidays package, and strength and cover from their own formulae.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from datetime import date
from itertools import pairwise

import holidays

from ledgerstone.schedule import Booking, LeadTime, ScheduledJob, TableLoad
from ledgerstone.strength.concrete import ageing_rate
from ledgerstone.work import Operation
from ledgerstone.workshop import Workshop

DAY = 1440
WEEK = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
# EN 13670 class 2, rapid and middling strength, from memory: days by least temperature.
CLASS_2 = {"R": {25: 1.0, 15: 1.0, 10: 1.5, 5: 2.0}, "S": {25: 1.5, 15: 2.5, 10: 4.0, 5: 5.0}}


def faults(
    lead: LeadTime, steps: Sequence[Operation], shop: Workshop, bookings: Sequence[Booking]
) -> list[str]:
    """Say everything that is wrong with a lead time's work."""
    return [
        *_done_once(lead, steps),
        *_in_hours(lead, shop, bookings),
        *_within_counts(lead, shop),
        *_waits(lead, shop),
        *_tables(lead, shop, bookings),
    ]


def _done_once(lead: LeadTime, steps: Sequence[Operation]) -> Iterator[str]:
    done = Counter((one.job.step, one.job.piece.number) for one in lead.work)
    for step in steps:
        for number in range(step.pieces):
            if done[step, number] != sum(other == step for other in steps):
                yield f"{step.name} of slab {step.slab}, piece {number}: done {done[step, number]}"


def _minutes_taken(booking: Booking) -> tuple[int, int]:
    ends = DAY if booking.ends is None else booking.ends.hour * 60 + booking.ends.minute
    starts = booking.starts.hour * 60 + booking.starts.minute
    return booking.first.toordinal() * DAY + starts, booking.last.toordinal() * DAY + ends


def worked_minutes(
    ordinal: int, shop: Workshop, bookings: Sequence[Booking], public: holidays.HolidayBase
) -> set[int]:
    """The minutes of one day in which hands work, one by one."""
    day = date.fromordinal(ordinal)
    shut = any(c.first <= day <= c.last for c in shop.calendar.closures)
    if WEEK[day.weekday()] not in shop.calendar.weekdays or shut or day in public:
        return set()
    length = max(1, round(shop.calendar.hours_per_day * 60))
    start = min(round(shop.bench.day_starts_at * 60), DAY - length)
    minutes = set(range(ordinal * DAY + start, ordinal * DAY + start + length))
    for booking in bookings:
        if booking.holds != "table":
            taken = _minutes_taken(booking)
            minutes = {m for m in minutes if not taken[0] <= m < taken[1]}
    return minutes


def _in_hours(lead: LeadTime, shop: Workshop, bookings: Sequence[Booking]) -> Iterator[str]:
    public = holidays.country_holidays("GB", subdiv="ENG")
    known: dict[int, set[int]] = {}
    for one in lead.work:
        step = one.job.step
        wanted = math.ceil(_each(step, one.job.piece.number) / max(one.people, 1))
        if wanted == 0:
            continue
        worked = 0
        for ordinal in range(one.starts // DAY, (one.hands_end - 1) // DAY + 1):
            if ordinal not in known:
                known[ordinal] = worked_minutes(ordinal, shop, bookings, public)
            worked += sum(one.starts <= m < one.hands_end for m in known[ordinal])
        if one.starts not in known[one.starts // DAY]:
            yield f"{one.job.step.name} begins out of hours"
        if one.hands_end - 1 not in known[(one.hands_end - 1) // DAY]:
            yield f"{one.job.step.name} ends out of hours"
        if worked != wanted:
            yield f"{one.job.step.name} has {worked} minutes of hands, not {wanted}"


def _each(step: Operation, number: int) -> int:
    """Minutes of one piece: told of each, or alike."""
    alike = [round(step.hands_hours / step.pieces * 60)] * step.pieces
    return (step.minutes_each or alike)[number]


def _within_counts(lead: LeadTime, shop: Workshop) -> Iterator[str]:
    busy = [one for one in lead.work if one.people]
    counts = {"mixer": shop.bench.mixers, "polisher": shop.bench.polishers}
    for one in busy:  # a count is highest just as something begins
        others = [o for o in busy if o.starts <= one.starts < o.hands_end]
        if sum(o.people for o in others) > shop.calendar.hands:
            yield f"too many hands as {one.job.step.name} begins"
        for machine, count in counts.items():
            if sum(o.job.step.machine == machine for o in others) > count:
                yield f"too few of a {machine} as {one.job.step.name} begins"
    for before, after in pairwise(busy):
        if after.starts < before.starts:
            yield f"{after.job.step.name} overtakes {before.job.step.name}"


CuringRate = Callable[[float], float]


def _gained(
    pour: ScheduledJob, end: int, by_month: Sequence[float], rate: CuringRate, tent_end: float
) -> float:
    """What is gained from a pour on at each day's rate; under a tent at no less than its warmth."""
    total = 0.0
    for ordinal in range(pour.ends // DAY, end // DAY + 1):
        low, high = max(pour.ends, ordinal * DAY), min(end, (ordinal + 1) * DAY)
        workshop_temp_c = by_month[date.fromordinal(ordinal).month - 1]
        tent = max(0, min(high, tent_end) - low) if pour.job.step.warm_c is not None else 0
        total += rate(max(workshop_temp_c, pour.job.step.warm_c or workshop_temp_c)) * tent / DAY
        total += rate(workshop_temp_c) * max(0, high - low - tent) / DAY
    return total


def _waits(lead: LeadTime, shop: Workshop) -> Iterator[str]:
    pieces = sorted({one.job.piece for one in lead.work if one.job.piece.slab is not None}, key=str)
    for piece in pieces:
        chain = [o for o in lead.work if o.job.piece == piece and o.job.step.phase != "mould"]
        for before, after in pairwise(chain):
            if after.starts < before.ends + before.job.step.wait_hours * 60 - 1e-3:
                yield f"{after.job.step.name} does not wait for {before.job.step.name}"
            if after.job.step.unbroken and not _runs_on(before, after, shop):
                yield f"{after.job.step.name} is cut off from {before.job.step.name}"
        poured = [o for o in chain if o.job.step.phase == "cast"]
        if poured:
            rest = [o for o in chain if o.job.step.phase != "cast"]
            yield from _ages(poured[-1], rest, shop)


def _runs_on(before: ScheduledJob, after: ScheduledJob, shop: Workshop) -> bool:
    """Whether all hands go from one cast step to the next without a break, where a day is enough.

    Fewer hands than all may wait for another slab's, so only steps of all hands are looked at.
    """
    if before.job.step.phase != "cast" or {before.people, after.people} != {shop.calendar.hands}:
        return True
    both = (before.job.step, after.job.step)
    number = before.job.piece.number
    wanted = sum(math.ceil(_each(s, number) / shop.calendar.hands) for s in both)
    day = max(1, round(shop.calendar.hours_per_day * 60))
    return wanted > day or after.hands_end - before.starts == wanted


def _ages(pour: ScheduledJob, rest: Sequence[ScheduledJob], shop: Workshop) -> Iterator[str]:
    by_month, own = shop.handling.workshop_c, shop.bench.damp_days
    table = CLASS_2["S" if shop.recipe.cement_class == "S" else "R"]

    def damping(celsius: float) -> float:
        return max((1 / days for least, days in table.items() if celsius >= least), default=0.0)

    freed = next((at for at, one in enumerate(rest) if one.job.frees), -1)
    for at, one in enumerate(rest):
        if one.starts - pour.ends < one.job.step.age_hours * 60 - 1e-3:
            yield f"{one.job.step.name} begins too young"
        min_age_days = pour.job.step.min_age_days or 0.0
        if _gained(pour, one.starts, by_month, ageing_rate, pour.wait_ends) < min_age_days - 1e-6:
            yield f"{one.job.step.name} begins before the strength is there"
        tent_end = pour.ends + math.ceil(60 * pour.job.step.warm_hours)  # to the minute
        damp = _gained(pour, one.starts, by_month, damping, tent_end)
        short = damp < 1 - 1e-6 if own is None else one.starts < pour.ends + own * DAY - 1e-3
        if at > freed and short:
            yield f"{one.job.step.name} begins before the damp cover is over"


def _tables(lead: LeadTime, shop: Workshop, bookings: Sequence[Booking]) -> Iterator[str]:
    spans = [(held.starts, held.ends, held.tables) for held in lead.on_table]
    taken = [(*_minutes_taken(b), 1) for b in bookings if b.holds != "people"]
    for start, end, tables in spans:
        for moment in [start, *(t[0] for t in taken if start < t[0] < end)]:
            ours = sum(n for a, b, n in spans if a <= moment < b)
            theirs = sum(n for a, b, n in taken if a <= moment < b)
            if ours + theirs > shop.table.count:
                yield f"{ours} tables of ours and {theirs} booked, of {shop.table.count}"
        if tables < 1:
            yield "a load on no table"
    for held in lead.on_table:
        yield from _load(held, lead.work, shop)


def _load(held: TableLoad, work: Sequence[ScheduledJob], shop: Workshop) -> Iterator[str]:
    load, start, end, tables = held.load, held.starts, held.ends, held.tables
    casts = [o for o in work if o.job.load == load and o.job.step.phase == "cast"]
    frees = [o for o in work if o.job.load == load and o.job.frees]
    if any(o.starts < start or o.ends > end for o in (*casts, *frees)):
        yield f"load {load} is on the table before or after its time"
    boxes = {o.job.piece: o.job.step.table_mm for o in casts}
    area = sum(length * width for length, width in boxes.values())
    if len(boxes) > 1 and area > tables * shop.table.length_mm * shop.table.width_mm + 1e-6:
        yield f"load {load} is larger than its tables"
    in_moulds = {(o.job.piece, o.job.mould) for o in casts}
    moulds = Counter((piece.slab, mould) for piece, mould in in_moulds)
    if any(count > 1 for count in moulds.values()):
        yield f"two pieces of load {load} in one mould"
