"""Faults of a request as members of an answer: the first ones, and the number of the rest."""

from __future__ import annotations

from typing import Any, Final

from ledgerstone.errors import NotUnderstood
from ledgerstone.wording import Speech

MAX_FAULTS: Final = 50


def fault_members(fault: NotUnderstood, speech: Speech) -> dict[str, Any]:
    """Return the first ``MAX_FAULTS`` faults, each with its pointer, and the number of the rest."""
    more = len(fault.faults) - MAX_FAULTS
    faults = [
        {"pointer": detail.pointer, "says": speech.say(detail.message)}
        for detail in fault.faults[:MAX_FAULTS]
    ]
    return {"faults": faults, "more_faults": more if more > 0 else None}
