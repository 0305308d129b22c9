"""What was not understood, as members of an answer: the first faults, and how many more."""

from __future__ import annotations

from typing import Any, Final

from ledgerstone.errors import NotUnderstood

MOST_FAULTS: Final = 50


def fault_members(fault: NotUnderstood) -> dict[str, Any]:
    """Return the first 50 faults of a request, each at its pointer, and the number of the rest."""
    more = len(fault.faults) - MOST_FAULTS
    return {"faults": fault.faults[:MOST_FAULTS], "more_faults": more if more > 0 else None}
