"""Checks across a profile's keys on the bench's day, and on the calendar file of what is booked."""

from __future__ import annotations

from collections.abc import Callable

from ledgerstone.message import Message, Temperature
from ledgerstone.workshop.consistency.shared import FoundFaults, each_once
from ledgerstone.workshop.records import (
    Bench,
    BookingRules,
    Calendar,
    DaySettings,
    HandlingSettings,
    Tent,
)

DAY_HOURS = 24
COLDEST_C = 5.0  # below it no damp cover counts, EN 13670 8.5, from memory
SHORTEST_WORD = 3  # "in" begins too many words


def _within_a_day(bench: Bench, calendar: Calendar) -> FoundFaults:
    ends = bench.day_starts_at + calendar.hours_per_day
    if ends > DAY_HOURS:
        starts, hours = bench.day_starts_at, calendar.hours_per_day
        message = Message("fault-midnight", starts=starts, hours=hours)
        yield ("bench", "day_starts_at"), message


def _warm_enough(bench: Bench, handling: HandlingSettings) -> FoundFaults:
    if bench.damp_days is None and handling.workshop_c and max(handling.workshop_c) < COLDEST_C:
        yield ("handling", "workshop_c"), Message("fault-too-cold", coldest=Temperature(COLDEST_C))


def _tent_is_sooner(
    tent: Tent | None, days: DaySettings, handling: HandlingSettings
) -> FoundFaults:
    if tent is None:
        return
    if tent.under_cover_days >= days.under_cover:
        yield ("tent", "under_cover_days"), Message("fault-tent-slow", days=days.under_cover)
    if handling.workshop_c and tent.warmth_c <= max(handling.workshop_c):
        warmest = Temperature(max(handling.workshop_c))
        yield ("tent", "warmth_c"), Message("fault-tent-cold", warmest=warmest)


def _words(bookings: BookingRules | None) -> FoundFaults:
    if bookings is None:
        return
    for key in ("table_words", "people_words"):
        words = getattr(bookings, key)
        for i, word in enumerate(words):
            if len(word) < SHORTEST_WORD:
                message = Message("fault-short-word", word=word, letters=SHORTEST_WORD)
                yield ("bookings", key, i), message
        yield from each_once([word.casefold() for word in words], ("bookings", key))
    if not (bookings.table_words or bookings.people_words or bookings.others_hold_people):
        yield ("bookings", "table_words"), Message("fault-holds-nothing")


def _file(bookings: BookingRules | None) -> FoundFaults:
    if bookings is not None and not bookings.file.casefold().endswith((".ics", ".ical")):
        yield ("bookings", "file"), Message("fault-not-ics", file=bookings.file)


CHECKS: tuple[Callable[..., FoundFaults], ...] = (
    _within_a_day,
    _warm_enough,
    _tent_is_sooner,
    _words,
    _file,
)
