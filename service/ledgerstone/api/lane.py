"""One heavy request at a time over all workers, and no work for callers who have disconnected.

Workers are synchronous. While one holds the lane, the others answer light requests at once and
refuse heavy ones with Retry-After, so that nobody waits behind two heavy orders.
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

from ledgerstone.api.counts import MAX_WORKERS
from ledgerstone.errors import CallerGone, LaneTaken
from ledgerstone.remedies import Budget, unpaced

LIGHT_UNITS: Final = 32.0  # about 1 s: an ordinary order and its search for remedies
_ROW: Final = struct.Struct("=IIQ")  # a process id, and a hash of its client


class Connection(Protocol):
    """A connection that reports whether its peer has closed it."""

    def is_gone(self) -> bool:
        """Return whether the caller has disconnected."""


def _unnamed_file() -> int:
    if hasattr(os, "memfd_create"):
        return os.memfd_create("lane")
    return os.dup(tempfile.TemporaryFile().fileno())


@dataclass(slots=True)
class Lane:
    """A lock that one process holds at a time, released when the process ends.

    It is a record lock (fcntl(2)) on an unnamed file, which forked processes share.
    """

    _file: int = field(default_factory=_unnamed_file)

    def enter(self) -> bool:
        """Take the lane; False if another process holds it."""
        try:
            fcntl.lockf(self._file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError:
            return False
        return True

    def leave(self) -> None:
        """Release the lane, if held."""
        fcntl.lockf(self._file, fcntl.LOCK_UN)


class ActiveClients:
    """The client that each worker serves, in shared memory."""

    def __init__(self) -> None:
        self._memory = mmap.mmap(-1, MAX_WORKERS * _ROW.size)
        self._row = 0

    def take_row(self, number: int) -> None:
        """Use a worker's own row; it replaces that of a worker that ended."""
        self._row = number % MAX_WORKERS

    def begin(self, client: str) -> None:
        """Record that this process serves a client."""
        self._write(os.getpid(), zlib.crc32(client.encode()))

    def end(self) -> None:
        """Record that this process serves no client."""
        self._write(0, 0)

    def elsewhere(self, client: str) -> bool:
        """Return whether another process serves a client."""
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
    """Checks before each part of a request's work that the caller waits and the lane is free."""

    lane: Lane
    connection: Connection | None
    is_in: bool = False

    def __call__(self, units: float) -> None:
        """Allow a request up to a total of ``units`` of work.

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
    """Return a whole budget for the current request, checked by its pace."""
    return Budget(pace=g.pace if has_request_context() else unpaced)


def register(app: Flask, lane: Lane) -> None:
    """Give each request a pace, and release the lane when it is answered."""

    @app.before_request
    def _begin() -> None:
        g.pace = Pace(lane, request.environ.get("gunicorn.socket"))

    @app.teardown_request
    def _end(_fault: BaseException | None) -> None:
        if "pace" in g and g.pace.is_in:
            lane.leave()
