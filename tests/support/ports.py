"""Ports of this machine for servers of the tests."""

import os
import socket
from contextlib import suppress
from itertools import count
from typing import Final

# Below those that machines give to callers, so that no call takes one before its server does; a
# band for each process of the tests, whose next port is never one that it has had.
_FIRST: Final = 20_000
_BANDS: Final = 10
_BAND: Final = 1_000
_numbers: Final = count(os.getpid())
WORKER: Final = "LEDGERSTONE_TESTS_WORKER"  # its number, in the environment of a process of them


def free_port() -> int:
    """Choose a port that nothing listens on, and that no other process of the tests chooses."""
    band = int(os.environ.get(WORKER, "0")) % _BANDS
    for _ in range(_BAND):
        port = _FIRST + _BAND * band + next(_numbers) % _BAND
        with suppress(OSError), socket.socket() as listener:
            listener.bind(("127.0.0.1", port))
            return port
    raise OSError(f"No port from {_FIRST} on is free.")
