"""Which findings follow from another at the same place, and are shown under it.

A strip of 2 mm lets no grain in, has no cover for steel, and cracks: one fault to settle.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType
from typing import Any, Final

from shapely.geometry import shape as geometry

from ledgerstone.checks.finding import LEVELS, Finding
from ledgerstone.checks.occasions import OCCASIONS

NEAR_MM: Final = 100.0  # so far apart two places are one to who looks at the plan
_MOST_OPEN: Final = 2  # cautions that stand open on the page, above what is folded
_OPENING: Final = ("cutout-off-slab", "cutouts-overlap")
_NARROW: Final = ("sliver", "neck-too-narrow", *_OPENING, "strip-too-narrow")
# The checks that a finding may follow from; the first one found counts. No chain is a circle.
CAUSES: Final[Mapping[str, tuple[str, ...]]] = MappingProxyType(
    {
        "strip-too-narrow": _OPENING,
        "two-pieces": _OPENING,
        "cutout-over-unit-side": ("cutout-off-slab",),
        "neck-too-narrow": ("sliver",),
        "relief-too-deep": ("too-thin",),
        "too-thin-for-drip": ("too-thin",),
        "edge-too-deep": ("too-thin",),
        "edge-too-thin-for-finish": ("too-thin",),
        "pour-too-slow": ("too-thick", "too-big-for-table"),
        "aggregate-too-large": ("too-thin", "relief-too-deep", *_NARROW),
        "cover-too-thin": ("too-thin", "relief-too-deep", "aggregate-too-large"),
        "steel-rusts": ("too-thin", "relief-too-deep", "aggregate-too-large"),
        "cracks-when-moved": ("strip-too-narrow",),
        "cracks-in-place": ("strip-too-narrow",),
        "sags": ("cracks-in-place",),
        "tips-when-sat-on": ("tips-over",),
    }
)


def with_causes(findings: Sequence[Finding]) -> tuple[Finding, ...]:
    """Return findings as they are read, each that follows from another right after it.

    What stops the order comes first, then the first cautions, then the rest by when it is acted
    on, the most serious first: numbers on the page, on its plan and in this list are the same. A
    finding follows only from one that is as serious.
    """
    found = {finding.id: _followed(finding, findings) for finding in findings}
    roots = {name: _root(name, found) for name in found}
    linked = [
        replace(finding, follows_from=None if (root := roots[finding.id]) == finding.id else root)
        for finding in findings
    ]
    following: dict[str, list[Finding]] = {}
    for effect in linked:
        if effect.follows_from is not None:
            following.setdefault(effect.follows_from, []).append(effect)
    first = [finding for finding in linked if finding.follows_from is None]
    first.sort(key=lambda part: LEVELS.index(part.level))
    warned = [part for part in first if (part.level, part.when) == ("caution", "before-order")]
    first.sort(key=lambda part: _read_at(part, warned[:_MOST_OPEN]))
    return tuple(part for cause in first for part in (cause, *following.pop(cause.id, ())))


def _read_at(finding: Finding, open_cautions: Sequence[Finding]) -> int:
    """Return which part of an answer a finding is read in."""
    if finding.level == "stops":
        return 0
    return 1 if finding in open_cautions else 2 + OCCASIONS.index(finding.when)


def first_stops(findings: Sequence[Finding]) -> Iterator[Finding]:
    """Yield what stops an order, without what follows from another finding."""
    return (each for each in findings if each.level == "stops" and each.follows_from is None)


def is_said_by(cause: Finding, finding: Finding) -> bool:
    """Return whether a letter that states a cause may omit what follows from it.

    A place that is too narrow is stated as that, and not again as too narrow for grains.
    """
    return finding.check == "aggregate-too-large" and cause.check in _NARROW


def _followed(finding: Finding, findings: Sequence[Finding]) -> str | None:
    """The id of what a finding follows from directly, if of anything."""
    for check in CAUSES.get(finding.check, ()):
        for cause in findings:
            if cause.check == check and _as_serious(cause, finding) and _same_place(cause, finding):
                return cause.id
    return None


def _root(name: str, found: Mapping[str, str | None]) -> str:
    cause = found[name]
    return name if cause is None else _root(cause, found)


def _as_serious(cause: Finding, finding: Finding) -> bool:
    return LEVELS.index(cause.level) <= LEVELS.index(finding.level)


def _same_place(cause: Finding, finding: Finding) -> bool:
    """Return whether both are about one part of one slab, and about one place if both have one."""
    if cause.slab != finding.slab:
        return False
    parts = any(_within(a, b) or _within(b, a) for a in cause.at for b in finding.at)
    return parts and _near(cause.where_mm, finding.where_mm)


def _within(part: str, whole: str) -> bool:
    return part == whole or part.startswith(f"{whole}/")


def _near(finding: Mapping[str, Any] | None, other: Mapping[str, Any] | None) -> bool:
    if finding is None or other is None:
        return True
    return bool(geometry(dict(finding)).distance(geometry(dict(other))) <= NEAR_MM)
