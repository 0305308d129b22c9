"""What is found where a check of ours failed: the order is neither passed nor refused by it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.checks.finding import Finding, Level
from ledgerstone.wording import Message

CHECK_FAILED: Final = "check-failed"


def check_failed(level: Level, stage: str, names: Sequence[str]) -> Finding:
    """Say that not all of an order could be checked.

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
        key=f"{stage}-{level}",
    )
