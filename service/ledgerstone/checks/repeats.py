"""Repeated findings of one kind on one slab, merged into one."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from ledgerstone.checks.finding import Finding, Level
from ledgerstone.wording import Message

MAX_ALIKE = 6  # up to this many are listed separately
_Kind = tuple[str, Level, int | None]


def collapse_repeats(findings: Iterable[Finding]) -> list[Finding]:
    """Return findings in their order; many of one kind on one slab become the first of them."""
    kinds: dict[_Kind, list[Finding]] = {}
    for finding in findings:
        kinds.setdefault((finding.check, finding.level, finding.slab), []).append(finding)
    return [
        finding
        for alike in kinds.values()
        for finding in (alike if len(alike) <= MAX_ALIKE else [_first_of(alike)])
    ]


def _first_of(alike: Sequence[Finding]) -> Finding:
    """The first of many, pointing at everything that they are about."""
    pointers = tuple(dict.fromkeys(pointer for finding in alike for pointer in finding.at))
    message = Message("finding-repeated", first=alike[0].message, more=len(alike) - 1)
    return replace(alike[0], message=message, at=pointers, key="")
