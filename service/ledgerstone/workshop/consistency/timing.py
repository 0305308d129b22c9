"""Checks across a profile's keys on the bench's day, and on the calendar file of what is booked."""

from __future__ import annotations

from collections.abc import Callable

from ledgerstone.workshop.consistency.shared import Found, each_once
from ledgerstone.workshop.records import Bench, BookingRules, Calendar, Days, Handling, Tent

DAY_HOURS = 24
COLDEST_C = 5.0  # below it no damp cover counts, EN 13670 8.5, from memory
SHORTEST_WORD = 3  # "in" begins too many words


def _within_a_day(bench: Bench, calendar: Calendar) -> Found:
    ends = bench.day_starts_at + calendar.hours_per_day
    if ends > DAY_HOURS:
        says = (
            f"hands that begin at {bench.day_starts_at:g} and work {calendar.hours_per_day:g} hours"
            " would work past midnight. Begin earlier."
        )
        yield ("bench", "day_starts_at"), says


def _warm_enough(bench: Bench, handling: Handling) -> Found:
    if bench.damp_days is None and handling.workshop_c and max(handling.workshop_c) < COLDEST_C:
        says = f"no month reaches {COLDEST_C:g} °C, so no damp cover would ever end."
        yield ("handling", "workshop_c"), f"{says} Heat the shed, or write damp_days in [bench]."


def _tent_is_sooner(tent: Tent | None, days: Days, handling: Handling) -> Found:
    if tent is None:
        return
    if tent.under_cover_days >= days.under_cover:
        says = (
            f"this is no less than under_cover in [days], {days.under_cover:g}: it saves nothing."
        )
        yield ("tent", "under_cover_days"), says
    if handling.workshop_c and tent.warmth_c <= max(handling.workshop_c):
        warmest = max(handling.workshop_c)
        says = f"the shed itself reaches {warmest:g} °C. Write what the tent holds above that."
        yield ("tent", "warmth_c"), says


def _words(bookings: BookingRules | None) -> Found:
    if bookings is None:
        return
    for key in ("table_words", "people_words"):
        words = getattr(bookings, key)
        for i, word in enumerate(words):
            if len(word) < SHORTEST_WORD:
                says = f'"{word}" begins too many words. Write {SHORTEST_WORD} letters or more.'
                yield ("bookings", key, i), says
        yield from each_once([word.casefold() for word in words], ("bookings", key))
    if not (bookings.table_words or bookings.people_words or bookings.others_hold_people):
        says = "no entry would hold anything. Name a word, or write others_hold_people = true."
        yield ("bookings", "table_words"), says


def _file(bookings: BookingRules | None) -> Found:
    if bookings is not None and not bookings.file.casefold().endswith((".ics", ".ical")):
        says = f'"{bookings.file}" is not an iCalendar file by its name. Export it as .ics.'
        yield ("bookings", "file"), says


CHECKS: tuple[Callable[..., Found], ...] = (
    _within_a_day,
    _warm_enough,
    _tent_is_sooner,
    _words,
    _file,
)
