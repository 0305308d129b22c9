"""Checks across a profile's keys, each on the sections that read well.

A check is a generator whose parameters are named for the sections it looks at; it runs when all of
them are there, and yields ``(path, message)`` for everything that does not agree.
"""

from __future__ import annotations

import inspect
from collections.abc import Mapping
from typing import Any

from ledgerstone.workshop.consistency import making, mixing, moulding, timing, trading
from ledgerstone.workshop.consistency.shared import FoundFaults

__all__ = ["inconsistencies"]

# Each with the sections it needs.
_CHECKS = tuple(
    (check, tuple(inspect.signature(check).parameters))
    for family in (making, mixing, moulding, timing, trading)
    for check in family.CHECKS
)


def inconsistencies(sections: Mapping[str, Any]) -> FoundFaults:
    """Yield what does not agree among the sections that are there."""
    for check, needs in _CHECKS:
        if all(name in sections for name in needs):
            yield from check(**{name: sections[name] for name in needs})
