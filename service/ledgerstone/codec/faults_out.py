"""What was not understood, as JSON: the first faults, and how many more there are."""

from __future__ import annotations

from typing import Any, Final

from ledgerstone.errors import NotUnderstood

MOST_FAULTS: Final = 50


def write_faults(fault: NotUnderstood) -> dict[str, Any]:
    """Write the first 50 faults of a request, each at its pointer, and the number of the rest."""
    shown = [{"pointer": one.pointer, "says": one.says} for one in fault.faults[:MOST_FAULTS]]
    more = len(fault.faults) - len(shown)
    return {"faults": shown, "more_faults": more} if more else {"faults": shown}
