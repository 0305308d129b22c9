"""Whether a change may settle what a slab's strength or weight stops: said without a trial."""

from __future__ import annotations

from ledgerstone.checks import Finding

_BATCHES = 1.2  # the last batch is seldom a full one
_CLOSE = 1.02  # what a finding writes is rounded


def lightens(finding: Finding, scale: float) -> bool:
    """Whether a slab of so much less concrete may settle what it weighs, or takes to pour."""
    if finding.check == "pour-too-slow":
        hours, most = finding.measured["open_hours"], finding.limit["open_hours"]
        return bool(hours * scale <= most * _BATCHES)
    if any(key.endswith("_kg") for key in finding.limit):
        return scale < 1.0
    return True


def helps(finding: Finding, scale: float) -> bool:
    """Whether a crack may be avoided by a span, or by one over a thickness, so much smaller.

    Stress goes down by the square at the very most (a strip under its own weight, of one
    thickness); what that does not settle need not be tried.
    """
    stress, limit = finding.measured.get("stress_mpa"), finding.limit.get("stress_mpa")
    if not isinstance(stress, float) or not isinstance(limit, float):
        return True
    return stress * scale**2 <= limit * _CLOSE
