"""Whether a change may settle a finding on strength or weight: a bound, without a trial."""

from __future__ import annotations

from ledgerstone.checks import Finding

_BATCHES = 1.2  # the last batch is seldom a full one
_CLOSE = 1.02  # what a finding writes is rounded


def lightens(finding: Finding, scale: float) -> bool:
    """Return whether ``scale`` times the concrete may settle a finding on mass or pouring time."""
    if finding.check == "pour-too-slow":
        hours, most = finding.measured["open_hours"], finding.limit["open_hours"]
        return bool(hours * scale <= most * _BATCHES)
    if any(key.endswith("_kg") for key in finding.limit):
        return scale < 1.0
    return True


def helps(finding: Finding, scale: float) -> bool:
    """Whether a crack may be avoided by a span, or a ratio of span to thickness, ``scale`` times.

    Stress falls by the square at most (a strip under its own weight, of one thickness); a change
    that this does not settle need not be tried.

    Source
    ------
    Strength of materials: ``σ = 3 ρ g L² / 4 h`` of a strip on its ends.
    """
    stress, limit = finding.measured.get("stress_mpa"), finding.limit.get("stress_mpa")
    if not isinstance(stress, float) or not isinstance(limit, float):
        return True
    return stress * scale**2 <= limit * _CLOSE
