"""One lane for heavy work among all workers, and nothing worked out for callers who have gone.

Workers are synchronous. While one of them is in the lane, every other answers what is light at
once, and tells what is heavy when to come again: nobody waits behind two heavy orders.
"""

from __future__ import annotations

import fcntl
import mmap
import os
import struct
import tempfile
import zlib
from contextlib import suppress
from dataclasses import dataclass, field
from typing import Final, Protocol

from flask import Flask, g, has_request_context, request

from ledgerstone.errors import CallerGone, LaneTaken
from ledgerstone.remedies import Budget, unpaced

LIGHT_UNITS: Final = 32.0  # about a second: an ordinary order and the search of its remedies
ROWS: Final = 64
_ROW: Final = struct.Struct("=IIQ")  # a process, and what names the caller it works for


class Connection(Protocol):
    """What can say whether its other end is closed."""

    def is_gone(self) -> bool:
        """Say whether nobody waits for an answer any more."""


def _unnamed_file() -> int:
    if hasattr(os, "memfd_create"):
        return os.memfd_create("lane")
    return os.dup(tempfile.TemporaryFile().fileno())


@dataclass(slots=True)
class Lane:
    """A place that one process at a time is in; one that dies is in it no longer.

    It is a record lock (fcntl(2)) on a file without a name, which forked processes share.
    """

    _file: int = field(default_factory=_unnamed_file)

    def enter(self) -> bool:
        """Enter, or say that another process is in it."""
        try:
            fcntl.lockf(self._file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError:
            return False
        return True

    def leave(self) -> None:
        """Leave, whether in it or not."""
        fcntl.lockf(self._file, fcntl.LOCK_UN)


class AtWork:
    """For whom each worker works, in memory that all of them share."""

    def __init__(self) -> None:
        self._memory = mmap.mmap(-1, ROWS * _ROW.size)
        self._row = 0

    def take_row(self, number: int) -> None:
        """Write in a worker's own row; what a worker that died left there is written over."""
        self._row = number % ROWS

    def begin(self, client: str) -> None:
        """Note that this process works for a caller."""
        self._write(os.getpid(), zlib.crc32(client.encode()))

    def end(self) -> None:
        """Note that it works for nobody."""
        self._write(0, 0)

    def elsewhere(self, client: str) -> bool:
        """Say whether another process works for a caller."""
        named = zlib.crc32(client.encode())
        rows = _ROW.iter_unpack(self._memory[:])
        return any(
            caller == named and pid not in (0, os.getpid()) and _lives(pid)
            for pid, _, caller in rows
        )

    def _write(self, pid: int, named: int) -> None:
        _ROW.pack_into(self._memory, self._row * _ROW.size, pid, 0, named)


def _lives(pid: int) -> bool:
    with suppress(OSError):
        os.kill(pid, 0)
        return True
    return False


@dataclass(slots=True)
class Pace:
    """Says before each piece of a request's work whether it is still wanted, and has room."""

    lane: Lane
    connection: Connection | None
    is_in: bool = False

    def __call__(self, units: float) -> None:
        """Let a request go on to so many units of work in all.

        Raises
        ------
        CallerGone, LaneTaken
        """
        if self.connection is not None and self.connection.is_gone():
            raise CallerGone
        if units > LIGHT_UNITS and not self.is_in:
            if not self.lane.enter():
                raise LaneTaken
            self.is_in = True


def budget() -> Budget:
    """Return a whole budget for the request that is being answered, at its pace."""
    return Budget(pace=g.pace if has_request_context() else unpaced)


def register(app: Flask, lane: Lane) -> None:
    """Give each request a pace, and leave the lane when it is answered."""

    @app.before_request
    def _begin() -> None:
        g.pace = Pace(lane, request.environ.get("gunicorn.socket"))

    @app.teardown_request
    def _end(_fault: BaseException | None) -> None:
        if "pace" in g and g.pace.is_in:
            lane.leave()
