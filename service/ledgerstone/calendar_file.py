"""The maker's calendar file: read again when it has changed, with the fault where it cannot be."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from pathlib import Path

from ledgerstone.schedule.ical import LARGEST_TEXT, CalendarRead, read_bookings
from ledgerstone.workshop.records import BookingRules, Workshop

_Stamp = tuple[int, int, date]


@dataclass(slots=True)
class CalendarFile:
    """What is booked, by the file as it lies there now; None where the profile names no file.

    Every request looks at the file's time and size, and it is read again when one has changed, or
    the day. Nothing read earlier stands in for a file that cannot be read.
    """

    path: Path | None
    rules: BookingRules
    timezone: str
    _stamp: _Stamp | None = None
    _read: CalendarRead = field(default_factory=CalendarRead)

    def read(self, today: date) -> CalendarRead:
        """Return what is booked, or why that is not known."""
        if self.path is None:
            return CalendarRead()
        try:
            found = self.path.stat()
            stamp = (found.st_mtime_ns, found.st_size, today)
            if stamp != self._stamp:
                self._read = self._anew(self.path, today)
                self._stamp = stamp
        except OSError:
            self._stamp = None
            return CalendarRead(says="The calendar file is not there, or cannot be opened.")
        return self._read

    def age_hours(self, now_s: float) -> float | None:
        """Return how long ago the file was last written; None where it is not there."""
        try:
            return None if self.path is None else (now_s - self.path.stat().st_mtime) / 3600
        except OSError:
            return None

    def _anew(self, path: Path, today: date) -> CalendarRead:
        with path.open("rb") as file:
            content = file.read(LARGEST_TEXT + 1)
        try:
            text = content.decode("utf-8-sig")
        except UnicodeDecodeError:
            return CalendarRead(says="The calendar file is not UTF-8. Export it again, as .ics.")
        return read_bookings(text, self.rules, self.timezone, today)


def calendar_file_of(
    workshop: Workshop, profile: Path, instead: Path | None = None
) -> CalendarFile:
    """Return the calendar file of a workshop: beside its profile, or the one named instead."""
    rules = workshop.bookings
    path = instead
    if path is None and rules is not None:
        path = profile.parent / rules.file
    named = rules if rules is not None else BookingRules(file=str(path or ""))
    return CalendarFile(path, named, workshop.workshop.timezone)
