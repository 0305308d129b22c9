"""Faults of ours in one part of an answer: logged with their place, counted, and gone on from."""

from __future__ import annotations

import logging
from contextlib import AbstractContextManager
from types import TracebackType

from ledgerstone.api import metrics
from ledgerstone.api.problems import request_id
from ledgerstone.containment import Part
from ledgerstone.errors import (
    CallerGone,
    LaneTaken,
    NotUnderstood,
    TemplateFault,
    TokenError,
    TooIntricate,
)

_log = logging.getLogger("ledgerstone.fault")


# What tells the caller something about what was asked, what ends a request and not a part of it,
# and the machine's own need.
_LET_THROUGH = (
    NotUnderstood,
    TooIntricate,
    LaneTaken,
    CallerGone,
    TokenError,
    TemplateFault,
    MemoryError,
)


class _Contained:
    """Takes an exception that tells the caller nothing; the log tells its kind and place alone."""

    def __init__(self, part: Part) -> None:
        self.part = part

    def __enter__(self) -> None: ...

    def __exit__(
        self,
        kind: type[BaseException] | None,
        fault: BaseException | None,
        trace: TracebackType | None,
    ) -> bool:
        if not isinstance(fault, Exception) or isinstance(fault, _LET_THROUGH):
            return False
        _log.error("", extra={"fields": {"id": request_id(), "part": self.part}}, exc_info=fault)
        metrics.count_fault(self.part)
        return True


def contained(part: Part) -> AbstractContextManager[object, bool]:
    """Contain a fault in one part of the answer that is being made."""
    return _Contained(part)
