"""A command line's end: quiet where whoever reads its output went away, as ``head`` does."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable
from typing import Final

READER_GONE: Final = 128 + 13  # as a shell counts a process that SIGPIPE ended


def quietly(command: Callable[[], int]) -> int:
    """Return a command's exit status, with all of its output written.

    Where its reader is gone the rest is dropped and the status is ``READER_GONE``.
    """
    try:
        try:
            return command()
        finally:
            sys.stdout.flush()
    except BrokenPipeError:
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, sys.stdout.fileno())  # what is still held is flushed at exit
        os.close(nowhere)
        return READER_GONE
