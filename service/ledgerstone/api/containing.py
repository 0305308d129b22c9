"""Containment of internal faults in one part of an answer: logged with their place, counted."""

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


# Not contained: errors about the request, errors that end the whole request, and errors of the
# machine.
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
    """Suppresses an internal exception; only its kind and place are logged."""

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
