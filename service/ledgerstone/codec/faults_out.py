"""What was not understood, as members of an answer: the first faults, and how many more."""

from __future__ import annotations

from typing import Any, Final

from ledgerstone.errors import NotUnderstood
from ledgerstone.wording import Speech

MOST_FAULTS: Final = 50


def fault_members(fault: NotUnderstood, speech: Speech) -> dict[str, Any]:
    """Return the first 50 faults of a request, each at its pointer, and the number of the rest."""
    more = len(fault.faults) - MOST_FAULTS
    faults = [
        {"pointer": one.pointer, "says": speech.say(one.message)}
        for one in fault.faults[:MOST_FAULTS]
    ]
    return {"faults": faults, "more_faults": more if more > 0 else None}
