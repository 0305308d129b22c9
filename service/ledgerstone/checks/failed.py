"""The finding that replaces those of a check that failed with an internal fault."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.checks.finding import Finding, Level
from ledgerstone.wording import Message

CHECK_FAILED: Final = "check-failed"


def check_failed(level: Level, group: str, names: Sequence[str]) -> Finding:
    """Return the finding that an order could not be checked completely.

    Parameters
    ----------
    level
        ``stops`` where one of the checks might have stopped the order, else ``caution``.
    names
        The checks that failed.
    """
    return Finding(
        CHECK_FAILED,
        level,
        Message("check-failed"),
        "a fault of the service",
        measured={"checks": len(names)},
        key=f"{group}-{level}",
    )
