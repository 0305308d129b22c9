"""The maker's calendar file: read in the background when it has changed.

A child process reads it, so that however long that takes, and however it ends, nobody waits for it.
The last reading is used until the file is read again, for a day at most.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Final

from ledgerstone.child_process import ChildProcess, begin
from ledgerstone.message import Message
from ledgerstone.schedule.calendar_read import LARGEST_TEXT, CalendarRead
from ledgerstone.workshop.records import BookingRules, Workshop

READ_S: Final = 10  # of processor time that a reading may take
READ_WAIT_S: Final = 1.0
KEPT_S: Final = 24 * 3600.0

_Stamp = tuple[int, int, date]


@dataclass(slots=True)
class CalendarFile:
    """What is booked, by the last good reading of the file; None if the profile names no file.

    Every request looks at the file's time and size, and a reading is begun when one has changed, or
    the day.

    Attributes
    ----------
    wait_s
        How long the one call that begins a reading waits for it.
    """

    path: Path | None
    rules: BookingRules
    timezone: str
    wait_s: float = READ_WAIT_S
    clock: Callable[[], float] = time.monotonic
    _stamp: _Stamp | None = None
    _reading: ChildProcess[CalendarRead] | None = None
    _good: CalendarRead | None = None
    _good_at_s: float = 0.0
    _fault: Message | None = None

    def read(self, today: date) -> CalendarRead:
        """Return what is booked, or why that is not known."""
        if self.path is None:
            return CalendarRead()
        self._look(self.path, today)
        if self._good is not None and self.clock() - self._good_at_s < KEPT_S:
            return self._good
        return CalendarRead(why_not=self._fault or Message("calendar-being-read"))

    def fault(self, today: date) -> Message | None:
        """Return why the current file is not used; None if it is."""
        read = self.read(today)
        why = self._fault or read.why_not
        return None if why is None else Message("calendar-fault", why=why)

    def _look(self, path: Path, today: date) -> None:
        """Begin a reading where the file has changed, and take one up that has ended."""
        try:
            found = path.stat()
            stamp = (found.st_mtime_ns, found.st_size, today)
            if stamp != self._stamp or (self._reading and not self._reading.is_ours):
                if self._reading:
                    self._reading.give_up()
                self._reading = begin(lambda: self._anew(path, today), READ_S)
                self._stamp = stamp
                self._take_up(self.wait_s)
            else:
                self._take_up(0.0)
        except OSError:
            self._stamp, self._reading, self._fault = None, None, Message("calendar-away")
        if not self._fault:
            self._good_at_s = self.clock()

    def _take_up(self, wait_s: float) -> None:
        """Use a reading once it has ended; one that failed changes only the reported state."""
        reading = self._reading
        if reading is None or not reading.has_ended(wait_s):
            return
        self._reading = None
        read = reading.result() or CalendarRead(why_not=Message("calendar-slow"))
        self._fault = read.why_not
        if read.why_not is None:
            self._good = read

    def age_hours(self, now_s: float) -> float | None:
        """Return how long ago the file was last written; None if it is not there."""
        try:
            return None if self.path is None else (now_s - self.path.stat().st_mtime) / 3600
        except OSError:
            return None

    def _anew(self, path: Path, today: date) -> CalendarRead:
        # Loaded by the child alone: what reads calendars takes longer to load than most files do.
        from ledgerstone.schedule.ical import read_bookings  # noqa: PLC0415

        with path.open("rb") as file:
            content = file.read(LARGEST_TEXT + 1)
        try:
            text = content.decode("utf-8-sig")
        except UnicodeDecodeError:
            return CalendarRead(why_not=Message("calendar-not-utf8"))
        return read_bookings(text, self.rules, self.timezone, today)


def calendar_file_of(
    workshop: Workshop, profile: Path, instead: Path | None = None, wait_s: float = READ_WAIT_S
) -> CalendarFile:
    """Return the calendar file of a workshop: beside its profile, or the one named instead."""
    rules = workshop.bookings
    path = instead
    if path is None and rules is not None:
        path = profile.parent / rules.file
    named = rules if rules is not None else BookingRules(file=str(path or ""))
    return CalendarFile(path, named, workshop.workshop.timezone, wait_s)
